import type { ByteSource } from "#base";
import type { Region } from "../lines.ts";
import { lastLineEnd } from "../lines.ts";
import { isLineEnd } from "../scan-bytes.ts";
import { longestLine } from "../tables.ts";

/** Bytes of a text that are kept at a time: room for the longest line, and for the loops that are common. */
const windowSize = 4 * longestLine;

/** A text in which can be gone back and forth: one window of it is kept. */
export interface Text {
  readonly source: ByteSource;
  readonly bytes: Uint8Array;
  /** Byte offset of index 0, and how many bytes there are. */
  base: number;
  length: number;
}

export function createText(source: ByteSource): Text {
  // One byte more: a last line without its end is given one.
  return { source, bytes: new Uint8Array(windowSize + 1), base: 0, length: 0 };
}

/** Whole lines from an offset on, as many as are at hand; undefined at the end of the text. */
export function linesFrom(text: Text, offset: number): Region | undefined {
  if (offset >= text.source.size) return undefined;
  let region = regionAt(text, offset);
  if (region === undefined) {
    load(text, offset);
    region = regionAt(text, offset);
  }
  // A line that is longer than may be is handed on as it is, for the scanner to refuse.
  return region ?? { bytes: text.bytes, from: 0, to: text.length, base: text.base };
}

function regionAt({ bytes, base, length }: Text, offset: number): Region | undefined {
  if (offset < base || offset >= base + length) return undefined;
  const from = offset - base;
  const to = lastLineEnd(bytes.subarray(0, length), from);
  return to > from ? { bytes, from, to, base } : undefined;
}

function load(text: Text, offset: number): void {
  const { source, bytes } = text;
  let length = 0;
  while (length < windowSize) {
    const count = source.read(offset + length, bytes.subarray(length, windowSize));
    if (count === 0) break;
    length += count;
  }
  const isLast = offset + length >= source.size;
  if (isLast && length > 0 && !isLineEnd(bytes[length - 1])) bytes[length++] = 10;
  // A carriage return at the very end is one whole line end.
  else if (isLast && bytes[length - 1] === 13) bytes[length++] = 10;
  text.base = offset;
  text.length = length;
}

/** Index of the line end at or behind an index, and of the line behind it. */
export function lineEnd(bytes: Uint8Array, from: number, to: number): { end: number; next: number } {
  let end = from;
  while (end < to && !isLineEnd(bytes[end])) end++;
  const isPair = bytes[end] === 13 && end + 1 < to && bytes[end + 1] === 10;
  return { end, next: end + (isPair ? 2 : 1) };
}
