import { describe, expect, test } from "vitest";
import { format as base } from "./formats.ts";
import type { Reading } from "./support.ts";
import { formatWith, head, readBlocks, readText } from "./support.ts";

/** What a block reads as, apart from findings about its form. */
function meaning(block: string, reading: Reading = {}): { lines: string[]; read: string[]; form: string[] } {
  const { lines, rules } = readBlocks(block, reading);
  return {
    lines,
    read: rules.filter((rule) => rule.startsWith("read/")),
    form: rules.filter((rule) => rule.startsWith("block/")),
  };
}

const same = ["line x10 y-2.5 f100"];

describe("one block, many forms (NISTIR 6556 3.3)", () => {
  test.each([
    ["as the dialect writes it", "G1 X10 Y-2.5 F100", []],
    ["free word order (3.3.6)", "F100 Y-2.5 X10 G1", ["block/word-order"]],
    ["no blanks", "G1X10Y-2.5F100", ["block/separator"]],
    ["many blanks", "G1   X10 \t Y-2.5 F100", ["block/separator"]],
    ["blanks inside words", "G 1 X1 0 Y - 2 . 5 F10 0", ["block/separator"]],
    ["lower case", "g1 x10 y-2.5 f100", []],
    ["blanks before and behind", "  G1 X10 Y-2.5 F100  ", []],
    ["a block number", "N10 G1 X10 Y-2.5 F100", []],
    ["a block number with leading zeros", "N0010 G1 X10 Y-2.5 F100", ["block/number-form"]],
    ["a comment first", "(cut) G1 X10 Y-2.5 F100", []],
    ["comments between words", "G1 (a) X10 (b)(c) Y-2.5 F100", []],
    ["a comment last", "G1 X10 Y-2.5 F100 (cut)", []],
    // One for each key: of signs, of zeros at the front, and of the digits of G.
    ["more zeros", "G01 X+010.000 Y-02.50 F0100.", Array<string>(3).fill("block/number-form")],
  ])("%s", (_name, block, form) => {
    expect(meaning(block)).toEqual({ lines: same, read: [], form });
  });
});

describe("lines that say nothing", () => {
  test.each(["", "   ", "\t", "(comment)", "N10", "N10 (comment)", "/", "()"])("%j", (line) => {
    expect(meaning(line).lines).toEqual([]);
    expect(meaning(line).form).toEqual([]);
  });
});

describe("block delete", () => {
  test("a block that may be skipped is read as one that runs, with a warning", () => {
    const { lines, findings } = readBlocks("/N10 G0 X1");
    expect(lines).toEqual(["rapid x1"]);
    expect(findings.map(({ rule, severity }) => [rule, severity])).toEqual([
      ["read/block-delete", "warning"],
    ]);
  });

  test("a dialect that does not understand it", () => {
    expect(readBlocks("/G0 X1", { format: formatWith({ blockDelete: null }) }).rules).toEqual([
      "read/unknown-word",
    ]);
  });

  describe("where the optional stop is the stop with a mark", () => {
    const marked = formatWith({
      optionalStopMark: "/2",
      blockDelete: { mark: "numbered", place: "before-number" },
      codes: { ...base.codes, optionalStop: base.codes.stop },
    });

    test.each(["/2 M0", "/2M0", "/2 N10 M0"])("%s is the optional stop", (block) => {
      const { lines, rules } = readBlocks(block, { format: marked });
      expect(lines).toEqual(["pause optional=true"]);
      expect(rules.filter((rule) => rule.startsWith("read/"))).toEqual([]);
    });

    test("the stop without a mark stops always", () => {
      expect(readBlocks("M0", { format: marked }).lines).toEqual(["pause optional=false"]);
    });

    test.each(["/M0", "/3 M0", "/2 G0 X1", "/2 M0 M8", "/2 M0 (MSG, LOOK)", "/2 M2", "/2 M6 T1", "/2 X#1"])(
      "%s would be skipped with the stops, or by another switch",
      (block) => {
        const { findings } = readBlocks(block, { format: marked });
        const found = findings.find(({ rule }) => rule === "read/block-delete");
        expect(found?.severity).toBe("error");
      },
    );

    test("N10 /2 M0 has its mark in the wrong place", () => {
      expect(readBlocks("N10 /2 M0", { format: marked }).rules).toContain("read/unknown-word");
    });
  });

  test("behind the block number, where the dialect has it there", () => {
    const behind = formatWith({ blockDelete: { mark: "slash", place: "after-number" } });
    expect(readBlocks("N10 /G0 X1", { format: behind }).rules).toEqual(["read/block-delete"]);
    expect(readBlocks("/N10 G0 X1", { format: behind }).rules).toEqual(["read/unknown-word"]);
    expect(readBlocks("N10 G0 / X1", { format: behind }).rules).toEqual(["read/unknown-word"]);
  });

  test("in the middle of a block it is none", () => {
    expect(readBlocks("N10 / G0 X1").rules).toEqual(["read/unknown-word"]);
  });
});

describe("comments", () => {
  test("messages for the operator (NISTIR 6556 3.3.4): case and blanks do not matter", () => {
    for (const text of [
      "(MSG, LOAD TOOL 2)",
      "(msg, LOAD TOOL 2)",
      "( M S G , LOAD TOOL 2 )",
      "(MSG,LOAD TOOL 2)",
    ])
      expect(readBlocks(text).lines).toEqual(["message text=LOAD TOOL 2"]);
  });

  test("a message comes before what its block does", () => {
    expect(readBlocks("M0 (MSG, CHECK)").lines).toEqual(["message text=CHECK", "pause optional=false"]);
  });

  test("the last comment of a block counts (3.3.4)", () => {
    expect(readBlocks("(a) (MSG, CHECK)").lines).toEqual(["message text=CHECK"]);
    expect(readBlocks("(MSG, CHECK) (a)")).toMatchObject({ lines: [], rules: ["read/comment"] });
  });

  test("semicolons", () => {
    const format = formatWith({
      comments: { style: "semicolon", longest: 80, place: "anywhere" },
      idioms: { message: { blocks: [[{ literal: ";MSG " }, { value: "text" }]] } },
    });
    expect(readBlocks("G0 X1 ; to the left\n;MSG CHECK", { format })).toMatchObject({
      lines: ["rapid x1", "message text=CHECK"],
      rules: [],
    });
    expect(readBlocks("G0 X1 (left)", { format }).rules).toEqual(["read/comment"]);
  });

  test("without a message idiom all comments say nothing", () => {
    expect(readBlocks("(MSG, CHECK)", { format: formatWith({ idioms: {} }) }).lines).toEqual([]);
  });

  test.each([
    ["not closed", "G0 X1 (left"],
    ["nested", "G0 X1 (a (b)"],
    ["by a semicolon that the dialect does not have", "G0 X1 ; left"],
  ])("%s", (_name, block) => {
    expect(meaning(block)).toEqual({ lines: ["rapid x1"], read: ["read/comment"], form: [] });
  });

  test("between a letter and its number", () => {
    expect(meaning("G0 X (a) 1").read).toEqual(["read/number", "read/unknown-word"]);
  });

  test("UTF-8 where the dialect has it", () => {
    const format = formatWith({ characters: "utf-8" });
    expect(readBlocks("(MSG, Größe 6 mm)", { format })).toMatchObject({
      lines: ["message text=Größe 6 mm"],
      rules: [],
    });
    expect(readBlocks("(Größe)").rules).toEqual(["block/characters"]);
  });
});

describe("the sign for the end of a block", () => {
  test.each([";", "*"] as const)("%s", (blockEnd) => {
    const format = formatWith({ blockEnd });
    const text = `${head}${blockEnd}\nG0 X1${blockEnd}\n(c)\nM2${blockEnd}\n`;
    expect(readText(text, { format }).rules).toEqual([]);
    expect(readText(text.replace(`X1${blockEnd}`, "X1"), { format }).rules).toEqual(["block/framing"]);
    expect(readText(text.replace(`X1${blockEnd}`, `X1 ${blockEnd} (c)`), { format }).rules).toEqual([]);
  });

  test("where the dialect has none it is no word", () => {
    expect(readBlocks("G0 X1*").rules).toEqual(["read/unknown-word"]);
  });
});

describe("other separators", () => {
  test("none", () => {
    const format = formatWith({ separator: "" });
    const blocks = readText(`${head.replaceAll(" ", "")}\nG0X1Y2\nM2\n`, { format });
    expect(blocks.rules).toEqual([]);
    expect(blocks.lines.slice(-2)).toEqual(["rapid x1 y2", "program-end"]);
    expect(readText("G90G21\nG0 X1\nM2\n", { format }).rules).toEqual(["block/separator"]);
  });

  test("a tab", () => {
    const format = formatWith({ separator: "\t" });
    expect(readText("G90\tG21\nG0\tX1\nM2\n", { format }).rules).toEqual([]);
  });
});
