import type { UnitSystem } from "#base";

/** A text of a cases file with its place. */
export interface PlacedText {
  readonly text: string;
  /** Byte offset of its first character in the file. */
  readonly offset: number;
}

/** One case: steps, and the blocks that a dialect is expected to write for them. */
export interface Case {
  /** As the file names it, or "case 3" by its number. */
  readonly name: string;
  /** Units of the numbers in `given`, and of the program. */
  readonly units: UnitSystem;
  readonly given: readonly PlacedText[];
  readonly expect: readonly PlacedText[];
  /** Where the case stands, and its list of blocks, byte offsets. */
  readonly offset: number;
  readonly expectOffset: number;
}
