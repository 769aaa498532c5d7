import type { Batch } from "#base";
import { batchRows, clearBatch, createBatch, frame, pushAside, rowKind } from "#base";
import type { LoweredStep } from "./lowered.ts";

/** Batches on their way out: the one being filled, those that are full, and those that may be used again. */
export interface Output {
  batch: Batch<LoweredStep>;
  full: Batch<LoweredStep>[];
  readonly free: Batch<LoweredStep>[];
  readonly rotary: boolean;
}

/** Makes an output; `rotary` gives its batches columns for a, b and c. */
export function createOutput(rotary: boolean): Output {
  return { batch: createBatch(batchRows, rotary), full: [], free: [], rotary };
}

/** Sees to it that the batch has room for one more row. */
export function makeRoom(output: Output): Batch<LoweredStep> {
  if (output.batch.count === batchRows) {
    output.full.push(output.batch);
    output.batch = output.free.pop() ?? createBatch(batchRows, output.rotary);
    clearBatch(output.batch);
  }
  return output.batch;
}

/** Hands on what is full; each batch is used again once the next is pulled. */
export function* drain(output: Output): Generator<Batch<LoweredStep>> {
  const { full } = output;
  output.full = [];
  for (const batch of full) {
    yield batch;
    output.free.push(batch);
  }
}

/** Hands on the batch being filled, too. */
export function* finish(output: Output): Generator<Batch<LoweredStep>> {
  yield* drain(output);
  if (output.batch.count > 0) yield output.batch;
}

/** Writes a rare step. */
export function writeAside(output: Output, step: LoweredStep, source: number): void {
  pushAside(makeRoom(output), step, source);
}

/** Writes a motion or hole row in work coordinates; `at` holds x y z a b c after the motion. */
export function writeRow(output: Output, row: RowFields, at: Float64Array, source: number): void {
  const batch = makeRoom(output);
  const index = batch.count++;
  batch.kind[index] = row.kind;
  batch.frame[index] = frame.work;
  batch.known[index] = row.known;
  batch.stated[index] = row.stated;
  batch.x[index] = at[0];
  batch.y[index] = at[1];
  batch.z[index] = at[2];
  if (batch.abc) for (let axis = 0; axis < 3; axis++) batch.abc[axis][index] = at[3 + axis];
  batch.feed[index] = row.kind === rowKind.rapid ? 0 : row.feed;
  batch.c1[index] = row.c1;
  batch.c2[index] = row.c2;
  batch.turns[index] = row.turns;
  batch.aside[index] = -1;
  batch.source[index] = source;
}

/** What a row says beside its place; see `Batch` for the meaning and the units. */
export interface RowFields {
  kind: number;
  known: number;
  stated: number;
  feed: number;
  c1: number;
  c2: number;
  turns: number;
}
