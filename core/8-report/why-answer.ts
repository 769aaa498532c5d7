import type { KeyFacts } from "#dialect";
import type { SourceText } from "./locate.ts";
import { positionsOf } from "./positions.ts";
import type { Quote } from "./quote.ts";
import { quoteLine } from "./quote.ts";

/** A word of a block, or a comment, and the keys of the dialect that shaped it. */
export interface ShapedWord {
  readonly text: string;
  /** Of its first byte in the program. */
  readonly offset: number;
  readonly keys: readonly KeyFacts[];
}

/** A step of the sequence that a block says. */
export interface SaidStep {
  /** Counted from 1, over the whole program. */
  readonly step: number;
  /** "line to X 10 Y 5 Z -2 at 300 mm/min" */
  readonly text: string;
}

/** Where in a program a block stands: before the first operation, in one, or behind the last. */
export type ProgramPart = "start" | "operation" | "end";

/** One block and why it is as it is. */
export interface ExplainedBlock {
  /** Counted from 1. */
  readonly line: number;
  readonly text: string;
  readonly words: readonly ShapedWord[];
  /** None: a comment, a mark or a blank line. */
  readonly steps: readonly SaidStep[];
  /** Further steps that are not listed: holes that one block repeats. */
  readonly moreSteps: number;
  readonly part: ProgramPart;
  readonly operation?: {
    readonly id: string;
    readonly name: string;
    /** The tool that does it in the place of the worn one that the job names. */
    readonly spare?: { readonly tool: number; readonly by: number };
  };
  /** Byte offset in the job, in an operation only; of the step that comes next, where the block says none. */
  readonly source?: number;
}

/** The lines that a key shaped. */
export interface ShapedLines {
  readonly key: string;
  /** Whether a word under this dialect can name it; other keys decide which moves, waits and stops there are. */
  readonly named: boolean;
  readonly count: number;
  /** First and last of lines that follow each other. */
  readonly runs: readonly (readonly [first: number, last: number])[];
  /** Runs that are not listed. */
  readonly moreRuns: number;
}

/** What is answered. */
export interface WhyAnswer {
  /** Lines of the whole program. */
  readonly lines: number;
  readonly blocks: readonly ExplainedBlock[];
  /** Asked about a key. */
  readonly shaped?: ShapedLines;
}

/** A place as a person looks it up, with its line. */
export interface QuotedPlace {
  readonly file: string;
  /** Counted from 1, as the column is, in characters. */
  readonly line: number;
  readonly column: number;
  readonly quote: Quote;
}

/** The places in the job of the blocks of an answer, in their order; undefined where a block has none. */
export function placesOf(blocks: readonly ExplainedBlock[], job: SourceText): (QuotedPlace | undefined)[] {
  const offsets = blocks.flatMap(({ source }) => (source === undefined ? [] : [source]));
  const found = positionsOf(job.bytes, offsets).map(({ line, column, lineStart }, index): QuotedPlace => ({
    file: job.file,
    line,
    column,
    quote: quoteLine(job.bytes, offsets[index], lineStart),
  }));
  return blocks.map(({ source }) => (source === undefined ? undefined : found.shift()));
}
