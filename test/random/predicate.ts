import type { RandomJob } from "./random-job.ts";

/**
 * What a dialect cannot say, as a person would tell it from the dialect's text; written apart from the product, which never
 * sees this file.
 */
interface Speech {
  readonly inverseTime: boolean;
  readonly workOffsets: number;
  readonly coolant: readonly string[];
}

const speech = {
  // NISTIR 6556: G93 (3.5.20), nine coordinate systems (3.5.13), M7 and M8 (3.6.4).
  rs274ngc: { inverseTime: true, workOffsets: 9, coolant: ["off", "mist", "flood"] },
  // No feed mode but per minute, G54 to G59, M07 and M08.
  "explicit-words": { inverseTime: false, workOffsets: 6, coolant: ["off", "mist", "flood"] },
} as const satisfies Record<string, Speech>;

/** The dialects that the predicate knows. */
export type KnownDialect = keyof typeof speech;

/** The rules by which a dialect must refuse a job; empty: it must be proved. */
export function predictedRefusals(job: RandomJob, dialect: KnownDialect): ReadonlySet<string> {
  const { inverseTime, workOffsets, coolant }: Speech = speech[dialect];
  const rules = new Set<string>();
  for (const operation of job.operations) {
    if (operation.feedMode === "inverse-time" && !inverseTime) rules.add("lower/feed-mode");
    if (operation.workOffset > workOffsets) rules.add("lower/work-offset");
    if (!coolant.includes(operation.coolant)) rules.add("lower/coolant");
  }
  return rules;
}
