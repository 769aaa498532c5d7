import type { AxisCase } from "../axis-case.ts";

/** Group C: numbers. */
export const cases: readonly AxisCase[] = [
  {
    axis: 28,
    title: "a decimal point in each number, or in none",
    base: "rs274ngc",
    one: "numbers: { point: always, trailing-zeros: keep }",
    other: "numbers: { point: never, suppressed-zeros: leading }",
  },
];
