import type { FeedMode, UnitSystem } from "#base";
import type { Scale } from "../scan/number.ts";
import { scales } from "../scan/number.ts";
import { shortestDecimal } from "../scan/shortest-decimal.ts";

/** Scales in which the numbers of a job are written. */
export interface WritingScales {
  readonly length: Scale;
  readonly feed: Scale;
}

/** Scales of an operation. */
export function scalesOf(units: UnitSystem, mode: FeedMode = "per-minute"): WritingScales {
  return { length: scales[units], feed: mode === "inverse-time" ? scales.perMinute : scales[units] };
}

/** A number as a job has it: the shortest decimal that reads as the same base units. */
export function numberText(value: number, scale: Scale): string {
  return scale.factor === 1 ? pointed(value, scale.power) : shortestDecimal(value, scale);
}

/** Where a unit is a power of 10, the digits are those of the base units: 123,450,000 with 7 places -> "12.345". */
function pointed(value: number, places: number): string {
  const digits = String(Math.abs(value)).padStart(places + 1, "0");
  let end = digits.length;
  const point = digits.length - places;
  while (end > point && digits[end - 1] === "0") end--;
  const whole = digits.slice(0, point);
  const text = end === point ? whole : `${whole}.${digits.slice(point, end)}`;
  return value < 0 ? `-${text}` : text;
}

/** A member, or nothing where there is no value. */
export function member(key: string, text: string | undefined): string[] {
  return text === undefined ? [] : [`"${key}": ${text}`];
}

/** An object on one line. */
export function object(members: readonly string[]): string {
  return `{ ${members.join(", ")} }`;
}

/** A text between quotes; undefined where it is empty or absent. */
export function quoted(text: string | undefined): string | undefined {
  return text === undefined || text === "" ? undefined : JSON.stringify(text);
}
