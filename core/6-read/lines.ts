import { isLineEnd } from "./scan-bytes.ts";
import { longestLine } from "./tables.ts";

/** Bytes of whole lines. */
export interface Region {
  readonly bytes: Uint8Array;
  readonly from: number;
  readonly to: number;
  /** Byte offset in the program of index 0 of `bytes`. */
  readonly base: number;
}

/** What stands between chunks: the beginning of a line whose end is not there yet. */
export interface Lines {
  readonly carry: Uint8Array;
  length: number;
  /** Byte offset in the program of the first byte that is kept, and of the next chunk. */
  carryAt: number;
  next: number;
}

const lineFeed = 10;
const carriageReturn = 13;

export function createLines(): Lines {
  // Room for the longest line, its end, and one byte by which it is too long.
  return { carry: new Uint8Array(longestLine + 4), length: 0, carryAt: 0, next: 0 };
}

/**
 * Cuts a chunk into regions of whole lines: the line that it completes, and the lines within it; what is left is kept. Each
 * region is read before the next is pulled, as they share the room for what is kept. A line that does not fit is handed on
 * unended, for the scanner to refuse.
 */
export function* cutChunk(lines: Lines, chunk: Uint8Array): Generator<Region> {
  const base = lines.next;
  lines.next += chunk.length;
  let from = 0;
  if (lines.length > 0) {
    from = takeHead(lines, chunk);
    if (!isComplete(lines, chunk, from)) return;
    yield carried(lines);
  }
  const to = lastLineEnd(chunk, from);
  if (to > from) yield { bytes: chunk, from, to, base };
  const length = chunk.length - to;
  if (length > lines.carry.length) yield { bytes: chunk, from: to, to: chunk.length, base };
  else keep(lines, chunk, to, base);
}

/** What is left at the end of the text: a line without its end, or one whose end may have gone on. */
export function lastLine(lines: Lines): Region | undefined {
  if (lines.length === 0) return undefined;
  if (!isLineEnd(lines.carry[lines.length - 1])) lines.carry[lines.length++] = lineFeed;
  return carried(lines);
}

/** Whether the text ended within a line. */
export function endsOpen(lines: Lines): boolean {
  return lines.length > 0 && !isLineEnd(lines.carry[lines.length - 1]);
}

function carried(lines: Lines): Region {
  const region = { bytes: lines.carry, from: 0, to: lines.length, base: lines.carryAt };
  lines.length = 0;
  return region;
}

/** Adds to the kept line what the chunk has of it; gives where the rest of the chunk begins. */
function takeHead(lines: Lines, chunk: Uint8Array): number {
  let taken = 0;
  if (lines.carry[lines.length - 1] === carriageReturn) taken = chunk[0] === lineFeed ? 1 : 0;
  else {
    while (taken < chunk.length && !isLineEnd(chunk[taken])) taken++;
    if (chunk[taken] === carriageReturn && chunk[taken + 1] === lineFeed) taken += 2;
    else if (taken < chunk.length) taken++;
  }
  const part = chunk.subarray(0, Math.min(taken, lines.carry.length - lines.length));
  lines.carry.set(part, lines.length);
  lines.length += part.length;
  return taken;
}

/** Whether the kept line has its end, or no room for more. A carriage return waits for a line feed that belongs to it. */
function isComplete(lines: Lines, chunk: Uint8Array, taken: number): boolean {
  if (lines.length === lines.carry.length) return true;
  const last = lines.carry[lines.length - 1];
  return isLineEnd(last) && (taken < chunk.length || last === lineFeed);
}

/** Index behind the last line end at or after `from` that is surely whole. */
export function lastLineEnd(chunk: Uint8Array, from: number): number {
  let index = chunk.length;
  if (index > from && chunk[index - 1] === carriageReturn) index--;
  while (index > from && !isLineEnd(chunk[index - 1])) index--;
  return index;
}

function keep(lines: Lines, chunk: Uint8Array, from: number, base: number): void {
  lines.carry.set(chunk.subarray(from));
  lines.length = chunk.length - from;
  lines.carryAt = base + from;
}
