import { readFileSync, readdirSync } from "node:fs";
import { join, resolve } from "node:path";
import fc from "fast-check";
import { expect, test } from "vitest";
import type { Batch } from "#base";
import type { Format } from "#dialect";
import { read } from "#read";
import { loadDialect } from "../support/dialects.ts";
import { dialectName, examples } from "../support/examples.ts";
import { madeUpBatch, parts } from "./batches.ts";
import { explicit, plain } from "./formats.ts";
import { batchOf, bytesOf, emitterOf, line, rapid } from "./writing.ts";

const formats: Record<string, Format> = {
  plain,
  explicit,
  stated: {
    ...plain,
    modal: {
      motion: "each-block",
      axes: "all",
      arcEnd: "both",
      arcCentre: "non-zero",
      feed: "each-block",
      speed: "each-start",
    },
    lineEnd: "\r\n",
    separator: "",
  },
};

test.each(Object.entries(formats))(
  "plain and traced emitters give the same bytes: %s",
  async (_name, format) => {
    const [emitter, traced] = await Promise.all([emitterOf(format), emitterOf(format, true)]);
    fc.assert(
      fc.property(parts, fc.boolean(), fc.boolean(), (made, inch, fragment) => {
        const batch = madeUpBatch(made);
        const options = { units: inch ? "inch" : "mm", header: ["A"], fragment } as const;
        const bytes = bytesOf(emitter.emitUnproved([batch], options));
        const offsets: number[] = [];
        const keys: number[] = [];
        const trace = (offset: number, key: number): void => {
          offsets.push(offset);
          keys.push(key);
        };
        expect(bytesOf(traced.emitUnproved([batch], { ...options, trace }))).toEqual(bytes);
        expect(offsets).toEqual(offsets.toSorted((a, b) => a - b));
        expect(keys.every((key) => traced.traceKeys?.[key] !== undefined)).toBe(true);
        // Each word begins where a key was reported: a letter that follows a blank or a line end.
        const text = new TextDecoder().decode(bytes);
        if (format.separator === " ")
          for (const offset of offsets)
            expect(text.slice(Math.max(0, offset - 1), offset)).toMatch(/^[ \n]?$/u);
      }),
      { numRuns: 300 },
    );
  },
);

test("a traced word reports the keys that shaped it", async () => {
  const traced = await emitterOf(plain, true);
  const batch = batchOf([
    { kind: "program-start", number: 0 },
    { kind: "plane", value: "xy" },
    { kind: "units", value: "mm" },
    rapid({ x: 1 }),
    line({ x: 2 }, 100),
  ]);
  const seen: [string, string][] = [];
  const reported: [number, number][] = [];
  const text = new TextDecoder().decode(
    bytesOf(
      traced.emitUnproved([batch], {
        units: "mm",
        header: [],
        trace: (offset, key) => reported.push([offset, key]),
      }),
    ),
  );
  for (const [offset, key] of reported)
    seen.push([/^\S+/u.exec(text.slice(offset))?.[0] ?? "", traced.traceKeys?.[key] ?? ""]);
  expect(seen).toEqual([
    ["%", "file.delimiter"],
    ["G17", "plane.xy"],
    ["G21", "units.mm"],
    ["G0", "motion.rapid"],
    ["X1", "numbers.length"],
    ["G1", "motion.line"],
    ["X2", "numbers.length"],
    ["F100", "numbers.feed-per-minute"],
    ["%", "file.delimiter"],
  ]);
});

const goldens = resolve(import.meta.dirname, "../goldens");
const pairs = examples.flatMap(({ name, dialects }) =>
  dialects.map((dialect) => [`${name}.${dialectName(dialect)}.program.txt`, dialect] as const),
);
const programs = readdirSync(goldens).filter((file) => file.endsWith(".program.txt"));

test("every program among the goldens is of an example and a dialect", () => {
  expect(programs.length).toBeGreaterThan(4);
  expect(programs.filter((file) => !pairs.some(([name]) => name === file))).toEqual([]);
});

test.each(pairs.filter(([file]) => programs.includes(file)))(
  "plain and traced emitters give the same bytes, and each block has its keys: %s",
  async (file, dialect) => {
    const { format, machine } = await loadDialect(dialect);
    const program = readFileSync(join(goldens, file));
    const own = file.includes("-inch.") ? "inch" : "mm";
    const units = format.unitsIn === "job" ? own : format.unitsIn;
    const reading = (): Iterable<Batch> => read([program], format, machine, { units }, () => undefined);
    const [emitter, traced] = await Promise.all([emitterOf(format), emitterOf(format, true)]);
    const keys = new Map<number, string[]>();
    const trace = (offset: number, key: number): void =>
      void keys.set(offset, [...(keys.get(offset) ?? []), traced.traceKeys?.[key] ?? "none"]);
    const options = { units, header: ["A", "B"] } as const;
    const bytes = bytesOf(emitter.emitUnproved(reading(), options));
    expect(bytesOf(traced.emitUnproved(reading(), { ...options, trace }))).toEqual(bytes);
    expect([...keys.values()].flat()).not.toContain("none");
    // Comments are no words; every other block begins with a word, and that has a key.
    const text = new TextDecoder().decode(bytes);
    const begins = [...text.matchAll(/^[^(;\r\n]/gmu)].map(({ index }) => index);
    expect(begins.length).toBeGreaterThan(20);
    expect(begins.filter((offset) => !keys.has(offset))).toEqual([]);
    // A key is reported where its word begins, or behind the address where it stands in the text of an idiom.
    if (format.separator === " ")
      for (const offset of keys.keys())
        expect(text.slice(Math.max(0, offset - 2), offset)).toMatch(/^$|\s$|^ [A-Z]$/u);
  },
);
