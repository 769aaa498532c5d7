import type { Format } from "#dialect";
import type { Program } from "./program.ts";

/** A block of the sample that comes out otherwise. */
export interface DifferentBlock {
  /** Of the sample, counted from 1. */
  readonly line: number;
  readonly was: string;
  /** What is written in its place; empty: nothing. */
  readonly now: string;
}

/** How two texts agree, block by block. Comments that are no messages are no blocks. */
export interface BlockComparison {
  /** Blocks of the sample. */
  readonly blocks: number;
  /** Those that come out with the same characters. */
  readonly identical: number;
  /** Those of which the block number alone differs, since a block more or less stands before them. */
  readonly renumbered: number;
  /** Those with the same words in another order. */
  readonly reordered: number;
  /** Blocks that are written and stand nowhere in the sample. */
  readonly added: number;
  /** The first that differ, at most ten. */
  readonly different: readonly DifferentBlock[];
}

interface TextBlock {
  readonly line: number;
  readonly text: string;
  /** Without its block number. */
  readonly bare: string;
}

/** Farthest that a block is looked for ahead. */
const window = 24;
const mostShown = 10;

/** Compares a program with what was written from it. */
export function compareBlocks(program: Program, written: string, format: Format): BlockComparison {
  const was = blocksOf(
    program.lines.map(({ text, number }) => [text, number] as const),
    format,
  );
  const now = blocksOf(written.replace(/^\uFEFF/, "").split(/\r\n|\n|\r/).map((text, index) => [text, index + 1] as const), format); // prettier-ignore
  const counts = { identical: 0, renumbered: 0, reordered: 0, added: 0 };
  const different: DifferentBlock[] = [];
  let at = 0;
  was.forEach((block, index) => {
    const ahead = find(now, at, block.bare);
    // A block that stands again sooner in the sample than in what was written was left out, not moved.
    const isLost =
      ahead > at && now.slice(at, ahead).some(({ bare }) => find(was, index + 1, bare) === index + 1);
    if (ahead >= 0 && !isLost) {
      counts.added += ahead - at;
      at = ahead + 1;
      if (now[ahead].text === block.text) counts.identical++;
      else counts.renumbered++;
      return;
    }
    const next = now[at] as TextBlock | undefined;
    const resumes = next !== undefined && find(was, index + 1, next.bare) === index + 1;
    const isReordered = next !== undefined && sortedWords(next.bare) === sortedWords(block.bare);
    if (isReordered) counts.reordered++;
    if (different.length < mostShown && !isReordered)
      different.push({ line: block.line, was: block.text, now: resumes ? "" : (next?.text ?? "") });
    if (next !== undefined && !resumes) at++;
  });
  counts.added += Math.max(0, now.length - at);
  return { blocks: was.length, ...counts, different };
}

function find(blocks: readonly TextBlock[], from: number, bare: string): number {
  const to = Math.min(blocks.length, from + window);
  for (let at = from; at < to; at++) if (blocks[at].bare === bare) return at;
  return -1;
}

function blocksOf(lines: readonly (readonly [string, number])[], format: Format): TextBlock[] {
  const mark = messageMark(format);
  return lines.flatMap(([text, line]) => {
    const block = mark !== "" && text.includes(mark) ? text.trimEnd() : withoutComments(text, format);
    return block.trim() === ""
      ? []
      : [{ line, text: block, bare: block.replace(/^(\/\d? ?)?[N:]\d+[ \t]*/, "$1") }];
  });
}

function messageMark({ idioms }: Format): string {
  const part = idioms.message?.blocks[0]?.[0];
  return part !== undefined && "literal" in part ? part.literal : "";
}

function withoutComments(text: string, { comments, blockEnd }: Format): string {
  const bare = comments.style === "semicolon" ? text.replace(/;.*/, "") : text.replace(/\([^)]*\)/g, "");
  const isMarked = blockEnd === ";" && bare.trim() === ";";
  return isMarked ? "" : bare.trimEnd();
}

function sortedWords(text: string): string {
  return (text.match(/[A-Z][+-]?[\d.]+/g) ?? []).sort().join(" ");
}
