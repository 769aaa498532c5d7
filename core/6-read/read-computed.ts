import { largestLength } from "#base";
import { placeOf } from "./block.ts";
import * as findings from "./findings-meaning.ts";
import type { Quantity } from "./quantities.ts";
import type { Reader } from "./reader.ts";
import { firstTime } from "./reader.ts";
import { rounded } from "./variables/findings-variables.ts";

/**
 * A number that was worked out, in whole base units: rounded to 0.1 nm, which takes what doubles lack, and then to the
 * grid of its address, half away from zero. That something was rounded is told once.
 *
 * @param wordText the word as messages have it
 */
export function readComputed(
  reader: Reader,
  letter: number,
  quantity: Quantity,
  wordText: (reader: Reader, letter: number) => string,
): number {
  const { block } = reader;
  const { format, most, key } = quantity;
  if (format.point === "never")
    reader.report(findings.decimalPoint(placeOf(block, letter), wordText(reader, letter), false, key));
  const exact = exactValue(reader, letter, quantity);
  if (!(Math.abs(exact) <= Math.min(most, largestLength))) {
    reader.report(findings.badNumber(placeOf(block, letter), wordText(reader, letter), "is too large"));
    return 0;
  }
  const value = onGrid(exact, quantity);
  if (value !== exact && firstTime(reader, "rounded")) {
    const step = `${String(1 / 10 ** format.decimals)} ${quantity.name}`;
    reader.report(rounded(placeOf(block, letter), wordText(reader, letter), step));
  }
  return value;
}

/** What was worked out, rounded to whole base units alone. */
export function exactValue({ block }: Reader, letter: number, { unit }: Quantity): number {
  return halfAway(block.mantissa[letter] * unit);
}

/** The nearest place of a grid that is no finer than base units. */
export function onGrid(value: number, { grid }: Quantity): number {
  const step = Math.max(1, grid);
  return halfAway(value / step) * step;
}

function halfAway(value: number): number {
  return Math.sign(value) * Math.round(Math.abs(value)) + 0;
}
