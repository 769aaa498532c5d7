import type { Point } from "./arc-geometry.ts";

/**
 * Where an arc crosses the quadrant lines of its circle, for a control that takes no arc over such a line. Worked out from ends and
 * centre that are on the grid already, by signs and not by angles: so a point that lies on a line is found to lie on it, and an
 * end there is not split off once more.
 */

/** A crossing: where it is, and which share of the whole sweep lies before it. */
export interface Crossing {
  readonly place: Point;
  readonly share: number;
}

export interface Quadrants {
  /** Sweep of the rounded arc about its rounded centre, radians; above 0, and more than a turn where it has several. */
  readonly sweep: number;
  readonly crossings: readonly Crossing[];
}

/** Directions of the lines 0 to 3, from the centre: along the first axis, the second, and back. */
const lines = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const;

/** How an arc on the grid lies about its centre. Lengths are atoms. */
export interface GridArc {
  readonly start: Point;
  readonly end: Point;
  readonly centre: Point;
  /** +1 counter-clockwise, -1 clockwise. */
  readonly direction: number;
  /** Sweep of the arc before it was rounded, radians; tells a full turn from none, and how many there are. */
  readonly sweep: number;
  /** Radius of the crossings, a multiple of the grid. */
  readonly radius: number;
}

/**
 * The crossings of an arc, in the order in which they are met. From (10, 0) to (-10, 0) about (0, 0), counter-clockwise: (0, 10)
 * at one half.
 *
 * @returns undefined where rounding leaves nothing to sweep
 */
export function quadrantsOf(arc: GridArc): Quadrants | undefined {
  const { centre, direction, radius } = arc;
  const from = quartersOf(arc.start, centre) * direction;
  const to = quartersOf(arc.end, centre) * direction;
  const written = (((to - from) % 4) + 4) % 4;
  const meant = arc.sweep / (Math.PI / 2);
  const quarters = written + 4 * Math.round((meant - written) / 4);
  if (radius === 0 || quarters <= 0) return undefined;
  // An end on a line is met there and not split off: the sum may lie a last digit beyond it.
  const until = Number.isInteger(to) ? Math.round(from + quarters) : from + quarters;
  const crossings: Crossing[] = [];
  for (let line = Math.floor(from) + 1; line < until; line++) {
    const [first, second] = lines[(((line * direction) % 4) + 4) % 4];
    const place: Point = [centre[0] + radius * first, centre[1] + radius * second];
    crossings.push({ place, share: (line - from) / quarters });
  }
  return { sweep: quarters * (Math.PI / 2), crossings };
}

/** Angle of a place in quarter turns, 0 to 4: a whole number on a quadrant line, and never one beside it. */
function quartersOf(place: Point, centre: Point): number {
  const [x, y] = [place[0] - centre[0], place[1] - centre[1]];
  if (y === 0) return x < 0 ? 2 : 0;
  if (x === 0) return y < 0 ? 3 : 1;
  const quadrant = y > 0 ? (x > 0 ? 0 : 1) : x < 0 ? 2 : 3;
  const [along, across] = quadrant % 2 === 0 ? [x, y] : [y, x];
  return quadrant + Math.atan2(Math.abs(across), Math.abs(along)) / (Math.PI / 2);
}
