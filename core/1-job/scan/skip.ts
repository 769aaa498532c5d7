import { notFinite, notJson, overLimit } from "../findings.ts";
import { backslash, beginsNumber, closeBrace, closeBracket, openBrace, openBracket, quote } from "./bytes.ts";
import { scanLiteral, scanToken } from "./literal.ts";
import type { Scanner } from "./scanner.ts";
import { deepest, expected, fail, offsetOf, peek, refill } from "./scanner.ts";
import { scanText } from "./text.ts";

/** Bytes without any bracket or quote after which a text is no job. */
const longestRun = 1024 * 1024;

/** Where going over a list or object has come to. */
interface Skip {
  /** Brackets that are open. */
  open: number;
  /** 1 inside of a text, otherwise 0. */
  inText: number;
  /** Whether the last byte was a backslash in a text. */
  escaped: boolean;
  /** Bytes since the last window with any structure. */
  quiet: number;
}

/**
 * Goes over a list or object by its brackets and texts alone; what stands inside is not looked at, so whoever needs it
 * reads it strictly another time.
 *
 * @param depth how many lists and objects this one stands in
 * @returns whether its end was found
 */
export function skipNested(scanner: Scanner, what: string, depth: number): boolean {
  const { bytes } = scanner;
  const close = bytes[scanner.at] === openBracket ? closeBracket : closeBrace;
  const skip: Skip = { open: 0, inText: 0, escaped: false, quiet: 0 };
  do {
    // What is out of the ordinary in a pair is left to be looked at byte by byte.
    if ((scanner.at & 1) === 0 && !skip.escaped) skipPairs(scanner, skip, deepest - depth);
    if (scanner.at < scanner.end) skipByte(skip, bytes[scanner.at++]);
    else if (!skipWindow(scanner, skip, what)) return false;
    if (skip.open > deepest - depth)
      return refuse(scanner, scanner.at - 1, "The nesting of lists and objects", `${deepest} deep`);
  } while (skip.open > 0);
  if (bytes[scanner.at - 1] === close) return true;
  scanner.at--;
  expected(scanner, `\`${String.fromCharCode(close)}\``);
  return false;
}

function skipByte(skip: Skip, byte: number): void {
  if (skip.escaped) skip.escaped = false;
  else if (byte === quote) skip.inText ^= 1;
  else if (skip.inText === 1) skip.escaped = byte === backslash;
  else skip.open += nesting(byte);
}

function nesting(byte: number): number {
  if (byte === openBracket || byte === openBrace) return 1;
  return byte === closeBracket || byte === closeBrace ? -1 : 0;
}

function skipWindow(scanner: Scanner, skip: Skip, what: string): boolean {
  const { bytes, end } = scanner;
  const structured = [quote, openBracket, closeBracket, openBrace, closeBrace].some(
    (byte) => end > 0 && bytes.lastIndexOf(byte, end - 1) >= 0,
  );
  skip.quiet = structured ? 0 : skip.quiet + end;
  if (skip.quiet > longestRun) return refuse(scanner, end, "A stretch without any structure", "1 MB");
  if (refill(scanner, end)) return true;
  expected(scanner, `the end of ${what}`);
  return false;
}

/** Effects of two bytes, as bits: 0 a text begins or ends; 1 look closer; 4-6 brackets outside, 8-10 inside of a text. */
const pairEffects = makePairEffects();

/**
 * Goes over pairs of bytes while nothing special is among them. One look-up gives what both do to the depth, whether
 * they begin in a text or not, so there is no branch for the processor to guess wrong at each quote and bracket.
 */
function skipPairs(scanner: Scanner, skip: Skip, most: number): void {
  const { pairs } = scanner;
  let { open, inText } = skip;
  let at = scanner.at >> 1;
  for (;;) {
    const effect = pairEffects[pairs[at]];
    const after = open + ((effect >> (4 + (inText << 2))) & 7) - 4;
    // One comparison for both bounds: what is below 1 wraps around to a large number.
    if ((effect & 2) !== 0 || (after - 1) >>> 0 >= most) break;
    open = after;
    inText ^= effect & 1;
    at++;
  }
  skip.open = open;
  skip.inText = inText;
  scanner.at = at << 1;
}

function makePairEffects(): Int16Array {
  const effects = new Int16Array(1 << 16).fill((4 << 4) | (4 << 8));
  const bytes = new Uint8Array(2);
  // Read through the same kind of view as the window, so that the order of bytes is that of the machine.
  const pair = new Uint16Array(bytes.buffer);
  for (const special of [quote, backslash, 0, openBracket, closeBracket, openBrace, closeBrace])
    for (let other = 0; other < 256; other++) {
      bytes.set([special, other]);
      effects[pair[0]] = pairEffect(special, other);
      bytes.set([other, special]);
      effects[pair[0]] = pairEffect(other, special);
    }
  return effects;
}

function pairEffect(first: number, second: number): number {
  const flips = first === quote;
  const special = [first, second].some((byte) => byte === backslash || byte === 0);
  // The end, or one bracket too many, may lie between the two, where the sum does not show it.
  const hidden = nesting(first) * nesting(second) < 0;
  const outside = nesting(first) + (flips ? 0 : nesting(second));
  const inside = flips ? nesting(second) : 0;
  const toggles = flips !== (second === quote);
  return (toggles ? 1 : 0) | (special || hidden ? 2 : 0) | ((outside + 4) << 4) | ((inside + 4) << 8);
}

function refuse(scanner: Scanner, at: number, what: string, most: string): false {
  fail(scanner, overLimit(scanner.start + at, what, most));
  return false;
}

/** Goes over any value. @returns whether it was JSON as far as its form shows */
export function skipValue(scanner: Scanner, what: string): boolean {
  const byte = peek(scanner);
  if (byte === quote) return scanText(scanner) !== undefined;
  if (byte === openBracket || byte === openBrace) return skipNested(scanner, what, 0);
  if (beginsNumber(byte)) return skipNumber(scanner, what);
  return scanLiteral(scanner, what) !== undefined;
}

/** Goes over a number, strictly. */
function skipNumber(scanner: Scanner, what: string): boolean {
  const from = offsetOf(scanner);
  const token = scanToken(scanner);
  if (/^-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][-+]?\d+)?$/.test(token)) return true;
  if (token === "-Infinity") scanner.report(notFinite(from, what));
  else fail(scanner, notJson(from, "A number", `\`${token.slice(0, 40)}\``));
  return false;
}
