/** What belongs to one set-up and not to the machine; it overrides the dialect file. */
export interface Setup {
  /** Origins of the work offsets in machine coordinates, atoms, where they are stated; index is the offset number. */
  readonly workOffsets: readonly (readonly [number, number, number] | undefined)[];
  /** Gauge length of each tool, atoms, by its number. */
  readonly lengths: Readonly<Record<number, number>>;
  /** Tool in each pocket, index 0 is pocket 1, 0 means empty; undefined where it is not stated. */
  readonly rack: readonly number[] | undefined;
  /** Tool in the spindle: its number, 0 for none, undefined where it is not stated. */
  readonly spindleHolds: number | undefined;
}
