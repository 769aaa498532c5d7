import type { ByteSource } from "#base";

/** A place in a text as a person counts. */
export interface Position {
  /** Counted from 1; LF, CR LF and a lone CR end a line. */
  readonly line: number;
  /** Counted from 1, in characters; a byte order mark is none. */
  readonly column: number;
  /** Byte offset of the line's first character. */
  readonly lineStart: number;
}

/** What the scan carries from byte to byte. */
interface Cursor {
  line: number;
  lineStart: number;
  characters: number;
  previous: number;
}

const windowBytes = 65_536;
const lineFeed = 10;
const carriageReturn = 13;

/**
 * Finds line and column of many places in one pass over the text, up to the last of them.
 *
 * @param offsets byte offsets in any order; one behind the end means the end
 * @returns one position for each offset, in the same order
 */
export function positionsOf(source: ByteSource, offsets: readonly number[]): Position[] {
  const order = offsets.map((_, index) => index).sort((a, b) => offsets[a] - offsets[b]);
  const found: Position[] = [];
  const cursor: Cursor = { line: 1, lineStart: 0, characters: 0, previous: 0 };
  const window = new Uint8Array(windowBytes);
  let next = 0;
  let start = 0;
  while (next < order.length) {
    const length = source.read(start, window);
    let index = 0;
    for (; next < order.length; next++) {
      const offset = offsets[order[next]];
      const stop = length === 0 ? 0 : offset - start;
      if (stop > length || (stop === length && start + length < source.size)) break;
      advance(cursor, window, index, Math.max(index, stop), start);
      index = Math.max(index, stop);
      found[order[next]] = { line: cursor.line, column: cursor.characters + 1, lineStart: cursor.lineStart };
    }
    advance(cursor, window, index, length, start);
    start += length;
  }
  return found;
}

/** Moves over the bytes `from` to `to` of a window that begins at byte `start` of the text. */
function advance(cursor: Cursor, window: Uint8Array, from: number, to: number, start: number): void {
  for (let index = from; index < to; index++) {
    const byte = window[index];
    if (byte === lineFeed && cursor.previous === carriageReturn) {
      cursor.lineStart = start + index + 1;
    } else if (byte === lineFeed || byte === carriageReturn) {
      cursor.line++;
      cursor.lineStart = start + index + 1;
      cursor.characters = 0;
    } else if ((byte & 0xc0) !== 0x80 && !(start === 0 && index === 0 && byte === 0xef)) {
      // Bytes 10xxxxxx continue a character of UTF-8. EF as the first byte of all is the byte order mark.
      cursor.characters++;
    }
    cursor.previous = byte;
  }
}

/** Byte offsets of the lines 1, 2, ... of a text held in memory. */
export function lineStarts(bytes: Uint8Array): number[] {
  const starts = [0];
  for (let index = 0; index < bytes.length; index++) {
    const byte = bytes[index];
    const ends = byte === lineFeed || (byte === carriageReturn && bytes[index + 1] !== lineFeed);
    if (ends) starts.push(index + 1);
  }
  return starts;
}
