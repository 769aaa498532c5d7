import { largestLength } from "#base";
import { placeOf, wasComputed } from "./block.ts";
import * as findings from "./findings-meaning.ts";
import { checkNumberForm } from "./number-form.ts";
import type { Quantity } from "./quantities.ts";
import type { Reader } from "./reader.ts";
import { readComputed } from "./read-computed.ts";
import { isBlank, textBetween } from "./scan-bytes.ts";
import { isNumberByte } from "./scan-number.ts";
import { wholeWithin } from "./variables/parameter-name.ts";

/**
 * The number of a word in whole base units: its digits times a factor, so nothing is rounded. X12.5 in mm -> 125,000,000
 * atoms. What needs a closer look is left to `readClosely`.
 */
export function readNumber(reader: Reader, letter: number, quantity: Quantity): number {
  const { block } = reader;
  const factor = quantity.factors[block.point[letter]];
  const value = block.mantissa[letter] * factor;
  const looks = block.careful || quantity.looks || ((block.tails >> letter) & quantity.tails) !== 0;
  if (factor === 0 || looks || value > quantity.most || value < -quantity.most)
    return readClosely(reader, letter, quantity);
  return value;
}

/** A number that does not simply multiply: says what is wrong with it, and goes on with what it most likely means. */
function readClosely(reader: Reader, letter: number, quantity: Quantity): number {
  if (wasComputed(reader.block, letter)) return readComputed(reader, letter, quantity, wordText);
  const { block } = reader;
  const { format, unit, grid, key } = quantity;
  const mantissa = block.mantissa[letter];
  const decimals = Math.max(0, block.point[letter] - 1);
  const hasPoint = block.point[letter] > 0;
  const excess = 10 ** Math.max(0, decimals - format.decimals);
  const isFiner = mantissa % excess !== 0;
  if (!isFiner) checkNumberForm(reader, letter, wordText(reader, letter), quantity);
  if (format.point === "never" && !hasPoint)
    return inRange(reader, letter, impliedValue(reader, letter, quantity), quantity);
  const missing = format.point === "always" && !hasPoint && format.decimals > 0;
  // Zero is zero with and without a point.
  if ((missing && mantissa !== 0) || (format.point === "never" && hasPoint))
    reader.report(findings.decimalPoint(placeOf(block, letter), wordText(reader, letter), missing, key));
  if (decimals <= format.decimals)
    return inRange(reader, letter, mantissa * (unit / 10 ** decimals), quantity);
  if (isFiner) {
    const step = `${1 / 10 ** format.decimals} ${quantity.name}`;
    reader.report(findings.finerThanGrid(placeOf(block, letter), wordText(reader, letter), step, key));
  }
  return inRange(reader, letter, Math.round(mantissa / excess) * grid + 0, quantity);
}

/** An implied point: 4.3 with trailing zeros left out reads X00125 as 0012.500, with leading ones X12500 (from memory). */
function impliedValue(reader: Reader, letter: number, { format, grid }: Quantity): number {
  const { block } = reader;
  const mantissa = block.mantissa[letter];
  const digits = block.digits[letter];
  if (format.digits === 0 || format.suppressed === "leading") return mantissa * grid;
  const refused = format.suppressed === "none" ? digits !== format.digits : digits > format.digits;
  if (refused) {
    const reason = `has ${digits} digits, and this dialect writes ${format.suppressed === "none" ? "" : "at most "}${format.digits}`;
    reader.report(findings.badNumber(placeOf(block, letter), wordText(reader, letter), reason));
    return mantissa * grid;
  }
  return mantissa * 10 ** (format.digits - digits) * grid;
}

/** Refuses what would not stay exact, and what has more digits before the point than the address can hold. */
function inRange(reader: Reader, letter: number, value: number, { most, format, key }: Quantity): number {
  if (Math.abs(value) <= most) return value;
  const isExact = Math.abs(value) <= largestLength;
  const reason = isExact ? `has more than ${format.wholeDigits} digits before the point` : "is too large";
  const finding = findings.badNumber(placeOf(reader.block, letter), wordText(reader, letter), reason);
  reader.report(isExact ? { ...finding, key } : finding);
  return isExact ? value : 0;
}

/**
 * The whole number of a word (T, H, D, N, a count). A fraction or a number below `least` is a finding, and gives undefined.
 */
export function readWhole(reader: Reader, letter: number, least = 0): number | undefined {
  const { block } = reader;
  const scale = 10 ** Math.max(0, block.point[letter] - 1);
  const written = block.mantissa[letter] / scale;
  const whole = Math.round(written);
  const value =
    wasComputed(reader.block, letter) && Math.abs(whole - written) <= wholeWithin ? whole : written;
  if (Number.isInteger(value) && value >= least) return value;
  const reason = Number.isInteger(value) ? `is below ${least}` : "is no whole number";
  reader.report(findings.badNumber(placeOf(block, letter), wordText(reader, letter), reason));
  return undefined;
}

/** Number of a word as it stands, without a format: for the fixed values of extra codes. */
export function plainValue(reader: Reader, letter: number): number {
  const { block } = reader;
  return block.mantissa[letter] / 10 ** Math.max(0, block.point[letter] - 1);
}

/** A word as the program has it, for messages: X12.500 */
export function wordText(reader: Reader, letter: number): string {
  const { block, bytes, from } = reader;
  const at = block.at[letter];
  if (!wasComputed(reader.block, letter)) return textAt(reader, at);
  const text = textBetween(bytes, from + at, from + block.ends[letter]).trim();
  return `${text} (${String(block.mantissa[letter])})`;
}

/** The word that stands at `at`, bytes from the start of the line, without its blanks. */
export function textAt(reader: Reader, at: number): string {
  const { bytes, from } = reader;
  let text = "";
  for (let index = from + at; index < bytes.length; index++) {
    const byte = bytes[index];
    if (isBlank(byte)) continue;
    if (text !== "" && !isNumberByte(byte)) break;
    text += String.fromCharCode(byte);
  }
  return text;
}
