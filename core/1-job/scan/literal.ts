import { notFinite, notJson } from "../findings.ts";
import { beginsNumber, plus, point } from "./bytes.ts";
import type { Scanner } from "./scanner.ts";
import { ensure, expected, fail, offsetOf, peek } from "./scanner.ts";

/** The longest run of letters that is looked at, bytes. */
const longestToken = 1000;

const literals: ReadonlyMap<string, boolean | null> = new Map([
  ["true", true],
  ["false", false],
  ["null", null],
]);

/**
 * Reads true, false or null.
 *
 * @returns undefined if it is none of them, which is reported; NaN and Infinity are named as what they are
 */
export function scanLiteral(scanner: Scanner, what: string): boolean | null | undefined {
  peek(scanner);
  const from = offsetOf(scanner);
  const token = scanToken(scanner);
  const value = literals.get(token);
  if (value !== undefined) return value;
  if (/^-?(?:NaN|Infinity)$/.test(token)) scanner.report(notFinite(from, what));
  else if (token === "") expected(scanner, "A value");
  else fail(scanner, notJson(from, "A value", `\`${token.slice(0, 40)}\``));
  return undefined;
}

/** The letters, digits, signs and points from here on. */
export function scanToken(scanner: Scanner): string {
  ensure(scanner, longestToken);
  const from = scanner.at;
  const most = Math.min(scanner.end, from + longestToken);
  let at = from;
  while (at < most && isTokenByte(scanner.bytes[at])) at++;
  scanner.at = at;
  return String.fromCharCode(...scanner.bytes.subarray(from, at));
}

function isTokenByte(byte: number): boolean {
  const letter = byte | 32;
  return (letter >= 97 && letter <= 122) || beginsNumber(byte) || byte === plus || byte === point;
}
