import { centreByRadius, createArcShape, rowKind, shapeArc } from "#base";

/** An arc in its plane: places along the plane's first and second axis, mm. */
export interface Arc {
  readonly centre1: number;
  readonly centre2: number;
  /** Angle of the start seen from the centre, and angle swept, + counter-clockwise; radians. */
  readonly start: number;
  readonly sweep: number;
  /** Radius at the start; that at the end may differ by the tolerance of the controller. */
  readonly radius: number;
  readonly endRadius: number;
}

/**
 * The arc of a row (NISTIR 6556 3.5.3).
 *
 * @param from start on the plane's first and second axis, mm
 * @param to the same of its end
 * @param given centre, or signed radius and 0, as the row has it; mm
 * @param turns turns started, + counter-clockwise
 */
export function arcOf(
  kind: number,
  from: readonly [number, number],
  to: readonly [number, number],
  given: readonly [number, number],
  turns: number,
): Arc {
  const shape = createArcShape();
  [shape.centre1, shape.centre2] = given;
  if (kind >= rowKind.radiusXy) centreByRadius(shape, ...from, ...to, given[0], turns < 0 ? -1 : 1);
  shapeArc(shape, ...from, ...to, turns);
  const { centre1, centre2, start, sense, angle, radius } = shape;
  const endRadius = Math.hypot(to[0] - centre1, to[1] - centre2);
  return { centre1, centre2, start, sweep: sense * angle, radius, endRadius };
}

/** How many chords an arc needs so that none is farther from it than `error`, mm: e = r (1 - cos(angle / 2)). */
export function chordsOf({ radius, endRadius, sweep }: Arc, error: number): number {
  const widest = Math.max(radius, endRadius);
  const angle = widest <= error ? Math.PI / 2 : 2 * Math.acos(1 - error / widest);
  return Math.max(1, Math.ceil(Math.abs(sweep) / Math.min(angle, Math.PI / 2)));
}

/** Length of an arc in its plane, mm. */
export function lengthOf({ radius, sweep }: Arc): number {
  return radius * Math.abs(sweep);
}
