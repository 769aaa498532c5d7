import { repeatedKey, unknownKey, wrongType, wrongWord } from "../findings.ts";
import { quote } from "../scan/bytes.ts";
import { scanLiteral } from "../scan/literal.ts";
import type { Scanner } from "../scan/scanner.ts";
import { offsetOf, peek } from "../scan/scanner.ts";
import { skipValue } from "../scan/skip.ts";
import { otherType } from "../scan/structure.ts";
import { noName, scanName, scanText } from "../scan/text.ts";
import type { Words } from "../scan/words.ts";
import { nearest } from "#base";

/** Index of the word that comes next among those allowed; -1 if it is none of them, which is reported. */
export function readWord(scanner: Scanner, words: Words, key: string): number {
  if (peek(scanner) !== quote) {
    otherType(scanner, key, "a text");
    return -1;
  }
  const index = scanName(scanner, words);
  if (index < 0 && index !== noName)
    scanner.report(wrongWord(scanner.tokenAt, key, words.names, nearest(scanner.text, words.names)));
  return index < 0 ? -1 : index;
}

/** The text that comes next; undefined if it is none, which is reported. */
export function readText(scanner: Scanner, key: string): string | undefined {
  if (peek(scanner) === quote) return scanText(scanner);
  otherType(scanner, key, "a text");
  return undefined;
}

/** True or false; undefined if it is neither, which is reported. */
export function readBoolean(scanner: Scanner, key: string): boolean | undefined {
  const byte = peek(scanner);
  if (byte !== 116 && byte !== 102) {
    otherType(scanner, key, "true or false");
    return undefined;
  }
  const value = scanLiteral(scanner, key);
  return value ?? undefined;
}

/** Reports a key that the format does not have, and goes over its value. */
export function refuseKey(scanner: Scanner, owner: string, words: Words): void {
  scanner.report(unknownKey(scanner.tokenAt, scanner.text, owner, nearest(scanner.text, words.names)));
  skipValue(scanner, `\`${scanner.text}\``);
}

/** Reports a key that stands twice, and goes over its value. */
export function refuseRepeated(scanner: Scanner, key: string): void {
  scanner.report(repeatedKey(scanner.tokenAt, key));
  skipValue(scanner, `\`${key}\``);
}

/** A whole number; undefined if it is none, which is reported. 2.0 is whole, as in the schema. */
export function wholeNumber(scanner: Scanner, digits: string, key: string): number | undefined {
  const value = Number(digits);
  if (Number.isInteger(value)) return value;
  scanner.report(wrongType(scanner.tokenAt, key, "a whole number"));
  return undefined;
}

/** Offset of the value that comes next. */
export function valueOffset(scanner: Scanner): number {
  peek(scanner);
  return offsetOf(scanner);
}
