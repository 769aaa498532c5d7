import type { Batch } from "#base";
import { atomsPerMillimetre, axisBit, inverseTimeUnit, linearAxes, planeOfArc, rowKind } from "#base";
import { arcOf, chordsOf, lengthOf } from "./arcs.ts";
import type { Arc } from "./arcs.ts";
import { endContour, followArc, followLine } from "./compensation.ts";
import { cutTo, rapidTo } from "./cut.ts";
import { radiusAt } from "./shape.ts";
import type { Walk } from "./walk.ts";

const xyAxes = axisBit.x | axisBit.y;

/** Chords of an arc leave it by no more than this share of a cell. */
const chordShare = 1 / 16;

/** Takes a motion in work coordinates. */
export function workMotion(walk: Walk, batch: Batch, row: number): void {
  const kind = batch.kind[row];
  // That a row claims to know an axis is not enough: it names it, or its place was known before.
  const known = batch.known[row] & (batch.stated[row] | walk.known) & linearAxes;
  const x = known & axisBit.x ? batch.x[row] / atomsPerMillimetre : walk.x;
  const y = known & axisBit.y ? batch.y[row] / atomsPerMillimetre : walk.y;
  const z = known & axisBit.z ? batch.z[row] / atomsPerMillimetre : walk.z;
  if (kind === rowKind.rapid || known !== linearAxes || walk.body === undefined) {
    endContour(walk);
    // Where an axis is not known the tool is at swap height, or nothing can be said of it.
    if (kind === rowKind.rapid && known === linearAxes) rapidTo(walk, x, y, z);
    place(walk, x, y, z, known);
  } else if (kind === rowKind.line) {
    lineTo(walk, x, y, z, batch.feed[row]);
  } else if (kind === rowKind.hole) {
    drill(walk, x, y, batch.feed[row]);
  } else arcTo(walk, batch, row, [x, y, z]);
}

/** Takes a place as that of the tool without looking at the way there. */
function place(walk: Walk, x: number, y: number, z: number, known: number): void {
  if (walk.x !== x || walk.y !== y || walk.z !== z || known !== linearAxes) walk.begun = false;
  walk.x = x;
  walk.y = y;
  walk.z = z;
  walk.known = known;
}

function lineTo(walk: Walk, x: number, y: number, z: number, feed: number): void {
  const { contour } = walk;
  const from = contour ?? walk;
  const length = walk.known === linearAxes ? Math.hypot(x - from.x, y - from.y, z - from.z) : 0;
  const minutes = minutesOf(walk, feed, length);
  if (contour) followLine(walk, contour, x, y, z, minutes);
  else cutTo(walk, x, y, z, minutes);
}

/** How long a motion takes, minutes; 0 where nobody knows. */
function minutesOf({ feedMode, rpm }: Walk, feed: number, length: number): number {
  if (feed <= 0) return 0;
  if (feedMode === "inverse-time") return inverseTimeUnit / feed;
  const speed = (feed / atomsPerMillimetre) * (feedMode === "per-revolution" ? rpm : 1);
  return speed > 0 ? length / speed : 0;
}

function arcTo(walk: Walk, batch: Batch, row: number, to: readonly [number, number, number]): void {
  const { contour } = walk;
  const [first, second, normal] = planeOfArc(batch.kind[row]);
  const begin = contour ?? walk;
  const from = [begin.x, begin.y, begin.z];
  if (walk.known !== linearAxes) {
    cutTo(walk, ...to, 0);
    return;
  }
  const arc = arcOf(
    batch.kind[row],
    [from[first], from[second]],
    [to[first], to[second]],
    [batch.c1[row] / atomsPerMillimetre, batch.c2[row] / atomsPerMillimetre],
    batch.turns[row],
  );
  const minutes = minutesOf(walk, batch.feed[row], Math.hypot(lengthOf(arc), to[normal] - from[normal]));
  if (contour) followArc(walk, contour, arc, ...to, minutes);
  else cutArc(walk, arc, from, to, [first, second, normal], minutes);
}

function cutArc(
  walk: Walk,
  arc: Arc,
  from: readonly number[],
  to: readonly [number, number, number],
  [first, second, normal]: readonly [number, number, number],
  minutes: number,
): void {
  const chords = chordsOf(arc, walk.field.cellX * chordShare);
  const at = [0, 0, 0];
  for (let chord = 1; chord < chords; chord++) {
    const share = chord / chords;
    const radius = arc.radius + share * (arc.endRadius - arc.radius);
    const angle = arc.start + share * arc.sweep;
    at[first] = arc.centre1 + radius * Math.cos(angle);
    at[second] = arc.centre2 + radius * Math.sin(angle);
    at[normal] = from[normal] + share * (to[normal] - from[normal]);
    cutTo(walk, at[0], at[1], at[2], minutes / chords);
  }
  cutTo(walk, ...to, minutes / chords);
}

/** One hole of a cycle (NISTIR 6556 3.5.16): to the retract level at rapid, to depth at feed, and out; pecks leave the same hole. */
function drill(walk: Walk, x: number, y: number, feed: number): void {
  const { cycle } = walk;
  if (!cycle) return;
  const [depth, retract, level] = [cycle.depth, cycle.retract, cycle.level].map(
    (z) => z / atomsPerMillimetre,
  );
  const across = Math.max(walk.known & axisBit.z ? walk.z : level, retract);
  if ((walk.known & xyAxes) === xyAxes) {
    rapidTo(walk, walk.x, walk.y, across);
    rapidTo(walk, x, y, across);
  }
  rapidTo(walk, x, y, retract);
  const speed = cycle.feedIs === "lead" ? feed * walk.rpm : feed;
  cutTo(walk, x, y, depth, minutesOf(walk, speed, retract - depth));
  place(walk, x, y, level, linearAxes);
}

/** How high material stands around a tool at rest that touches it, above its tip, mm; 0 where it stands free or on a floor. */
export function touching(walk: Walk): number {
  const { field, body, x, y, z } = walk;
  if (body === undefined || walk.known !== linearAxes) return 0;
  const { shape } = body;
  const margin = 1.5 * Math.max(field.cellX, field.cellY);
  const reach = shape.radius + margin;
  const { tolerance } = walk.sizes;
  let most = 0;
  for (let row = 0; row < field.rows; row++) {
    const offsetY = field.y + (row + 0.5) * field.cellY - y;
    if (Math.abs(offsetY) > reach) continue;
    for (let column = 0; column < field.columns; column++) {
      const distance = Math.hypot(field.x + (column + 0.5) * field.cellX - x, offsetY);
      const height = field.heights[row * field.columns + column];
      // It touches where the surface of the tool, a little wider, is no higher than the material.
      const touches = distance <= reach && distance - margin <= radiusAt(shape, height - z);
      if (touches && height > z + tolerance && height > field.bottom) most = Math.max(most, height - z);
    }
  }
  return most;
}
