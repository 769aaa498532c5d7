/**
 * How sure a row is. "read": the published text, or a reproduction of its table, was read. "seen": run on an open RS274/NGC
 * interpreter. "memory": from memory, not read again.
 */
export type Confidence = "read" | "seen" | "memory";

/** Where a row stands in its document, and how sure it is. */
export interface Sourced {
  /** Document with clause or table. */
  readonly source: string;
  readonly confidence: Confidence;
}
