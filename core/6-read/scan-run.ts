import type { Format } from "#dialect";
import { letterF, letterG, letterN, letterX, letterY, letterZ } from "./letters.ts";
import { motion } from "./meanings.ts";
import type { Quantity } from "./quantities.ts";
import type { Tables } from "./tables.ts";

export const bitX = 1 << letterX;
export const bitY = 1 << letterY;
export const bitZ = 1 << letterZ;
export const bitF = 1 << letterF;
const bitG = 1 << letterG;
const bitN = 1 << letterN;
const bitsXyz = bitX | bitY | bitZ;
const runLetters = bitsXyz | bitF | bitG | bitN;

/** Digits that an int32 holds whatever they are. */
const shortDigits = 9;

const minus = 45;
const point = 46;
const zero = 48;
const lineFeed = 10;
const carriageReturn = 13;

/** Runs of lines as a dialect has them, and the line at hand. */
export interface Runs {
  /** Whether this dialect has any. */
  readonly possible: boolean;
  /** Letters that each line must have. */
  readonly required: number;
  /** Whether lines end with a carriage return and a line feed. */
  readonly pairs: boolean;
  /** What the numbers of axes and feed count in; a feed that has none is left to the careful way. */
  length: Quantity | undefined;
  feed: Quantity | undefined;
  /** Letters of the line at hand, and its numbers in base units by letter. */
  mask: number;
  readonly numbers: Float64Array;
}

/** Looks up what a dialect asks of each line. @param off whether there are to be no runs */
export function createRuns(format: Format, tables: Tables, off: boolean): Runs {
  const { lineEnd, motion: moves, modal } = format;
  const needsMotion = modal.motion === "each-block" ? bitG : 0;
  const needsFeed = modal.feed === "each-block" ? bitF : 0;
  // Where axes must not move all at once, or a line may be a rapid by its feed, each line needs a closer look.
  const isFree = tables.mostAxes >= 6 && moves.rapidFeed === null && tables.blockEnd === -1;
  return {
    possible: !off && isFree && (lineEnd === "\n" || lineEnd === "\r\n"),
    required: tables.required | needsMotion | needsFeed | (modal.axes === "all" ? bitsXyz : 0),
    pairs: lineEnd === "\r\n",
    length: undefined,
    feed: undefined,
    mask: 0,
    numbers: new Float64Array(26),
  };
}

/**
 * Scans a line that has the words of a run alone, in the form in which the dialect writes them. As strict as `scanPlain`
 * with `readNumber` behind it, and stricter: longer numbers are left to those.
 *
 * @param to index behind the last byte that may be read
 * @returns the index behind the line end; -1 for any other line
 */
export function scanLine(runs: Runs, tables: Tables, bytes: Uint8Array, start: number, to: number): number {
  const { ranks, widths, separator } = tables;
  let index = start;
  let mask = 0;
  let words = 0;
  let rank = 1;
  let byte = bytes[index];
  for (;;) {
    const letter = byte - 65;
    const bit = letter >= 0 && letter < 26 ? 1 << letter : 0;
    if ((bit & runLetters & ~mask) === 0 || ranks[letter] < rank) return -1;
    rank = ranks[letter];
    mask |= bit;
    words++;
    byte = bytes[++index];
    const negative = byte === minus;
    if (negative) byte = bytes[++index];
    const from = index;
    let value = 0;
    let digit = byte - zero;
    while (digit >= 0 && digit <= 9) {
      value = (value * 10 + digit) | 0;
      digit = bytes[++index] - zero;
    }
    let digits = index - from;
    // A zero before other digits is as the dialect writes it only where it fills up the width.
    const whole = digits;
    const width = widths[letter];
    const zeroFirst = bytes[from] === zero;
    if (whole < width || (zeroFirst && whole > 1 && whole !== width)) return -1;
    let decimals = -1;
    if (digit === point - zero) {
      const pointAt = index;
      digit = bytes[++index] - zero;
      while (digit >= 0 && digit <= 9) {
        value = (value * 10 + digit) | 0;
        digit = bytes[++index] - zero;
      }
      decimals = index - pointAt - 1;
      digits += decimals;
    }
    if (digits === 0 || digits > shortDigits) return -1;
    if ((bit & (bitG | bitN)) !== 0) {
      if (negative || decimals >= 0 || whole === 0) return -1;
      if (letter === letterG && (digits > 3 || tables.motionOf[value * 10] !== motion.line)) return -1;
    } else {
      const isTail = decimals > 0 && bytes[index - 1] === zero;
      if (!isAsWritten(runs, letter, whole === 0, zeroFirst, isTail)) return -1;
      if (!takeNumber(runs, letter, negative ? 0 - value : value, decimals + 1)) return -1;
    }
    byte = digit + zero;
    if (byte === separator) byte = bytes[++index];
    else if (byte === lineFeed || byte === carriageReturn) break;
    else if (separator !== -1) return -1;
  }
  runs.mask = mask;
  if (!isAsAsked(runs, tables, words) || index - start > tables.longest) return -1;
  if (!runs.pairs) return byte === lineFeed ? index + 1 : -1;
  return byte === carriageReturn && index + 1 < to && bytes[index + 1] === lineFeed ? index + 2 : -1;
}

/** Whether the line at hand has the words that each must have, none that sends it the careful way, and not too many. */
function isAsAsked({ mask, required }: Runs, { refused, mostWords }: Tables, words: number): boolean {
  const counted = (mask & bitN) === 0 ? words : words - 1;
  return (mask & refused) === 0 && (mask & required) === required && counted <= mostWords;
}

/** Whether zeros before and behind the point are as the dialect writes them. */
function isAsWritten(
  runs: Runs,
  letter: number,
  bare: boolean,
  zeroFirst: boolean,
  isTail: boolean,
): boolean {
  const quantity = letter === letterF ? runs.feed : runs.length;
  if (quantity === undefined || (isTail && quantity.tails !== 0)) return false;
  return !(quantity.format.leadingZero ? bare : zeroFirst);
}

/** Takes a number in base units, if it simply multiplies: as many decimals as the dialect writes, and within its range. */
function takeNumber(runs: Runs, letter: number, value: number, point: number): boolean {
  const quantity = letter === letterF ? runs.feed : runs.length;
  const factor = quantity?.factors[point] ?? 0;
  const size = value * factor;
  const most = quantity?.most ?? 0;
  if (factor === 0 || size > most || size < -most) return false;
  runs.numbers[letter] = size;
  return letter !== letterF || size > 0;
}
