import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Batch, ByteSource, Finding } from "#base";
import { capacity, memorySource } from "#base";
import type { JobStep } from "#job";
import { readJob, readMoves } from "#job";
import { findingCases } from "./finding-cases/index.ts";
import { everyKey, jobOf, jobWith, readAll } from "./jobs.ts";

const large = { windowBytes: 1 << 16, rows: 4096 };

describe("where windows and batches end makes no difference", () => {
  const text = JSON.stringify(everyKey());
  const whole = readAll(text, large);

  test.each([1, 2, 3, 4, 5, 6, 7, 64, 1000])("windows of %i bytes", (windowBytes) => {
    expect(readAll(text, { windowBytes, rows: 4096 })).toEqual(whole);
  });

  test.each([2, 3, 4, 5, 7])("batches of %i rows", (rows) => {
    const { rows: read, ...rest } = readAll(text, { windowBytes: 4096, rows });
    const { rows: expected, ...others } = whole;
    expect(rest).toEqual(others);
    // A batch holds rotary columns only from the first rotary word on, so a batch that ends elsewhere may lack them.
    expect(withoutZeros(read)).toEqual(withoutZeros(expected));
  });

  test("findings are the same in windows of 1 and 3 bytes", () => {
    for (const { job } of findingCases) {
      const spoilt = job.replace("¦", "");
      if (spoilt.length > 10_000) continue;
      const { findings } = readAll(spoilt, large);
      for (const windowBytes of [1, 3])
        expect(readAll(spoilt, { windowBytes, rows: 2 }).findings).toEqual(findings);
    }
  });

  test("long texts, numbers and lists cross windows", () => {
    const points = Array.from({ length: 3000 }, (_, index) => `[${index / 8},-${index}.5,1e1]`).join(" ,\n");
    const job = jobWith(
      `{"note":"${"\\\\é".repeat(9000)}"},{"path":{"points":[${points}],"kind":"line"},"feed":9}`,
    );
    const expected = readAll(job, large);
    expect(expected.findings).toEqual([]);
    expect(expected.rows[0]).toHaveLength(3002);
    for (const windowBytes of [13, 997, 4096])
      expect(readAll(job, { windowBytes, rows: 4096 })).toEqual(expected);
  });

  test("for jobs cut off anywhere, too", () => {
    fc.assert(
      fc.property(fc.nat(text.length - 1), fc.integer({ min: 1, max: 9 }), (length, windowBytes) => {
        const { job, findings } = readAll(text.slice(0, length), large);
        expect(job).toBeUndefined();
        expect(findings.map(({ rule }) => rule)).toEqual(["job/json"]);
        expect(readAll(text.slice(0, length), { windowBytes, rows: 2 }).findings).toEqual(findings);
      }),
      { numRuns: 60 },
    );
  });
});

describe("a strict reader of JSON", () => {
  test("accepts no job that JSON.parse refuses, whatever byte is changed", () => {
    const text = JSON.stringify(everyKey());
    const bytes = new TextEncoder().encode(text);
    fc.assert(
      fc.property(
        fc.nat(bytes.length - 1),
        fc.constantFrom(...'{}[]",:\\0123456789.-+eE \n\tux\0'),
        (at, byte) => {
          const changed = bytes.slice();
          changed[at] = byte.charCodeAt(0);
          const { job, findings } = readAll(changed, { windowBytes: 64, rows: 8 });
          expect(readAll(changed, large).findings).toEqual(findings);
          if (!isJson(new TextDecoder().decode(changed))) {
            expect(findings.some(({ severity }) => severity === "error")).toBe(true);
          } else {
            // Well-formed JSON never gives a finding of form; what it means may be wrong.
            expect(findings.filter(({ rule }) => rule === "job/json")).toEqual([]);
            expect(job !== undefined || findings.length > 0).toBe(true);
          }
        },
      ),
      { numRuns: 600 },
    );
  });
});

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

function withoutZeros(rows: ReturnType<typeof readAll>["rows"]): unknown {
  return rows.map((list) =>
    list.map(({ rotary, ...row }) => ({
      ...row,
      rotary: rotary?.some((angle) => angle !== 0) ? rotary : [],
    })),
  );
}

describe("batches", () => {
  const read = (
    text: string,
    rows: number,
  ): readonly { count: number; rotary: boolean; batch: Batch<JobStep> }[] => {
    const source = memorySource(new TextEncoder().encode(text));
    const job = readJob(source, () => undefined);
    const batches = [];
    if (job)
      for (const batch of readMoves(source, job, job.operations[0], () => undefined, {
        windowBytes: 512,
        rows,
      }))
        batches.push({ count: batch.count, rotary: batch.abc !== undefined, batch });
    return batches;
  };

  test("are filled, and never beyond their room", () => {
    const path = `{"path":{"kind":"rapid","points":[${Array.from({ length: 100 }, () => "[1,2,20]").join()}]}}`;
    const batches = read(jobWith(path), 16);
    expect(batches.map(({ count }) => count)).toEqual([16, 16, 16, 16, 16, 16, 5]);
    for (const { batch } of batches) expect(capacity(batch)).toBe(16);
  });

  test("have rotary columns from the first rotary word on", () => {
    const moves = '{"rapid":{"x":1}},{"line":{"c":5},"feed":9},{"rapid":{"x":1}}';
    expect(read(jobWith(moves), 16).map(({ count, rotary }) => [count, rotary])).toEqual([
      [2, false],
      [2, true],
    ]);
    expect(
      read(jobOf('{"rapid":{"x":1,"y":1,"c":1}}'), 16).map(({ count, rotary }) => [count, rotary]),
    ).toEqual([[1, true]]);
  });

  test("of 4096 rows, or fewer where the moves cannot fill them", () => {
    const rowsOf = (moves: string): readonly number[] => {
      const source = memorySource(new TextEncoder().encode(jobWith(moves)));
      const job = readJob(source, () => undefined);
      if (!job) throw new Error("no job");
      return Array.from(
        readMoves(source, job, job.operations[0], () => undefined),
        capacity,
      );
    };
    expect(rowsOf(Array.from({ length: 3000 }, () => '{"dwell":1}').join())).toEqual([4096]);
    expect(rowsOf('{"dwell":1}')).toEqual([9]);
  });

  test("hold as many holes as the fewest bytes can say", () => {
    const at = Array.from({ length: 500 }, () => "[0,0]").join();
    const job = jobOf(
      `{"rapid":{"x":0,"y":0}},{"holes":{"kind":"drill","at":[${at}],"top":0,"depth":-1,"retract":0},"feed":1}`,
    );
    expect(readAll(job, large).rows[0]).toHaveLength(503);
  });
});

describe("an input of any size ends in bounded time and memory", () => {
  /** A source of 2 GB that repeats a pattern behind a beginning, and counts what is read of it. */
  function endless(
    beginning: string,
    pattern: string,
  ): ByteSource & { readonly read: ByteSource["read"]; total: number } {
    const head = new TextEncoder().encode(beginning);
    const body = new TextEncoder().encode(pattern.repeat(Math.ceil((1 << 20) / pattern.length)));
    return {
      size: 2 * 1024 ** 3,
      total: 0,
      read(offset, target) {
        const part =
          offset < head.length
            ? head.subarray(offset)
            : body.subarray((offset - head.length) % pattern.length);
        const taken = part.subarray(0, target.length);
        target.set(taken);
        this.total += taken.length;
        return taken.length;
      },
    };
  }

  test.each([
    ["white space", "", " ", "job/limit"],
    ["one text", '{"job":"', "x", "job/limit"],
    ["one key", '{"', "x", "job/limit"],
    ["one number", '{"clearance":', "1", "job/limit"],
    ["brackets", '{"tools":', "[", "job/limit"],
    ["many keys", '{"tools":[', '{"number":1},', "job/limit"],
    ["brackets in moves", '{"operations":[{"moves":', "[", "job/limit"],
    ["a text in moves", '{"operations":[{"moves":["', "x", "job/limit"],
    ["digits in moves", '{"operations":[{"moves":[', "1", "job/limit"],
    ["zeros", "", "\0", "job/json"],
    ["letters", "", "x", "job/type"],
    ["a space and zeros", " ", "\0", "job/json"],
  ])("%s", (_, beginning, pattern, rule) => {
    const source = endless(beginning, pattern);
    const findings: Finding[] = [];
    expect(readJob(source, (finding) => findings.push(finding))).toBeUndefined();
    expect(findings.map((finding) => finding.rule)).toEqual([rule]);
    expect(source.total).toBeLessThan(6 * 1024 ** 2);
  });
});
