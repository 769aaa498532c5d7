import { expect, test } from "vitest";
import { proveText } from "../../core/index.ts";
import { errorRules, ready } from "../support/ready.ts";
import { readUnder } from "./reading.ts";

/** A shift that is suspended until it is stated anew is the meaning of DIN 66025 for G53 (from memory). */
const lasts = "motion: { machine-move-lasts: until-work-offset }";
const head = "G17 G21 G90 G94 G54\n";

test.each([
  ["G53 G0 Z0\nG0 X1\nG54\nG0 X2", ["machine rapid z0", "machine rapid x1", "work-offset 1", "rapid x2"], []],
  ["G53\nG0 Z0\nM5\nG54 G0 X2", ["machine rapid z0", "spindle-stop", "work-offset 1", "rapid x2"], []],
  ["G53 G0 X0 Y0\nG2 X10 I5 F100", ["machine rapid x0 y0"], ["read/word-missing"]],
  ["G53 G0 X0 Y0\nG91 X10", ["machine rapid x0 y0", "distance incremental"], ["read/modal-conflict"]],
])("%s", async (text, steps, rules) => {
  const found = await readUnder("rs274ngc", lasts, head + text);
  expect(found.steps.slice(5)).toEqual(steps);
  expect(found.rules).toEqual(rules);
});

test("the guard objects where work coordinates are relied on while they are suspended", async () => {
  // Read as if the code held for its block alone; the machine's facts say otherwise.
  const text = `dialect: leaf\ntitle: A leaf\nextends: rs274ngc\n`;
  const block = await ready("leaf.dialect.yaml", { "leaf.dialect.yaml": text });
  const machine = { ...block.dialect.machine, machineMoveLasts: "until-work-offset" } as const;
  const suspending = { ...block, dialect: { ...block.dialect, machine } };
  const program = `%\n${head}M5\nG4 P60\nM9\nG53 G0 Z0\nG49\nG54\nG0 X1 Y1\nG53 G0 Z0\nG0 X2 Y2\nG53 G0 Z0\nM2\n%\n`;
  const own = errorRules(proveText(program, block).findings);
  expect(own).not.toContain("offset/active");
  expect(errorRules(proveText(program, suspending).findings)).toContain("offset/active");
});
