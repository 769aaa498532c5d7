import type { Step } from "#base";
import { batchColumns, createBatch, pushAside } from "#base";
import type { Reader } from "./reader.ts";

/** Rows that one block can give at most: two lists of codes, a few rows of motion. Repeated holes are handed on apart. */
export const rowsOfBlock = 64;

/** Rows handed on since the start of the program. */
export function rowsSoFar(reader: Reader): number {
  return reader.rowsBefore + reader.batch.count;
}

/** Hands a step on. */
export function pushStep(reader: Reader, step: Step): void {
  pushAside(reader.batch, step, reader.block.start);
}

/**
 * Hands a row of motion on: its place is the one that the state holds by now.
 *
 * @param kind row kind
 * @param inFrame 0 for the work frame, 1 for the machine's
 * @param stated axis mask
 * @param c1 centre or radius, atoms
 */
export function pushRow(
  reader: Reader,
  kind: number,
  inFrame: number,
  stated: number,
  feed: number,
  c1: number,
  c2: number,
  turns: number,
): void {
  const { batch, state } = reader;
  const place = inFrame === 0 ? state.work : state.machine;
  const row = batch.count++;
  batch.kind[row] = kind;
  batch.frame[row] = inFrame;
  batch.known[row] = inFrame === 0 ? state.workKnown : state.machineKnown;
  batch.stated[row] = stated;
  batch.x[row] = place[0];
  batch.y[row] = place[1];
  batch.z[row] = place[2];
  if (batch.abc) for (let axis = 0; axis < 3; axis++) batch.abc[axis][row] = place[3 + axis];
  batch.feed[row] = feed;
  batch.c1[row] = c1;
  batch.c2[row] = c2;
  batch.turns[row] = turns;
  batch.aside[row] = -1;
  batch.source[row] = reader.block.start;
}

/** Gives the batch rotary columns from here on: the first rotary word of a program has come. */
export function useRotary(reader: Reader): void {
  if (reader.batch.abc) return;
  const old = reader.batch;
  const batch = createBatch(old.kind.length, true);
  batch.count = old.count;
  batch.asides = old.asides;
  batch.sections = old.sections;
  batch.sectionNames = old.sectionNames;
  for (const column of batchColumns) batch[column].set(old[column]);
  reader.batch = batch;
}
