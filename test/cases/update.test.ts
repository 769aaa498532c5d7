import { expect, test } from "vitest";
import { parse } from "yaml";
import { withNewBlocks } from "#cases";

const text = `# Head
cases:
  # about the first
  - name: one
    given: [rapid x10] # why
    expect: [ 'G0 X1', "G1 X2",  M5 ] # seen at the machine
  - name: two
    given:
      - rapid x10
    expect:
      - G0 X1 # the first block
      # between
      - "G1 X2"

  - given: [pause]
    expect: []
tail: kept
`;

function expectOf(changed: string, index: number): unknown {
  return (parse(changed) as { cases: { expect: unknown }[] }).cases[index].expect;
}

test("only what has changed is replaced; quotes, comments and layout stay", () => {
  const changed = withNewBlocks(text, [
    { index: 0, blocks: ["G0 X10", "G1 X2", "M9"] },
    { index: 1, blocks: ["G0 X10", "G1 X20"] },
  ]);
  expect(changed).toBe(
    text
      .replace("'G0 X1'", "'G0 X10'")
      .replace("M5", "M9")
      .replace("- G0 X1 #", "- G0 X10 #")
      .replace('- "G1 X2"', '- "G1 X20"'),
  );
});

test("lists grow and shrink in their own layout", () => {
  for (const blocks of [["A"], ["A", "B"], ["A", "B", "C"], ["A", "B", "C", "D: 1", "E, F"], []])
    for (const index of [0, 1, 2]) {
      const changed = withNewBlocks(text, [{ index, blocks }]);
      expect({ index, blocks: expectOf(changed, index) }).toEqual({ index, blocks });
      for (const other of [0, 1, 2].filter((one) => one !== index))
        expect(expectOf(changed, other)).toEqual(expectOf(text, other));
      for (const kept of ["# Head", "# about the first", "# why", "tail: kept"])
        expect(changed).toContain(kept);
    }
  expect(withNewBlocks(text, [{ index: 1, blocks: ["G0 X1", "G1 X2", "M5"] }])).toBe(
    text.replace('      - "G1 X2"\n', '      - "G1 X2"\n      - M5\n'),
  );
  expect(withNewBlocks(text, [{ index: 1, blocks: ["G0 X1"] }])).toContain(
    "      - G0 X1 # the first block\n\n  - given: [pause]",
  );
  expect(withNewBlocks(text, [{ index: 2, blocks: ["M0"] }])).toContain("expect: [M0]\ntail: kept");
});

test("a block that YAML would read otherwise is put in quotes", () => {
  for (const block of ["; REMARK", "%", "(MSG, A)", "- X", "10", "#5", "A: B", "'", '"', "N10 G00"]) {
    for (const index of [0, 1, 2])
      expect(expectOf(withNewBlocks(text, [{ index, blocks: [block] }]), index)).toEqual([block]);
  }
});
