import { describe, expect, it } from "vitest";
import type { Batch } from "#base";
import { memorySource } from "#base";
import type { JobStep, Reading } from "#job";
import { openJob } from "#job";
import { clRules } from "../../core/1-job/cl/findings.ts";
import { shortestDecimal } from "../../core/1-job/scan/shortest-decimal.ts";
import { scales, toBaseUnits } from "../../core/1-job/scan/number.ts";
import { postText } from "../../core/index.ts";
import { examples } from "../support/examples.ts";
import { ready } from "../support/ready.ts";
import { seeded } from "../support/seeded.ts";
import { badSources } from "./bad-sources.ts";
import { clReading, jobText, readSource } from "./reading.ts";
import { sameParts, sourceText } from "./same-parts.ts";

describe.each(examples.map((example) => [example.name, example] as const))(
  "%s",
  (_name, { job, dialects }) => {
    const written = jobText(job, { form: "json" });

    it("written anew gives the same program under every dialect", async () => {
      for (const dialect of dialects) {
        const made = await ready(dialect);
        expect(postText({ job: written }, made).program, dialect).toBe(postText({ job }, made).program);
      }
    });

    it("is stable, and has a move on each line", () => {
      expect(jobText(written, { form: "json" })).toBe(written);
      for (const line of written.split("\n")) expect(line).not.toMatch(/\}, \{ "(?:line|rapid|arc)"/);
    });
  },
);

/** All rows of all operations, as plain values. */
function rowsOf(text: string, reading: Reading, sizes: { windowBytes: number; rows: number }): unknown[] {
  const rows: unknown[] = [];
  const opened = openJob(
    memorySource(new TextEncoder().encode(text)),
    reading,
    ({ severity, message }) => {
      if (severity === "error") throw new Error(message);
    },
    sizes,
  );
  for (const operation of opened?.job.operations ?? [])
    for (const batch of opened!.moves(operation, () => undefined))
      for (let row = 0; row < batch.count; row++) rows.push(rowOf(batch, row));
  return rows;
}

function rowOf(batch: Batch<JobStep>, row: number): unknown {
  const { kind, stated, x, y, z, feed, c1, c2, turns, source, aside } = batch;
  const step = aside[row] < 0 ? undefined : batch.asides[aside[row]];
  return [kind, stated, x, y, z, feed, c1, c2, turns, source]
    .map((column) => column[row])
    .concat(step as never);
}

it.each(sameParts.map((part) => [part.file, part] as const))(
  "%s reads alike in small windows and batches",
  (_file, part) => {
    const text = sourceText(part.file);
    const reading = clReading(part.cl);
    const whole = rowsOf(text, reading, { windowBytes: 1 << 18, rows: 4096 });
    expect(whole.length).toBeGreaterThan(5);
    for (const windowBytes of [1, 7, 64])
      expect(rowsOf(text, reading, { windowBytes, rows: 17 })).toEqual(whole);
  },
);

it("lines that are plain points read as the careful reader reads them", () => {
  const random = seeded(5);
  const begin =
    "UNITS/MM\nCUTTER/6\nLOADTL/1\nSPINDL/9000,CLW\nRAPID\nGOTO/0,0,10\nFEDRAT/300,MMPM\nGOTO/0,0,9\n";
  const number = (): string => {
    const value = (random() - 0.5) * 10 ** Math.floor(random() * 6);
    const forms = [
      value.toFixed(Math.floor(random() * 9)),
      String(value).slice(0, 18),
      `${Math.trunc(value)}.`,
      value.toFixed(4).replace(/^(-?)0\./, "$1."),
      `+${Math.abs(value).toFixed(2)}`,
      `  ${value.toFixed(3)} `,
      "1.0E2",
    ];
    return forms[Math.floor(random() * forms.length)].replace(/e.*$/, "");
  };
  const axes = ["", "", ",0,0,1", ",0.000,0.,1.000000", ", 0 , 0.0 , 1. ", ",-0.0,0,1", ",0,0,10"];
  const lines = Array.from({ length: 3000 }, () => {
    const axis = axes[Math.floor(random() * axes.length)];
    return `GOTO/${number()},${number()},${number()}${axis}`;
  });
  // A comment behind a line sends it to the careful reader, and changes nothing else.
  const plain = `${begin}${lines.join("\n")}\nFINI\n`;
  const careful = `${begin}${lines.join(" $$\n")} $$\nFINI\n`;
  const sizes = { windowBytes: 1 << 18, rows: 4096 };
  const withoutPlace = (rows: unknown[]): unknown[] =>
    rows.map((row) => (row as unknown[]).filter((_, column) => column !== 9));
  const first = withoutPlace(rowsOf(plain, clReading(), sizes));
  expect(first.length).toBe(lines.length + 2);
  expect(first).toEqual(withoutPlace(rowsOf(careful, clReading(), sizes)));
});

it("a decimal is the shortest that reads as the same number", () => {
  const random = seeded(9);
  for (const scale of [scales.mm, scales.inch, scales.minute, scales.degree])
    for (let count = 0; count < 2000; count++) {
      const value = Math.round((random() - 0.5) * 10 ** Math.floor(random() * 14));
      const text = shortestDecimal(value, scale);
      expect(toBaseUnits(text, scale)).toBe(value + 0);
      const shorter = text.includes(".") ? text.slice(0, -1).replace(/\.$/, "") : "none";
      if (shorter !== "none" && shorter !== "-") expect(toBaseUnits(shorter, scale)).not.toBe(value);
    }
  expect(shortestDecimal(123_450_000, scales.mm)).toBe("12.345");
  // 1 mm is 0.0393700787... inch: rounded up, one digit less is enough.
  expect(shortestDecimal(10_000_000, scales.inch)).toBe("0.03937008");
  expect(shortestDecimal(254, scales.inch)).toBe("0.000001");
  expect(shortestDecimal(0, scales.inch)).toBe("0");
});

it("the feed of holes is theirs alone, and a cycle goes on where the spindle turns the other way", () => {
  const source = `UNITS/MM\nCUTTER/6\nLOADTL/1\nSPINDL/900,CLW\nRAPID\nGOTO/0,0,9\nFEDRAT/100,MMPM\nGOTO/1,0,9
CYCLE/DRILL,FEDTO,2,CLEAR,1\nGOTO/1,1,0\nCYCLE/OFF\nGOTO/1,1,5\nCYCLE/ON\nGOTO/2,2,0\nSPINDL/900,CCLW\nGOTO/3,3,0
CYCLE/OFF\nFINI\n`;
  const { operations } = JSON.parse(jobText(source, clReading())) as { operations: { moves: object[] }[] };
  const hole = (place: number) => ({
    holes: { kind: "drill", at: [[place, place]], top: 0, depth: -2, retract: 1 },
    feed: 100,
  });
  expect(operations.map(({ moves }) => moves)).toEqual([
    [
      { rapid: { x: 0, y: 0, z: 9 } },
      { line: { x: 1, y: 0, z: 9 }, feed: 100 },
      hole(1),
      { line: { x: 1, y: 1, z: 5 }, feed: 100 },
      hole(2),
    ],
    [{ rapid: { x: 3, y: 3 } }, hole(3)],
  ]);
});

it("every rule of cutter location source has a case", () => {
  const notes = sameParts.flatMap((part) => readSource(sourceText(part.file), part.cl).findings);
  const literal = readSource("PPRINT A $\nUNITS/MM\nFINI\n").findings;
  const covered = new Set([...badSources, ...notes, ...literal].map(({ rule }) => rule));
  expect(clRules.filter((rule) => !covered.has(rule))).toEqual([]);
});
