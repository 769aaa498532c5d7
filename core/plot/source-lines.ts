import type { ByteSource } from "#base";

const lineFeed = 10;
const windowBytes = 1 << 16;

/**
 * Lines of a text by the bytes on them, asked for in rising order for the most part: a byte before the last begins again.
 *
 * @returns the line, from 1, that holds a byte
 */
export function createSourceLines(source: ByteSource): (offset: number) => number {
  const window = new Uint8Array(windowBytes);
  let begin = 0;
  let length = source.read(0, window);
  let at = 0;
  let line = 1;
  return (offset) => {
    if (offset < at) [begin, length, at, line] = [0, source.read(0, window), 0, 1];
    while (at < offset && length > 0) {
      const stop = Math.min(offset, begin + length);
      for (; at < stop; at++) if (window[at - begin] === lineFeed) line++;
      if (at < begin + length) break;
      begin += length;
      length = source.read(begin, window);
    }
    return line;
  };
}
