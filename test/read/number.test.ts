import { describe, expect, test } from "vitest";
import type { NumberFormat } from "#dialect";
import { format, numberFormats } from "./formats.ts";
import { formatWith, readBlocks } from "./support.ts";

/** The place of X that a word gives, in atoms, and the rules of the findings about what it means. */
function x(word: string, style: Partial<NumberFormat> = {}): { x: number | undefined; rules: string[] } {
  const reading = {
    format: formatWith({ numbers: { ...numberFormats(style), speed: format.numbers.speed } }),
  };
  const { rows, rules } = readBlocks(`G0 ${word}`, reading);
  return {
    x: rows.find(({ step }) => !step)?.place[0],
    rules: rules.filter((rule) => rule !== "block/separator" && rule !== "block/number-form"),
  };
}

describe("number syntax (NISTIR 6556 3.3.2.1)", () => {
  test.each([
    ["X1", 1],
    ["X1.", 1],
    ["X1.5", 1.5],
    ["X01.50", 1.5],
    ["X.5", 0.5],
    ["X+.5", 0.5],
    ["X-.5", -0.5],
    ["X-0", 0],
    ["X-0.000", 0],
    ["X0.001", 0.001],
    ["X1.000000", 1],
    ["X000000000000001", 1],
    ["X +0. 12 3", 0.123],
    ["X 1 2 . 5", 12.5],
    ["x1.5", 1.5],
    ["X999999.999", 999999.999],
  ])("%s is %d mm", (word, value) => {
    expect(x(word)).toEqual({ x: Math.round(value * 1e7), rules: [] });
  });

  test("negative zero is zero", () => {
    expect(Object.is(x("X-0").x, 0)).toBe(true);
    expect(Object.is(x("X-0.00001").x, 0)).toBe(true);
  });

  test.each(["X", "X.", "X+", "X-", "X--5", "X+-5", "X1.2.3", "X5-", "X5-3", "X1+"])(
    "%s is no number",
    (word) => {
      expect(x(word)).toEqual({ x: undefined, rules: ["read/number"] });
    },
  );

  test("an exponent is a word E", () => {
    expect(x("X1E2").rules).toEqual(["read/unknown-word"]);
  });

  test.each(["X1234567890123456", "X0.0000000000000001", "X1.000000000000000000"])(
    "%s has too many digits",
    (word) => {
      expect(x(word).rules).toEqual(["read/number"]);
    },
  );

  test("beyond 1 km is refused", () => {
    expect(x("X1000000").rules).toEqual([]);
    expect(x("X1000000.001").rules).toEqual(["read/number"]);
  });
});

describe("the grid", () => {
  test("finer is a finding, zeros beyond it are not", () => {
    expect(x("X1.0005").rules).toEqual(["read/finer-than-grid"]);
    expect(x("X1.0050000")).toEqual({ x: 10_050_000, rules: [] });
  });

  test("values are exact: 0.1 mm steps add up to what the digits say", () => {
    expect(x("X123456.789").x).toBe(1_234_567_890_000);
  });
});

describe("decimal points", () => {
  test("always: a missing one may be off by a thousand", () => {
    expect(x("X10", { point: "always" }).rules).toEqual(["read/decimal"]);
    expect(x("X10.", { point: "always" })).toEqual({ x: 1e8, rules: [] });
    expect(x("X0", { point: "always" })).toEqual({ x: 0, rules: [] });
  });

  test("implied, leading zeros left out: right-aligned (from memory)", () => {
    expect(x("X12500", { point: "never" })).toEqual({ x: 125_000_000, rules: [] });
    expect(x("X-50", { point: "never" })).toEqual({ x: -500_000, rules: [] });
  });

  test("implied, trailing zeros left out: left-aligned, 4.3 reads X00125 as 12.5 (from memory)", () => {
    const style: Partial<NumberFormat> = { point: "never", suppressed: "trailing", digits: 7 };
    expect(x("X00125", style)).toEqual({ x: 125_000_000, rules: [] });
    expect(x("X-0001", style)).toEqual({ x: -1e7, rules: [] });
    expect(x("X00012500", style).rules).toEqual(["read/number"]);
  });

  test("implied, no zeros left out: all digits stand (from memory)", () => {
    const style: Partial<NumberFormat> = { point: "never", suppressed: "none", digits: 7 };
    expect(x("X0012500", style)).toEqual({ x: 125_000_000, rules: [] });
    expect(x("X12500", style).rules).toEqual(["read/number"]);
  });

  test("a point where it is implied", () => {
    for (const suppressed of ["leading", "trailing", "none"] as const)
      expect(x("X12.5", { point: "never", suppressed, digits: 7 }).rules).toEqual(["read/decimal"]);
  });
});

describe("numbers of other words", () => {
  test.each([
    ["T1.5", "read/number"],
    ["T-1", "read/number"],
    ["T2.0", undefined],
    ["S-100", "read/number"],
    ["S0", undefined],
    ["S100.5", "read/finer-than-grid"],
    ["F0", "read/number"],
    ["F-10", "read/number"],
    ["F10.05", "read/finer-than-grid"],
    ["G43 H1.5", "read/number"],
    ["G41 D0.5", "read/number"],
    ["G4 P-1", "read/number"],
    ["G4 P0", undefined],
    ["G4 P0.125", "read/finer-than-grid"],
    ["G-1 X1", "read/unknown-code"],
    ["G59.15", "read/unknown-code"],
    ["S10 M3.0", undefined],
    ["G1000", "read/unknown-code"],
    ["N1.5 G0", "read/number"],
    ["N-5 G0", "read/number"],
    ["M94 P4 R2 Q1", "read/number"],
    ["M94 P4 R1 Q-1", "read/number"],
    ["M94 P4.5 R1 Q1", "read/number"],
  ])("%s: %s", (block, rule) => {
    expect(readBlocks(block).rules).toEqual(rule === undefined ? [] : [rule]);
  });

  test("codes may have leading zeros and a point (NISTIR 6556 3.3: compared in tenths)", () => {
    expect(readBlocks("G054\nG59.1\nG0 G61.10 X1").lines).toEqual([
      "work-offset number=1",
      "work-offset number=7",
      "path value=stop",
      "rapid x1",
    ]);
  });

  test("speed, dwell, timeout and input in their base units", () => {
    expect(readBlocks("S12000\nG4 P1.25\nM94 P4 R0 Q2.5").lines).toEqual([
      "spindle-speed rpm=12000000",
      "dwell time=1250000",
      "wait input=4 level=off timeout=2500000",
    ]);
  });
});
