import { expect, test } from "vitest";
import { proveText } from "../../core/index.ts";
import { ready } from "../support/ready.ts";

const head = "%\nG17 G21 G90 G94 G40 G64 G92.2 G80 M48\nG54\nM5\nG4 P60\nM9\n";
const up = "G53 G0 Z0\nG49\nT1 M6\nG54\nS9000 M3\nG4 P60\n";
const end = "G53 G0 Z0\nM5\nG4 P60\nM9\nG49\nM2\n%\n";

/** Errors of the guard for an approach, under rapids of one axis and of several. */
async function rulesOf(rapidAxes: "one-at-a-time" | "together", blocks: string): Promise<string[]> {
  const text = `dialect: leaf\ntitle: A leaf\nextends: rs274ngc\nmotion: { rapid-axes: ${rapidAxes} }`;
  const dialect = await ready("leaf.dialect.yaml", { "leaf.dialect.yaml": text });
  const { findings } = proveText(head + up + blocks + end, dialect);
  return findings
    .filter(({ severity, rule }) => severity === "error" && rule.startsWith("motion/"))
    .map(({ rule }) => rule);
}

test.each([
  ["X, then Y, then Z", "G0 X1\nG0 Y1\nG0 G43 Z15 H1\n", [], ["motion/known"]],
  ["Y, then X, then Z", "G0 Y1\nG0 X1\nG0 G43 Z15 H1\n", [], ["motion/known"]],
  ["down before Y is there", "G0 X1\nG0 G43 Z15 H1\nG0 Y1\n", ["motion/approach"], ["motion/known"]],
  ["all at once", "G0 X1 Y1\nG0 G43 Z15 H1\n", [], []],
])("%s", async (_title, blocks, single, together) => {
  expect(await rulesOf("one-at-a-time", blocks)).toEqual(single);
  expect(await rulesOf("together", blocks)).toEqual(together);
});
