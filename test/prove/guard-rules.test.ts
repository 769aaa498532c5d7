import { describe, expect, test } from "vitest";
import { describeRules } from "#prove";
import { limitsAndEnd } from "./broken-limits.ts";
import { offsetsAndMotion } from "./broken-motion.ts";
import { startAndSpindle } from "./broken-spindle.ts";
import { swaps } from "./broken-swaps.ts";
import { faults, guardItems } from "./run.ts";

const brokenSequences = [...startAndSpindle, ...swaps, ...offsetsAndMotion, ...limitsAndEnd];

describe("a sequence broken in one way breaks that rule alone", () => {
  for (const { rule, how, make, times = 1 } of brokenSequences) {
    test(`${rule}: ${how}`, () => {
      const sequence = make();
      const found = faults(guardItems(sequence)).filter(
        (finding) => finding.rule !== "swap/timed" || rule === "swap/timed",
      );
      const rules = found.map((finding) => finding.rule);
      expect(rules, JSON.stringify(found, null, 1)).toEqual(Array.from({ length: times }, () => rule));
      for (const finding of found) {
        expect(finding.fix).not.toBe("");
        expect(finding.message).toMatch(/^[A-Z].*\.$/s);
      }
      expect(guardItems(sequence, 1), "the same however the rows are batched").toEqual(
        guardItems(sequence, 4096),
      );
    });
  }
});

test("every rule of the guard has a case", () => {
  const rules = describeRules()
    .map(({ rule }) => rule)
    .filter((rule) => !rule.startsWith("proof/"));
  const covered = new Set(brokenSequences.map(({ rule }) => rule));
  expect(rules.filter((rule) => !covered.has(rule))).toEqual([]);
  expect([...covered].filter((rule) => !rules.includes(rule))).toEqual([]);
});

test("every rule says what must hold, and who says so", () => {
  for (const { holds, source } of describeRules()) {
    expect(holds).toMatch(/^[A-Z].*\.$/);
    expect(source).toMatch(/NISTIR 6556|common practice, no source|from memory|own definition/);
  }
});
