import { describe, expect, test } from "vitest";
import { formatWith, readBlocks } from "./support.ts";

/**
 * Modal groups with the words of each that this fixture's dialect has, and the words that must go with them.
 * NISTIR 6556 Table 4 (read), but for G74 and G73, G95, G90.1/G91.1 and M19, which later controllers have (from memory).
 */
const groups: readonly { readonly group: string; readonly words: readonly string[] }[] = [
  {
    group: "1 motion",
    words: [
      "G0",
      "G1",
      "G2",
      "G3",
      "G73",
      "G74",
      "G80",
      "G81",
      "G82",
      "G83",
      "G84",
      "G85",
      "G86",
      "G88",
      "G89",
    ],
  },
  { group: "2 plane", words: ["G17", "G18", "G19"] },
  { group: "3 distance", words: ["G90", "G91"] },
  { group: "arc centre", words: ["G90.1", "G91.1"] },
  { group: "5 feed mode", words: ["G93", "G94", "G95"] },
  { group: "6 units", words: ["G20", "G21"] },
  { group: "7 cutter radius compensation", words: ["G40", "G41", "G42"] },
  { group: "8 tool length offset", words: ["G43", "G49"] },
  { group: "10 cycle return", words: ["G98", "G99"] },
  { group: "12 work offset", words: ["G54", "G55", "G56", "G57", "G58", "G59", "G59.1", "G59.2", "G59.3"] },
  { group: "13 path", words: ["G61", "G61.1", "G64"] },
  { group: "0 non-modal", words: ["G4", "G28", "G53", "G92.2"] },
  { group: "M 4 stopping", words: ["M0", "M1", "M2"] },
  { group: "M 7 spindle", words: ["M3", "M4", "M5", "M19"] },
  { group: "M 8 coolant", words: ["M7", "M8", "M9"] },
  { group: "M 9 overrides", words: ["M48", "M49"] },
];

const pairs = groups.flatMap(({ group, words }) =>
  words.flatMap((a, index) => words.slice(index + 1).map((b): [string, string, string] => [group, a, b])),
);

describe("two words of one modal group in a block (NISTIR 6556 Table 4)", () => {
  test.each(pairs)("%s: %s %s", (_group, a, b) => {
    const { findings } = readBlocks(`${a} ${b}`);
    const conflict = findings.find(({ rule }) => rule === "read/modal-conflict");
    expect(conflict?.message).toContain(b);
    expect(conflict?.message).toContain(a);
  });

  test.each(groups.flatMap(({ words }) => words.map((word) => [word])))("%s twice", (word) => {
    expect(readBlocks(`${word} ${word}`).rules).toContain("read/modal-conflict");
  });
});

describe("words of different modal groups in a block", () => {
  const firsts = groups.map(({ words }) => words[0]);
  const mixed = firsts.flatMap((a, index) => firsts.slice(index + 1).map((b): [string, string] => [a, b]));

  test.each(mixed)("%s %s do not conflict", (a, b) => {
    expect(readBlocks(`${a} ${b}`).rules).not.toContain("read/modal-conflict");
  });
});

test("the first of two words that conflict counts", () => {
  expect(readBlocks("G54 G55").lines).toEqual(["work-offset number=1"]);
});

test("mist and flood may both be on, but not by one block (Table 4 and measured)", () => {
  expect(readBlocks("M7\nM8").rules).toEqual([]);
  expect(readBlocks("M7 M8").rules).toEqual(["read/modal-conflict"]);
});

test("more codes than a block can have", () => {
  const many = Array.from({ length: 30 }, (_, index) => `M${100 + index}`).join(" ");
  const { rules } = readBlocks(many, { format: formatWith({ mWords: 30 }) });
  expect(rules.filter((rule) => rule === "read/modal-conflict")).toHaveLength(6);
});
