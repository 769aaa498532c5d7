import type { Reportable } from "#report";

/** What one posting came to, and the files that it was made from, as far as they are known. */
export interface Posted {
  readonly result: Reportable;
  readonly madeFrom: readonly string[];
}
