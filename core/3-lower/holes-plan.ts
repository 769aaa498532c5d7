import type { CycleDefinition } from "#base";
import type { Holes } from "#job";

/** A `holes` move settled: levels on the grid, feeds as they are written, and the fixed cycle if there is one for it. */
export interface HolesPlan {
  readonly holes: Holes;
  /** Absolute Z on the grid, atoms. */
  readonly depth: number;
  readonly retract: number;
  readonly level: number;
  readonly peck: number;
  readonly backOff: number;
  readonly feed: number;
  readonly feedOut: number;
  /** Undefined: written out as single moves. */
  readonly definition: CycleDefinition | undefined;
}
