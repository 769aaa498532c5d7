import type { Scale } from "../scan/number.ts";
import { comma, minus, plus, point, zero } from "../scan/bytes.ts";
import type { Scanner } from "../scan/scanner.ts";

/** Digits whose number a Float64 holds whatever they are. */
const exactDigits = 15;

const slash = 47;
/** G O T O in small letters. */
const [letterG, letterO, letterT] = [103, 111, 116];

/**
 * The hot path: takes a line that is GOTO/x,y,z, or that with the tool axis 0,0,1, with numbers of few digits, into `numbers`. It takes
 * nothing that the careful reader would refuse or read otherwise; whatever else comes is left to it.
 *
 * A 0 stands behind the window, and no such line has one, so nothing is read past the window's end.
 *
 * @param most columns that a line may have
 * @returns the offset of the line; -1 where it is another one, and then nothing is taken
 */
export function takePlainPoint(scanner: Scanner, scale: Scale, numbers: Float64Array, most: number): number {
  const { bytes } = scanner;
  const from = scanner.at;
  if (
    (bytes[from] | 32) !== letterG ||
    (bytes[from + 1] | 32) !== letterO ||
    (bytes[from + 2] | 32) !== letterT ||
    (bytes[from + 3] | 32) !== letterO
  )
    return -1;
  let at = from + 4;
  while (bytes[at] === 32) at++;
  if (bytes[at++] !== slash) return -1;
  for (let axis = 0; axis < 3; axis++) {
    if (axis > 0 && bytes[at++] !== comma) return -1;
    at = takeNumber(bytes, at, scale, numbers, axis);
    if (at < 0) return -1;
  }
  if (bytes[at] === comma) at = takeAxis(bytes, at);
  if (at < 0) return -1;
  if (bytes[at] === 13) at++;
  if (bytes[at] !== 10 || at - from > most) return -1;
  scanner.at = at + 1;
  return scanner.start + from;
}

/** A number with blanks around it. @returns the index behind it; -1 where it needs a closer look */
function takeNumber(
  bytes: Uint8Array,
  from: number,
  scale: Scale,
  numbers: Float64Array,
  slot: number,
): number {
  let at = from;
  while (bytes[at] === 32) at++;
  const negative = bytes[at] === minus;
  if (negative || bytes[at] === plus) at++;
  const begin = at;
  let digits = 0;
  // The digits 0 to 9 are the bytes 48 to 57, and 48 has no bit in common with 0 to 9.
  let digit = bytes[at] ^ zero;
  while (digit < 10) {
    digits = digits * 10 + digit;
    digit = bytes[++at] ^ zero;
  }
  let count = at - begin;
  let fraction = 0;
  if (bytes[at] === point) {
    const pointAt = at;
    while ((digit = bytes[++at] ^ zero) < 10) digits = digits * 10 + digit;
    fraction = at - pointAt - 1;
    count += fraction;
  }
  if (count === 0 || count > exactDigits || fraction > scale.power) return -1;
  const size = digits * scale.multipliers[fraction];
  if (size > scale.largest) return -1;
  // Taken from 0, no size gives a negative zero.
  numbers[slot] = negative ? 0 - size : size;
  while (bytes[at] === 32) at++;
  return at;
}

/** The tool axis +Z: ,0,0,1 with any number of zeros. @returns the index behind it; -1 where it needs a closer look */
function takeAxis(bytes: Uint8Array, from: number): number {
  let at = from;
  for (let part = 0; part < 3; part++) {
    if (bytes[at++] !== comma) return -1;
    at = takeWhole(bytes, at, part === 2);
    if (at < 0) return -1;
  }
  return at;
}

/** 0 or 1, with zeros behind the point, and blanks around it. */
function takeWhole(bytes: Uint8Array, from: number, isOne: boolean): number {
  let at = from;
  while (bytes[at] === 32) at++;
  if (isOne ? bytes[at] !== zero + 1 : bytes[at] !== zero) return -1;
  at++;
  // Zeros count for nothing behind the point alone: 10 is another number than 1.0.
  if (bytes[at] === point) {
    at++;
    while (bytes[at] === zero) at++;
  }
  while (bytes[at] === 32) at++;
  return at;
}
