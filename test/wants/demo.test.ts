import { describe, expect, it } from "vitest";
import { postText } from "../../core/index.ts";
import { quarryRouter } from "../support/dialects.ts";
import { weatherPlate } from "../support/examples.ts";
import { ready } from "../support/ready.ts";

/*
 * What the user of the quarry workshop wants of the program, read off its text by plain patterns, without any of our own
 * stages: the four corrections that used to cost a day each.
 */

const { program } = postText({ job: weatherPlate }, await ready(quarryRouter));
const blocks = (program ?? "").split("\n").map((block) => block.replace(/^N\d+ /, "").replace(/\(.*\)/, ""));

const indexesOf = (pattern: RegExp): number[] =>
  blocks.flatMap((block, index) => (pattern.test(block) ? [index] : []));
const lastBefore = (index: number, pattern: RegExp): number =>
  indexesOf(pattern)
    .filter((one) => one < index)
    .at(-1) ?? -1;
const isMotion = (block: string): boolean => /\b[XYZ]-?\d/.test(block);

describe("the weather plate under the quarry router", () => {
  it("states a motion word in every motion block", () => {
    const motions = blocks.filter(isMotion);
    expect(motions.length).toBeGreaterThan(1000);
    expect(motions.filter((block) => !/\bG(00|01|02|03|73|8[1-9])\b/.test(block))).toEqual([]);
  });

  it("says the spindle word before its speed", () => {
    const starts = indexesOf(/\bM0[34]\b/);
    expect(starts.length).toBeGreaterThanOrEqual(8);
    for (const start of starts) expect(blocks[start]).toMatch(/^M0[34] S\d+$/);
  });

  it("waits on the at-speed signal after each start, before anything moves at feed", () => {
    for (const start of indexesOf(/\bM0[34]\b/))
      expect(blocks.slice(start + 1, start + 3)).toEqual([
        "G04 P300",
        expect.stringMatching(/^M94 P4 R1 Q10/),
      ]);
  });

  it("confirms a stop by the signal before each release and at the end", () => {
    const releases = indexesOf(/^M21$/);
    expect(releases.length).toBeGreaterThanOrEqual(8);
    for (const index of [...releases, ...indexesOf(/^M30$/)]) {
      const stop = lastBefore(index, /^M05$/);
      expect(stop).toBeGreaterThan(lastBefore(index, /\bM0[34]\b/));
      expect(blocks[stop + 1]).toMatch(/^M94 P5 R1 Q30/);
    }
  });

  it("takes Z up alone before anything else of a swap", () => {
    for (const stop of indexesOf(/^M05$/).slice(1)) {
      const motion = lastBefore(stop, /\b[XYZ]-?\d/);
      expect(blocks[motion]).toBe("G53 G00 Z0.000");
    }
  });

  it("waits for air before each release and each clamp", () => {
    for (const index of indexesOf(/^M2[12]$/)) expect(blocks[index - 1]).toMatch(/^M94 P6 R1/);
  });
});
