import type { Batch, FeedMode, UnitSystem } from "#base";

/** What a compiled emitter offers. */
export interface Emitter {
  /**
   * Writes a sequence as text. Nothing is checked here: whoever calls it guards the sequence before, and reads the text back.
   *
   * @returns chunks of bytes, each valid until the next is pulled
   * @throws where the dialect has no word for a step, which the stages before should have refused
   */
  emitUnproved(batches: Iterable<Batch>, options: EmitOptions): Iterable<Uint8Array>;
  /** A text as a message of the program has it: in the characters of the dialect's comments, and cut to their length. */
  cleanText(text: string): string;
  /** Traced emitter only: the dialect keys that words report, by their index. */
  readonly traceKeys?: readonly string[];
}

export interface EmitOptions {
  /** Units of the program. */
  readonly units: UnitSystem;
  /** Comment lines at the head. */
  readonly header: readonly string[];
  /** Comment lines behind the last block, where the dialect has a footer. */
  readonly footer?: readonly string[];
  /** Only the blocks: no delimiter, program number, header or block numbers; each states motion and feed anew. Shows a corrected block. */
  readonly fragment?: boolean;
  /** Where a fragment starts, and in which modes; a program starts nowhere. Arcs by centre and incremental words need it. */
  readonly start?: EmitStart;
  /** Traced emitter only: called for each word with its byte offset in the whole text and the index of its key in `traceKeys`. */
  readonly trace?: (offset: number, key: number) => void;
}

/** State of the controller where a fragment starts. */
export interface EmitStart {
  /** Axes whose place in work coordinates is known, as a mask; the places of others are 0. */
  readonly known: number;
  /** Places in work coordinates, atoms. */
  readonly x: number;
  readonly y: number;
  readonly z: number;
  /** Micro-degrees. */
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly distance: "absolute" | "incremental";
  readonly feedMode: FeedMode;
}
