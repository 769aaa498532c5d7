import type { ByteSource, Finding, Report } from "#base";
import { cutShort, headTooLarge, notJson } from "../findings.ts";

/** Bytes of the source that are read at a time. */
export const windowBytes = 256 * 1024;

/** The longest text between quotes, bytes as written. */
export const longestText = 64 * 1024;

/** The largest part of a job outside of moves, bytes. */
export const largestHead = 4 * 1024 * 1024;

/** How deep lists and objects may stand in one another. */
export const deepest = 16;

/**
 * A place in a byte source with the bytes around it. `bytes[end]` is always 0, which JSON has nowhere: a loop over bytes
 * stops there by itself, and only then asks whether the window or the text is at its end.
 *
 * After a fault nothing more is scanned: every look gives 0, so that each loop ends without asking.
 */
export interface Scanner {
  readonly source: ByteSource;
  readonly report: Report;
  /** Bytes read at a time. */
  readonly windowBytes: number;
  /** The window: a part of the source, with room for the longest token and one window more. */
  readonly bytes: Uint8Array;
  /** The same memory as pairs of bytes. */
  readonly pairs: Uint16Array;
  /** Offset in the source of `bytes[0]`. */
  start: number;
  /** Index of the next byte to scan. */
  at: number;
  /** Index behind the last byte read. */
  end: number;
  /** Offset in the source where scanning ends. */
  limit: number;
  /** Whether `limit` is a bound of the reader that the text must not reach. */
  bounded: boolean;
  /** Whether a fault was found that leaves no way to go on. */
  failed: boolean;
  /** Offset of the name or text scanned last. */
  tokenAt: number;
  /** The name scanned last, where it was unknown. */
  text: string;
}

/** Makes a scanner of a part of a source; offsets in bytes. */
export function createScanner(
  source: ByteSource,
  report: Report,
  part: { readonly from: number; readonly to: number },
  window: number,
): Scanner {
  // Room for the longest token and a window; a small part needs no more than itself.
  const room = Math.min(2 * longestText + window, part.to - part.from);
  const pairs = new Uint16Array((room >> 1) + 1);
  return {
    source,
    report,
    windowBytes: window,
    bytes: new Uint8Array(pairs.buffer),
    pairs,
    start: part.from,
    at: 0,
    end: 0,
    limit: part.to,
    bounded: false,
    failed: false,
    tokenAt: part.from,
    text: "",
  };
}

/** Offset in the source of the next byte. */
export function offsetOf(scanner: Scanner): number {
  return scanner.start + scanner.at;
}

/**
 * Reads on. Bytes from index `keep` on stay and move to the front; `at` moves with them.
 *
 * @returns whether there was more to read
 */
export function refill(scanner: Scanner, keep: number): boolean {
  const { bytes } = scanner;
  bytes.copyWithin(0, keep, scanner.end);
  scanner.start += keep;
  scanner.at -= keep;
  scanner.end -= keep;
  const room = bytes.length - 1 - scanner.end;
  const left = scanner.limit - scanner.start - scanner.end;
  const wanted = Math.min(scanner.windowBytes, room, left);
  const target = bytes.subarray(scanner.end, scanner.end + Math.max(0, wanted));
  const count = target.length === 0 ? 0 : scanner.source.read(scanner.start + scanner.end, target);
  scanner.end += count;
  bytes[scanner.end] = 0;
  return count > 0;
}

/** Goes to an offset of the source. */
export function seek(scanner: Scanner, offset: number): void {
  if (scanner.failed) return;
  const index = offset - scanner.start;
  if (index >= 0 && index <= scanner.end) {
    scanner.at = index;
    return;
  }
  scanner.start = offset;
  scanner.at = scanner.end = 0;
  scanner.bytes[0] = 0;
}

/** Sees to it that `count` bytes stand ready from `at` on, if the text has as many. */
export function ensure(scanner: Scanner, count: number): boolean {
  while (scanner.end - scanner.at < count) if (!refill(scanner, scanner.at)) return false;
  return true;
}

/** Goes over white space (RFC 8259 section 2) and gives the byte behind it without taking it; 0 at the end. */
export function peek(scanner: Scanner): number {
  const { bytes } = scanner;
  let at = scanner.at;
  for (;;) {
    const byte = bytes[at];
    if (byte > 32) {
      scanner.at = at;
      return byte;
    }
    if (byte === 32 || byte === 10 || byte === 13 || byte === 9) {
      at++;
      continue;
    }
    scanner.at = at;
    if (at < scanner.end) return byte === 0 ? 1 : byte;
    if (!refill(scanner, at)) return 0;
    at = scanner.at;
  }
}

/** Reports a fault after which scanning cannot go on; only the first one counts. */
export function fail(scanner: Scanner, finding: Finding): void {
  if (!scanner.failed) scanner.report(finding);
  scanner.failed = true;
  scanner.limit = scanner.start + scanner.end;
  scanner.at = scanner.end;
}

/** Fails because something else stands at the next byte, or nothing. */
export function expected(scanner: Scanner, wanted: string): void {
  const byte = peek(scanner);
  const offset = offsetOf(scanner);
  if (byte !== 0) fail(scanner, notJson(offset, wanted, describe(byte)));
  else if (scanner.bounded && scanner.limit < scanner.source.size) fail(scanner, headTooLarge(offset));
  else fail(scanner, cutShort(offset, wanted));
}

function describe(byte: number): string {
  return byte > 32 && byte < 127
    ? `\`${String.fromCharCode(byte)}\``
    : `the byte ${byte.toString(16).padStart(2, "0")} (hexadecimal)`;
}
