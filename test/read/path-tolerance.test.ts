import { describe, expect, test } from "vitest";
import type { Step } from "#base";
import { code, format } from "./formats.ts";
import { formatWith, readBlocks, readText } from "./support.ts";

// G64 P of interpreters that followed NISTIR 6556: common practice, no source.

const withWord = formatWith({ toleranceWord: "P" });

function steps(blocks: string, reading = withWord): { steps: (Step | undefined)[]; rules: string[] } {
  const { rows, rules } = readBlocks(blocks, { format: reading });
  return { steps: rows.map(({ step }) => step).filter((step) => step?.kind === "path"), rules };
}

describe("the tolerance of a blended path", () => {
  test("is a length in the units in force, and holds until the next path mode", () => {
    expect(steps("G64 P0.02\nG64 P0.015\nG64\nG61")).toEqual({
      steps: [
        { kind: "path", value: "blend", tolerance: 200_000 },
        { kind: "path", value: "blend", tolerance: 150_000 },
        { kind: "path", value: "blend" },
        { kind: "path", value: "exact" },
      ],
      rules: [],
    });
    expect(steps("G20 G64 P0.0007").steps).toEqual([{ kind: "path", value: "blend", tolerance: 177_800 }]);
  });

  test("needs units", () => {
    const { findings } = readText("G64 P0.02\nM2\n", { format: withWord });
    expect(findings.map(({ rule, key }) => `${rule} ${key ?? "-"}`)).toEqual(["read/mode-unknown units"]);
  });

  test("may share its block with other modes, wherever its word stands", () => {
    expect(steps("G17 G64 G90 P0.02").steps).toEqual([{ kind: "path", value: "blend", tolerance: 200_000 }]);
    const asWritten = formatWith({ toleranceWord: "P", executes: "left-to-right" });
    expect(steps("G64 G40 P0.02", asWritten)).toEqual({
      steps: [{ kind: "path", value: "blend", tolerance: 200_000 }],
      rules: [],
    });
  });

  test.each([
    ["a dialect without the word", "G64 P0.02", format, ["read/unused-word"]],
    ["the exact path", "G61 P0.02", withWord, ["read/unused-word"]],
    ["the letter alone", "P0.02", withWord, ["read/unused-word"]],
    ["zero, which some take for no bound at all", "G64 P0", withWord, ["read/number"]],
    ["a number below zero", "G64 P-0.02", withWord, ["read/number"]],
    ["a number finer than the grid", "G64 P0.02015", withWord, ["read/finer-than-grid"]],
    ["a number too many", "G64 P0.02 P0.03", withWord, ["read/repeated-word"]],
    ["a variable", "G64 P#1", withWord, ["read/variable"]],
    ["a dwell that wants the same word", "G4 G64 P0.02", withWord, ["read/modal-conflict"]],
    [
      "a cycle that wants the same word",
      "G0 X0 Y0 Z9\nG64 G82 X1 Z-1 R1 P0.5 F100",
      withWord,
      ["read/modal-conflict"],
    ],
  ])("is a finding with %s", (_title, blocks, reading, rules) => {
    expect(steps(blocks, reading).rules).toEqual(rules);
  });

  test.each(["G64 P#1", "G64 P0", "G64 P-0.02"])(
    "is not passed over where it is no tolerance: %s",
    (block) => {
      expect(steps(block).steps).toEqual([]);
    },
  );

  test("stands beside a code that has a word of its own", () => {
    const modes = { ...format.codes.modes };
    const blend = { ...code("G64"), word: { letter: "Q", digits: "1" } };
    const own = formatWith({
      toleranceWord: "P",
      codes: { ...format.codes, modes: { ...modes, path: { ...modes.path, blend } } },
    });
    expect(steps("G64 P0.02 Q1", own)).toEqual({
      steps: [{ kind: "path", value: "blend", tolerance: 200_000 }],
      rules: [],
    });
    expect(steps("G64 P0.02", own).rules).toEqual(["read/word-missing"]);
  });
});
