import { overLimit } from "../findings.ts";
import { beginsNumber, colon, openBrace, openBracket, quote } from "./bytes.ts";
import { readNumber, scales } from "./number.ts";
import type { Scanner } from "./scanner.ts";
import { deepest, expected, fail, offsetOf, peek } from "./scanner.ts";
import { skipValue } from "./skip.ts";
import { nextElement, nextMember, openList, openObject } from "./structure.ts";
import { scanText } from "./text.ts";

/** Where numbers go that nobody wants. */
const nowhere = new Float64Array(1);

/**
 * Goes over a value strictly, down to its last number, up to the first fault of form. It is slow; it finds where a
 * bracket is missing after the fast way has found that one is.
 *
 * @param depth how many lists and objects the value stands in
 */
export function walkValue(scanner: Scanner, depth: number): void {
  const byte = peek(scanner);
  // Numbers are most of a job, and reading them is faster than going over them; what they are does not matter.
  if (beginsNumber(byte)) readNumber(scanner, scales.mm, nowhere, 0, false, "");
  else if (byte !== openBrace && byte !== openBracket) skipValue(scanner, "A value");
  else if (depth >= deepest)
    fail(scanner, overLimit(offsetOf(scanner), "The nesting of lists and objects", `${deepest} deep`));
  else if (byte === openBrace)
    for (let more = openObject(scanner, "The object"); more; more = nextMember(scanner)) {
      walkKey(scanner);
      walkValue(scanner, depth + 1);
    }
  else
    for (let more = openList(scanner, "The list"); more; more = nextElement(scanner))
      walkValue(scanner, depth + 1);
}

function walkKey(scanner: Scanner): void {
  if (peek(scanner) !== quote) expected(scanner, "A name between quotes");
  else if (scanText(scanner) !== undefined && peek(scanner) !== colon) expected(scanner, "`:`");
  else scanner.at++;
}
