import type { Arc } from "./arcs.ts";
import { chordsOf } from "./arcs.ts";
import { cutTo } from "./cut.ts";
import type { Contour, Piece } from "./contour.ts";
import type { Walk } from "./walk.ts";

/** Begins to follow a contour from where the tool stands. */
export function beginContour(walk: Walk, side: "left" | "right"): void {
  const { x, y, z } = walk;
  walk.contour = { side: side === "left" ? 1 : -1, x, y, z, waiting: undefined, entering: true };
}

/** Ends it: the tool goes to the end of the last piece. */
export function endContour(walk: Walk): void {
  const { contour } = walk;
  if (!contour) return;
  flush(walk, contour);
  walk.contour = undefined;
}

/** Makes what waits, up to its end; the tool then stands beside the contour. */
function flush(walk: Walk, contour: Contour): void {
  const { waiting } = contour;
  if (!waiting) return;
  make(walk, contour, waiting, ...beside(walk, contour, waiting, waiting.endX, waiting.endY));
  contour.waiting = undefined;
  contour.entering = false;
}

/** The place beside the end of a piece, for a direction there. */
function beside(
  walk: Walk,
  { side }: Contour,
  { x, y }: { readonly x: number; readonly y: number },
  directionX: number,
  directionY: number,
): [number, number] {
  const radius = side * (walk.body?.shape.radius ?? 0);
  return [x - radius * directionY, y + radius * directionX];
}

/** Takes a line of the contour, to a place in mm. */
export function followLine(
  walk: Walk,
  contour: Contour,
  x: number,
  y: number,
  z: number,
  minutes: number,
): void {
  const [dx, dy] = [x - contour.x, y - contour.y];
  const length = Math.hypot(dx, dy);
  if (length === 0) {
    flush(walk, contour);
    if (z !== walk.z) cutTo(walk, walk.x, walk.y, z, minutes);
    contour.z = z;
    return;
  }
  const [alongX, alongY] = [dx / length, dy / length];
  const ends = { startX: alongX, startY: alongY, endX: alongX, endY: alongY };
  follow(walk, contour, { x, y, z, ...ends, arc: undefined, minutes, at: { ...walk.at } });
}

/** Takes an arc of the contour, to a place in mm. */
export function followArc(
  walk: Walk,
  contour: Contour,
  arc: Arc,
  x: number,
  y: number,
  z: number,
  minutes: number,
): void {
  const sense = Math.sign(arc.sweep);
  const end = arc.start + arc.sweep;
  const ends = {
    startX: -sense * Math.sin(arc.start),
    startY: sense * Math.cos(arc.start),
    endX: -sense * Math.sin(end),
    endY: sense * Math.cos(end),
  };
  follow(walk, contour, { x, y, z, ...ends, arc, minutes, at: { ...walk.at } });
}

/** Takes a piece: the one before it can be made now. */
function follow(walk: Walk, contour: Contour, piece: Piece): void {
  const { waiting } = contour;
  if (contour.entering) {
    // The entry leads to the first piece, square to its start (NISTIR 6556 appendix B).
    if (waiting) {
      contour.entering = false;
      make(
        walk,
        contour,
        { ...waiting, arc: undefined },
        ...beside(walk, contour, waiting, piece.startX, piece.startY),
      );
    }
  } else if (waiting) join(walk, contour, waiting, piece);
  else cutTo(walk, ...beside(walk, contour, contour, piece.startX, piece.startY), contour.z, 0);
  contour.waiting = piece;
  contour.x = piece.x;
  contour.y = piece.y;
  contour.z = piece.z;
}

/** Two directions are one where they differ by less than this, radians: ends on a grid are never quite tangent. */
const tangent = 0.002;

/** From one piece to the next: straight on, around an outer corner, or to where both ways cross in an inner one. */
function join(walk: Walk, contour: Contour, before: Piece, after: Piece): void {
  const turn = before.endX * after.startY - before.endY * after.startX;
  const straight = before.endX * after.startX + before.endY * after.startY;
  const angle = Math.atan2(turn, straight);
  const end = beside(walk, contour, before, before.endX, before.endY);
  if (Math.abs(angle) < tangent) {
    make(walk, contour, before, ...end);
  } else if (angle * contour.side < 0) {
    make(walk, contour, before, ...end);
    roundCorner(walk, before, end, angle);
  } else {
    const meeting = crossing(walk, contour, before, after);
    make(walk, contour, before, ...(meeting ?? end));
    if (!meeting) cutTo(walk, ...beside(walk, contour, before, after.startX, after.startY), before.z, 0);
  }
}

/** Rolls around the end of a piece. */
function roundCorner(walk: Walk, { x, y, z }: Piece, from: readonly [number, number], angle: number): void {
  const radius = walk.body?.shape.radius ?? 0;
  const start = Math.atan2(from[1] - y, from[0] - x);
  const arc = { centre1: x, centre2: y, start, sweep: angle, radius, endRadius: radius };
  const chords = chordsOf(arc, walk.field.cellX / 16);
  for (let chord = 1; chord <= chords; chord++) {
    const at = start + (angle * chord) / chords;
    cutTo(walk, x + radius * Math.cos(at), y + radius * Math.sin(at), z, 0);
  }
}

/** Makes a piece at the tool's radius, up to a place; the place of the tool is where it begins. */
function make(walk: Walk, { side }: Contour, { arc, z, minutes, at }: Piece, x: number, y: number): void {
  const before = { ...walk.at };
  Object.assign(walk.at, at);
  const radius = walk.body?.shape.radius ?? 0;
  const sense = arc ? Math.sign(arc.sweep) : 0;
  const own = arc ? arc.radius - side * sense * radius : 0;
  if (!arc || own <= 0) cutTo(walk, x, y, z, minutes);
  else {
    const [fromX, fromY, fromZ] = [walk.x, walk.y, walk.z];
    const start = Math.atan2(fromY - arc.centre2, fromX - arc.centre1);
    const end = Math.atan2(y - arc.centre2, x - arc.centre1);
    // The sweep is that of the contour but for what the corners at its ends take off or add.
    const fullTurn = 2 * Math.PI;
    const raw = sense * (end - start);
    const sweep = raw + fullTurn * Math.round((Math.abs(arc.sweep) - raw) / fullTurn);
    const chords = chordsOf({ ...arc, radius: own, endRadius: own, sweep }, walk.field.cellX / 16);
    for (let chord = 1; chord < chords; chord++) {
      const angle = start + (sense * sweep * chord) / chords;
      const height = fromZ + ((z - fromZ) * chord) / chords;
      const [onX, onY] = [arc.centre1 + own * Math.cos(angle), arc.centre2 + own * Math.sin(angle)];
      cutTo(walk, onX, onY, height, minutes / chords);
    }
    cutTo(walk, x, y, z, minutes / chords);
  }
  Object.assign(walk.at, before);
}

/** Where the ways of two pieces at the tool's radius cross, next to their corner; undefined where they do not. */
function crossing(walk: Walk, contour: Contour, before: Piece, after: Piece): [number, number] | undefined {
  const first = wayOf(walk, contour, before, before, before.endX, before.endY);
  const second = wayOf(walk, contour, after, before, after.startX, after.startY);
  const places =
    first.radius > 0
      ? onCircle(first, second)
      : second.radius > 0
        ? onCircle(second, first)
        : onLines(first, second);
  const near = ([x, y]: readonly [number, number]): number => Math.hypot(x - before.x, y - before.y);
  return places.sort((one, other) => near(one) - near(other))[0];
}

/** The way of a piece at the tool's radius: a circle, or a line by a place and a direction with radius 0. */
interface Way {
  readonly x: number;
  readonly y: number;
  readonly alongX: number;
  readonly alongY: number;
  readonly radius: number;
}

function wayOf(
  walk: Walk,
  contour: Contour,
  { arc }: Piece,
  corner: Piece,
  alongX: number,
  alongY: number,
): Way {
  if (arc) {
    const own = arc.radius - contour.side * Math.sign(arc.sweep) * (walk.body?.shape.radius ?? 0);
    return { x: arc.centre1, y: arc.centre2, alongX, alongY, radius: Math.max(own, 0) };
  }
  const [x, y] = beside(walk, contour, corner, alongX, alongY);
  return { x, y, alongX, alongY, radius: 0 };
}

function onLines(first: Way, second: Way): [number, number][] {
  const cross = first.alongX * second.alongY - first.alongY * second.alongX;
  if (Math.abs(cross) < 1e-9) return [];
  const at = ((second.x - first.x) * second.alongY - (second.y - first.y) * second.alongX) / cross;
  return [[first.x + at * first.alongX, first.y + at * first.alongY]];
}

/** Where a circle meets a line or another circle. */
function onCircle(circle: Way, other: Way): [number, number][] {
  const [dx, dy] = [other.x - circle.x, other.y - circle.y];
  let along: number;
  let alongX: number;
  let alongY: number;
  if (other.radius > 0) {
    // Both circles meet on the line square to that of their centres.
    const apart = Math.hypot(dx, dy);
    if (apart === 0) return [];
    along = (apart * apart + circle.radius ** 2 - other.radius ** 2) / (2 * apart);
    [alongX, alongY] = [dx / apart, dy / apart];
  } else {
    // The foot of the centre on the line.
    along = dy * other.alongX - dx * other.alongY;
    [alongX, alongY] = [-other.alongY, other.alongX];
  }
  const square = circle.radius ** 2 - along * along;
  if (square < 0) return [];
  const half = Math.sqrt(square);
  const [x, y] = [circle.x + along * alongX, circle.y + along * alongY];
  return [
    [x - half * alongY, y + half * alongX],
    [x + half * alongY, y - half * alongX],
  ];
}
