import type { Batch, Step } from "#base";
import { axes, createBatch, frame, pushAside, rowKind } from "#base";

/** A row of a sequence taken out of its batch, so that it can be changed. Units as in the batch. */
export interface Row {
  readonly kind: number;
  readonly frame: number;
  readonly known: number;
  readonly stated: number;
  /** x, y, z in atoms; a, b, c in micro-degrees. */
  readonly at: readonly number[];
  readonly feed: number;
  readonly c1: number;
  readonly c2: number;
  readonly turns: number;
  readonly step: Step | undefined;
  readonly source: number;
  /** What the section is called that begins before this row; undefined where none does. */
  readonly section: string | undefined;
}

/** All rows of a sequence. */
export function rowsOf(batches: Iterable<Batch>): Row[] {
  const rows: Row[] = [];
  for (const batch of batches) for (let row = 0; row < batch.count; row++) rows.push(rowAt(batch, row));
  return rows;
}

function rowAt(batch: Batch, row: number): Row {
  const section = batch.sections.indexOf(row);
  return {
    kind: batch.kind[row],
    frame: batch.frame[row],
    known: batch.known[row],
    stated: batch.stated[row],
    at: [batch.x, batch.y, batch.z, ...(batch.abc ?? [])].map((column) => column[row]),
    feed: batch.feed[row],
    c1: batch.c1[row],
    c2: batch.c2[row],
    turns: batch.turns[row],
    step: batch.kind[row] === rowKind.aside ? batch.asides[batch.aside[row]] : undefined,
    source: batch.source[row],
    section: section < 0 ? undefined : batch.sectionNames[section],
  };
}

/** One batch of all rows. */
export function batchOf(rows: readonly Row[]): Batch {
  const batch = createBatch(
    Math.max(rows.length, 1),
    rows.some(({ at }) => at.length > 3),
  );
  for (const row of rows) {
    if (row.section !== undefined) {
      batch.sections.push(batch.count);
      batch.sectionNames.push(row.section);
    }
    if (row.step) pushAside(batch, row.step, row.source);
    else pushMotion(batch, row);
  }
  return batch;
}

function pushMotion(batch: Batch, row: Row): void {
  const at = batch.count++;
  batch.kind[at] = row.kind;
  batch.frame[at] = row.frame;
  batch.known[at] = row.known;
  batch.stated[at] = row.stated;
  [batch.x, batch.y, batch.z, ...(batch.abc ?? [])].forEach((column, axis) => {
    column[at] = row.at[axis] ?? 0;
  });
  batch.feed[at] = row.feed;
  batch.c1[at] = row.c1;
  batch.c2[at] = row.c2;
  batch.turns[at] = row.turns;
  batch.aside[at] = -1;
  batch.source[at] = row.source;
}

/**
 * A sequence that was changed names the axes that move now, as a stage with that fault would: a row names what it named,
 * and each axis that stands elsewhere than behind the motion before it in the same frame.
 */
export function named(rows: readonly Row[]): Row[] {
  const last: (Row | undefined)[] = [undefined, undefined];
  return rows.map((row) => {
    if (row.step) return row;
    const before = last[row.frame];
    let { stated } = row;
    axes.forEach((_, axis) => {
      const bit = 1 << axis;
      // The height of a hole is that of its cycle, and never named.
      const isLevel = row.kind === rowKind.hole && axis === 2;
      const both = before !== undefined && !isLevel && (before.known & row.known & bit) !== 0;
      if (both && before.at[axis] !== row.at[axis]) stated |= bit;
    });
    last[row.frame] = row;
    if (stated !== 0) last[frame.machine - row.frame] = undefined;
    return stated === row.stated ? row : { ...row, stated };
  });
}
