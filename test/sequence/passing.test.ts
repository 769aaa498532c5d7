import { describe, expect, test } from "vitest";
import type { Batch } from "#base";
import { axisBit, createBatch, pushAside, rowKind } from "#base";
import type { LoweredStep } from "#lower";
import { sequence } from "#sequence";
import { printSteps } from "../support/print-steps.ts";
import {
  between,
  capabilitiesOf,
  coolantRequest,
  jobOf,
  lowered,
  machineOf,
  operationOf,
  requestOf,
  run,
} from "./fixtures.ts";

const job = jobOf([operationOf(1)]);
const { request } = requestOf({ job, machine: machineOf() });

/** One operation of many lines in batches of a size: start, the way in, lines along x, the end. */
function* long(lines: number, rows: number, rotary = false): Generator<Batch<LoweredStep>> {
  let batch = createBatch<LoweredStep>(rows, rotary);
  const known = rotary ? 63 : 7;
  pushAside(batch, { kind: "operation-start", index: 0 }, 0);
  for (let line = 0; line <= lines; line++) {
    if (batch.count === rows) {
      yield batch;
      batch = createBatch<LoweredStep>(rows, rotary);
    }
    const row = batch.count++;
    batch.kind[row] = line === 0 ? rowKind.rapid : rowKind.line;
    batch.known[row] = known;
    batch.stated[row] = line === 0 ? known & ~axisBit.z : axisBit.x;
    batch.x[row] = line * 10_000;
    batch.z[row] = 150_000_000;
    batch.abc?.forEach((column, axis) => (column[row] = 1_000_000 * (axis + 1)));
    batch.feed[row] = line === 0 ? 0 : 5_000_000_000;
    batch.c1[row] = line;
    batch.aside[row] = -1;
    batch.source[row] = line;
  }
  yield batch;
  const last = createBatch<LoweredStep>(1);
  pushAside(last, { kind: "operation-end", index: 0 }, 0);
  yield last;
}

/** Rows at feed that come out, in all their columns. */
function feedRows(batches: Iterable<Batch>): number[][] {
  const rows: number[][] = [];
  for (const batch of batches) {
    for (let row = 0; row < batch.count; row++) {
      if (batch.kind[row] !== rowKind.line) continue;
      const { kind, frame, known, stated, x, y, z, feed, c1, c2, turns, aside, source } = batch;
      rows.push(
        [kind, frame, known, stated, x, y, z, feed, c1, c2, turns, aside, source].map(
          (column) => column[row],
        ),
      );
    }
  }
  return rows;
}

describe("motion of the job", () => {
  test.each([1, 3, 4095, 4096, 5000])("passes unchanged in batches of %i rows", (rows) => {
    const lines = rows < 10 ? 50 : 9000;
    const before = feedRows(long(lines, rows) as Iterable<Batch<never>>);
    const after = feedRows(sequence(long(lines, rows), request, () => undefined));
    expect(before).toHaveLength(lines);
    expect(after).toEqual(before);
  });

  test("is not changed where it came from", () => {
    const batch = lowered(0, job.operations[0]);
    const copy = structuredClone(batch);
    Array.from(sequence([batch], request, () => undefined));
    expect(batch).toEqual(copy);
  });

  test("keeps each batch as it was until the next is pulled", () => {
    let lines: string[] = [];
    for (const batch of sequence(long(9000, 1000), request, () => undefined)) {
      const first = printSteps([batch]);
      const second = printSteps([batch]);
      expect(second).toEqual(first);
      lines = [...lines, ...first];
    }
    expect(lines.at(-1)).toBe("program-end");
  });

  test("turns rotary axes at swap height, with X and Y", () => {
    const lines = printSteps(sequence(long(2, 8, true), request, () => undefined));
    expect(
      lines.slice(lines.indexOf("wait input 4 on 10s") + 1, lines.indexOf("wait input 4 on 10s") + 5),
    ).toEqual(["rapid x0 y0 a1 b2 c3", "length-offset 1", "rapid z15", "line x0.001 f500"]);
  });

  test("still knows a rotary axis in an operation that does not name it", () => {
    const twice = jobOf([operationOf(1), operationOf(1)]);
    const named = [...long(2, 8, true)];
    const plain = [...long(2, 8)].map((batch) => {
      for (const step of batch.asides) if ("index" in step) Object.assign(step, { index: 1 });
      return batch;
    });
    const rows: number[][] = [];
    const batches = sequence(
      [...named, ...plain],
      requestOf({ job: twice, machine: machineOf() }).request,
      () => undefined,
    );
    for (const batch of batches) {
      for (let row = 0; row < batch.count; row++) {
        if (batch.kind[row] === rowKind.line)
          rows.push([batch.known[row], ...(batch.abc ?? []).map((column) => column[row])]);
      }
    }
    expect(rows).toEqual(Array.from({ length: 4 }, () => [63, 1_000_000, 2_000_000, 3_000_000]));
  });

  test("knows in each row what can be known", () => {
    const rows: number[][] = [];
    for (const batch of sequence([lowered(0, job.operations[0])], request, () => undefined)) {
      for (let row = 0; row < batch.count; row++) {
        if (batch.kind[row] === rowKind.aside) continue;
        rows.push([batch.frame[row], batch.known[row], batch.stated[row], batch.x[row]]);
      }
    }
    expect(rows).toEqual([
      [1, 4, 4, 0], // machine, Z alone
      [0, 3, 3, 100_000_000], // X and Y at swap height: work Z is not known
      [0, 7, 4, 100_000_000],
      [0, 7, 4, 100_000_000],
      [0, 7, 4, 100_000_000],
      [1, 4, 4, 0], // X and Y of the machine are not known
    ]);
  });
});

describe("what stands between the motions", () => {
  test("modes, dwells and compensation pass in their places", () => {
    const { lines } = run({ job, machine: machineOf() }, [
      { x: 1, y: 1 },
      { kind: "plane", value: "zx" },
      { x: 2, feed: 100 },
      { kind: "dwell", time: 500_000 },
      { kind: "compensation", value: "left", offset: 5 },
      { x: 3, feed: 100 },
    ]);
    expect(between(lines, "rapid z15", "machine rapid z0")).toEqual([
      "plane zx",
      "line x2 f100",
      "dwell 0.5s",
      "compensation left",
      "line x3 f100",
    ]);
  });

  test("coolant goes off before other media come on", () => {
    const items = [
      { x: 1, y: 1 },
      coolantRequest("mist"),
      { x: 2, feed: 100 },
      coolantRequest("flood"),
      { x: 3, feed: 100 },
      coolantRequest(),
    ];
    const { lines } = run({ job, machine: machineOf() }, items);
    expect(between(lines, "rapid z15", "machine rapid z0")).toEqual([
      "coolant mist on",
      "line x2 f100",
      "coolant all off",
      "coolant flood on",
      "line x3 f100",
      "coolant all off",
    ]);
  });

  test("the speed changes and is confirmed", () => {
    const { lines } = run({ job, machine: machineOf() }, [
      { x: 1, y: 1 },
      { kind: "speed-request", rpm: 9_000_000 },
      { x: 2, feed: 100 },
    ]);
    expect(between(lines, "rapid z15", "line x2 f100")).toEqual([
      "spindle-speed 9000",
      "dwell 0.3s",
      "wait input 4 on 10s",
    ]);
  });

  test("start first, where the controller has the two apart", () => {
    const capabilities = capabilitiesOf({ spindleBlocks: "apart", spindleOrder: "start-first" });
    const { lines } = run({ job, machine: machineOf(), capabilities });
    expect(lines.indexOf("spindle-speed 18000")).toBe(lines.indexOf("spindle-start cw") + 1);
    const together = run({
      job,
      machine: machineOf(),
      capabilities: capabilitiesOf({ spindleOrder: "start-first" }),
    });
    expect(together.lines.indexOf("spindle-start cw")).toBe(
      together.lines.indexOf("spindle-speed 18000") + 1,
    );
  });

  test("notes are shown where the dialect has messages, and listed where it has none", () => {
    const note = { kind: "note", text: "clamps end below" } as const;
    const shown = run({ job, machine: machineOf() }, [{ x: 1, y: 1 }, note]);
    expect(shown.lines).toContain("message clamps end below");
    const silent = run(
      { job, machine: machineOf(), capabilities: capabilitiesOf({}, { "idioms.message": false }) },
      [{ x: 1, y: 1 }, note],
    );
    expect(silent.findings.map(({ rule, severity }) => `${rule} ${severity}`)).toEqual([
      "lower/no-message note",
    ]);
  });

  test("an operation without motion leaves the tool where it is", () => {
    const empty = createBatch<LoweredStep>(2);
    pushAside(empty, { kind: "operation-start", index: 0 }, 0);
    pushAside(empty, { kind: "operation-end", index: 0 }, 0);
    const lines = printSteps(sequence([empty], request, () => undefined));
    expect(lines.filter((line) => line.startsWith("rapid"))).toEqual([]);
    expect(lines.at(-1)).toBe("program-end");
  });
});
