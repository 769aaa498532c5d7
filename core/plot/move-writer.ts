/** Motions on their way into a plot: where the tool is, what of that is known, and what the motions cover. */
import { linearAxes } from "#base";
import type { Extent, Moves, Packing, Point } from "#report";
import {
  createMoves,
  curveOf,
  encodeMoves,
  isArcMove,
  kindOf,
  moveFlag,
  moveKind,
  movesOfPiece,
  placeOnCurve,
  quadrantParts,
} from "#report";

/** What is told of a motion beside its places: micrometres for the centre of an arc. */
export interface Way {
  /** Of `moveKind`. */
  readonly kind: number;
  readonly isMachine: boolean;
  readonly operation: number;
  readonly line: number;
  readonly c1?: number;
  readonly c2?: number;
  readonly turns?: number;
}

export interface MoveWriter {
  /** Place of the tool's tip, micrometres; only axes of `known` count. */
  readonly at: Float64Array;
  known: number;
  readonly counts: { rapids: number; lines: number; arcs: number; holes: number; leftOut: number };
  /** Moves to a place of which the axes in `known` are known; what begins or ends elsewhere is left out and counted. */
  go(to: Float64Array, known: number, way: Way): void;
  /** Packs what is left. */
  end(): void;
  readonly pieces: Uint8Array[];
  readonly cut: () => Extent | undefined;
  readonly all: () => Extent | undefined;
}

/** Starts with a tool of which nothing is known. */
export function createMoveWriter({ deflate }: Packing): MoveWriter {
  const cut = createExtent();
  const all = createExtent();
  const pieces: Uint8Array[] = [];
  const counts = { rapids: 0, lines: 0, arcs: 0, holes: 0, leftOut: 0 };
  let moves = createMoves();
  const flush = (): void => {
    if (moves.count > 0) pieces.push(deflate(encodeMoves(moves)));
    moves = createMoves();
    moves.before.set(writer.at);
  };
  const writer: MoveWriter = {
    at: new Float64Array(3),
    known: 0,
    counts,
    go(to, known, way) {
      const wasKnown = writer.known === linearAxes;
      if (known === linearAxes) {
        if (moves.count === movesOfPiece) flush();
        push(moves, to, way, wasKnown);
        all.take(to);
        if (wasKnown) cover(writer.at, to, way, isCut(way) ? [all, cut] : [all]);
      }
      if (wasKnown && known === linearAxes) count(counts, way.kind);
      else counts.leftOut++;
      writer.at.set(to);
      writer.known = known;
    },
    end: flush,
    pieces,
    cut: cut.extent,
    all: all.extent,
  };
  return writer;
}

function push(moves: Moves, to: Float64Array, way: Way, isDrawn: boolean): void {
  const row = moves.count++;
  const isArc = isArcMove(way.kind) && isDrawn;
  const kind = isArcMove(way.kind) && !isDrawn ? moveKind.line : way.kind;
  moves.mark[row] = kind | (way.isMachine ? moveFlag.machine : 0) | (isDrawn ? 0 : moveFlag.jump);
  moves.x[row] = to[0];
  moves.y[row] = to[1];
  moves.z[row] = to[2];
  moves.operation[row] = way.operation;
  moves.line[row] = way.line;
  if (!isArc) return;
  const arc = moves.arcs++;
  moves.c1[arc] = way.c1 ?? 0;
  moves.c2[arc] = way.c2 ?? 0;
  moves.turns[arc] = way.turns ?? 1;
}

function count(counts: MoveWriter["counts"], kind: number): void {
  if (isArcMove(kind)) counts.arcs++;
  else if (kind === moveKind.line) counts.lines++;
  else if (kind === moveKind.hole) counts.holes++;
  else if (kind === moveKind.rapid) counts.rapids++;
}

interface GrowingExtent {
  readonly take: (place: ArrayLike<number>) => void;
  readonly extent: () => Extent | undefined;
}

function createExtent(): GrowingExtent {
  const min: [number, number, number] = [Infinity, Infinity, Infinity];
  const max: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  return {
    take(place) {
      for (let axis = 0; axis < 3; axis++) {
        if (place[axis] < min[axis]) min[axis] = place[axis];
        if (place[axis] > max[axis]) max[axis] = place[axis];
      }
    },
    extent: () => (min[0] === Infinity ? undefined : { min: rounded(min), max: rounded(max) }),
  };
}

function rounded(point: Point): Point {
  return [Math.round(point[0]), Math.round(point[1]), Math.round(point[2])];
}

/** Takes the whole way into extents: its ends, and where an arc crosses the quadrant lines of its circle. */
function cover(from: Float64Array, to: Float64Array, way: Way, extents: readonly GrowingExtent[]): void {
  const { kind, c1 = 0, c2 = 0, turns = 1 } = way;
  for (const extent of extents) {
    extent.take(from);
    extent.take(to);
  }
  if (!isArcMove(kindOf(kind))) return;
  const curve = curveOf(kind, from, to, c1, c2, turns);
  const place: [number, number, number] = [0, 0, 0];
  for (const part of quadrantParts(curve)) {
    placeOnCurve(curve, part, place);
    for (const extent of extents) extent.take(place);
  }
}

/** A feed in machine coordinates belongs to a swap, not to the work; nor does the way out of a hole. */
function isCut({ kind, isMachine }: Way): boolean {
  return !isMachine && kind !== moveKind.rapid && kind !== moveKind.out;
}
