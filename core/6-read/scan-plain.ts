import type { Block } from "./block.ts";
import { mostCodes } from "./block.ts";
import { letterG, letterM, letterN } from "./letters.ts";
import type { Tables } from "./tables.ts";

/** The most digits of a number: 999,999,999,999,999 is the last power of ten below 2^53. */
export const mostDigits = 15;

const minus = 45;
const plus = 43;
const lineFeed = 10;
const carriageReturn = 13;

/**
 * Scans a line that is written just as the dialect writes it: upper-case words in the dialect's order, its separator
 * between them, no comment. Whatever else there is, the line is left to the careful scanner, which says what it is. This
 * is the path of nearly all lines of a program, so one loop goes over the bytes and makes no object.
 *
 * @param bytes a line that is known to have its line end
 * @returns the index of the line end; -1 for a line that is not plain
 */
export function scanPlain(block: Block, bytes: Uint8Array, start: number, tables: Tables): number {
  const { ranks, widths, separator } = tables;
  block.tails = 0;
  let index = start;
  let mask = 0;
  let rank = 1;
  let gCount = 0;
  let mCount = 0;
  let byte = bytes[index];
  for (;;) {
    const letter = byte - 65;
    if (letter < 0 || letter > 25) return -1;
    const own = ranks[letter];
    if (own < rank) return -1;
    rank = own;
    const at = index - start;
    byte = bytes[++index];
    const negative = byte === minus;
    if (byte === plus && !tables.plus) return -1;
    if (negative || byte === plus) byte = bytes[++index];
    let value = 0;
    let from = index;
    let digit = byte - 48;
    while (digit >= 0 && digit <= 9) {
      value = value * 10 + digit;
      digit = bytes[++index] - 48;
    }
    let digits = index - from;
    if (digits < widths[letter] || (bytes[from] === 48 && isPadded(letter, digits, tables))) return -1;
    let point = 0;
    if (digit === -2) {
      if (digits === 0 && tables.leadingZeros) return -1;
      from = ++index;
      digit = bytes[index] - 48;
      while (digit >= 0 && digit <= 9) {
        value = value * 10 + digit;
        digit = bytes[++index] - 48;
      }
      point = index - from + 1;
      digits += point - 1;
      if (point > 1 && bytes[index - 1] === 48) block.tails |= 1 << letter;
    }
    if (digits === 0 || digits > mostDigits) return -1;
    if (letter === letterG || letter === letterM) {
      const count = letter === letterG ? gCount++ : mCount++;
      if (negative || point > 2 || digits > 4 || count === mostCodes) return -1;
      takeCode(block, letter, count, point === 2 ? value : value * 10, at);
    } else {
      const bit = 1 << letter;
      if (mask & bit) return -1;
      mask |= bit;
      takeNumber(block, letter, negative ? 0 - value : value, point, digits, at);
    }
    byte = digit + 48;
    if (byte === separator) byte = bytes[++index];
    else if (byte === lineFeed || byte === carriageReturn || byte === tables.blockEnd) break;
    else if (separator !== -1) return -1;
  }
  return closePlain(block, bytes, start, index, mask, gCount, mCount, tables);
}

/** Whether a number that begins with a zero has more digits than it needs, and than the dialect gives it. */
function isPadded(letter: number, digits: number, { widths, padded }: Tables): boolean {
  return digits > 1 && digits > widths[letter] && (widths[letter] > 0 || !padded);
}

/** Puts a number into the block. */
function takeNumber(
  block: Block,
  letter: number,
  value: number,
  point: number,
  digits: number,
  at: number,
): void {
  block.mantissa[letter] = value;
  block.point[letter] = point;
  block.digits[letter] = digits;
  block.at[letter] = at;
}

/** Puts a code into the block, in tenths. */
function takeCode(block: Block, letter: number, count: number, code: number, at: number): void {
  if (letter === letterG) {
    block.gCode[count] = code;
    block.gAt[count] = at;
  } else {
    block.mCode[count] = code;
    block.mAt[count] = at;
  }
}

/** How many words have these letters, the block number not counted. */
function wordsOf(mask: number): number {
  let count = 0;
  for (let rest = mask & ~(1 << letterN); rest !== 0; rest &= rest - 1) count++;
  return count;
}

/** The end of a plain line: the sign for the end of the block, the length, the block number. */
function closePlain(
  block: Block,
  bytes: Uint8Array,
  start: number,
  index: number,
  mask: number,
  gCount: number,
  mCount: number,
  tables: Tables,
): number {
  let end = index;
  if (tables.blockEnd !== -1 && bytes[end++] !== tables.blockEnd) return -1;
  const byte = bytes[end];
  if (byte !== lineFeed && byte !== carriageReturn) return -1;
  if (end - start > tables.longest || (mask & tables.required) !== tables.required) return -1;
  if (mask & tables.refused) return -1;
  if (tables.mostWords !== Infinity && wordsOf(mask) + gCount + mCount > tables.mostWords) return -1;
  if (mask & (1 << letterN) && (block.point[letterN] > 0 || block.mantissa[letterN] < 0)) return -1;
  block.mask = mask;
  block.gCount = gCount;
  block.mCount = mCount;
  block.unknown = block.used = block.reserved = 0;
  block.careful = block.unclear = false;
  block.message = undefined;
  return end;
}
