import { describe, expect, test } from "vitest";
import type { Format } from "#dialect";
import { format } from "./formats.ts";
import { formatWith, readBlocks } from "./support.ts";

const at = "G0 X0 Y0 Z20\n";

function drill(
  blocks: string,
  change: Partial<NonNullable<Format["cycles"]>> = {},
): { lines: string[]; rules: string[] } {
  const cycles = format.cycles && { ...format.cycles, ...change };
  const { lines, rules } = readBlocks(at + blocks, { format: formatWith({ cycles }) });
  return { lines: lines.slice(1), rules };
}

const define = (
  cycle: string,
  level: number,
  between: string,
  peck = 0,
  dwell = 0,
  levelStated = true,
): string =>
  `cycle-definition cycle=${cycle} depth=-50000000 retract=20000000 level=${level} between=${between} levelStated=${levelStated} peck=${peck} dwell=${dwell}`;

describe("a series", () => {
  test("later holes need only positions, and the cancel code ends it", () => {
    const { lines, rules } = drill("G99 G81 X1 Y2 Z-5 R2 F100\nX3\nY4\nG80");
    expect(rules).toEqual([]);
    expect(lines).toEqual([
      define("drill", 20_000_000, "retract"),
      "hole x1 y2 z2 f100",
      "hole x3 y2 z2 f100",
      "hole x3 y4 z2 f100",
      "cycle value=off",
    ]);
  });

  test("each hole states its feed where every block that cuts does", () => {
    const each = formatWith({ modal: { ...format.modal, feed: "each-block" } });
    const rules = (blocks: string): string[] => readBlocks(at + blocks, { format: each }).rules;
    expect(rules("G99 G81 X1 Y2 Z-5 R2 F100\nX3 F100\nG80")).toEqual([]);
    expect(rules("G99 G81 X1 Y2 Z-5 R2 F100\nX3\nG80")).toEqual(["block/feed-word"]);
  });

  test("initial level: Z before the first hole of the series, also behind a change of the cycle", () => {
    const { lines, rules } = drill("G98 G81 X1 Y2 Z-5 R2 F100\nG99 X2\nG98 G85 X3 Z-5 R2");
    expect(rules).toEqual([]);
    expect(lines).toEqual([
      define("drill", 200_000_000, "initial"),
      "hole x1 y2 z20 f100",
      define("drill", 20_000_000, "retract"),
      "hole x2 y2 z2 f100",
      define("ream", 200_000_000, "initial"),
      "hole x3 y2 z20 f100",
    ]);
  });

  test("below the retract level it rises first; the initial level is then the retract level", () => {
    const { lines } = drill("Z0\nG98 G81 X1 Y2 Z-5 R2 F100");
    expect(lines.slice(1)).toEqual([
      "rapid x0 y0 z2",
      define("drill", 20_000_000, "initial"),
      "hole x1 y2 z2 f100",
    ]);
  });

  test("numbers are kept while the same cycle repeats, also if its code is said again", () => {
    const { lines, rules } = drill("G99 G83 X1 Y2 Z-5 R2 Q1 F100\nG83 X2\nG83 X3 Z-6");
    expect(rules).toEqual([]);
    expect(lines.filter((line) => line.startsWith("cycle-definition"))).toHaveLength(2);
  });

  test("a definition tells whether its level was said with it or is that of the one before", () => {
    const { lines } = drill("G99 G81 X1 Y2 Z-5 R2 F100\nG85 X2 Z-5 R2\nG80\nG99\nG81 X3 Z-5 R2");
    expect(lines.filter((line) => line.startsWith("cycle-definition"))).toEqual([
      define("drill", 20_000_000, "retract"),
      define("ream", 20_000_000, "retract", 0, 0, false),
      define("drill", 20_000_000, "retract"),
    ]);
  });

  test("another cycle forgets them", () => {
    const { rules } = drill("G99 G81 X1 Y2 Z-5 R2 F100\nG82 X2 P1");
    expect(rules).toEqual(["read/word-missing", "read/word-missing"]);
  });

  test("a motion code ends it; as the end is not said, there is no step for it", () => {
    const { lines, rules } = drill("G99 G81 X1 Y2 Z-5 R2 F100\nG0 Z20");
    expect(rules).toEqual([]);
    expect(lines.slice(-2)).toEqual(["hole x1 y2 z2 f100", "rapid x1 y2 z20"]);
  });

  test("unless the dialect ends cycles by the cancel code alone", () => {
    expect(drill("G99 G81 X1 Y2 Z-5 R2 F100\nG0 Z20", { endedBy: "cancel-code" }).rules).toEqual([
      "read/cycle",
    ]);
  });

  test("a hole at the place where the tool is", () => {
    expect(drill("G99 G81 Z-5 R2 F100").lines.at(-1)).toBe("hole x0 y0 z2 f100");
  });
});

describe("levels", () => {
  test("incremental words: X and Y from where the tool is, R from the level, Z from R", () => {
    const { lines, rules } = drill("G91\nG98 G81 X1 Y2 Z-7 R-18 F100\nX1");
    expect(rules).toEqual([]);
    expect(lines.slice(1)).toEqual([
      define("drill", 200_000_000, "initial"),
      "hole x1 y2 z20 f100",
      "hole x2 y2 z20 f100",
    ]);
  });

  test("incremental words away from the initial level: controllers differ", () => {
    expect(drill("G91\nG99 G81 X1 Y2 Z-7 R-18 F100\nX1").rules).toEqual(["read/cycle"]);
  });

  test("both levels from the initial level: Z20 less 18 and less 25", () => {
    const { lines, rules } = drill("G99 G81 X1 Y2 Z-25 R-18 F100\nX2", { levels: "from-initial" });
    expect(rules).toEqual([]);
    expect(lines).toEqual([
      define("drill", 20_000_000, "retract"),
      "hole x1 y2 z2 f100",
      "hole x2 y2 z2 f100",
    ]);
  });

  test("a dialect with relative levels counts from the initial level", () => {
    const { lines, rules } = drill("G99 G81 X1 Y2 Z-7 R-18 F100\nX2", { levels: "relative" });
    expect(rules).toEqual([]);
    expect(lines).toEqual([
      define("drill", 20_000_000, "retract"),
      "hole x1 y2 z2 f100",
      "hole x2 y2 z2 f100",
    ]);
  });

  test("a dialect without return words", () => {
    const cycleReturn = { initial: null, retract: null };
    for (const [levelWithout, z] of [
      ["retract", 2],
      ["initial", 20],
    ] as const) {
      const cycles = format.cycles && { ...format.cycles, levelWithout };
      const without = formatWith({ cycles, codes: { ...format.codes, cycleReturn } });
      const { lines } = readBlocks(`${at}G81 X1 Y2 Z-5 R2 F100`, { format: without });
      expect(lines.at(-1)).toBe(`hole x1 y2 z${z} f100`);
    }
  });
});

describe("repeats: the L word", () => {
  test("incremental: each a step further", () => {
    const { lines, rules } = drill("G91\nG98 G81 X4 Y5 Z-7 R-18 L3 F100");
    expect(rules).toEqual([]);
    expect(lines.slice(2)).toEqual(["hole x4 y5 z20 f100", "hole x8 y10 z20 f100", "hole x12 y15 z20 f100"]);
  });

  test("absolute: in the same place", () => {
    expect(drill("G99 G81 X4 Y5 Z-5 R2 L2 F100").lines.slice(1)).toEqual([
      "hole x4 y5 z2 f100",
      "hole x4 y5 z2 f100",
    ]);
  });

  test("more than a batch holds", () => {
    expect(drill("G99 G81 X4 Y5 Z-5 R2 L10000 F100").lines).toHaveLength(10_001);
  });

  test("more than 10,000 are a slip, and give one hole", () => {
    const { lines, rules } = drill("G99 G81 X4 Y5 Z-5 R2 L10001 F100");
    expect(rules).toEqual(["read/number"]);
    expect(lines).toHaveLength(2);
  });

  test("0 is none", () => {
    expect(drill("G99 G81 X4 Y5 Z-5 R2 L0 F100").rules).toEqual(["read/number"]);
  });
});

describe("what is no hole", () => {
  test.each([
    ["no axis words", "G99 G81 X1 Z-5 R2 F100\nG81 R2", "read/cycle"],
    ["the bottom above the retract level", "G81 X1 Z5 R2 F100", "read/cycle"],
    ["a peck of 0", "G83 X1 Z-5 R2 Q0 F100", "read/cycle"],
    ["a dwell below 0", "G82 X1 Z-5 R2 P-1 F100", "read/cycle"],
    ["a rotary word", "G81 X1 Z-5 A1 R2 F100", "read/cycle"],
    ["another plane", "G18 G81 X1 Z-5 R2 F100", "read/cycle"],
    ["compensation", "G41 D1\nG81 X1 Z-5 R2 F100", "read/cycle"],
    ["inverse time", "G93 G81 X1 Z-5 R2 F100", "read/cycle"],
    ["no retract level", "G81 X1 Z-5 F100", "read/word-missing"],
    ["no depth", "G81 X1 R2 F100", "read/word-missing"],
    ["no peck", "G83 X1 Z-5 R2 F100", "read/word-missing"],
    ["no dwell", "G82 X1 Z-5 R2 F100", "read/word-missing"],
    ["a peck that the cycle does not have", "G81 X1 Z-5 R2 Q1 F100", "read/unused-word"],
    ["axis words with the cancel code", "G80 X1", "read/cycle"],
  ])("%s", (_name, blocks, rule) => {
    expect(drill(blocks).rules).toEqual([rule]);
  });

  test("behind the cancel code no motion word is in force", () => {
    expect(drill("G80\nX1").rules).toEqual(["read/word-missing"]);
  });

  test("a place or a level that is not known", () => {
    expect(readBlocks("G0 X0 Z20\nG81 X1 Z-5 R2 F100").rules).toEqual(["read/position"]);
    expect(readBlocks("G0 X0 Y0\nG98 G81 X1 Z-5 R2 F100").rules).toEqual(["read/position"]);
    expect(readBlocks("G0 X0 Y0\nG99 G81 X1 Z-5 R2 F100").rules).toEqual([]);
  });
});

describe("what changes under a series (NISTIR 6556 3.5.16)", () => {
  const first = "G0 X0 Y0 Z20\nG98 G81 X1 Z-3 R2 F100\n";

  test("an offset: the level before it is not known any more", () => {
    expect(readBlocks(`${first}G43 H3\nX2`).rules).toEqual(["read/position"]);
    expect(readBlocks(`G54\n${first}G55\nX2 Y0`).rules).toEqual(["read/position"]);
    expect(readBlocks(`${first}G43 H3\nG99 X2`).rules).toEqual([]);
  });

  test("units: its numbers are to be said anew", () => {
    expect(readBlocks(`${first}G20\nF5\nG99 X2`).rules).toContain("read/word-missing");
    expect(readBlocks(`${first}G20\nF5\nG99 X2 Z-0.5 R0.1`).rules).toEqual([]);
    expect(readBlocks(`${first}G20\nF5\nX2 Z-0.5 R0.1`).rules).toEqual(["read/position"]);
    expect(readBlocks(`${first}G21\nX2`).rules).toEqual([]);
  });

  test("a dwell beside it takes the word that the cycle has, too", () => {
    expect(readBlocks(`G0 X0 Y0 Z20\nG82 X1 Z-3 R2 P2 F100\nG4 X3 P1`).rules).toEqual([
      "read/modal-conflict",
    ]);
    expect(readBlocks(`${first}G4 X3 P1`).rules).toEqual([]);
  });
});

describe("the end of cycles beside a motion word", () => {
  // NISTIR 6556 Table 4 has G80 and G0 in one modal group; the interpreter of Debian's linuxcnc-uspace 2.9 takes the block all the same.
  const cycle = "G0 X0 Y0 Z20\nG81 X1 Z-3 R2 F100";

  test.each(["G0 G80 X5", "G80 G0 X5", "G17 G80 G90 G0 X5"])("%s ends them and is that motion", (block) => {
    const { rules, lines } = readBlocks(`${cycle}\n${block}\nX6`);
    expect(rules).toEqual(["block/g-words"]);
    expect(lines.slice(-3)).toEqual(["cycle value=off", "rapid x5 y0 z20", "rapid x6 y0 z20"]);
  });

  test("without axis words the motion word stays in force", () => {
    const { rules, lines } = readBlocks(`G0 X0 Y0 Z20\nG0 G17 G40 G80 G90\nX6`);
    expect(rules).toEqual(["block/g-words"]);
    expect(lines.at(-1)).toBe("rapid x6 y0 z20");
  });

  test("a cycle in the block is no motion that may stand there", () => {
    const { rules, lines } = readBlocks(`${cycle}\nG80 G82 X5 Z-3 R2 P1`);
    expect(rules).toContain("read/modal-conflict");
    expect(lines.at(-1)).toBe("cycle value=off");
  });
});
