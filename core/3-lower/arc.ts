import type { Batch, Plane } from "#base";
import { roundToGrid, rowKind } from "#base";
import type { JobStep } from "#job";
import type { ArcPath, Point } from "./arc-geometry.ts";
import type { ArcMove } from "./arc-move.ts";
import { alongArc, centreOnGrid, chordCount, distance, mismatch, sweepOf } from "./arc-geometry.ts";
import { canSayArc, largestPiece, largestWhole, needsNewTurn, staysInQuadrant } from "./arc-limits.ts";
import { keptFullCircle, tooManyChords } from "./findings.ts";
import { inWrittenMode, lowerFeed, roundFeed } from "./feed.ts";
import { checkAxes, knownAxes, lineTo, takeTarget } from "./motion.ts";
import { writeRow } from "./output.ts";
import { selectPlane } from "./plane.ts";
import { quadrantsOf } from "./quadrants.ts";
import type { Lowering } from "./state.ts";
import { need, rounded } from "./state.ts";

/** Columns of the first and second axis of a plane and of its normal (NISTIR 6556 Table 9: ZX has Z first). */
export const planeAxes = { xy: [0, 1, 2], zx: [2, 0, 1], yz: [1, 2, 0] } as const satisfies Record<
  Plane,
  readonly number[]
>;

/** Planes by the kind of the job's row. */
const planeOfKind: Readonly<Record<number, Plane>> = {
  [rowKind.arcXy]: "xy",
  [rowKind.arcZx]: "zx",
  [rowKind.arcYz]: "yz",
};

const centreKind = { xy: rowKind.arcXy, zx: rowKind.arcZx, yz: rowKind.arcYz } as const satisfies Record<
  Plane,
  number
>;
const radiusKind = {
  xy: rowKind.radiusXy,
  zx: rowKind.radiusZx,
  yz: rowKind.radiusYz,
} as const satisfies Record<Plane, number>;

/** The most chords that one arc may turn into. */
const mostChords = 1_000_000;

/** Lowers an arc: by centre, by radius, split, or as chords, as the dialect can say it. */
export function lowerArc(state: Lowering, moves: Batch<JobStep>, row: number): void {
  const arc = takeArc(state, moves, row);
  const [first, second, normal] = planeAxes[arc.plane];
  const meets = rounded(state, first) === state.at[first] && rounded(state, second) === state.at[second];
  const moved = rounded(state, normal) !== state.at[normal];
  if (!meets) cutArc(state, arc, arc.path.sweep);
  else if (arc.path.sweep > Math.PI) {
    if (distance(arc.path.start, arc.path.end) > 0) state.report(keptFullCircle(arc.source));
    cutArc(state, arc, Math.ceil(arc.path.sweep / (2 * Math.PI) - 0.5) * 2 * Math.PI);
  } else if (moved) lineTo(state, roundFeed(state, arc.feed, arc.source), arc.source);
  else state.summary.dropped++;
}

/** Takes an arc of the job, and its end into the exact place of the tool. */
function takeArc(state: Lowering, moves: Batch<JobStep>, row: number): ArcMove {
  const plane = planeOfKind[moves.kind[row]];
  const [first, second, normal] = planeAxes[plane];
  const start: Point = [state.exact[first], state.exact[second]];
  const from = state.exact[normal];
  takeTarget(state, moves, row);
  const end: Point = [state.exact[first], state.exact[second]];
  const centre: Point = [moves.c1[row], moves.c2[row]];
  const direction = Math.sign(moves.turns[row]);
  const turns = Math.abs(moves.turns[row]);
  const sweep = sweepOf(start, end, centre, direction) + (turns - 1) * 2 * Math.PI;
  lowerFeed(state, moves.feed[row], moves.source[row]);
  return {
    plane,
    path: { start, end, centre, direction, sweep },
    turns,
    from,
    to: state.exact[normal],
    feed: inWrittenMode(state, moves.feed[row]),
    radius: (distance(centre, start) + distance(centre, end)) / 2,
    source: moves.source[row],
  };
}

/** Writes an arc whose sweep is settled. */
function cutArc(state: Lowering, arc: ArcMove, sweep: number): void {
  if (!canSayArc(state, arc)) {
    cutChords(state, arc, sweep);
    return;
  }
  selectPlane(state, arc.plane, arc.source);
  if (staysInQuadrant(state)) {
    cutQuadrants(state, arc, sweep);
    return;
  }
  const largest = largestPiece(state);
  const settled: ArcPath = { ...arc.path, sweep };
  if (sweep <= largestWhole(state, arc)) cutPieces(state, { ...arc, path: settled }, 1);
  else if (needsNewTurn(state, sweep)) cutTurnByTurn(state, { ...arc, path: settled }, largest);
  else cutPieces(state, { ...arc, path: settled }, Math.max(1, Math.ceil(sweep / largest - 1e-9)));
}

/**
 * An arc in pieces that each stay in one quadrant. They share one centre, on the grid of both the centre words and the lengths, and
 * all crossings one radius, so that every crossing lies on its line to the last digit.
 */
function cutQuadrants(state: Lowering, arc: ArcMove, sweep: number): void {
  const [first, second, normal] = planeAxes[arc.plane];
  const start: Point = [state.at[first], state.at[second]];
  const target = Float64Array.from(state.at.map((_, axis) => rounded(state, axis)));
  const end: Point = [target[first], target[second]];
  const grid = Math.max(state.grids.centre, state.grids.length);
  const centre = roundCentre(state, arc, start, end, grid);
  const radius = roundToGrid((distance(centre, start) + distance(centre, end)) / 2, grid);
  const { direction } = arc.path;
  const quadrants = quadrantsOf({ start, end, centre, direction, sweep, radius });
  if (quadrants === undefined) {
    if (!cutLine(state, target, arc, 1)) state.summary.dropped++;
    return;
  }
  let done = 0;
  for (const { place, share: until } of [...quadrants.crossings, { place: end, share: 1 }]) {
    const [from, share] = [[state.at[first], state.at[second]] as const, until - done];
    const stop = Float64Array.from(target);
    [stop[first], stop[second]] = place;
    if (until < 1) stop[normal] = roundToGrid(arc.from + (arc.to - arc.from) * until, state.grids.length);
    const piece = { target: stop, sweep: quadrants.sweep * share, share };
    const feed = arcFeed(state, arc, piece, Math.abs(stop[normal] - state.at[normal]));
    writeArcRow(state, arc, { ...piece, path: { start: from, end: place, centre }, feed });
    done = until;
  }
}

/** Several turns where one block holds one at the most: full circles first, the rest last. */
function cutTurnByTurn(state: Lowering, arc: ArcMove, largest: number): void {
  const turn = 2 * Math.PI;
  if (largest < turn) {
    cutPieces(state, arc, Math.ceil(arc.path.sweep / largest - 1e-9));
    return;
  }
  const full = Math.ceil(arc.path.sweep / turn - 1e-9) - 1;
  const stops = Array.from({ length: full }, (_, index) => ((index + 1) * turn) / arc.path.sweep);
  cutAt(state, arc, [...stops, 1]);
}

/** An arc in pieces of the same sweep. */
function cutPieces(state: Lowering, arc: ArcMove, count: number): void {
  cutAt(
    state,
    arc,
    Array.from({ length: count }, (_, index) => (index + 1) / count),
  );
}

/** An arc in pieces that end at these parts of its sweep. A piece that rounding makes too long is halved. */
function cutAt(state: Lowering, arc: ArcMove, stops: readonly number[]): void {
  const [first, second] = planeAxes[arc.plane];
  const origin: Point = [state.at[first], state.at[second]];
  const end = Float64Array.from(state.at.map((_, axis) => rounded(state, axis)));
  let done = 0;
  const cutTo = (stop: number, target: Float64Array): void => {
    cutPiece(state, arc, { target, sweep: arc.path.sweep * (stop - done), share: stop - done });
    done = stop;
  };
  for (const stop of stops) {
    const target = stop < 1 ? placeAt(state, arc, stop, { origin, end }) : Float64Array.from(end);
    if (isTooLong(state, arc, target)) {
      const middle = (done + stop) / 2;
      cutTo(middle, placeAt(state, arc, middle, { origin, end }));
    }
    cutTo(stop, target);
  }
}

/** Where a piece ends before the end of its arc, on the grid; after whole turns that is where the arc began. */
function placeAt(
  state: Lowering,
  arc: ArcMove,
  stop: number,
  { origin, end }: { readonly origin: Point; readonly end: Float64Array },
): Float64Array {
  const [first, second, normal] = planeAxes[arc.plane];
  const grid = state.grids.length;
  const turnsDone = (arc.path.sweep * stop) / (2 * Math.PI);
  const isWhole = Math.abs(turnsDone - Math.round(turnsDone)) < 1e-9;
  const place = isWhole ? origin : alongArc(arc.path, stop);
  const target = Float64Array.from(end);
  target[first] = roundToGrid(place[0], grid);
  target[second] = roundToGrid(place[1], grid);
  target[normal] = roundToGrid(arc.from + (arc.to - arc.from) * stop, grid);
  return target;
}

/**
 * How far rounded ends may carry a piece past the largest sweep: 0.05 degrees, since a control that takes half circles takes
 * what rounding makes of them. On small radii it may be more.
 */
const sweepAllowance = (0.05 / 180) * Math.PI;

/** Whether a piece by centre to this end would sweep more than a controller takes that takes less than full circles. */
function isTooLong(state: Lowering, arc: ArcMove, target: Float64Array): boolean {
  const largest = largestPiece(state);
  if (largest >= 2 * Math.PI || state.capabilities.arcs.form === "radius") return false;
  const [first, second] = planeAxes[arc.plane];
  const start: Point = [state.at[first], state.at[second]];
  const end: Point = [target[first], target[second]];
  if (start[0] === end[0] && start[1] === end[1]) return false;
  const sweep = sweepOf(start, end, roundCentre(state, arc, start, end), arc.path.direction);
  // What is nearly a full circle by its ends is none: it was a short piece whose ends changed places.
  return sweep > largest + sweepAllowance && sweep < 1.5 * largest;
}

/** One piece: its rounded end, its sweep in radians, and its share of the whole arc. */
interface Piece {
  readonly target: Float64Array;
  readonly sweep: number;
  readonly share: number;
}

/** Writes one arc row, or what takes its place where rounding makes it something else. */
function cutPiece(state: Lowering, arc: ArcMove, piece: Piece): void {
  const [first, second, normal] = planeAxes[arc.plane];
  const start: Point = [state.at[first], state.at[second]];
  const end: Point = [piece.target[first], piece.target[second]];
  const isRound = start[0] === end[0] && start[1] === end[1];
  if (isRound && piece.sweep < Math.PI) {
    cutLine(state, piece.target, arc, piece.share);
    return;
  }
  const centre = roundCentre(state, arc, start, end);
  const lastTurn = piece.sweep - Math.floor(piece.sweep / (2 * Math.PI) - 1e-9) * 2 * Math.PI;
  const written = isRound ? 2 * Math.PI : sweepOf(start, end, centre, arc.path.direction);
  // Ends closer than the grid can tell apart may swap their order, which would turn nothing into a full circle.
  if (!isRound && Math.abs(written - lastTurn) > Math.PI) {
    cutLine(state, piece.target, arc, piece.share);
    return;
  }
  const height = piece.target[normal] - state.at[normal];
  const path = { start, end, centre };
  writeArcRow(state, arc, { ...piece, path, feed: arcFeed(state, arc, piece, Math.abs(height)) });
}

/**
 * The centre of a piece on the grid. The projection may shift it by what rounding makes of it, and by as much as the job's own
 * radii may differ (0.005 mm or 0.1 %).
 */
function roundCentre(
  state: Lowering,
  arc: ArcMove,
  start: Point,
  end: Point,
  grid = state.grids.centre,
): Point {
  const from: Point = state.capabilities.arcs.form === "absolute-centre" ? [0, 0] : start;
  const allowed =
    1.5 * Math.max(grid, state.grids.length) + mismatch(arc.path.start, arc.path.end, arc.path.centre);
  return centreOnGrid(start, end, arc.path.centre, { grid, from, allowed });
}

/** The feed of one piece: shares of an inverse time, and the projected feed where F means the circle. */
function arcFeed(state: Lowering, arc: ArcMove, piece: Piece, height: number): number {
  let feed = arc.feed;
  if (state.feedMode === "inverse-time") feed /= piece.share;
  else if (height > 0 && feedAlong(state, arc.source) === "circle") {
    const circle = arc.radius * piece.sweep;
    feed *= circle / Math.hypot(circle, height);
  }
  return roundFeed(state, feed, arc.source);
}

function feedAlong(state: Lowering, offset: number): "path" | "circle" {
  const key = {
    path: "arc.feed-along",
    why: "to state the feed of its helices",
    example: "arc: { feed-along: ? } # path or circle",
    offset,
  };
  return need(state, state.capabilities.arcs.feedAlong, key, "path");
}

/** A line to a rounded place, in the stead of a piece of an arc; false where nothing is left to move. */
function cutLine(state: Lowering, target: Float64Array, arc: ArcMove, share: number): boolean {
  const feed = state.feedMode === "inverse-time" ? arc.feed / share : arc.feed;
  let moved = 0;
  for (let axis = 0; axis < 6; axis++) if (target[axis] !== state.at[axis]) moved |= 1 << axis;
  if (moved === 0) return false;
  checkAxes(state, moved, arc.source);
  state.at.set(target);
  const fields = { kind: rowKind.line, known: knownAxes(state), stated: moved, c1: 0, c2: 0, turns: 0 };
  writeRow(state.output, { ...fields, feed: roundFeed(state, feed, arc.source) }, state.at, arc.source);
  return true;
}

function writeArcRow(
  state: Lowering,
  arc: ArcMove,
  piece: Piece & {
    readonly path: { readonly start: Point; readonly end: Point; readonly centre: Point };
    readonly feed: number;
  },
): void {
  const [first, second] = planeAxes[arc.plane];
  const { start, end, centre } = piece.path;
  const isFull = start[0] === end[0] && start[1] === end[1];
  let stated = isFull ? (1 << first) | (1 << second) : 0;
  for (let axis = 0; axis < 3; axis++) if (piece.target[axis] !== state.at[axis]) stated |= 1 << axis;
  const turns = Math.max(1, Math.ceil(piece.sweep / (2 * Math.PI) - 1e-6));
  const byRadius = state.capabilities.arcs.form === "radius";
  const radius = roundToGrid((distance(centre, start) + distance(centre, end)) / 2, state.grids.centre);
  state.at.set(piece.target);
  writeRow(
    state.output,
    {
      kind: byRadius ? radiusKind[arc.plane] : centreKind[arc.plane],
      known: knownAxes(state),
      stated,
      feed: piece.feed,
      c1: byRadius
        ? reachingRadius(radius, distance(start, end), state.grids.centre) * (piece.sweep > Math.PI ? -1 : 1)
        : centre[0],
      c2: byRadius ? 0 : centre[1],
      turns: arc.path.direction * turns,
    },
    state.at,
    arc.source,
  );
}

/** A radius must reach from end to end: at least half the chord, rounded up onto the grid. */
function reachingRadius(radius: number, chord: number, grid: number): number {
  return Math.max(radius, Math.ceil(chord / 2 / grid) * grid);
}

/** An arc as chords. */
function cutChords(state: Lowering, arc: ArcMove, sweep: number): void {
  const key = {
    path: "arc.chord-tolerance",
    why: "since this arc can be written as chords alone",
    example: "arc: { chord-tolerance: ? } # the most that a chord may be off",
    offset: arc.source,
  };
  const tolerance =
    state.operation.tolerance ?? need(state, state.capabilities.arcs.chordTolerance, key, state.grids.length);
  const count = chordCount(arc.radius, sweep, tolerance);
  if (count > mostChords) {
    state.report(tooManyChords(count, arc.source));
    return;
  }
  const [first, second, normal] = planeAxes[arc.plane];
  const path = { ...arc.path, sweep };
  const end = Float64Array.from(state.at.map((_, axis) => rounded(state, axis)));
  for (let chord = 1; chord <= count; chord++) {
    const target = Float64Array.from(end);
    if (chord < count) {
      const place = alongArc(path, chord / count);
      target[first] = roundToGrid(place[0], state.grids.length);
      target[second] = roundToGrid(place[1], state.grids.length);
      target[normal] = roundToGrid(arc.from + ((arc.to - arc.from) * chord) / count, state.grids.length);
    }
    cutLine(state, target, arc, 1 / count);
  }
}
