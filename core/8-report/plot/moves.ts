/** What a motion of a plot is; a hole is the feed into it, and "out" the way out of it. */
export const moveKind = { rapid: 0, line: 1, arcXy: 2, arcZx: 3, arcYz: 4, hole: 5, out: 6 } as const;

/** Bits beside the kind: said in machine coordinates; begins where nobody knows, so that there is a place and no way to it. */
export const moveFlag = { machine: 16, jump: 32 } as const;

/** The kind without its flags. */
export function kindOf(mark: number): number {
  return mark & 15;
}

/** Whether a kind is an arc by its plane. */
export function isArcMove(kind: number): boolean {
  return kind >= moveKind.arcXy && kind <= moveKind.arcYz;
}

/** Some motions as columns, each from the end of the one before; the first from the place that `before` gives. */
export interface Moves {
  count: number;
  /** `moveKind`, with bits of `moveFlag`. */
  readonly mark: Uint8Array;
  /** Place after the motion, micrometres. */
  readonly x: Int32Array;
  readonly y: Int32Array;
  readonly z: Int32Array;
  /** Index of the operation. */
  readonly operation: Uint16Array;
  /** Line of the listing, from 1. */
  readonly line: Uint32Array;
  /** Arcs alone, in their order: centre on the plane's first and second axis, and turns as a batch has them. */
  arcs: number;
  readonly c1: Int32Array;
  readonly c2: Int32Array;
  readonly turns: Int16Array;
  /** Place before the first motion. */
  readonly before: Int32Array;
}

/** Motions in one piece. */
export const movesOfPiece = 1 << 15;

/** Makes room for motions. */
export function createMoves(room = movesOfPiece): Moves {
  return {
    count: 0,
    mark: new Uint8Array(room),
    x: new Int32Array(room),
    y: new Int32Array(room),
    z: new Int32Array(room),
    operation: new Uint16Array(room),
    line: new Uint32Array(room),
    arcs: 0,
    c1: new Int32Array(room),
    c2: new Int32Array(room),
    turns: new Int16Array(room),
    before: new Int32Array(3),
  };
}

const headBytes = 20;
const bytesOfMove = 1 + 3 * 4 + 2 + 4;
const bytesOfArc = 4 + 4 + 2;

/**
 * Motions as bytes that pack well: each column as differences from row to row, byte by byte (all lowest bytes first), since the
 * higher ones are nearly always 0.
 */
export function encodeMoves(moves: Moves): Uint8Array {
  const { count, arcs } = moves;
  const bytes = new Uint8Array(headBytes + count * bytesOfMove + arcs * bytesOfArc);
  const head = new DataView(bytes.buffer);
  [count, arcs, ...moves.before].forEach((value, index) => head.setInt32(4 * index, value, true));
  bytes.set(moves.mark.subarray(0, count), headBytes);
  const at = { next: headBytes + count };
  for (const [column, rows, width] of wideColumns(moves)) {
    let last = 0;
    for (let row = 0; row < rows; row++) {
      // Differences wrap around within their bytes, here as when they are added up.
      const difference = width === 2 ? ((column[row] - last) << 16) >> 16 : (column[row] - last) | 0;
      last = column[row];
      // Signs are folded away, so that -1 is as short as 1: 0, -1, 1, -2 -> 0, 1, 2, 3.
      const folded = (difference << 1) ^ (difference >> 31);
      for (let byte = 0; byte < width; byte++)
        bytes[at.next + byte * rows + row] = (folded >>> (8 * byte)) & 255;
    }
    at.next += width * rows;
  }
  return bytes;
}

/** The reverse of `encodeMoves`. */
export function decodeMoves(bytes: Uint8Array): Moves {
  const head = new DataView(bytes.buffer, bytes.byteOffset, headBytes);
  const number = (index: number): number => head.getInt32(4 * index, true);
  const moves = createMoves(number(0));
  moves.count = number(0);
  moves.arcs = number(1);
  moves.before.set([number(2), number(3), number(4)]);
  moves.mark.set(bytes.subarray(headBytes, headBytes + moves.count));
  let next = headBytes + moves.count;
  for (const [column, rows, width] of wideColumns(moves)) {
    let last = 0;
    for (let row = 0; row < rows; row++) {
      let folded = 0;
      for (let byte = 0; byte < width; byte++) folded |= bytes[next + byte * rows + row] << (8 * byte);
      last += (folded >>> 1) ^ -(folded & 1);
      column[row] = last;
      last = column[row];
    }
    next += width * rows;
  }
  return moves;
}

type Column = Int32Array | Uint32Array | Uint16Array | Int16Array;

/** Columns, their rows, and bytes of a difference. */
function wideColumns(moves: Moves): (readonly [Column, number, 2 | 4])[] {
  const { count, arcs } = moves;
  return [
    [moves.x, count, 4],
    [moves.y, count, 4],
    [moves.z, count, 4],
    [moves.operation, count, 2],
    [moves.line, count, 4],
    [moves.c1, arcs, 4],
    [moves.c2, arcs, 4],
    [moves.turns, arcs, 2],
  ];
}
