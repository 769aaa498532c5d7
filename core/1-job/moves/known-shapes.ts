/** How a line is written: its bytes from behind the comma before it to behind its own, but for its numbers. */
export interface Shape {
  /** The bytes before each number and behind the last, one after the other. */
  readonly literals: Uint8Array;
  /** Index in `literals` where each of these pieces ends. */
  readonly ends: readonly number[];
  /** Place of each number in `Move.values`. */
  readonly slots: readonly number[];
  /** Axis mask of its words. */
  readonly words: number;
  /** Bytes from the comma before it to its brace. */
  readonly lead: number;
  /** Whether it states its feed. */
  readonly fed: boolean;
}

/** Shapes that are kept: lines with and without Z, with and without feed, say. */
export const mostShapes = 4;

/** Shapes that may be learnt without one line that has them: more would cost more than they save. */
export const mostPatience = 16;

/** What is known of how lines are written. */
export interface KnownShapes {
  /** The last ones learnt. */
  readonly shapes: Shape[];
  /** How many more are learnt before one of them has to be of use. */
  patience: number;
}
