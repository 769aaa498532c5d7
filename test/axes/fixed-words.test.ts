import { describe, expect, test } from "vitest";
import { resolveText } from "../dialect/findings.ts";
import { readUnder } from "./reading.ts";

/** Codes with a word of a fixed number beside them, such as G54.1 P2 (common practice, no source). */
const numbered = "work-offset: [G54.1 P1, G54.1 P2]";

describe("a code with a fixed word is read with it", () => {
  test.each([
    ["G54.1 P2", ["work-offset 2"], []],
    ["G54.1 P02", ["work-offset 2"], []],
    ["G54.1", [], ["read/word-missing"]],
    ["G54.1 P3", [], ["read/word-missing"]],
    ["G54.1 P1 G4", ["dwell 1s", "work-offset 1"], ["read/modal-conflict"]],
  ])("%s", async (text, steps, rules) => {
    const found = await readUnder("rs274ngc", numbered, text);
    expect(found.steps).toEqual(steps);
    expect(found.rules).toEqual(expect.arrayContaining(rules));
    if (rules.length === 0) expect(found.rules).toEqual([]);
  });
});

describe("a dialect with fixed words makes sense", () => {
  test.each([
    ["work-offset: [G54.1 P1, G54.1 P1]", "dialect/code-twice work-offset.2 @ own.yaml:4"],
    ["work-offset: [G54.1 P1, G54.1 P01]", "dialect/code-twice work-offset.2 @ own.yaml:4"],
    ["work-offset: [G54.1 P1, G54.1]", "dialect/code-twice work-offset.2 @ own.yaml:4"],
    ["work-offset: [G54.1 P1, G54.1 Q1]", "dialect/code-twice work-offset.2 @ own.yaml:4"],
    ["machine-move: G153 E1", "dialect/order blocks.order @ iso-6983.dialect.yaml:?"],
    ["work-offset: [G54.1 X1]", "dialect/schema work-offset.1 @ own.yaml:4"],
    ["units: { mm: G21 P1 }", "dialect/schema units.mm @ own.yaml:4"],
  ])("%s", async (text, line) => {
    const { lines } = await resolveText(`dialect: own\ntitle: Own\nextends: rs274ngc\n${text}`);
    const rules = lines.map((one) => one.split(" @ ")[0]);
    expect(rules).toContain(line.split(" @ ")[0]);
  });
});
