import { isBlank, isDigit, skipBlanks } from "./scan-bytes.ts";
import { mostDigits } from "./scan-plain.ts";

/** A number as it was scanned. */
export interface ScannedNumber {
  state: "number" | "missing" | "malformed" | "too-long";
  /** Digits without their point, with their sign. */
  mantissa: number;
  /** 0 without a point, otherwise 1 + digits behind it. */
  point: number;
  /** Digits written. */
  digits: number;
  /** Index behind the last digit or point. */
  end: number;
  /** Whether blanks stand inside. */
  blanks: boolean;
}

const plus = 43;
const minus = 45;
const dot = 46;

/**
 * Scans a number as NISTIR 6556 3.3.2.1 has it: a sign or none, digits, a point or none; blanks may stand anywhere (3.3).
 * "+0. 12 34" -> 0.1234. No exponent. `--5`, `1.2.3` and `5-` are malformed. At most 15 digits that count.
 */
export function scanNumber(bytes: Uint8Array, from: number, end: number): ScannedNumber {
  const number: ScannedNumber = {
    state: "number",
    mantissa: 0,
    point: 0,
    digits: 0,
    end: from,
    blanks: false,
  };
  let negative = false;
  let significant = 0;
  for (let index = from; index < end; index++) {
    const byte = bytes[index];
    if (isBlank(byte)) continue;
    if (!isNumberByte(byte)) break;
    if (index > number.end && number.end > from) number.blanks = true;
    number.end = index + 1;
    if (byte === plus || byte === minus) {
      if (index > from) number.state = "malformed";
      negative = byte === minus;
    } else if (byte === dot) {
      if (number.point > 0) number.state = "malformed";
      number.point = Math.max(number.point, 1);
    } else {
      number.digits++;
      if (number.point > 0) number.point++;
      if (significant > 0 || byte !== 48) significant++;
      if (significant <= mostDigits) number.mantissa = number.mantissa * 10 + (byte - 48);
    }
  }
  if (number.state === "malformed") return number;
  if (number.digits === 0) number.state = number.end > from ? "malformed" : "missing";
  else if (significant > mostDigits || number.point > mostDigits + 1) number.state = "too-long";
  if (negative) number.mantissa = 0 - number.mantissa;
  return number;
}

/** Whether a byte can be part of a number. */
export function isNumberByte(byte: number): boolean {
  return isDigit(byte) || byte === dot || byte === plus || byte === minus;
}

/** Index behind a value that only the controller can work out: `#12`, `#<name>`, `[...]`, `-[#1 + 2]`. */
export function skipValue(bytes: Uint8Array, from: number, end: number): number {
  let behind = from;
  let index = skipBlanks(bytes, from, end);
  while (index < end && isValueMark(bytes[index])) {
    const byte = bytes[index];
    if (byte === 91) behind = skipBracket(bytes, index, end);
    else if (byte === 60) behind = skipTo(bytes, index, end, 62);
    else behind = index + 1;
    index = skipBlanks(bytes, behind, end);
  }
  return behind;
}

/** Marks and digits of parameters and expressions: digits . + - # [ < = */
function isValueMark(byte: number): boolean {
  return isNumberByte(byte) || byte === 35 || byte === 91 || byte === 60 || byte === 61;
}

/** Index behind the bracket that closes the one at `from`; `end` if none does. */
function skipBracket(bytes: Uint8Array, from: number, end: number): number {
  let depth = 0;
  for (let index = from; index < end; index++) {
    if (bytes[index] === 91) depth++;
    if (bytes[index] === 93 && --depth === 0) return index + 1;
  }
  return end;
}

function skipTo(bytes: Uint8Array, from: number, end: number, mark: number): number {
  const found = bytes.subarray(0, end).indexOf(mark, from);
  return found < 0 ? end : found + 1;
}
