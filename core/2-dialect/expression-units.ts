import type { Expression, ExpressionName } from "#base";
import { atomsPerUnit, microsecondsPerSecond, milliPerRpm } from "#base";

/** Powers of time, length and revolutions: a speed is revolutions by time. */
export interface Dimension {
  readonly time: number;
  readonly length: number;
  readonly turns: number;
}

/** An expression with what it measures. */
export interface Measured {
  readonly expression: Expression;
  readonly dimension: Dimension;
}

/** A bare number. */
export const bare: Dimension = { time: 0, length: 0, turns: 0 };

const time: Dimension = { time: 1, length: 0, turns: 0 };
const length: Dimension = { time: 0, length: 1, turns: 0 };
const turns: Dimension = { time: 0, length: 0, turns: 1 };
const speed: Dimension = { time: -1, length: 0, turns: 1 };

/** What each name measures. */
export const names = {
  rpm: speed,
  from_rpm: speed,
  min_rpm: speed,
  max_rpm: speed,
  spin_up: time,
  spin_down: time,
  coast_down: time,
} as const satisfies Record<ExpressionName, Dimension>;

const minute = 60 * microsecondsPerSecond;

/** The constants in base units. A revolution is such that revolutions by minutes are a speed in milli-rpm. */
export const constants: ReadonlyMap<string, { readonly value: number; readonly dimension: Dimension }> =
  new Map([
    ["second", { value: microsecondsPerSecond, dimension: time }],
    ["minute", { value: minute, dimension: time }],
    ["mm", { value: atomsPerUnit.mm, dimension: length }],
    ["inch", { value: atomsPerUnit.inch, dimension: length }],
    ["rev", { value: milliPerRpm * minute, dimension: turns }],
  ]);

/** Whether two dimensions are one. */
export function sameDimension(a: Dimension, b: Dimension): boolean {
  return a.time === b.time && a.length === b.length && a.turns === b.turns;
}

/** The dimension of a product (`sign` 1) or a quotient (`sign` -1). */
export function combine(a: Dimension, b: Dimension, sign: 1 | -1): Dimension {
  return {
    time: a.time + sign * b.time,
    length: a.length + sign * b.length,
    turns: a.turns + sign * b.turns,
  };
}

/** What a dimension is called: "a time", "a speed", "a bare number". */
export function dimensionName(dimension: Dimension): string {
  const known = [
    [bare, "a bare number"],
    [time, "a time"],
    [length, "a length"],
    [turns, "a number of revolutions"],
    [speed, "a speed"],
  ] as const;
  return known.find(([one]) => sameDimension(one, dimension))?.[1] ?? "none of time, length and speed";
}

/** Whether it measures a time. */
export function isTime({ dimension }: Measured): boolean {
  return sameDimension(dimension, time);
}
