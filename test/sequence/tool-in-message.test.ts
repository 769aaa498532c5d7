import { describe, expect, test } from "vitest";
import { postText, proveText } from "../../core/index.ts";
import { errorRules, ready } from "../support/ready.ts";

// Swaps by hand on machines whose message names the tool, with the message in the block of the stop or in one before it.

const tool = (number: number, description: string): object => ({
  number,
  kind: "end-mill",
  diameter: 6,
  maxRpm: 24000,
  description,
});
const operation = (id: string, number: number): object => ({
  id,
  tool: number,
  spindle: { rpm: 9000, direction: "cw" },
  moves: [{ rapid: { x: 10, y: 10 } }, { line: { z: -1 }, feed: 200 }, { rapid: { z: 15 } }],
});
const jobWith = (description: string): string =>
  JSON.stringify({
    job: "1",
    name: "Plate",
    units: "mm",
    clearance: 15,
    tools: [tool(1, description), tool(2, "")],
    operations: [operation("one", 1), operation("two", 2)],
  });

const leaf = (comment: string, named: string): string =>
  [
    "dialect: leaf",
    "extends: hand-zeroed",
    `stops: { comment: ${comment} }`,
    `tools: { in-operator-swap: ${named}, blocks: apart, order: select-first }`,
    "machine: { swap: operator, retract: { change-position: [0, 0, 50] } }",
  ].join("\n");

describe.each(["with-stop", "own-block"])("the message of a stop %s", (comment) => {
  test.each(["no", "yes"])("names the tool, and so does a tool word: %s", async (named) => {
    const dialect = await ready("leaf.dialect.yaml", { "leaf.dialect.yaml": leaf(comment, named) });
    const job = jobWith("for a very long series of slots in the upper plate of the box");
    const { outcome, program = "" } = postText({ job }, dialect);
    expect([outcome.verdict, ...errorRules(outcome.findings)]).toEqual(["proved"]);
    const blocks = program.split("\n");
    expect(blocks.filter((block) => /^T\d/.test(block))).toEqual(named === "yes" ? ["T1", "T2"] : []);
    const stops = blocks.filter((block) => block.startsWith("M0"));
    const last = comment === "with-stop" ? "M0 ;OPERATOR LOAD TOOL 2 AND SET Z, end-mill 6 mm" : "M0";
    expect(stops.at(-2)).toBe(last);
    const wrong = proveText(program.replace("LOAD TOOL 2", "LOAD TOOL 1"), dialect, { job });
    expect([wrong.verdict, ...errorRules(wrong.findings)]).toEqual(["failed", "proof/differs"]);
  });
});
