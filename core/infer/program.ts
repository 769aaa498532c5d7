import type { Line } from "./tokens.ts";
import { tokenise } from "./tokens.ts";

/** A program to learn from. */
export interface SampleText {
  /** Its name as the user knows it. */
  readonly file: string;
  readonly bytes: Uint8Array;
}

/** What ends a line. */
export type LineEnd = "lf" | "crlf" | "cr";

/** A program as lines, without any dialect. */
export interface Program {
  readonly file: string;
  readonly lines: readonly Line[];
  /** What ends each line, in the order of the lines; the last may have none. */
  readonly lineEnds: readonly (LineEnd | undefined)[];
  /** Whether the file begins with the three bytes that mark UTF-8. */
  readonly byteOrderMark: boolean;
  /** The bytes that were studied: all, or the beginning and the end of a long program. */
  readonly studied: Uint8Array;
  /** Bytes of the whole. */
  readonly size: number;
  /** Whether some byte is no character of a text: zero, or another control character. */
  readonly binaryAt: number | undefined;
}

/** Most bytes that are studied of one program from its beginning, and from its end. */
export const mostStudied = { beginning: 1 << 20, end: 64 << 10 } as const;

/** Takes a program apart into lines. Of a very long one the beginning and the end are taken. */
export function takeApart({ file, bytes }: SampleText): Program {
  const parts = partsOf(bytes);
  const byteOrderMark = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf;
  const lines: Line[] = [];
  const lineEnds: (LineEnd | undefined)[] = [];
  let number = 1;
  for (const { from, to } of parts) {
    if (from > 0) number += countLines(bytes, parts[0].to, from);
    let at = from === 0 && byteOrderMark ? 3 : from;
    while (at < to) {
      const end = lineEndFrom(bytes, at, to);
      lines.push(tokenise(latin(bytes.subarray(at, end)), { file, number: number++, offset: at }));
      lineEnds.push(endAt(bytes, end));
      at = end + (lineEnds.at(-1) === "crlf" ? 2 : 1);
    }
  }
  return {
    file,
    lines,
    lineEnds,
    byteOrderMark,
    studied: joined(bytes, parts),
    size: bytes.length,
    binaryAt: binaryAt(bytes, parts),
  };
}

interface Part {
  readonly from: number;
  readonly to: number;
}

function partsOf(bytes: Uint8Array): Part[] {
  const { beginning, end } = mostStudied;
  if (bytes.length <= beginning + end) return [{ from: 0, to: bytes.length }];
  const cut = bytes.lastIndexOf(10, beginning);
  const resume = bytes.indexOf(10, bytes.length - end);
  return [
    { from: 0, to: cut < 0 ? beginning : cut + 1 },
    { from: resume < 0 ? bytes.length - end : resume + 1, to: bytes.length },
  ];
}

function joined(bytes: Uint8Array, parts: readonly Part[]): Uint8Array {
  const [first, last] = parts;
  if (last === undefined) return bytes;
  const both = new Uint8Array(first.to + last.to - last.from);
  both.set(bytes.subarray(0, first.to));
  both.set(bytes.subarray(last.from), first.to);
  return both;
}

function countLines(bytes: Uint8Array, from: number, to: number): number {
  let count = 0;
  for (let at = bytes.indexOf(10, from); at >= 0 && at < to; at = bytes.indexOf(10, at + 1)) count++;
  return count;
}

function lineEndFrom(bytes: Uint8Array, from: number, to: number): number {
  let at = from;
  while (at < to && bytes[at] !== 10 && bytes[at] !== 13) at++;
  return at;
}

function endAt(bytes: Uint8Array, at: number): LineEnd | undefined {
  if (at >= bytes.length) return undefined;
  if (bytes[at] === 10) return "lf";
  return bytes[at + 1] === 10 ? "crlf" : "cr";
}

/** One character a byte, so that places in the text are places in the file. */
function latin(bytes: Uint8Array): string {
  let text = "";
  for (let at = 0; at < bytes.length; at += 8192)
    text += String.fromCharCode(...bytes.subarray(at, at + 8192));
  return text;
}

function binaryAt(bytes: Uint8Array, parts: readonly Part[]): number | undefined {
  for (const { from, to } of parts)
    for (let at = from; at < to; at++) {
      const byte = bytes[at];
      if (byte < 9 || (byte > 13 && byte < 32)) return at;
    }
  return undefined;
}
