import type { Sequence } from "./sequences.ts";

/** A good sequence broken in one way. */
export interface Broken {
  rule: string;
  how: string;
  make: () => Sequence;
  /** How often it is named: once, unless the fault itself comes again. */
  times?: number;
}
