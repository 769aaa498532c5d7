import { wasComputed } from "./block.ts";
import { onGrid, exactValue } from "./read-computed.ts";
import { readNumber } from "./read-number.ts";
import type { Reader } from "./reader.ts";

type Point = readonly [first: number, second: number];

/** An arc as it was worked out: start and centre in its plane, atoms, not on the grid. */
export interface ExactArc {
  readonly start: Point;
  readonly centre: Point;
}

/** The arc of the block at hand, before the axes have moved. */
export function exactArc(reader: Reader): ExactArc {
  const { state } = reader;
  const { first, second, firstCentre, secondCentre } = state.plane;
  const start: Point = [state.work[first] + state.residue[first], state.work[second] + state.residue[second]];
  return {
    start,
    centre: [exactCentre(reader, firstCentre, start[0]), exactCentre(reader, secondCentre, start[1])],
  };
}

function exactCentre(reader: Reader, letter: number, start: number): number {
  const { block, state } = reader;
  if ((block.mask & (1 << letter)) === 0) return start;
  const value = wasComputed(block, letter)
    ? exactValue(reader, letter, state.centre)
    : readNumber(reader, letter, state.centre);
  return state.arcAbsolute ? value : start + value;
}

/**
 * The centre on the grid of an arc that was worked out. Ends and centre that are rounded each by itself can lie further from
 * one circle than a controller takes (0.0023 mm at 0.001 mm), although the numbers that it works with fit. So where these fit
 * within a step of the grid, the centre is put on the bisector of the rounded ends before it is rounded. Where they do not,
 * nothing is mended: the guard sees the arc as it is.
 *
 * @param from start on the grid
 * @param to end on the grid, which the state holds by now
 */
export function centreOnGrid(reader: Reader, { start, centre }: ExactArc, from: Point, to: Point): Point {
  const { state } = reader;
  const { first, second } = state.plane;
  const grid = Math.max(1, state.centre.grid);
  const end: Point = [to[0] + state.residue[first], to[1] + state.residue[second]];
  const plain: Point = [onGrid(centre[0], state.centre), onGrid(centre[1], state.centre)];
  const isSound = Math.abs(distance(start, centre) - distance(end, centre)) <= grid;
  const isClosed = from[0] === to[0] && from[1] === to[1];
  if (!isSound || isClosed) return plain;
  const moved = projected(centre, from, to);
  const candidate: Point = [onGrid(moved[0], state.centre), onGrid(moved[1], state.centre)];
  return distance(candidate, centre) <= 2 * grid ? candidate : nearby(plain, centre, from, to, grid);
}

/**
 * Whether an arc that was worked out is closed on the grid and not by its values, or the other way round: then it is a full circle
 * to the one and next to nothing to the other.
 */
export function isNearlyClosed({ state }: Reader, { start }: ExactArc, from: Point, to: Point): boolean {
  const { first, second } = state.plane;
  const end: Point = [to[0] + state.residue[first], to[1] + state.residue[second]];
  // A double rounded to atoms may be off by one on each axis.
  return distance(start, end) > 1.5 !== distance(from, to) > 0;
}

/** The point of the bisector of two points that is nearest to a third. */
function projected(point: Point, from: Point, to: Point): Point {
  const [x, y] = [to[0] - from[0], to[1] - from[1]];
  const along = ((from[0] + to[0]) / 2 - point[0]) * x + ((from[1] + to[1]) / 2 - point[1]) * y;
  const share = along / (x * x + y * y);
  return [point[0] + share * x, point[1] + share * y];
}

/** Where the ends are so near that the bisector leads away: the one of the nine places around that fits both best. */
function nearby(plain: Point, centre: Point, from: Point, to: Point, grid: number): Point {
  let best = plain;
  let least = Infinity;
  for (const dx of [0, -grid, grid])
    for (const dy of [0, -grid, grid]) {
      const place: Point = [plain[0] + dx, plain[1] + dy];
      const miss = Math.abs(distance(place, from) - distance(place, to)) + distance(place, centre) / 1000;
      if (miss < least) [best, least] = [place, miss];
    }
  return best;
}

function distance(one: Point, other: Point): number {
  return Math.hypot(one[0] - other[0], one[1] - other[1]);
}
