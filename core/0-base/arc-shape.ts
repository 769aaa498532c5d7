/** An arc in its plane, filled in anew for each arc. Lengths in one unit, atoms as a rule; angles in radians. */
export interface ArcShape {
  centre1: number;
  centre2: number;
  radius: number;
  /** Angle of the start seen from the centre. */
  start: number;
  /** Angle swept, always above 0; more than a turn counts as a turn. */
  sweep: number;
  /** Angle of the whole motion, whole turns included. */
  angle: number;
  /** +1 counter-clockwise, -1 clockwise. */
  sense: number;
  /** Extent on the plane's first and second axis. */
  low1: number;
  high1: number;
  low2: number;
  high2: number;
}

const fullTurn = 2 * Math.PI;

/** An arc of which nothing is known yet. */
export function createArcShape(): ArcShape {
  return {
    centre1: 0,
    centre2: 0,
    radius: 0,
    start: 0,
    sweep: 0,
    angle: 0,
    sense: 1,
    low1: 0,
    high1: 0,
    low2: 0,
    high2: 0,
  };
}

/** Angle from the start of the arc on, in its sense, 0 up to a full turn. */
function angleAlong(shape: ArcShape, angle: number): number {
  const along = (shape.sense * (angle - shape.start)) % fullTurn;
  return along < 0 ? along + fullTurn : along;
}

/**
 * Sets the centre of an arc given by signed radius (NISTIR 6556 3.5.3.1): above 0 it sweeps up to half a turn.
 * A chord longer than the diameter, or none, puts the centre on its middle.
 */
export function centreByRadius(
  shape: Pick<ArcShape, "centre1" | "centre2">,
  p0: number,
  q0: number,
  p1: number,
  q1: number,
  radius: number,
  sense: number,
): void {
  const dp = p1 - p0;
  const dq = q1 - q0;
  const chord = Math.sqrt(dp * dp + dq * dq);
  const height = Math.sqrt(Math.max(radius * radius - (chord * chord) / 4, 0));
  const side = chord === 0 ? 0 : (sense * Math.sign(radius) * height) / chord;
  shape.centre1 = (p0 + p1) / 2 - side * dq;
  shape.centre2 = (q0 + q1) / 2 + side * dp;
}

/**
 * Works out sweep and extent of an arc whose centre is set.
 *
 * @param turns turns started, + counter-clockwise, - clockwise
 */
export function shapeArc(
  shape: ArcShape,
  p0: number,
  q0: number,
  p1: number,
  q1: number,
  turns: number,
): void {
  const dp = p0 - shape.centre1;
  const dq = q0 - shape.centre2;
  shape.radius = Math.sqrt(dp * dp + dq * dq);
  shape.sense = turns < 0 ? -1 : 1;
  shape.start = Math.atan2(dq, dp);
  const closed = p0 === p1 && q0 === q1;
  const along = angleAlong(shape, Math.atan2(q1 - shape.centre2, p1 - shape.centre1));
  shape.sweep = closed || Math.abs(turns) > 1 || along === 0 ? fullTurn : along;
  const last = closed || along === 0 ? fullTurn : along;
  shape.angle = last + Math.max(Math.abs(turns) - 1, 0) * fullTurn;
  extend(shape, p0, q0, p1, q1);
}

/** Extent: the ends, and the quadrant points that the arc passes. */
function extend(shape: ArcShape, p0: number, q0: number, p1: number, q1: number): void {
  shape.low1 = Math.min(p0, p1);
  shape.high1 = Math.max(p0, p1);
  shape.low2 = Math.min(q0, q1);
  shape.high2 = Math.max(q0, q1);
  const { centre1, centre2 } = shape;
  // The radii at start and end may differ by the tolerance of the controller: the larger one holds.
  const radius = Math.max(shape.radius, Math.hypot(p1 - centre1, q1 - centre2));
  if (passes(shape, 0)) shape.high1 = Math.max(shape.high1, centre1 + radius);
  if (passes(shape, Math.PI / 2)) shape.high2 = Math.max(shape.high2, centre2 + radius);
  if (passes(shape, Math.PI)) shape.low1 = Math.min(shape.low1, centre1 - radius);
  if (passes(shape, -Math.PI / 2)) shape.low2 = Math.min(shape.low2, centre2 - radius);
}

/** Whether an arc passes the point of its circle at an angle. */
export function passes(shape: ArcShape, angle: number): boolean {
  return angleAlong(shape, angle) <= shape.sweep;
}

/** The largest part of the speed along an arc that goes along the first and the second axis of its plane, 0 to 1 each. */
export function largestShares(shape: ArcShape): readonly [number, number] {
  const { start, sweep, sense } = shape;
  const end = start + sense * sweep;
  const first = passes(shape, Math.PI / 2) || passes(shape, -Math.PI / 2);
  const second = passes(shape, 0) || passes(shape, Math.PI);
  return [
    first ? 1 : Math.max(Math.abs(Math.sin(start)), Math.abs(Math.sin(end))),
    second ? 1 : Math.max(Math.abs(Math.cos(start)), Math.abs(Math.cos(end))),
  ];
}

/** Whether an arc crosses the inside of a rectangle that its ends lie outside of. Lengths in atoms. */
export function crossesRectangle(
  shape: ArcShape,
  low1: number,
  high1: number,
  low2: number,
  high2: number,
): boolean {
  const { centre1, centre2, radius } = shape;
  const hits = (p: number, q: number): boolean => passes(shape, Math.atan2(q - centre2, p - centre1));
  const crossesSide = (
    offset: number,
    middle: number,
    low: number,
    high: number,
    at: (along: number) => boolean,
  ): boolean => {
    const square = radius * radius - offset * offset;
    if (square < 0) return false;
    const half = Math.sqrt(square);
    return [middle - half, middle + half].some((along) => along > low && along < high && at(along));
  };
  return (
    [low1, high1].some((p) => crossesSide(p - centre1, centre2, low2, high2, (q) => hits(p, q))) ||
    [low2, high2].some((q) => crossesSide(q - centre2, centre1, low1, high1, (p) => hits(p, q)))
  );
}
