import type { Sourced } from "./row.ts";

/** By how much the radii of the start and the end of an arc by its centre may differ. */
export interface ArcTolerance extends Sourced {
  readonly units: "mm" | "inch";
  readonly most: number;
  /** Blocks of an arc whose radii differ by the most, and by more: the centre is off by half of that. */
  readonly within: string;
  readonly beyond: string;
}

const clause = { source: "NISTIR 6556 3.5.3.2", confidence: "read" } as const;

export const arcTolerances: readonly ArcTolerance[] = [
  { units: "mm", most: 0.002, within: "X10 Y0 I5.001 J0", beyond: "X10 Y0 I5.002 J0", ...clause },
  { units: "inch", most: 0.0002, within: "X1 Y0 I0.5001 J0", beyond: "X1 Y0 I0.5002 J0", ...clause },
];
