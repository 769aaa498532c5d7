import { describe, expect, test } from "vitest";
import type { Format } from "#dialect";
import { format } from "./formats.ts";
import { formatWith, readBlocks } from "./support.ts";

const at = "G0 X0 Y0 Z0\nF100\n";

/** The last line that blocks from a known place give. */
function arc(
  blocks: string,
  change: Partial<Format["arc"]> = {},
): { line: string | undefined; rules: string[] } {
  const { lines, rules } = readBlocks(at + blocks, {
    format: formatWith({ arc: { ...format.arc, ...change } }),
  });
  return { line: lines.at(-1), rules };
}

describe("arcs by centre (NISTIR 6556 3.5.3.2)", () => {
  test.each([
    ["G2 X10 Y0 I5 J0", "arcXy x10 y0 z0 c5,0 -1 f100"],
    ["G3 X10 Y0 I5 J0", "arcXy x10 y0 z0 c5,0 1 f100"],
    ["G3 X10 I5", "arcXy x10 y0 z0 c5,0 1 f100"],
    ["G3 X10 Z-2 I5", "arcXy x10 y0 z-2 c5,0 1 f100"],
    ["G18 G2 X0 Z10 K5", "arcZx x0 y0 z10 c5,0 -1 f100"],
    ["G18 G2 X4 Y3 Z4 I0 K4", "arcZx x4 y3 z4 c4,0 -1 f100"],
    ["G18 G2 X-4 Z4 I-4 K0", "arcZx x-4 y0 z4 c0,-4 -1 f100"],
    ["G19 G3 Y6 Z0 J3 K1", "arcYz x0 y6 z0 c3,1 1 f100"],
  ])("%s", (block, line) => {
    expect(arc(block)).toEqual({ line, rules: [] });
  });

  test("end = start is a full circle, with or without end words", () => {
    expect(arc("G2 X0 Y0 I5").line).toBe("arcXy x0 y0 z0 c5,0 -1 f100");
    expect(arc("G2 I5").line).toBe("arcXy x0 y0 z0 c5,0 -1 f100");
    expect(arc("G3 Z-1 I5").line).toBe("arcXy x0 y0 z-1 c5,0 1 f100");
  });

  test("the centre is an increment whatever the distance mode", () => {
    expect(arc("G0 X3 Y4\nG91 G2 X10 I5 J0").line).toBe("arcXy x13 y4 z0 c8,4 -1 f100");
  });

  test("absolute centres by their mode (later controllers)", () => {
    expect(arc("G0 X3 Y4\nG90.1\nG2 X13 Y4 I8 J4").line).toBe("arcXy x13 y4 z0 c8,4 -1 f100");
    expect(arc("G90.1\nG2 X13 Y4 I8").rules).toEqual(["read/arc"]);
  });

  test("radii that differ are the guard's to judge", () => {
    expect(arc("G2 X10 Y0 I4").rules).toEqual([]);
  });

  test("turns by the dialect's word", () => {
    expect(arc("G2 X10 I5 P3", { turnsWord: "P" })).toEqual({
      line: "arcXy x10 y0 z0 c5,0 -3 f100",
      rules: [],
    });
    expect(arc("G3 X10 I5 P0", { turnsWord: "P" }).rules).toEqual(["read/number"]);
    expect(arc("G3 X10 I5 P2").rules).toEqual(["read/unused-word"]);
    expect(arc("G3 X10 I5 P40000", { turnsWord: "P" }).rules).toEqual(["read/number"]);
  });
});

describe("arcs by radius (NISTIR 6556 3.5.3.1)", () => {
  test.each([
    ["G2 X10 R5", "radiusXy x10 y0 z0 c5,0 -1 f100"],
    ["G3 X10 Y2 R-6.5", "radiusXy x10 y2 z0 c-6.5,0 1 f100"],
    ["G18 G3 X10 Y1 R6", "radiusZx x10 y1 z0 c6,0 1 f100"],
    ["G19 G2 Y10 R6", "radiusYz x0 y10 z0 c6,0 -1 f100"],
  ])("%s", (block, line) => {
    expect(arc(block)).toEqual({ line, rules: [] });
  });

  test("another letter for the radius", () => {
    expect(arc("G2 X10 Q5", { radiusWord: "Q" }).line).toBe("radiusXy x10 y0 z0 c5,0 -1 f100");
  });
});

describe("what is no arc: read/arc", () => {
  test.each([
    ["neither centre nor radius", "G2 X10 Y0", {}],
    ["both", "G2 X10 Y0 I5 R5", {}],
    ["a letter of another plane: K in XY", "G2 X10 K5", {}],
    ["a letter of another plane: J in ZX", "G18 G2 X10 J5", {}],
    ["a letter of another plane: I in YZ", "G19 G2 Y10 I5", {}],
    ["a full circle by its radius", "G2 X0 Y0 R5", {}],
    ["a radius and no end", "G2 R5", {}],
    ["the radius 0", "G2 X10 R0", {}],
    ["a rotary word", "G2 X10 A10 I5", {}],
    ["a plane that has none", "G18 G2 X10 K5", { planes: ["xy"] }],
    ["a helix where there are none", "G2 X10 Z1 I5", { helix: false }],
    ["a full circle where there are none", "G2 I5", { fullCircle: false }],
    ["a centre where arcs go by their radius", "G2 X10 I5", { form: "radius" }],
    ["more than the largest sweep, by centre", "G3 X0 Y10 I5 J5", { largestSweep: 179_000_000 }],
    ["more than the largest sweep, by radius", "G2 X10 R-8", { largestSweep: 180_000_000 }],
  ] as const)("%s", (_name, block, change) => {
    expect(arc(block, change).rules).toEqual(["read/arc"]);
  });

  test.each([
    ["a half circle", "G2 X10 I5", ["read/arc"]],
    ["a full circle", "G2 I5", ["read/arc"]],
    ["over the line by the least increment", "G2 X5.001 Y5 I5", ["read/arc"]],
    ["three quadrants from line to line", "G3 X5 Y5 I5", ["read/arc"]],
    ["by its radius, even where it is short", "G2 X5 Y5 R5", ["read/arc"]],
    ["one quadrant from line to line", "G2 X5 Y5 I5", []],
    ["from within a quadrant to its line", "G3 X5 Y9 I-4 J3\nG3 X-2 Y2 J-7", ["read/arc"]],
    ["within one quadrant", "G2 X2 Y4 I5", []],
  ] as const)("one quadrant in one block, and here is %s", (_name, block, rules) => {
    expect(arc(block, { quadrants: "one" }).rules).toEqual(rules);
  });

  test("a half circle is no more than 180 degrees", () => {
    expect(arc("G2 X10 I5", { largestSweep: 180_000_000 }).rules).toEqual([]);
  });

  test("an arc from an unknown place", () => {
    expect(readBlocks("G1 F100\nG2 X10 Y0 I5").rules).toEqual(["read/position"]);
    expect(readBlocks("G0 Y0\nG2 X10 Y0 R5 F10").rules).toEqual(["read/position"]);
  });

  test("centre words without an arc", () => {
    expect(arc("G1 X1 I5").rules).toEqual(["read/unused-word"]);
  });
});

test("an arc word without any of its words is none (NISTIR 6556 3.5.3)", () => {
  expect(arc("G2").rules).toEqual(["read/arc"]);
  expect(arc("G3 F50").rules).toEqual(["read/arc"]);
  expect(arc("G2 X[#1]").rules).not.toContain("read/arc");
  expect(arc("G2 X10 I5\nF50").rules).toEqual([]);
});
