import type { BesideKey, MoveReader } from "./reader.ts";

/** How a kind of move is read. */
export interface KindOfMove {
  /** Keys that may stand beside the kind's own. */
  readonly beside: readonly BesideKey[];
  /** Reads the value of the kind's own key into `Move`. @returns whether it is without fault */
  readonly read: (reader: MoveReader) => boolean;
  /** Checks the whole move, whatever the order of its keys, and writes its rows; the batch has room for two. */
  readonly finish: (reader: MoveReader) => void;
}
