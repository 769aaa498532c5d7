import { moveKind } from "./moves.ts";

/** An arc or helix in space. Lengths in the unit of what it was made from, angles in radians. */
export interface Curve {
  /** Indexes of the plane's first and second axis, and of the third, in x, y, z. */
  readonly axes: readonly [number, number, number];
  readonly centre: readonly [number, number];
  readonly radius: number;
  /** Angle of the start seen from the centre. */
  readonly start: number;
  /** Angle swept, + counter-clockwise seen from the + end of the normal; whole turns in it. */
  readonly sweep: number;
  /** Place on the third axis at the start, and how far it goes. */
  readonly third: number;
  readonly rise: number;
}

/** Axes of the planes in the order of the kinds of arcs: XY, ZX, YZ (ISO 841; NISTIR 6556 Table 9). */
const planeAxes = [
  [0, 1, 2],
  [2, 0, 1],
  [1, 2, 0],
] as const;

const turn = 2 * Math.PI;

/** Micrometres by which the ends of a closed arc may differ: what rounding to them makes of one place. */
const closed = 1;

/**
 * An arc as a curve.
 *
 * @param kind of `moveKind`
 * @param from place before, x y z
 * @param turns turns started, + counter-clockwise, - clockwise
 */
export function curveOf(
  kind: number,
  from: ArrayLike<number>,
  to: ArrayLike<number>,
  c1: number,
  c2: number,
  turns: number,
): Curve {
  const axes = planeAxes[kind - moveKind.arcXy];
  const [first, second, third] = axes;
  const [p, q] = [from[first] - c1, from[second] - c2];
  const start = Math.atan2(q, p);
  const sense = turns < 0 ? -1 : 1;
  const isClosed =
    Math.abs(from[first] - to[first]) <= closed && Math.abs(from[second] - to[second]) <= closed;
  const along = (sense * (Math.atan2(to[second] - c2, to[first] - c1) - start)) % turn;
  const part = isClosed ? turn : along <= 0 ? along + turn : along;
  const sweep = sense * (part + turn * (Math.max(1, Math.abs(turns)) - 1));
  return {
    axes,
    centre: [c1, c2],
    radius: Math.sqrt(p * p + q * q),
    start,
    sweep,
    third: from[third],
    rise: to[third] - from[third],
  };
}

/** Puts the place at a part of the curve, 0 to 1, into `target`, x y z. */
export function placeOnCurve(curve: Curve, part: number, target: { [axis: number]: number }): void {
  const { axes, centre, radius, start, sweep, third, rise } = curve;
  const angle = start + part * sweep;
  target[axes[0]] = centre[0] + radius * Math.cos(angle);
  target[axes[1]] = centre[1] + radius * Math.sin(angle);
  target[axes[2]] = third + part * rise;
}

/** Chords that stay within `tolerance` of the curve. */
export function chordsOf({ radius, sweep }: Curve, tolerance: number): number {
  if (radius <= tolerance) return Math.max(1, Math.ceil(Math.abs(sweep) / (turn / 4)));
  return Math.max(1, Math.ceil(Math.abs(sweep) / (2 * Math.acos(1 - tolerance / radius))));
}

/** Parts, 0 to 1, of a curve at which it crosses a quadrant line of its circle: where its extremes are. */
export function quadrantParts({ start, sweep }: Curve): number[] {
  const quarter = turn / 4;
  const [low, high] = sweep < 0 ? [start + sweep, start] : [start, start + sweep];
  const parts: number[] = [];
  for (let line = Math.ceil(low / quarter); line * quarter <= high; line++) {
    const part = (line * quarter - start) / sweep;
    if (part > 1e-9 && part < 1 - 1e-9) parts.push(part);
  }
  return parts.sort((a, b) => a - b);
}
