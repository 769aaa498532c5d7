/** The text beside a picture, packed piece by piece, and the lines on which its bytes stand. */
import type { Packing } from "#report";
import { linesOfPiece } from "#report";

/** A listing that grows line by line. */
export interface Listing {
  readonly add: (line: string) => void;
  readonly end: () => void;
  /** Lines so far. */
  readonly lines: () => number;
  readonly pieces: readonly Uint8Array[];
}

export function createListing({ deflate }: Packing): Listing {
  const pieces: Uint8Array[] = [];
  const encoder = new TextEncoder();
  let open: string[] = [];
  let closed = 0;
  const flush = (): void => {
    if (open.length > 0) pieces.push(deflate(encoder.encode(open.join("\n"))));
    closed += open.length;
    open = [];
  };
  return {
    add(line) {
      open.push(line);
      if (open.length === linesOfPiece) flush();
    },
    end: flush,
    lines: () => closed + open.length,
    pieces,
  };
}

/** A program on its way to the reader, whose lines are known by their bytes. */
export interface PassingText {
  readonly pass: (chunk: Uint8Array) => void;
  /** Line, from 1, that holds a byte; asked for bytes that have passed, in rising order. */
  readonly lineAt: (offset: number) => number;
  readonly end: () => void;
}

/** Cuts a text into the lines of a listing; keeps the begins of those that nobody has asked past. */
export function createPassingText(listing: Listing, lineEnd: string): PassingText {
  const decoder = new TextDecoder();
  const last = lineEnd.charCodeAt(lineEnd.length - 1);
  let text = "";
  let offset = 0;
  /** Begins of the lines behind `line`. */
  let begins: number[] = [];
  let next = 0;
  let line = 1;
  return {
    pass(chunk) {
      for (let at = chunk.indexOf(last); at >= 0; at = chunk.indexOf(last, at + 1))
        begins.push(offset + at + 1);
      offset += chunk.length;
      const whole = (text + decoder.decode(chunk, { stream: true })).split(lineEnd);
      text = whole.pop() ?? "";
      for (const one of whole) listing.add(one);
    },
    lineAt(wanted) {
      while (next < begins.length && begins[next] <= wanted) {
        next++;
        line++;
      }
      if (next > 4096) {
        begins = begins.slice(next);
        next = 0;
      }
      return line;
    },
    end() {
      text += decoder.decode();
      if (text !== "") listing.add(text);
      text = "";
    },
  };
}
