import type { Batch, PlaneAxes } from "#base";
import { centreByRadius, createArcShape, planeOfArc, rowKind, shapeArc } from "#base";
import type { Motion } from "./look-ahead.ts";
import type { Rates } from "./rates.ts";

/** Works out arcs and helices as motions at feed. */
export function createArcs(
  rates: Rates,
): (batch: Batch, row: number, from: Float64Array, to: Float64Array) => Motion {
  const shape = createArcShape();
  const motion: Motion = { length: 0, speed: 0, acceleration: 0, from: [0, 0, 0], to: [0, 0, 0] };

  /** Direction at an angle: along the circle and along the normal by their shares. */
  function direct(
    into: [number, number, number],
    [first, second, normal]: PlaneAxes,
    angle: number,
    inPlane: number,
    along: number,
  ): void {
    into[first] = -Math.sin(angle) * shape.sense * inPlane;
    into[second] = Math.cos(angle) * shape.sense * inPlane;
    into[normal] = along;
  }

  return (batch, row, from, to) => {
    const kind = batch.kind[row];
    const plane = planeOfArc(kind);
    const [first, second, normal] = plane;
    const turns = batch.turns[row];
    const ends = [from[first], from[second], to[first], to[second]] as const;
    if (kind >= rowKind.radiusXy) centreByRadius(shape, ...ends, batch.c1[row], turns < 0 ? -1 : 1);
    else {
      shape.centre1 = batch.c1[row];
      shape.centre2 = batch.c2[row];
    }
    shapeArc(shape, ...ends, turns);
    const circle = shape.radius * shape.angle;
    const rise = to[normal] - from[normal];
    motion.length = Math.sqrt(circle * circle + rise * rise);
    const inPlane = motion.length > 0 ? circle / motion.length : 0;
    const along = motion.length > 0 ? rise / motion.length : 0;
    direct(motion.from, plane, shape.start, inPlane, along);
    direct(motion.to, plane, shape.start + shape.sense * shape.angle, inPlane, along);
    // On its way round, both axes of the plane have to bear the whole of it somewhere.
    const weaker = Math.min(rates.acceleration[first], rates.acceleration[second]);
    const alongNormal = along === 0 ? Infinity : rates.acceleration[normal] / Math.abs(along);
    motion.acceleration = Math.min(weaker / inPlane, alongNormal);
    motion.speed = Math.sqrt(weaker * shape.radius) / inPlane;
    return motion;
  };
}
