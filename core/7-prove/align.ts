import { sameRow } from "./compare.ts";
import type { RowRecord } from "./row-record.ts";

/** One difference between what was meant and what was read. */
export type Difference =
  | { readonly kind: "differs"; readonly expected: RowRecord; readonly actual: RowRecord }
  | { readonly kind: "missing"; readonly expected: RowRecord }
  | { readonly kind: "extra"; readonly actual: RowRecord };

/** Rows that are looked at ahead to find where both sides agree again. */
export const lookAhead = 64;

/** Rows in agreement that settle where both sides go on; more are not looked at. */
const longestRun = 8;

/** How many pairs of rows from two places on are the same; both sides ending together settles it. */
function runLength(
  expected: readonly RowRecord[],
  i: number,
  actual: readonly RowRecord[],
  j: number,
): number {
  for (let run = 0; run < longestRun; run++) {
    const wanted = expected[i + run];
    const got = actual[j + run];
    if (!wanted && !got) return longestRun;
    if (!wanted || !got || !sameRow(wanted, got)) return run;
  }
  return longestRun;
}

/** Whether two rows could be the same one with a wrong value: both motions, or both steps of one kind. */
function isVariant(expected: RowRecord, actual: RowRecord): boolean {
  return expected.step === undefined ? actual.step === undefined : expected.step.kind === actual.step?.kind;
}

/** Rows to take as missing and as extra, and for how many rows both sides agree after that. */
interface Shift {
  readonly missing: number;
  readonly extra: number;
  readonly run: number;
}

/** The least rows to leave out on one side so that both sides agree for longest. */
function bestShift(expected: readonly RowRecord[], actual: readonly RowRecord[]): Shift {
  let best: Shift = { missing: 0, extra: 0, run: 0 };
  for (let shift = 1; shift < lookAhead && best.run < longestRun; shift++) {
    const missing = shift < expected.length ? runLength(expected, shift, actual, 0) : 0;
    const extra = shift < actual.length ? runLength(expected, 0, actual, shift) : 0;
    if (missing > best.run) best = { missing: shift, extra: 0, run: missing };
    if (extra > best.run) best = { missing: 0, extra: shift, run: extra };
  }
  return best;
}

/** Decides what to make of two rows that differ; undefined where it is one row with another value. */
function shiftOf(expected: readonly RowRecord[], actual: readonly RowRecord[]): Shift | undefined {
  if (expected.length === 0) return { missing: 0, extra: 1, run: 0 };
  if (actual.length === 0) return { missing: 1, extra: 0, run: 0 };
  const best = bestShift(expected, actual);
  if (isVariant(expected[0], actual[0]))
    return runLength(expected, 1, actual, 1) >= best.run ? undefined : best;
  if (best.run > 0) return best;
  if (expected[0].step && !actual[0].step) return { missing: 1, extra: 0, run: 0 };
  return !expected[0].step && actual[0].step ? { missing: 0, extra: 1, run: 0 } : undefined;
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
