import { rowKind } from "#base";
import type { Batch, Step } from "#base";

/** One row as a record of its own; made only once a difference was found. */
export interface RowRecord {
  readonly kind: number;
  readonly frame: number;
  readonly known: number;
  /** Axes that the motion names. */
  readonly stated: number;
  /** Places of x, y, z in atoms and a, b, c in micro-degrees. */
  readonly at: readonly number[];
  readonly feed: number;
  readonly c1: number;
  readonly c2: number;
  readonly turns: number;
  readonly step: Step | undefined;
  /** Byte offset in its text. */
  readonly source: number;
}

/** Takes a row out of its batch. */
export function recordRow(batch: Batch, row: number): RowRecord {
  const { abc } = batch;
  return {
    kind: batch.kind[row],
    frame: batch.frame[row],
    known: batch.known[row],
    stated: batch.stated[row],
    at: [
      batch.x[row],
      batch.y[row],
      batch.z[row],
      abc?.[0][row] ?? 0,
      abc?.[1][row] ?? 0,
      abc?.[2][row] ?? 0,
    ],
    feed: batch.feed[row],
    c1: batch.c1[row],
    c2: batch.c2[row],
    turns: batch.turns[row],
    step: batch.kind[row] === rowKind.aside ? batch.asides[batch.aside[row]] : undefined,
    source: batch.source[row],
  };
}
