import type { Batch, CoolantMedium } from "#base";
import { batchRows, capacity, clearBatch, createBatch, frame, pushAside, rowKind } from "#base";
import type { Dialect } from "#dialect";
import type { Holes, Job, JobStep } from "#job";
import type { StretchDraft } from "./drafts.ts";

/** Rows of one operation that are ready to be handed on. */
export interface ReadyRows {
  readonly operation: number;
  readonly batch: Batch<JobStep>;
}

/** Writing the rows of operations while the program is walked through. */
export interface RowWriter {
  readonly stretches: readonly StretchDraft[];
  readonly dialect: Dialect;
  readonly stock: Job["stock"];
  /** Batches that are full or whose operation is at its end, in order. */
  readonly ready: ReadyRows[];
  /** Batches that may be filled again. */
  readonly spare: Batch<JobStep>[];
  batch: Batch<JobStep> | undefined;
  /** The stretch that is written; undefined where it becomes no operation. */
  draft: StretchDraft | undefined;
  /** Where the job has the tool: x y z a b c. */
  readonly at: Float64Array;
  /** Whether motions at rapid may lead to where the tool is already, as behind a stop. */
  settling: boolean;
  /** Speed and coolant as the job has them; milli-rpm. */
  rpm: number;
  media: readonly CoolantMedium[];
  compensated: "off" | "left" | "right";
  /** Holes that are being written. */
  holes: Holes | undefined;
}

export function createRowWriter(
  stretches: readonly StretchDraft[],
  dialect: Dialect,
  stock: Job["stock"],
): RowWriter {
  return {
    stretches,
    dialect,
    stock,
    ready: [],
    spare: [],
    batch: undefined,
    draft: undefined,
    at: new Float64Array(6),
    settling: false,
    rpm: 0,
    media: [],
    compensated: "off",
    holes: undefined,
  };
}

/** Appends a rare step of a job. */
export function push(writer: RowWriter, step: JobStep, source: number): void {
  if (writer.draft === undefined) return;
  if (step.kind !== "holes-end" && step.kind !== "holes") closeHoles(writer, source);
  pushAside(room(writer, 1, writer.batch?.abc !== undefined), step, source);
}

/** Appends a rapid of some axes (axis bits) to where the job has the tool. */
export function pushRapid(writer: RowWriter, stated: number, source: number): void {
  const target = room(writer, 1, writer.batch?.abc !== undefined);
  const row = target.count++;
  const value = (axis: number): number => ((stated & (1 << axis)) === 0 ? 0 : writer.at[axis]);
  target.kind[row] = rowKind.rapid;
  target.frame[row] = frame.work;
  target.known[row] = target.stated[row] = stated;
  target.x[row] = value(0);
  target.y[row] = value(1);
  target.z[row] = value(2);
  target.abc?.forEach((column, axis) => (column[row] = value(3 + axis)));
  target.feed[row] = target.c1[row] = target.c2[row] = target.turns[row] = 0;
  target.aside[row] = -1;
  target.source[row] = source;
}

/** The batch, with room for so many rows. */
export function room(writer: RowWriter, rows: number, rotary: boolean): Batch<JobStep> {
  const { batch } = writer;
  if (batch && capacity(batch) - batch.count >= rows && (!rotary || batch.abc)) return batch;
  handOn(writer);
  return useBatch(writer, rotary);
}

/** Takes a batch to be filled. */
export function useBatch(writer: RowWriter, rotary: boolean): Batch<JobStep> {
  const index = writer.spare.findIndex(({ abc }) => (abc !== undefined) === rotary);
  const [batch] = index < 0 ? [createBatch<JobStep>(batchRows, rotary)] : writer.spare.splice(index, 1);
  clearBatch(batch);
  writer.batch = batch;
  return batch;
}

/** Puts the batch among those that are ready. */
export function handOn(writer: RowWriter): void {
  const { batch, draft } = writer;
  if (batch === undefined) return;
  writer.batch = undefined;
  if (draft !== undefined && batch.count > 0) writer.ready.push({ operation: draft.operation, batch });
  else writer.spare.push(batch);
}

/** Ends the holes that are being written. */
export function closeHoles(writer: RowWriter, source: number): void {
  if (writer.holes === undefined) return;
  writer.holes = undefined;
  push(writer, { kind: "holes-end" }, source);
}

/** Copies the columns of motions; they name the axes that the program names. */
export function copyColumns(target: Batch<JobStep>, batch: Batch, from: number, to: number): void {
  const at = target.count;
  for (const column of ["kind", "stated", "x", "y", "z", "feed", "c1", "c2", "turns", "source"] as const)
    target[column].set(batch[column].subarray(from, to), at);
  target.known.set(batch.stated.subarray(from, to), at);
  target.frame.fill(frame.work, at, at + to - from);
  target.aside.fill(-1, at, at + to - from);
  target.abc?.forEach((column, axis) => {
    if (batch.abc) column.set(batch.abc[axis].subarray(from, to), at);
    else column.fill(0, at, at + to - from);
  });
}
