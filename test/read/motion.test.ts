import { describe, expect, test } from "vitest";
import { format } from "./formats.ts";
import { formatWith, head, readBlocks, readText } from "./support.ts";

describe("straight motion", () => {
  test("the feed of a block holds for it and for what follows; rapids have none", () => {
    const { lines, rules } = readBlocks("G0 X0 Y0 Z5\nG1 Z-1 F100\nX10\nG0 Z5\nG1 X20 F250.5");
    expect(rules).toEqual([]);
    expect(lines).toEqual([
      "rapid x0 y0 z5",
      "line x0 y0 z-1 f100",
      "line x10 y0 z-1 f100",
      "rapid x10 y0 z5",
      "line x20 y0 z5 f250.5",
    ]);
  });

  test("axes that were not named are unknown", () => {
    expect(readBlocks("G0 Z5\nX1").lines).toEqual(["rapid z5", "rapid x1 z5"]);
  });

  test("stated: the axes that are named, whether they move or not", () => {
    const { rows } = readBlocks("G0 X1 Y2\nX1 Y3\nX1\nX1 Z4");
    const motion = rows.filter(({ step }) => !step);
    expect(motion.map(({ stated }) => stated)).toEqual([3, 3, 1, 5]);
  });

  test("incremental words count from where the axis is", () => {
    const { lines, rules } = readBlocks("G0 X1 Y2\nG91\nG1 X0.5 F100\nX0.5 Y-2");
    expect(rules).toEqual([]);
    expect(lines).toEqual([
      "rapid x1 y2",
      "distance value=incremental",
      "line x1.5 y2 f100",
      "line x2 y0 f100",
    ]);
  });

  test("an incremental word of an axis whose place is unknown", () => {
    const { lines, rules } = readBlocks("G0 X1\nG91\nX1 Y1");
    expect(rules).toEqual(["read/position"]);
    expect(lines.at(-1)).toBe("rapid x2");
  });

  test("inch: 1 inch is 25.4 mm exactly", () => {
    expect(readText("G20 G90\nG0 X1 Y0.0001\nM2\n").lines).toContain("rapid x25.4 y0.00254");
  });

  test("units change on the line of a motion: they hold for it (NISTIR 6556 Table 8)", () => {
    expect(readBlocks("G0 G20 X1").lines).toEqual(["units value=inch", "rapid x25.4"]);
  });

  test("rotary words are degrees", () => {
    const { lines, rules } = readBlocks("G0 X1\nG0 A90 B-0.5\nG93\nG1 X2 A91 F2");
    expect(rules).toEqual([]);
    expect(lines).toEqual([
      "rapid x1",
      "rapid x1 a90 b-0.5",
      "feed-mode value=inverse-time",
      "line x2 a91 b-0.5 f0.2",
    ]);
  });

  test("a motion word alone moves nothing and stays in force", () => {
    expect(readBlocks("G1 F100\nX1").lines).toEqual(["line x1 f100"]);
  });

  test("axis words without any motion word", () => {
    const { lines, rules } = readBlocks("X1");
    expect(rules).toEqual(["read/word-missing"]);
    expect(lines).toEqual([]);
  });
});

describe("motion in machine coordinates (NISTIR 6556 3.5.12)", () => {
  test("leaves the work frame unknown, and work motion the machine frame", () => {
    const { lines, rules } = readBlocks("G0 X1 Y1 Z1\nG53 G0 Z0\nG0 X2\nG53 G0 X5\nG53 G1 Z-3 F60");
    expect(rules).toEqual([]);
    expect(lines).toEqual([
      "rapid x1 y1 z1",
      "machine rapid z0",
      "rapid x2 y1",
      "machine rapid x5 z0",
      "machine line x5 z-3 f60",
    ]);
  });

  test.each([
    ["G53 G2 X1 Y1 I1", "read/word-missing"],
    ["G0\nG53", "read/word-missing"],
    ["G91\nG53 G0 Z0", "read/modal-conflict"],
  ])("%s: %s", (blocks, rule) => {
    expect(readBlocks(blocks).rules).toEqual([rule]);
  });
});

describe("feed modes", () => {
  test("per minute, per revolution, inverse time", () => {
    const { rows, rules } = readBlocks("G1 X1 F100\nG95\nX2 F0.1\nG93\nX3 F2.5\nX4 F5");
    expect(rules).toEqual([]);
    // Atoms a minute, atoms a revolution, 1e-6 a minute.
    expect(rows.filter(({ step }) => !step).map(({ feed }) => feed)).toEqual([
      1e9, 1e6, 2_500_000, 5_000_000,
    ]);
  });

  test("a change of the mode leaves no feed: the guard's finding, not the reader's", () => {
    const { rows, rules } = readBlocks("G1 X1 F100\nG95\nX2");
    expect(rules).toEqual([]);
    expect(rows.filter(({ step }) => !step).map(({ feed }) => feed)).toEqual([1e9, 0]);
  });

  test("stating the same mode again changes nothing", () => {
    const { rows } = readBlocks("G1 X1 F100\nG94\nX2");
    expect(rows.filter(({ step }) => !step).map(({ feed }) => feed)).toEqual([1e9, 1e9]);
  });

  test("inverse time asks for a feed in each block (NISTIR 6556 3.5.20)", () => {
    const { rows, rules } = readBlocks("G93\nG1 X1 F2\nX2");
    expect(rules).toEqual(["block/feed-word"]);
    expect(rows.filter(({ step }) => !step).map(({ feed }) => feed)).toEqual([2_000_000, 0]);
  });

  test("a mode that the dialect gives a code but no number format", () => {
    const lacking = formatWith({ numbers: { ...format.numbers, feedPerRevolution: undefined } });
    expect(readBlocks("G95\nG1 X1 F0.1", { format: lacking }).rules).toEqual(["dialect/undeclared"]);
  });
});

describe("reference return (NISTIR 6556 3.5.8)", () => {
  test.each([
    ["G91 G28 Z0\nG90", ["distance value=incremental", "reference-return axes=4", "distance value=absolute"]],
    ["G28 Z10", ["rapid z10", "reference-return axes=4"]],
    ["G28 X1 Y2", ["rapid x1 y2", "reference-return axes=3"]],
    ["G28", ["reference-return axes=7"]],
    ["G0 A10\nG28", ["rapid a10", "reference-return axes=15"]],
  ])("%s", (blocks, lines) => {
    const read = readBlocks(blocks);
    expect(read.rules).toEqual([]);
    expect(read.lines).toEqual(lines);
  });

  test("the axes are unknown afterwards, and the motion word is to be stated again", () => {
    const { lines, rules } = readBlocks("G0 X1 Y1 Z1\nG91 G28 Z0\nG90\nX2");
    expect(rules).toEqual(["block/motion-word"]);
    expect(lines.at(-1)).toBe("rapid x2 y1");
  });

  test("without an intermediate point a zero only names the axis", () => {
    const direct = formatWith({ referenceIntermediate: "none" });
    expect(readBlocks("G28 Z0", { format: direct }).lines).toEqual(["reference-return axes=4"]);
    expect(readBlocks("G28 Z5", { format: direct }).lines).toEqual(["rapid z5", "reference-return axes=4"]);
  });

  test("an incremental point needs a known place", () => {
    expect(readBlocks("G91 G28 Z5").rules).toEqual(["read/position"]);
    expect(readBlocks("G0 Z1\nG91 G28 Z5").lines.slice(-2)).toEqual(["rapid z6", "reference-return axes=4"]);
  });

  test("a motion word in the same block wants the same words", () => {
    expect(readBlocks("G0 G28 Z1").rules).toEqual(["read/modal-conflict"]);
  });
});

describe("place of a row", () => {
  test("the byte offset of its block", () => {
    const text = `${head}\nG0 X1\n  G1 X2 F10\nM2\n`;
    const { rows } = readText(text);
    const [rapid, line] = rows.filter(({ step }) => !step);
    expect(rapid.source).toBe(text.indexOf("G0 X1"));
    expect(line.source).toBe(text.indexOf("  G1"));
    expect(rows.at(-1)?.source).toBe(text.indexOf("M2"));
  });
});
