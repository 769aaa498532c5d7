/** The rows of a program as it is read back, each with the row of the sequence that it is. */
import type { Batch } from "#base";
import type { Emitter } from "#emit";
import type { Queue } from "#prove";
import { createQueue } from "#prove";
import { read } from "#read";
import { gather } from "#report";
import type { JobInput, Means } from "./inputs.ts";
import { footerOf, headerOf } from "./page.ts";
import type { Undertaking } from "./undertaking.ts";
import { undertake, unlessFailed } from "./undertaking.ts";
import type { BlockTap } from "./why-blocks.ts";

/** A row that was read, and the row of the sequence that it is. */
export interface RowPair {
  /** Counted from 0. */
  readonly index: number;
  /** Byte offset of its block in the program. */
  readonly block: number;
  readonly meant: Batch;
  readonly row: number;
}

/** What is known of a run beside its rows. */
export interface Run {
  readonly work: Undertaking;
  /** Rows before the first operation. */
  firstSection: number;
}

/**
 * Writes the program of a job and reads it, and pairs the rows; the pair is valid until the next. Ends early where the job is
 * refused.
 *
 * @param started called once with what is known of the run
 * @param passing called with each chunk of the text before it is read
 */
export function* rowPairs(
  input: JobInput & Means,
  started: (run: Run) => void,
  passing: (chunk: Uint8Array) => void = () => undefined,
): Generator<RowPair> {
  const findings = gather();
  const work = undertake(input, input, findings);
  if (work === undefined) return;
  const run: Run = { work, firstSection: Infinity };
  started(run);
  const copies = createQueue();
  const sequence = kept(unlessFailed(work.batches(), findings), copies, run);
  const page = { header: headerOf(work, input), footer: footerOf(work, input) };
  const text = followed(input.emitter.emitUnproved(sequence, { units: work.units, ...page }), passing);
  const { format } = input.dialect;
  let meant: Batch | undefined;
  let row = 0;
  let index = 0;
  for (const batch of read(text, format, work.machine, { units: work.units }, () => undefined)) {
    for (let at = 0; at < batch.count; at++, row++, index++) {
      while (meant === undefined || row >= meant.count) {
        meant = copies.next();
        row = 0;
        if (meant === undefined) return;
      }
      yield { index, block: batch.source[at], meant, row };
    }
  }
}

function* kept(batches: Iterable<Batch>, copies: Queue, run: Run): Generator<Batch> {
  let rows = 0;
  for (const batch of batches) {
    if (batch.sections !== undefined && batch.sections.length > 0)
      run.firstSection = Math.min(run.firstSection, rows + batch.sections[0]);
    rows += batch.count;
    copies.push(batch);
    yield batch;
  }
}

function* followed(
  chunks: Iterable<Uint8Array>,
  passing: (chunk: Uint8Array) => void,
): Generator<Uint8Array> {
  for (const chunk of chunks) {
    passing(chunk);
    yield chunk;
  }
}

/** The traced emitter with its ear at the tap. */
export function tapped(emitter: Emitter, tap: BlockTap): Emitter {
  const names = emitter.traceKeys ?? [];
  return {
    ...emitter,
    emitUnproved: (batches, options) =>
      emitter.emitUnproved(batches, { ...options, trace: (offset, key) => tap.trace(offset, names[key]) }),
  };
}
