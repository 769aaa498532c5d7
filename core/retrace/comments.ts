import type { Format } from "#dialect";
import type { Comment } from "./comment.ts";
import { isToolComment } from "./tool-words.ts";

/** Comments of a program, gathered while its text passes. */
export interface Comments {
  readonly take: (chunk: Uint8Array) => void;
  /** What stands before the first block. */
  readonly head: readonly Comment[];
  /** What is said of tools, wherever it stands. */
  readonly tools: readonly Comment[];
  /** The last comments that stand between two places, byte offsets; those before the second are forgotten. */
  readonly between: (from: number, to: number) => readonly string[];
}

/** Lines at the head, and comments since the last operation, that are kept. */
const mostHead = 200;
const mostKept = 200;
const mostTools = 1000;
/** Longest line that is looked at, bytes. */
const longestLine = 512;

const lineFeed = 10;
const carriageReturn = 13;

/** Gathers the comments that stand on lines of their own; lines are cut where this dialect ends them. */
export function gatherComments({ lineEnd, comments }: Pick<Format, "lineEnd" | "comments">): Comments {
  const end = lineEnd === "\r" ? carriageReturn : lineFeed;
  const decoder = new TextDecoder();
  const head: Comment[] = [];
  const tools: Comment[] = [];
  const state = { offset: 0, inHead: true, rest: new Uint8Array(0) };
  let kept: Comment[] = [];
  const takeLine = (bytes: Uint8Array): void => {
    const offset = state.offset;
    state.offset += bytes.length + 1;
    const first = firstOf(bytes);
    if (first !== open && first !== semicolon) {
      if (state.inHead && first !== 0 && first !== percent && first !== letterO && first !== colon)
        state.inHead = false;
      return;
    }
    if (comments.style === "none" || bytes.length > longestLine) return;
    const text = commentOf(decoder.decode(bytes));
    if (text === "") return;
    if (isToolComment(text) && tools.length < mostTools) tools.push({ offset, text });
    if (state.inHead && head.length < mostHead) head.push({ offset, text });
    else if (!state.inHead) {
      if (kept.length >= mostKept) kept.shift();
      kept.push({ offset, text });
    }
  };
  return {
    head,
    tools,
    take: (chunk) => {
      let at = 0;
      for (;;) {
        const next = chunk.indexOf(end, at);
        if (next < 0) break;
        const part = chunk.subarray(at, next);
        takeLine(state.rest.length === 0 ? part : joined(state.rest, part));
        state.rest = new Uint8Array(0);
        at = next + 1;
      }
      if (at < chunk.length) state.rest = joined(state.rest, chunk.subarray(at));
    },
    between: (from, to) => {
      const found = kept.filter(({ offset }) => offset >= from && offset < to).map(({ text }) => text);
      kept = kept.filter(({ offset }) => offset >= to);
      return found;
    },
  };
}

const open = 40;
const semicolon = 59;
const percent = 37;
const letterO = 79;
const colon = 58;
const letterN = 78;

/** The first byte of a line that is no blank and no block number; 0 for an empty line. */
function firstOf(bytes: Uint8Array): number {
  let at = 0;
  const skip = (test: (byte: number) => boolean): void => {
    while (at < bytes.length && test(bytes[at])) at++;
  };
  const isBlank = (byte: number): boolean => byte <= 32;
  skip(isBlank);
  if (bytes[at] === letterN) {
    at++;
    skip((byte) => byte >= 48 && byte <= 57);
    skip(isBlank);
  }
  return at < bytes.length ? bytes[at] : 0;
}

/** The text of a line that is a comment and nothing else; otherwise empty. */
export function commentOf(line: string): string {
  const bare = line.trim().replace(/^N\d+\s*/, "");
  if (bare.startsWith(";")) return bare.slice(1).trim();
  const [, text] = /^\(([^()]*)\)[;*]?$/.exec(bare) ?? [];
  return text?.trim() ?? "";
}

function joined(first: Uint8Array, second: Uint8Array): Uint8Array<ArrayBuffer> {
  // A line that long is no comment to be read; its end is all that matters.
  const head = first.length > 4 * longestLine ? first.subarray(0, 4 * longestLine) : first;
  const both = new Uint8Array(head.length + second.length);
  both.set(head);
  both.set(second, head.length);
  return both;
}
