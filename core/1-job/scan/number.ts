import {
  atomsPerInch,
  atomsPerMillimetre,
  inverseTimeUnit,
  largestLength,
  microsecondsPerSecond,
  milliPerRpm,
} from "#base";
import { notFinite, notJson, outOfRange, overLimit } from "../findings.ts";
import { beginsNumber, comma, minus, nine, plus, point, zero } from "./bytes.ts";
import type { Scanner } from "./scanner.ts";
import { fail, offsetOf, peek, refill } from "./scanner.ts";
import { otherType } from "./structure.ts";

/** From a decimal number to whole base units: value x factor x 10^power. */
export interface Scale {
  /** A whole number, not divisible by 10. */
  readonly factor: number;
  /** 0 or more. */
  readonly power: number;
  /** By number of fraction digits, up to `power`: what the digits taken as one whole number are multiplied by. */
  readonly multipliers: Float64Array;
  /** The largest size, base units. */
  readonly largest: number;
  /** The same in words. */
  readonly most: string;
}

/** Digits that an int32 holds whatever they are. */
export const shortDigits = 9;

/** The longest number, in characters. */
const longestNumber = 1000;

/** The largest of all quantities that are no lengths, base units: sums of a few stay exact in a Float64. */
const largestQuantity = 1e15;

function createScale(perUnit: number, largest: number, unit: string): Scale {
  let power = 0;
  while (perUnit % 10 ** (power + 1) === 0) power++;
  const factor = perUnit / 10 ** power;
  const multipliers = Float64Array.from(
    { length: power + 1 },
    (_, digits) => factor * 10 ** (power - digits),
  );
  return { factor, power, multipliers, largest, most: `${Math.floor(largest / perUnit)} ${unit}` };
}

/** Scales by quantity and unit. */
export const scales = {
  mm: createScale(atomsPerMillimetre, largestLength, "mm"),
  inch: createScale(atomsPerInch, largestLength, "inch"),
  cm: createScale(10 * atomsPerMillimetre, largestLength, "cm"),
  metre: createScale(1000 * atomsPerMillimetre, largestLength, "m"),
  foot: createScale(12 * atomsPerInch, largestLength, "feet"),
  revolution: createScale(1_000_000, largestQuantity, "revolutions"),
  degree: createScale(1_000_000, largestQuantity, "degrees"),
  second: createScale(microsecondsPerSecond, largestQuantity, "seconds"),
  minute: createScale(60 * microsecondsPerSecond, largestQuantity, "minutes"),
  rpm: createScale(milliPerRpm, largestQuantity, "rpm"),
  perMinute: createScale(inverseTimeUnit, largestQuantity, "a minute"),
} as const satisfies Record<string, Scale>;

/**
 * Reads the number that comes next into `target[slot]`, in base units, half away from zero. "12.345" on mm ->
 * 123,450,000. The digits are gathered as one int32 where they are few, which is nearly always; never as a fraction.
 *
 * @param above0 whether it must be above 0
 * @param key what the number is, for findings
 * @returns whether there was such a number; otherwise the finding is reported and the value gone over
 */
export function readNumber(
  scanner: Scanner,
  scale: Scale,
  target: Float64Array,
  slot: number,
  above0: boolean,
  key: string,
): boolean {
  const { bytes } = scanner;
  let at = scanner.at;
  let byte = bytes[at];
  if (byte <= 32) {
    byte = peek(scanner);
    at = scanner.at;
  }
  const from = at;
  if (byte === minus) byte = bytes[++at];
  const first = at;
  let digits = 0;
  // The digits 0 to 9 are the bytes 48 to 57, and 48 has no bit in common with 0 to 9.
  let digit = byte ^ zero;
  if (digit === 0) byte = bytes[++at];
  else {
    while (digit < 10) {
      digits = (digits * 10 + digit) | 0;
      digit = bytes[++at] ^ zero;
    }
    byte = digit ^ zero;
  }
  let count = at - first;
  let fraction = 0;
  if (byte === point && count > 0) {
    const pointAt = at;
    while ((digit = bytes[++at] ^ zero) < 10) digits = (digits * 10 + digit) | 0;
    byte = digit ^ zero;
    fraction = at - pointAt - 1;
    count += fraction === 0 ? shortDigits : fraction;
  }
  // An exponent, the end of the window, more digits, or no number at all: the long way looks at all of it. What goes on
  // like a number (a second point, a digit behind a first 0) lies between + and 9, where only the comma ends one.
  const goesOn = byte === 0 || (byte | 32) === 101 || (byte >= plus && byte <= nine && byte !== comma);
  if (count === 0 || count > shortDigits || fraction > scale.power || goesOn)
    return readLongNumber(scanner, scale, target, slot, above0, key);
  const size = digits * scale.multipliers[fraction];
  if (size > scale.largest || (above0 && (size === 0 || first !== from)))
    return refuse(scanner, scanner.start + from, at, scale, above0, key);
  scanner.at = at;
  // Taken from 0, no size gives a negative zero.
  target[slot] = first === from ? size : 0 - size;
  return true;
}

function refuse(
  scanner: Scanner,
  offset: number,
  at: number,
  scale: Scale,
  above0: boolean,
  key: string,
): false {
  scanner.at = at;
  scanner.report(
    outOfRange(offset, key, above0 ? `above 0 and at most ${scale.most}` : `within ${scale.most} of 0`),
  );
  return false;
}

/** The same for any number, by way of its text. */
function readLongNumber(
  scanner: Scanner,
  scale: Scale,
  target: Float64Array,
  slot: number,
  above0: boolean,
  key: string,
): boolean {
  const text = scanNumber(scanner, key);
  if (text === undefined) return false;
  const value = toBaseUnits(text, scale);
  if (value === undefined || (above0 && value <= 0))
    return refuse(scanner, scanner.tokenAt, scanner.at, scale, above0, key);
  target[slot] = value;
  return true;
}

/**
 * The text of the number that comes next, strictly RFC 8259 section 6; its offset is in `scanner.tokenAt`.
 *
 * @returns undefined if there is none, or none that is finite, which is reported
 */
export function scanNumber(scanner: Scanner, key: string): string | undefined {
  const byte = peek(scanner);
  if (!beginsNumber(byte)) {
    otherType(scanner, key, "a number");
    return undefined;
  }
  scanner.tokenAt = offsetOf(scanner);
  let length = 0;
  for (;;) {
    if (isNumberByte(scanner.bytes[scanner.at + length])) length++;
    else if (scanner.at + length < scanner.end || !refill(scanner, scanner.at)) break;
    if (length <= longestNumber) continue;
    fail(scanner, overLimit(scanner.tokenAt, "A number", `${longestNumber} characters`));
    return undefined;
  }
  const text = String.fromCharCode(...scanner.bytes.subarray(scanner.at, scanner.at + length));
  scanner.at += length;
  return checkNumber(scanner, text, key);
}

function isNumberByte(byte: number): boolean {
  return beginsNumber(byte) || byte === point || byte === plus || (byte | 32) === 101;
}

function checkNumber(scanner: Scanner, text: string, key: string): string | undefined {
  if (!/^-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][-+]?\d+)?$/.test(text)) {
    if (text === "-" && scanner.bytes[scanner.at] === 73) {
      scanner.at--;
      otherType(scanner, key, "a number");
    } else fail(scanner, notJson(scanner.tokenAt, "A number of JSON", `\`${text.slice(0, 40)}\``));
    return undefined;
  }
  if (Number.isFinite(Number(text))) return text;
  scanner.report(notFinite(scanner.tokenAt, key));
  return undefined;
}

/**
 * Base units of a number of JSON, exactly, rounded half away from zero.
 *
 * @returns undefined if it is too large
 */
export function toBaseUnits(text: string, scale: Scale): number | undefined {
  const [, sign, whole, fraction = "", exponent = "0"] =
    /^(-?)(\d+)(?:\.(\d+))?(?:[eE]([-+]?\d+))?$/.exec(text) ?? [];
  const digits = BigInt(whole + fraction) * BigInt(scale.factor);
  if (digits === 0n) return 0;
  const power = scale.power - fraction.length + Number(exponent);
  // Beyond these the size is out of range or nothing whatever the digits are, and the power would cost time.
  if (power > 30) return undefined;
  if (power < -2 * longestNumber) return 0;
  const size = power >= 0 ? digits * 10n ** BigInt(power) : divideRounding(digits, 10n ** BigInt(-power));
  if (size > BigInt(scale.largest)) return undefined;
  return sign === "-" ? 0 - Number(size) : Number(size);
}

function divideRounding(dividend: bigint, divisor: bigint): bigint {
  return (2n * dividend + divisor) / (2n * divisor);
}
