import type { CycleKind } from "#base";
import type { Sourced } from "./row.ts";

/** What a fixed cycle does at a hole, one motion after the other. */
export interface Cycle extends Sourced {
  readonly code: string;
  /** What we call it. */
  readonly kind: CycleKind;
  /** Words that it needs besides X Y Z R. */
  readonly words: string;
  /** Peck and dwell that these words state, atoms and microseconds. */
  readonly peck: number;
  readonly dwell: number;
  /** What a job asks for, in the words of a job; undefined where no job can ask for it. */
  readonly job: { readonly kind: string; readonly [field: string]: unknown } | undefined;
  /**
   * Motions behind the preliminary ones (X and Y at rapid, then R at rapid), from 2 to -18 with pecks of 4: "f" at feed, "r" at
   * rapid, "dwell" in seconds, what else is done in words. The end is at R; the clear level is left to each hole.
   */
  readonly steps: readonly string[];
}

const read = { source: "NISTIR 6556 3.5.16", confidence: "read" } as const;
const later = { source: "later RS274/NGC controllers", confidence: "memory" } as const;

// prettier-ignore
export const cycles: readonly Cycle[] = [
  { code: "G81", kind: "drill", words: "", peck: 0, dwell: 0, job: { kind: "drill" }, steps: ["f z-18", "r z2"], ...read },
  { code: "G82", kind: "dwell", words: "P0.5", peck: 0, dwell: 500_000, job: { kind: "dwell", dwell: 500_000 }, steps: ["f z-18", "dwell 0.5", "r z2"], ...read },
  // The back-off of 0.254 mm (0.010 inch) is that of the table; the first peck counts from R. Seen on the interpreter, too.
  { code: "G83", kind: "peck", words: "Q4", peck: 40_000_000, dwell: 0, job: { kind: "peck", peck: 40_000_000, backOff: 2_540_000 },
    steps: ["f z-2", "r z2", "r z-1.746", "f z-6", "r z2", "r z-5.746", "f z-10", "r z2", "r z-9.746", "f z-14", "r z2", "r z-13.746", "f z-18", "r z2"], ...read },
  { code: "G73", kind: "chip-break", words: "Q4", peck: 40_000_000, dwell: 0, job: { kind: "chip-break", peck: 40_000_000, backOff: 2_540_000 },
    steps: ["f z-2", "r z-1.746", "f z-6", "r z-5.746", "f z-10", "r z-9.746", "f z-14", "r z-13.746", "f z-18", "r z2"], ...later },
  { code: "G84", kind: "tap", words: "", peck: 0, dwell: 0, job: undefined, steps: ["f z-18", "stop", "ccw", "f z2", "stop", "cw"], ...read },
  { code: "G74", kind: "tap-left", words: "", peck: 0, dwell: 0, job: undefined, steps: ["f z-18", "stop", "cw", "f z2", "stop", "ccw"], ...later },
  { code: "G85", kind: "ream", words: "", peck: 0, dwell: 0, job: { kind: "ream" }, steps: ["f z-18", "f z2"], ...read },
  { code: "G86", kind: "bore-stop", words: "P1", peck: 0, dwell: 1_000_000, job: undefined, steps: ["f z-18", "dwell 1", "stop", "r z2", "cw"], ...read },
  { code: "G88", kind: "bore-manual", words: "P1", peck: 0, dwell: 1_000_000, job: undefined, steps: ["f z-18", "dwell 1", "stop", "program stop", "cw"], ...read },
  { code: "G89", kind: "bore-dwell", words: "P1", peck: 0, dwell: 1_000_000, job: { kind: "bore", dwell: 1_000_000 }, steps: ["f z-18", "dwell 1", "f z2"], ...read },
];

/** Codes of the table that have no meaning here: back boring takes I, J and K, and no job asks for it. */
export const unknownCycles: readonly string[] = ["G87"];

/** Where the tool stands between holes, from an initial level of 20 and R2. NISTIR 6556 Table 5 (read). */
export const returnLevels: readonly (readonly [code: string, level: number])[] = [
  ["G98", 20],
  ["G99", 2],
];
