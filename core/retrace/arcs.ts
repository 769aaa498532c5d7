import type { Batch, PlaneAxes } from "#base";
import { planeOfArc, rowKind } from "#base";

export function isByRadius(kind: number): boolean {
  return kind >= rowKind.radiusXy && kind <= rowKind.radiusYz;
}

/** Bits of the axes that an arc of a job names in any case. */
export function endAxes([first, second]: PlaneAxes): number {
  return (1 << first) | (1 << second);
}

/** The kind of an arc by centre in the plane of an arc by either. */
export function kindByCentre(kind: number): number {
  return isByRadius(kind) ? kind - rowKind.radiusXy + rowKind.arcXy : kind;
}

/** Places of an arc in its plane, atoms. */
export interface ArcEnds {
  readonly start: readonly [number, number];
  readonly end: readonly [number, number];
  readonly centre: readonly [number, number];
}

/** How much too short a radius may be, as its rounding leaves it: atoms. */
const shortBy = 100_000;

/**
 * The centre of an arc by radius, rounded to atoms: left of the chord for a counter-clockwise arc of less than half a turn. A
 * negative radius is an arc of more.
 *
 * @returns undefined where the radius does not reach
 */
export function centreOfRadius(
  start: readonly [number, number],
  end: readonly [number, number],
  radius: number,
  direction: number,
): [number, number] | undefined {
  const chord = [end[0] - start[0], end[1] - start[1]];
  const length = Math.hypot(chord[0], chord[1]);
  const half = length / 2;
  const size = Math.abs(radius);
  if (half > size + shortBy || length === 0) return undefined;
  const height = Math.sqrt(Math.max(0, size * size - half * half));
  const side = direction * (radius < 0 ? -1 : 1);
  return [
    Math.round((start[0] + end[0]) / 2 - (side * height * chord[1]) / length),
    Math.round((start[1] + end[1]) / 2 + (side * height * chord[0]) / length),
  ];
}

/** Distance of two places. */
export function between(first: readonly [number, number], second: readonly [number, number]): number {
  return Math.hypot(second[0] - first[0], second[1] - first[1]);
}

/** Where an arc row lies; undefined where its radius does not reach. `from` is the place before it, x y z. */
export function arcEnds(batch: Batch, row: number, from: ArrayLike<number>): ArcEnds | undefined {
  const [first, second] = planeOfArc(batch.kind[row]);
  const columns = [batch.x, batch.y, batch.z];
  const start = [from[first], from[second]] as const;
  const end = [columns[first][row], columns[second][row]] as const;
  const centre = isByRadius(batch.kind[row])
    ? centreOfRadius(start, end, batch.c1[row], Math.sign(batch.turns[row]))
    : ([batch.c1[row], batch.c2[row]] as const);
  return centre && { start, end, centre };
}

/**
 * The share by which the way along a helix is longer than that along its circle: a feed of the circle times this is a feed along
 * the path.
 */
export function helixShare({ start, end, centre }: ArcEnds, turns: number, height: number): number {
  const direction = Math.sign(turns);
  const from = Math.atan2(start[1] - centre[1], start[0] - centre[0]);
  const to = Math.atan2(end[1] - centre[1], end[0] - centre[0]);
  const isFull = start[0] === end[0] && start[1] === end[1];
  const turn = 2 * Math.PI;
  let sweep = isFull ? turn : ((to - from) * direction) % turn;
  if (sweep <= 0) sweep += turn;
  const circle =
    ((between(centre, start) + between(centre, end)) / 2) * (sweep + (Math.abs(turns) - 1) * turn);
  return Math.hypot(circle, height) / circle;
}
