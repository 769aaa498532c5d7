import { rowKind } from "#base";

/**
 * All that the comparison forgives, each with its reason. What is not listed here is compared exactly: kinds, frames,
 * known axes, places, feeds, centres, turns and every field of every step, one to one and in order.
 */
export const forgiven = {
  source: "Where a row comes from is a place in the job on one side and in the program on the other.",
  "stated-again":
    "An axis that is named though it stands where it is moves nothing; one that should be named and is not is a difference.",
  "rapid-feed": "A rapid has no feed word, and a feed left in its column moves nothing.",
  "unknown-axis":
    "The value of an axis whose place is unknown means nothing; that it is unknown is compared.",
  "batch-cut": "Where one batch ends and the next begins is up to the stage that fills them.",
} as const satisfies Record<string, string>;

/** What is forgiven. */
export type Forgiven = keyof typeof forgiven;

/** "rapid-feed": whether the feed of a row counts. */
export function feedCounts(kind: number): boolean {
  return kind !== rowKind.rapid;
}

/** "stated-again": whether all axes are named that the sequence names. */
export function namesAll(expected: number, actual: number): boolean {
  return (expected & ~actual) === 0;
}

/** "unknown-axis": whether the value of an axis counts. */
export function placeCounts(known: number, axis: number): boolean {
  return (known & (1 << axis)) !== 0;
}
