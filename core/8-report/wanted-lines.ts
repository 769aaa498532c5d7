import { chunksOf } from "#base";
import type { ByteSource } from "#base";

const lineFeed = 10;
const carriageReturn = 13;
const hash = 35;
const bracket = 91;

/**
 * Where the lines begin in which some places of a program lie.
 *
 * @param offsets byte offsets, in any order
 * @returns begin of the line by the place; a line that is worked out as it is run (`#`, `[`) is left out, since it is another
 * block each time
 */
export function linesOf(source: ByteSource, offsets: readonly number[]): Map<number, number> {
  const found = new Map<number, number>();
  const waiting = [...new Set(offsets)].sort((one, other) => other - one);
  let begin = 0;
  let isComputed = false;
  const close = (end: number): void => {
    for (let next = waiting.at(-1); next !== undefined && next < end; next = waiting.at(-1)) {
      if (!isComputed) found.set(next, begin);
      waiting.pop();
    }
    begin = end;
    isComputed = false;
  };
  let offset = 0;
  for (const chunk of chunksOf(source)) {
    if (waiting.length === 0) break;
    for (let index = 0; index < chunk.length; index++) {
      const byte = chunk[index];
      if (byte === lineFeed || byte === carriageReturn) close(offset + index + 1);
      else if (byte === hash || byte === bracket) isComputed = true;
    }
    offset += chunk.length;
  }
  close(Infinity);
  return found;
}
