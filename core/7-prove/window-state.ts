/**
 * A box that the tool must not be over and below the top of: it comes down from above, so what counts is X, Y and the
 * top. Work coordinates, atoms.
 */
export interface Column {
  readonly name: string;
  readonly lowX: number;
  readonly highX: number;
  readonly lowY: number;
  readonly highY: number;
  readonly top: number;
  /** Radius of its upright edges, where it is a box grown by the radius of a tool; 0 for square ones. */
  readonly corner: number;
}

/** Bounds of the rows that need no closer look; see windows.ts. */
export interface WindowState {
  /** Axes whose bounds have to be worked out anew. */
  staleAxes: number;
  staleFeed: boolean;
  /** Least and most place of each axis in the work frame, or the span so far. */
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** Travel of an axis as a span, where its place in the machine is unknown; infinite otherwise. */
  readonly span: Float64Array;
  /** Least and most feed in the feed mode in force. */
  lowFeed: number;
  highFeed: number;
  /** Highest feed of X, Y and Z, atoms a minute; a feed that was named raises it. */
  readonly axisMost: Float64Array;
  /** At or below this feed, in the feed mode in force, no axis can be above its own. */
  freeFeed: number;
  /** What a feed in the mode in force is multiplied by to be one a minute; 0 for inverse time. */
  feedUnit: number;
  /** Rapids at or above this Z are clear of the stock. */
  stockTop: number;
  /** Boxes that work motion stays out of, and the stock, under the work offset in force. */
  columns: readonly Column[];
  stock: Column | undefined;
  /** One box around all columns. */
  around: Column;
  /** Ends of travel that were named: bit 2n low, bit 2n + 1 high. */
  outside: number;
}

/** Bounds that are all still to be worked out. */
export function createWindows(): WindowState {
  return {
    staleAxes: 63,
    staleFeed: true,
    low: new Float64Array(6).fill(-Infinity),
    high: new Float64Array(6).fill(Infinity),
    span: new Float64Array(6).fill(Infinity),
    lowFeed: Infinity,
    highFeed: 0,
    axisMost: new Float64Array(3).fill(Infinity),
    freeFeed: 0,
    feedUnit: 1,
    stockTop: Infinity,
    columns: [],
    stock: undefined,
    around: {
      name: "",
      lowX: Infinity,
      highX: -Infinity,
      lowY: Infinity,
      highY: -Infinity,
      top: -Infinity,
      corner: 0,
    },
    outside: 0,
  };
}
