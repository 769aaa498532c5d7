import type { ByteSource } from "#base";

/** The line of a finding, cut where it is very long. */
export interface Quote {
  /** Text of the line up to the place. */
  readonly before: string;
  /** Text of the line from the place on. */
  readonly after: string;
  /** Whether text was left out at the left of `before` and at the right of `after`. */
  readonly cutLeft: boolean;
  readonly cutRight: boolean;
}

/** Bytes shown of a line on either side of a place, at most: more than any terminal is wide. */
const reach = 512;

/** Quotes the line around a byte offset; reads a window around it and never the whole line. */
export function quoteLine(source: ByteSource, offset: number, lineStart: number): Quote {
  const start = Math.max(lineStart, offset - reach);
  const before = readUpTo(source, start, offset - start);
  const after = readUpTo(source, offset, reach);
  const end = after.findIndex((byte) => byte === 10 || byte === 13);
  const rest = end < 0 ? after : after.subarray(0, end);
  return {
    before: decode(before).replace(/^\uFEFF/, ""),
    after: decode(rest),
    cutLeft: start > lineStart,
    cutRight: end < 0 && offset + after.length < source.size,
  };
}

function readUpTo(source: ByteSource, offset: number, length: number): Uint8Array {
  const target = new Uint8Array(Math.max(0, length));
  let filled = 0;
  while (filled < target.length) {
    const count = source.read(offset + filled, target.subarray(filled));
    if (count === 0) break;
    filled += count;
  }
  return target.subarray(0, filled);
}

/** UTF-8 to text; the halves of characters at the cuts are dropped, a byte that is no UTF-8 shows as U+FFFD. */
function decode(bytes: Uint8Array): string {
  let start = 0;
  while (start < 3 && start < bytes.length && (bytes[start] & 0xc0) === 0x80) start++;
  return new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes.subarray(start)).replace(/\uFFFD$/, "");
}
