/** Contours and the small paths that several operations share; lengths in the job's units. */
import type { Axes, Move, Turn } from "./job-text.ts";

/** A place in the XY plane. */
export interface Point {
  /** Length along X. */
  x: number;
  /** Length along Y. */
  y: number;
}

/** A rectangle with rounded corners; an obround where `halfY` equals `radius`. */
export interface RoundedBox {
  /** Its middle. */
  centre: Point;
  /** Half its size along X. */
  halfX: number;
  /** Half its size along Y. */
  halfY: number;
  /** Radius of its corners. */
  radius: number;
}

/** A piece of a contour: a line to `to`, or an arc when it has a centre. */
export interface Piece {
  /** Where the piece ends. */
  to: Point;
  /** Centre of an arc. */
  centre?: Point;
  /** Sense of an arc. */
  turn?: Turn;
}

/** A rapid move. */
export const rapid = (axes: Axes): Move => ({ rapid: axes });

/** A line at feed; the feed holds until the next one. */
export const line = (axes: Axes, feed?: number): Move => (feed === undefined ? { line: axes } : { line: axes, feed });

/** One full circle, or with `z` and `turns` a helix, that ends above or at its start. */
export function circle(centre: Point, radius: number, turn: Turn, more: { z?: number; turns?: number; feed?: number }): Move {
  const { z, ...rest } = more;
  const end = { x: centre.x + radius, y: centre.y, ...(z === undefined ? {} : { z }) };
  return { arc: { ...end, cx: centre.x, cy: centre.y }, turn, ...rest };
}

/** The box grown by `distance` on every side (shrunk when it is negative), its corners with it. */
export function offset(box: RoundedBox, distance: number): RoundedBox {
  const { centre, halfX, halfY, radius } = box;
  return { centre, halfX: halfX + distance, halfY: halfY + distance, radius: radius + distance };
}

/** Where `contour` begins: on the lower side when it runs ccw, on the upper when it runs cw; both ways lead to +X. */
export function contourStart(box: RoundedBox, turn: Turn, startX: number): Point {
  return { x: startX, y: box.centre.y + (turn === "cw" ? box.halfY : -box.halfY) };
}

/** Once round the box from `startX` to `endX` on the side it began on; pieces of no length are left out. */
export function contour(box: RoundedBox, turn: Turn, startX: number, endX: number = startX): Piece[] {
  const { centre, halfX, halfY, radius } = box;
  const side = turn === "cw" ? 1 : -1;
  const [left, right] = [centre.x - halfX, centre.x + halfX];
  const [near, far] = [centre.y + side * halfY, centre.y - side * halfY];
  const [nearIn, farIn] = [near - side * radius, far + side * radius];
  const [leftIn, rightIn] = [left + radius, right - radius];
  const pieces: Piece[] = [
    { to: { x: rightIn, y: near } },
    { to: { x: right, y: nearIn }, centre: { x: rightIn, y: nearIn }, turn },
    { to: { x: right, y: farIn } },
    { to: { x: rightIn, y: far }, centre: { x: rightIn, y: farIn }, turn },
    { to: { x: leftIn, y: far } },
    { to: { x: left, y: farIn }, centre: { x: leftIn, y: farIn }, turn },
    { to: { x: left, y: nearIn } },
    { to: { x: leftIn, y: near }, centre: { x: leftIn, y: nearIn }, turn },
    { to: { x: endX, y: near } },
  ];
  return withoutEmptyLines(contourStart(box, turn, startX), pieces);
}

function withoutEmptyLines(start: Point, pieces: readonly Piece[]): Piece[] {
  let at = start;
  return pieces.filter((piece) => {
    const empty = piece.centre === undefined && distance(at, piece.to) < 1e-6;
    at = piece.to;
    return !empty;
  });
}

/** Pieces as moves at the height where the tool stands. */
export function trace(pieces: readonly Piece[], feed?: number): Move[] {
  return pieces.map((piece, index) => pieceMove(piece, index === 0 ? feed : undefined));
}

/** Pieces inside a wall: on an arc the edge at the wall outruns the tool's centre, so arcs have a slower feed of their own. */
export function traceInside(pieces: readonly Piece[], feed: number, arcFeed: number): Move[] {
  return pieces.map((piece) => pieceMove(piece, piece.centre === undefined ? feed : arcFeed));
}

/** One piece as a move. */
export function pieceMove(piece: Piece, feed?: number): Move {
  const { to, centre, turn } = piece;
  if (centre === undefined || turn === undefined) return line({ ...to }, feed);
  const move = { arc: { ...to, cx: centre.x, cy: centre.y }, turn };
  return feed === undefined ? move : { ...move, feed };
}

/** Distance between two places. */
export function distance(from: Point, to: Point): number {
  return Math.hypot(to.x - from.x, to.y - from.y);
}

/** The place at `radius` from `centre` in a compass direction: 0 degrees is north (+Y), 90 degrees east (+X). */
export function bearing(centre: Point, radius: number, degrees: number): Point {
  const angle = (degrees * Math.PI) / 180;
  return { x: centre.x + radius * Math.sin(angle), y: centre.y + radius * Math.cos(angle) };
}
