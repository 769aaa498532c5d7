import type { Batch, Step } from "#base";
import { batchRows, capacity, clearBatch, createBatch, pushAside } from "#base";

/** Batches on their way out. */
export interface Writer {
  /** The batch being filled. */
  batch: Batch;
  /** Batches that are full, in order. */
  full: Batch[];
  /** Batches that have been pulled and may be filled again. */
  readonly spare: Batch[];
  /** Whether batches have rotary columns. */
  rotary: boolean;
}

/** A motion to be written; atoms. */
export interface MotionRow {
  readonly kind: number;
  readonly frame: number;
  readonly known: number;
  readonly stated: number;
  /** x y z a b c after the motion. */
  readonly at: Float64Array;
  /** Atoms a minute; 0 on rapids. */
  readonly feed: number;
  readonly source: number;
}

/** A writer with an empty batch. */
export function createWriter(): Writer {
  return { batch: createBatch(), full: [], spare: [], rotary: false };
}

/** From here on batches have rotary columns. */
export function useRotary(writer: Writer): void {
  if (writer.rotary) return;
  const { batch } = writer;
  if (batch.count > 0) writer.full.push(batch);
  writer.rotary = true;
  writer.spare.length = 0;
  writer.batch = createBatch(batchRows, true);
  if (batch.count === 0) {
    writer.batch.sections = batch.sections;
    writer.batch.sectionNames = batch.sectionNames;
  }
}

/** Makes room for at least one row. */
function makeRoom(writer: Writer): void {
  if (writer.batch.count < capacity(writer.batch)) return;
  writer.full.push(writer.batch);
  writer.batch = writer.spare.pop() ?? createBatch(batchRows, writer.rotary);
}

/** A section of the program begins before the next row; one that has no rows gives its place to the next. */
export function beginSection(writer: Writer, name: string): void {
  makeRoom(writer);
  const { sections, sectionNames, count } = writer.batch;
  if (sections.at(-1) !== count) sections.push(count);
  sectionNames[sections.length - 1] = name;
}

/** Appends a rare step. */
export function writeStep(writer: Writer, step: Step, source: number): void {
  makeRoom(writer);
  pushAside(writer.batch, step, source);
}

/** Appends one motion. */
export function writeRow(writer: Writer, row: MotionRow): void {
  makeRoom(writer);
  const { batch } = writer;
  const index = batch.count++;
  const value = (axis: number): number => (row.known & (1 << axis) ? row.at[axis] : 0);
  batch.kind[index] = row.kind;
  batch.frame[index] = row.frame;
  batch.known[index] = row.known;
  batch.stated[index] = row.stated;
  batch.x[index] = value(0);
  batch.y[index] = value(1);
  batch.z[index] = value(2);
  batch.abc?.forEach((column, axis) => (column[index] = value(3 + axis)));
  batch.feed[index] = row.feed;
  batch.c1[index] = batch.c2[index] = 0;
  batch.turns[index] = 0;
  batch.aside[index] = -1;
  batch.source[index] = row.source;
}

/**
 * Appends the rows `from` to `to` (not included) of another batch, column by column; none of them is an aside.
 *
 * @param amend is shown the rows that were copied, as the batch and their first and last (not included) index in it
 */
export function copyRows(
  writer: Writer,
  rows: Batch<unknown>,
  from: number,
  to: number,
  amend?: (batch: Batch, from: number, to: number) => void,
): void {
  while (from < to) {
    makeRoom(writer);
    const { batch } = writer;
    const end = Math.min(to, from + capacity(batch) - batch.count);
    const at = batch.count;
    copyColumns(batch, rows, from, end);
    batch.count += end - from;
    amend?.(batch, at, batch.count);
    from = end;
  }
}

function copyColumns(batch: Batch, rows: Batch<unknown>, from: number, end: number): void {
  const at = batch.count;
  batch.kind.set(rows.kind.subarray(from, end), at);
  batch.frame.set(rows.frame.subarray(from, end), at);
  batch.known.set(rows.known.subarray(from, end), at);
  batch.stated.set(rows.stated.subarray(from, end), at);
  batch.x.set(rows.x.subarray(from, end), at);
  batch.y.set(rows.y.subarray(from, end), at);
  batch.z.set(rows.z.subarray(from, end), at);
  batch.abc?.forEach((column, axis) => {
    if (rows.abc) column.set(rows.abc[axis].subarray(from, end), at);
    else column.fill(0, at, at + end - from);
  });
  batch.feed.set(rows.feed.subarray(from, end), at);
  batch.c1.set(rows.c1.subarray(from, end), at);
  batch.c2.set(rows.c2.subarray(from, end), at);
  batch.turns.set(rows.turns.subarray(from, end), at);
  batch.aside.fill(-1, at, at + end - from);
  batch.source.set(rows.source.subarray(from, end), at);
}

/** Hands on the full batches; each is filled again after the next pull. */
export function* drain(writer: Writer): Generator<Batch> {
  const { full } = writer;
  writer.full = [];
  for (const batch of full) {
    yield batch;
    if ((batch.abc !== undefined) !== writer.rotary) continue;
    clearBatch(batch);
    writer.spare.push(batch);
  }
}

/** Hands on all that has been written, the batch being filled, too. */
export function* flush(writer: Writer): Generator<Batch> {
  yield* drain(writer);
  const { batch } = writer;
  if (batch.count === 0) return;
  yield batch;
  clearBatch(batch);
}
