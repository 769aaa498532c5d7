import { cutShort, halfSurrogate, notJson, notUtf8, overLimit } from "../findings.ts";
import { backslash, colon, minus, quote, zero } from "./bytes.ts";
import type { Scanner } from "./scanner.ts";
import { expected, fail, longestText, peek, refill } from "./scanner.ts";
import { decodeUtf8, utf8Fault } from "./utf8.ts";
import type { Words } from "./words.ts";
import { findFour, findOne, findWord } from "./words.ts";

/** What `scanName` gives for a name that is none of the list; its text is in `scanner.text`. */
export const unknownName = -1;

/** What `scanName` gives after a fault. */
export const noName = -2;

/**
 * Index of the name between quotes that comes next; its offset is in `scanner.tokenAt`. Names are compared as bytes
 * where they stand; one with an escape in it is rare and goes the long way.
 */
export function scanName(scanner: Scanner, words: Words): number {
  if (peek(scanner) !== quote) {
    expected(scanner, "A name between quotes");
    return noName;
  }
  const { bytes } = scanner;
  const from = scanner.at + 1;
  scanner.tokenAt = scanner.start + scanner.at;
  // No name holds the 0 at the window's end, so one that is found lies in the window as a whole.
  if (bytes[from + 1] === quote) {
    const index = findOne(words, bytes[from]);
    if (index >= 0) return endName(scanner, from + 1, index);
  } else if (bytes[from + 4] === quote) {
    const index = findFour(words, bytes, from);
    if (index >= 0) return endName(scanner, from + 4, index);
  }
  return scanLongName(scanner, words);
}

function endName(scanner: Scanner, at: number, index: number): number {
  scanner.at = at + 1;
  return index;
}

/** The same for names of any length and in any form. */
function scanLongName(scanner: Scanner, words: Words): number {
  const { bytes } = scanner;
  const from = scanner.at + 1;
  let at = from;
  // Letters, digits and a hyphen go on; anything else ends the name or sends it the long way.
  while (bytes[at] > backslash || bytes[at] === minus || (bytes[at] >= zero && bytes[at] < backslash)) at++;
  if (bytes[at] === quote && at < scanner.end) {
    const index = findWord(words, bytes, from, at);
    if (index >= 0) return endName(scanner, at, index);
  }
  const text = scanText(scanner);
  if (text === undefined) return noName;
  scanner.text = text;
  // An escaped name is the same name.
  return words.names.indexOf(text);
}

/** The same for the key of an object, with the colon behind it. */
export function scanKey(scanner: Scanner, words: Words): number {
  const name = scanName(scanner, words);
  if (name === noName) return noName;
  if (scanner.bytes[scanner.at] !== colon && peek(scanner) !== colon) {
    expected(scanner, "`:`");
    return noName;
  }
  scanner.at++;
  return name;
}

/**
 * The text between quotes that comes next; the caller has seen the quote. Strictly RFC 8259 section 7 and UTF-8.
 *
 * @returns undefined after a fault
 */
export function scanText(scanner: Scanner): string | undefined {
  const length = findQuote(scanner);
  if (length < 0) return undefined;
  const from = scanner.at + 1;
  const offset = scanner.start + from;
  const raw = scanner.bytes.subarray(from, from + length);
  scanner.at = from + length + 1;
  const fault = utf8Fault(raw);
  if (fault >= 0) {
    fail(scanner, notUtf8(offset + fault));
    return undefined;
  }
  const text = decodeUtf8(raw);
  return raw.includes(backslash) ? unescapeText(scanner, raw, text, offset) : text;
}

/** Length in bytes of the text at `at`, brought into the window as a whole; -1 after a fault. */
function findQuote(scanner: Scanner): number {
  const { bytes } = scanner;
  let length = 0;
  for (;;) {
    const at = scanner.at + 1 + length;
    const byte = at < scanner.end ? bytes[at] : 0;
    if (byte === quote) return length;
    if (length > longestText) return stop(scanner, overLimit(scanner.start + scanner.at, "A text", "64 kB"));
    if (byte >= 32) {
      // The second byte of an escape may be a quote that ends nothing.
      length += byte === backslash && at + 1 < scanner.end && bytes[at + 1] >= 32 ? 2 : 1;
      if (byte !== backslash || at + 1 < scanner.end) continue;
      length--;
      if (!refill(scanner, scanner.at))
        return stop(scanner, cutShort(scanner.start + scanner.end, "the end of a text"));
    } else if (at < scanner.end) {
      return stop(scanner, notJson(scanner.start + at, "An escape such as \\n", "a control character"));
    } else if (!refill(scanner, scanner.at)) {
      return stop(scanner, cutShort(scanner.start + scanner.end, "the end of a text"));
    }
  }
}

function stop(scanner: Scanner, finding: Parameters<typeof fail>[1]): -1 {
  fail(scanner, finding);
  return -1;
}

const escapes: Readonly<Record<string, string>> = {
  '"': '"',
  "\\": "\\",
  "/": "/",
  b: "\b",
  f: "\f",
  n: "\n",
  r: "\r",
  t: "\t",
};

/** Resolves escapes: `a\n` written as three characters -> two. */
function unescapeText(scanner: Scanner, raw: Uint8Array, text: string, offset: number): string | undefined {
  for (let at = raw.indexOf(backslash); at >= 0; at = raw.indexOf(backslash, at + 2)) {
    const escape = String.fromCharCode(...raw.subarray(at + 1, at + 6));
    if (/^(?:["\\/bfnrt]|u[\dA-Fa-f]{4})/.test(escape)) continue;
    fail(scanner, notJson(offset + at, "An escape of JSON", `\`\\${escape.slice(0, 1)}\``));
    return undefined;
  }
  const resolved = text.replace(/\\(?:u(.{4})|(.))/g, (_, code: string | undefined, letter: string) =>
    code === undefined ? escapes[letter] : String.fromCharCode(Number.parseInt(code, 16)),
  );
  if (!/\p{Surrogate}/u.test(resolved)) return resolved;
  fail(scanner, halfSurrogate(offset));
  return undefined;
}
