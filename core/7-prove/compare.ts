import { rowKind } from "#base";
import type { Batch, Step } from "#base";
import { feedCounts, namesAll, placeCounts } from "./forgiven.ts";
import type { RowRecord } from "./row-record.ts";

/** Whether two steps are equal in every field. */
export function sameStep(expected: Step, actual: Step): boolean {
  if (expected.kind !== actual.kind) return false;
  const wanted = expected as unknown as Readonly<Record<string, unknown>>;
  const got = actual as unknown as Readonly<Record<string, unknown>>;
  const names = Object.keys(wanted);
  return names.length === Object.keys(got).length && names.every((name) => wanted[name] === got[name]);
}

/** Whether two rows mean the same. */
export function sameRow(expected: RowRecord, actual: RowRecord): boolean {
  if (expected.kind !== actual.kind) return false;
  if (expected.step && actual.step) return sameStep(expected.step, actual.step);
  return (
    expected.frame === actual.frame &&
    expected.known === actual.known &&
    namesAll(expected.stated, actual.stated) &&
    expected.at.every((place, axis) => !placeCounts(expected.known, axis) || place === actual.at[axis]) &&
    (!feedCounts(expected.kind) || expected.feed === actual.feed) &&
    expected.c1 === actual.c1 &&
    expected.c2 === actual.c2 &&
    expected.turns === actual.turns
  );
}

/** Whether two rows are equal in every linear column that counts, rare steps included. */
function equalAt(e: Batch, i: number, a: Batch, j: number): boolean {
  const kind = e.kind[i];
  if (kind !== a.kind[j]) return false;
  if (kind === rowKind.aside) return sameStep(e.asides[e.aside[i]], a.asides[a.aside[j]]);
  if (e.frame[i] !== a.frame[j] || e.known[i] !== a.known[j]) return false;
  if (!namesAll(e.stated[i], a.stated[j])) return false;
  if (e.x[i] !== a.x[j] || e.y[i] !== a.y[j] || e.z[i] !== a.z[j]) return false;
  if (kind !== rowKind.rapid && e.feed[i] !== a.feed[j]) return false;
  return e.c1[i] === a.c1[j] && e.c2[i] === a.c2[j] && e.turns[i] === a.turns[j];
}

/** Whether the rotary places of two rows are equal; a batch without rotary columns has all of them at 0. */
function equalRotary(e: Batch, i: number, a: Batch, j: number): boolean {
  for (let axis = 0; axis < 3; axis++) {
    if ((e.abc ? e.abc[axis][i] : 0) !== (a.abc ? a.abc[axis][j] : 0)) return false;
  }
  return true;
}

/**
 * Compares rows of two batches on their columns, up to the first that is not equal in every column that counts.
 *
 * @param i first row in the batch meant
 * @param j first row in the batch read
 * @returns number of rows that are equal; the next row of each, if there is one, needs a closer look
 */
export function countEqual(expected: Batch, i: number, actual: Batch, j: number): number {
  const most = Math.min(expected.count - i, actual.count - j);
  const rotary = expected.abc !== undefined || actual.abc !== undefined;
  for (let row = 0; row < most; row++) {
    if (!equalAt(expected, i + row, actual, j + row)) return row;
    if (rotary && !equalRotary(expected, i + row, actual, j + row)) return row;
  }
  return most;
}
