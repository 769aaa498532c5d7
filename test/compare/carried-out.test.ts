import { expect, test } from "vitest";
import { examples } from "../support/examples.ts";
import { comparing } from "./comparing.ts";

const { job } = examples.find(({ name }) => name === "rain-gauge-foot")!;

/** Groups of meaning in the comparison of a shipped dialect with a leaf of it. */
async function meaningUnder(keys: string): Promise<[string, string[]][]> {
  const texts = { "own.yaml": `dialect: own\nextends: rs274ngc\n${keys}\n` };
  const outcome = await comparing({ names: ["rs274ngc", "own.yaml"], job, texts });
  const groups = outcome!.pairs[0].groups.filter(({ level }) => level === "meaning");
  return groups.map(({ what, keys: own }) => [what, own.map(({ key }) => key)]);
}

test("rapids that are said alike, and that a machine does not make in a straight line, are a difference in meaning", async () => {
  expect(await meaningUnder("motion: { rapids: dog-leg }")).toEqual([
    ["path of rapids: the same words, and another path of the tool", ["motion.rapids"]],
  ]);
});

test("a retract that is said alike, and that takes the tool's tip to the place, is one", async () => {
  const found = await meaningUnder("machine: { retract: { acts-on: tool-tip } }");
  expect(found.flatMap(([, keys]) => keys)).toContain("machine.retract.acts-on");
});

test("a key that is said in words alone is none", async () => {
  expect(await meaningUnder("modal: { motion: each-block }")).toEqual([]);
});
