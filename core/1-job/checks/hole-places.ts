import { atomsPerMillimetre } from "#base";

/** A hole that was made. */
export interface MadeHole {
  /** Z of its bottom, atoms. */
  readonly depth: number;
  /** Atoms. */
  readonly diameter: number;
}

/** Remembers where holes were made, by who made them. */
export interface HolePlaces {
  /** The deepest hole that was made there; undefined also where it is not remembered. */
  at(who: string, x: number, y: number): MadeHole | undefined;
  /** Remembers a hole, unless a deeper one is there. */
  add(who: string, x: number, y: number, hole: MadeHole): void;
  /** Whether no more can be remembered; from then on nothing is known of places. */
  isFull(): boolean;
}

/** Places in one cell of this size are one place: finer than a hole's place matters, and coarser than most grids. */
const cell = atomsPerMillimetre / 100;

/** Cells along an axis, to either side of 0: 150 m. Two such numbers make one that a number holds exactly. */
const cells = 15_000_000;

/** Places that are remembered in all. */
export const mostPlaces = 100_000;

/** Begins remembering. Memory is bounded: a job with more holes is not looked at any further. */
export function createHolePlaces(most = mostPlaces): HolePlaces {
  const makers = new Map<string, Map<number, MadeHole>>();
  const counted = { places: 0 };
  return {
    at: (who, x, y) => makers.get(who)?.get(cellOf(x, y)),
    add: (who, x, y, hole) => {
      const key = cellOf(x, y);
      if (Number.isNaN(key)) return;
      const made = makers.get(who) ?? new Map<number, MadeHole>();
      makers.set(who, made);
      const known = made.get(key);
      if (known === undefined) counted.places++;
      if (known === undefined || hole.depth < known.depth) made.set(key, hole);
    },
    isFull: () => counted.places >= most,
  };
}

/** The cell of a place; no number where it is farther away than 150 m. */
function cellOf(x: number, y: number): number {
  const column = Math.round(x / cell);
  const row = Math.round(y / cell);
  return Math.max(Math.abs(column), Math.abs(row)) < cells ? column * 2 * cells + row : NaN;
}
