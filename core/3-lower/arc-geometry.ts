import { roundToGrid } from "#base";

/** Geometry of arcs in their plane. Lengths are atoms, angles radians; a place is [first axis, second axis]. */

export type Point = readonly [number, number];

const fullTurn = 2 * Math.PI;

/** Distance of two places. */
export function distance(from: Point, to: Point): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1]);
}

/**
 * Sweep of an arc in its sense of rotation, above 0 and at most one turn; ends that meet make a full turn.
 *
 * @param direction +1 counter-clockwise, -1 clockwise
 */
export function sweepOf(start: Point, end: Point, centre: Point, direction: number): number {
  if (start[0] === end[0] && start[1] === end[1]) return fullTurn;
  const from = Math.atan2(start[1] - centre[1], start[0] - centre[0]);
  const to = Math.atan2(end[1] - centre[1], end[0] - centre[0]);
  const sweep = ((to - from) * direction) % fullTurn;
  return sweep <= 0 ? sweep + fullTurn : sweep;
}

/** Place on an arc after a part of its sweep; the radius runs evenly from that of the start to that of the end. */
export function alongArc(arc: ArcPath, part: number): Point {
  const { start, end, centre, direction, sweep } = arc;
  const radius = distance(centre, start) * (1 - part) + distance(centre, end) * part;
  const angle = Math.atan2(start[1] - centre[1], start[0] - centre[0]) + direction * sweep * part;
  return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
}

/** An arc as the job has it; `sweep` may be several turns. */
export interface ArcPath {
  readonly start: Point;
  readonly end: Point;
  readonly centre: Point;
  /** +1 counter-clockwise, -1 clockwise. */
  readonly direction: number;
  readonly sweep: number;
}

/** By how much the start and the end radius differ. */
export function mismatch(start: Point, end: Point, centre: Point): number {
  return Math.abs(distance(centre, start) - distance(centre, end));
}

/**
 * The centre as it is written, on the grid of the centre words: as an offset from the rounded start, or as a place.
 *
 * Rounding start, end and centre each on its own lets the two radii differ by up to 0.0023 mm at three decimals, which is
 * past the 0.002 mm of NISTIR 6556 3.5.3.2. So the true centre is first projected onto the perpendicular bisector of
 * the rounded ends (worst 0.0014 mm); that also evens out radii that differ in the job itself. Where the ends are so close that
 * the projection would carry the centre away, the places of the grid around the true centre are searched instead.
 *
 * @param allowed how far the projection may shift the centre, atoms
 */
export function centreOnGrid(start: Point, end: Point, centre: Point, rounding: CentreRounding): Point {
  const { grid, from, allowed } = rounding;
  const chord: Point = [end[0] - start[0], end[1] - start[1]];
  const chordSquared = chord[0] ** 2 + chord[1] ** 2;
  const onGrid = (point: Point): Point => [
    from[0] + roundToGrid(point[0] - from[0], grid),
    from[1] + roundToGrid(point[1] - from[1], grid),
  ];
  if (chordSquared === 0 || isSettled(start, end, centre, rounding)) return onGrid(centre);
  const along = ((centre[0] - start[0]) * chord[0] + (centre[1] - start[1]) * chord[1]) / chordSquared - 0.5;
  const shift: Point = [-along * chord[0], -along * chord[1]];
  if (Math.hypot(shift[0], shift[1]) <= allowed) return onGrid([centre[0] + shift[0], centre[1] + shift[1]]);
  return searchCentre(onGrid(centre), grid, (point) => mismatch(start, end, point));
}

/**
 * Whether a centre is one that rounding has made, as in a job that was read from a program: it lies on the grid, and its radii agree
 * as well as those of any rounded centre. To project it again could carry it to the next place of the grid.
 */
function isSettled(start: Point, end: Point, centre: Point, { grid, from }: CentreRounding): boolean {
  const isOn = (axis: 0 | 1): boolean => (centre[axis] - from[axis]) % grid === 0;
  return isOn(0) && isOn(1) && mismatch(start, end, centre) <= Math.SQRT2 * grid;
}

/** How a centre is rounded. */
export interface CentreRounding {
  /** Least increment of the centre words, atoms. */
  readonly grid: number;
  /** Where the increments are counted from: the rounded start, or [0, 0] where centres are written as places. */
  readonly from: Point;
  readonly allowed: number;
}

/** The place of the grid within two cells of `around` that has the least cost; `around` itself where it is as good. */
function searchCentre(around: Point, grid: number, cost: (point: Point) => number): Point {
  let best = around;
  let least = cost(around);
  for (let row = -2; row <= 2; row++) {
    for (let column = -2; column <= 2; column++) {
      const candidate: Point = [around[0] + row * grid, around[1] + column * grid];
      // Half a hundredth of a cell for each cell away: of two that are as good, the nearer one.
      const price = cost(candidate) + (Math.abs(row) + Math.abs(column)) * grid * 0.005;
      if (price < least) {
        least = price;
        best = candidate;
      }
    }
  }
  return best;
}

/** How many chords an arc takes so that none is farther than `tolerance` from it: e = r (1 - cos(angle / 2)). */
export function chordCount(radius: number, sweep: number, tolerance: number): number {
  if (tolerance >= radius) return Math.max(1, Math.ceil(sweep / (Math.PI / 2)));
  return Math.max(1, Math.ceil(sweep / (2 * Math.acos(1 - tolerance / radius)) - 1e-9));
}
