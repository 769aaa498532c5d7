import { sameRow } from "./compare.ts";
import type { RowRecord } from "./row-record.ts";

/** One difference between what was meant and what was read. */
export type Difference =
  | { readonly kind: "differs"; readonly expected: RowRecord; readonly actual: RowRecord }
  | { readonly kind: "missing"; readonly expected: RowRecord }
  | { readonly kind: "extra"; readonly actual: RowRecord };

/** Rows that are looked at ahead to find where both sides agree again. */
export const lookAhead = 64;

/** Whether `count` pairs of rows from two places on are the same, or all that are left are. */
function agree(
  expected: readonly RowRecord[],
  i: number,
  actual: readonly RowRecord[],
  j: number,
  count: number,
): boolean {
  for (let row = 0; row < count; row++) {
    const ended = i + row >= expected.length || j + row >= actual.length;
    if (ended) return row > 0;
    if (!sameRow(expected[i + row], actual[j + row])) return false;
  }
  return true;
}

/** Whether two rows could be the same one with a wrong value: both motions, or both steps of one kind. */
function isVariant(expected: RowRecord, actual: RowRecord): boolean {
  return expected.step === undefined ? actual.step === undefined : expected.step.kind === actual.step?.kind;
}

/** How many rows are missing or extra until both sides agree again for `run` rows. */
function shiftUntilAgree(
  expected: readonly RowRecord[],
  actual: readonly RowRecord[],
  run: number,
): Shift | undefined {
  for (let shift = 1; shift < lookAhead; shift++) {
    if (shift < expected.length && agree(expected, shift, actual, 0, run))
      return { missing: shift, extra: 0 };
    if (shift < actual.length && agree(expected, 0, actual, shift, run)) return { missing: 0, extra: shift };
  }
  return undefined;
}

interface Shift {
  readonly missing: number;
  readonly extra: number;
}

/** Decides what to make of two rows that differ: how many to take from each side. */
function shiftOf(expected: readonly RowRecord[], actual: readonly RowRecord[]): Shift | undefined {
  if (expected.length === 0) return { missing: 0, extra: 1 };
  if (actual.length === 0) return { missing: 1, extra: 0 };
  const variant = isVariant(expected[0], actual[0]);
  const ends = expected.length === 1 && actual.length === 1;
  if (variant && (ends || agree(expected, 1, actual, 1, 1))) return undefined;
  const shift = shiftUntilAgree(expected, actual, 2) ?? shiftUntilAgree(expected, actual, 1);
  if (shift || variant) return shift;
  if (expected[0].step && !actual[0].step) return { missing: 1, extra: 0 };
  return !expected[0].step && actual[0].step ? { missing: 0, extra: 1 } : undefined;
}

/**
 * Takes the next rows off both sides, the first of which differ, or one of which is empty.
 *
 * @param expected rows meant, the next ones first; as many as the look ahead needs, unless there are no more
 * @param actual rows read, alike
 */
export function takeDifferences(expected: RowRecord[], actual: RowRecord[]): Difference[] {
  const shift = shiftOf(expected, actual);
  if (!shift) return [{ kind: "differs", expected: expected.shift()!, actual: actual.shift()! }];
  const missing = expected.splice(0, shift.missing);
  const extra = actual.splice(0, shift.extra);
  return [
    ...missing.map((row) => ({ kind: "missing", expected: row }) as const),
    ...extra.map((row) => ({ kind: "extra", actual: row }) as const),
  ];
}
