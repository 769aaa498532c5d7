/** The rows of a program, with the lines of its text where there is one. */
import type { Batch } from "#base";
import type { Format } from "#dialect";
import type { JobInput, Means } from "../inputs.ts";
import { rowPairs } from "../row-pairs.ts";
import type { Undertaking } from "../undertaking.ts";

/** A row, valid until the next. */
export interface ProgramRow {
  readonly batch: Batch;
  readonly row: number;
  /** Line of the program, from 1; undefined where there is no program. */
  readonly line: number | undefined;
}

/** The rows of a program that is proved, each with the line in which it is read back. */
export function* provedRows(input: JobInput & Means): Generator<ProgramRow> {
  const lines = countLines(input.dialect.format);
  for (const { meant, row, block } of rowPairs(input, () => undefined, lines.passing))
    yield { batch: meant, row, line: lines.lineOf(block) };
}

/** The rows of a job that was refused, as far as they can be had. */
export function* refusedRows({ batches }: Undertaking): Generator<ProgramRow> {
  for (const batch of batches())
    for (let row = 0; row < batch.count; row++) yield { batch, row, line: undefined };
}

/** Tells the line of a byte, asked for in rising order, while the text passes. */
function countLines({ lineEnd }: Format): {
  readonly passing: (chunk: Uint8Array) => void;
  readonly lineOf: (offset: number) => number;
} {
  const last = lineEnd.charCodeAt(lineEnd.length - 1);
  let ends: number[] = [];
  let used = 0;
  let line = 1;
  let size = 0;
  return {
    passing: (chunk) => {
      ends = ends.slice(used);
      used = 0;
      for (let at = chunk.indexOf(last); at >= 0; at = chunk.indexOf(last, at + 1)) ends.push(size + at);
      size += chunk.length;
    },
    lineOf: (offset) => {
      for (; used < ends.length && ends[used] < offset; used++) line++;
      return line;
    },
  };
}
