import { wrongType } from "../findings.ts";
import { closeBrace, closeBracket, comma, openBrace, openBracket } from "./bytes.ts";
import type { Scanner } from "./scanner.ts";
import { expected, offsetOf, peek } from "./scanner.ts";
import { skipValue } from "./skip.ts";

/*
 * Objects and lists, one member at a time:
 *
 *     for (let more = openObject(scanner, "The arc"); more; more = nextMember(scanner)) { key, then value }
 */

/** Steps into an object. @returns whether a member follows; false, too, if this is none, which is reported. */
export function openObject(scanner: Scanner, what: string): boolean {
  if (peek(scanner) !== openBrace) return otherType(scanner, what, "an object");
  scanner.at++;
  if (peek(scanner) !== closeBrace) return true;
  scanner.at++;
  return false;
}

/** Goes on behind a value in an object. @returns whether another member follows */
export function nextMember(scanner: Scanner): boolean {
  const byte = peek(scanner);
  if (byte === comma) {
    scanner.at++;
    return true;
  }
  if (byte === closeBrace) scanner.at++;
  else expected(scanner, "`,` or `}`");
  return false;
}

/** Steps into a list. @returns whether an element follows; false, too, if this is none, which is reported. */
export function openList(scanner: Scanner, what: string): boolean {
  if (peek(scanner) !== openBracket) return otherType(scanner, what, "a list");
  scanner.at++;
  if (peek(scanner) !== closeBracket) return true;
  scanner.at++;
  return false;
}

/** Goes on behind an element of a list. @returns whether another one follows */
export function nextElement(scanner: Scanner): boolean {
  const byte = peek(scanner);
  if (byte === comma) {
    scanner.at++;
    return true;
  }
  if (byte === closeBracket) scanner.at++;
  else expected(scanner, "`,` or `]`");
  return false;
}

/** Reports that the next value is of another type, and goes over it. Always false. */
export function otherType(scanner: Scanner, what: string, wanted: string): false {
  peek(scanner);
  const finding = wrongType(offsetOf(scanner), what, wanted);
  // A value that cannot be told apart from broken JSON is reported as that alone.
  if (skipValue(scanner, what)) scanner.report(finding);
  return false;
}
