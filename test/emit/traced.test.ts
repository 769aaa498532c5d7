import fc from "fast-check";
import { expect, test } from "vitest";
import type { Format } from "#dialect";
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
    ["G0", "modal.motion"],
    ["X1", "modal.axes"],
    ["X1", "numbers.length"],
    ["G1", "motion.line"],
    ["G1", "modal.motion"],
    ["X2", "modal.axes"],
    ["X2", "numbers.length"],
    ["F100", "modal.feed"],
    ["F100", "numbers.feed-per-minute"],
    ["%", "file.delimiter"],
  ]);
});
