/** The motions of a plot as the page holds them: unpacked columns, and the lines in space that are drawn for them. */
import { chordsOf, curveOf, placeOnCurve } from "../curve.ts";
import type { Moves } from "../moves.ts";
import { decodeMoves, isArcMove, kindOf, moveFlag, moveKind } from "../moves.ts";
import type { PlotHead } from "../plot.ts";

/** What is drawn alike in all ways of colouring. */
export const look = { rapid: 0, line: 1, arc: 2, hole: 3, machine: 4 } as const;

/** A piece of the motions. */
export interface Piece {
  readonly moves: Moves;
  /** Index of its first motion among all. */
  readonly first: number;
  /** Line pairs before each motion, and behind the last. */
  readonly lineOfMove: Uint32Array;
  /** Two ends for each line, `endBytes` each; undefined once the graphics card has them. */
  ends: ArrayBuffer | undefined;
  /** What is drawn in their place while the picture moves. */
  readonly coarse: CoarseLines;
  readonly lines: number;
}

/** Bytes of an end: x, y, z from the centre and the way so far as floats in micrometres; look, tool, operation in two bytes. */
export const endBytes = 20;

/** The way so far begins again behind this many micrometres, so that a float holds it finely enough for dashes. */
const wayAround = 1e6;

/** Chords of the circle that is drawn for a hole, and most holes that get one. */
const circleChords = 12;
const mostCircles = 20_000;

/** What pieces are made for. */
export interface PieceMaker {
  readonly head: PlotHead;
  readonly centre: readonly [number, number, number];
  /** How far chords may be from an arc, micrometres. */
  readonly tolerance: number;
  /** Lines that one stands for while the picture moves. */
  readonly joined: number;
  way: number;
}

/** Bytes of base64 text, as the page holds them. */
export function bytesOf(text: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(text), (character) => character.charCodeAt(0));
}

/** Unpacks what `Packing.deflate` has packed. */
export async function inflate(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array> {
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate"));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

/** Makes a piece of unpacked bytes. */
export function makePiece(bytes: Uint8Array, first: number, maker: PieceMaker): Piece {
  const moves = decodeMoves(bytes);
  const lineOfMove = new Uint32Array(moves.count + 1);
  const writer = createEnds(2 * moves.count + 64);
  const from = [moves.before[0], moves.before[1], moves.before[2]];
  const to = [0, 0, 0];
  let arc = 0;
  for (let row = 0; row < moves.count; row++) {
    const mark = moves.mark[row];
    [to[0], to[1], to[2]] = [moves.x[row], moves.y[row], moves.z[row]];
    const curve = isArcMove(kindOf(mark)) ? arc++ : -1;
    if ((mark & moveFlag.jump) === 0) drawLines(writer, maker, moves, row, curve, from, to);
    lineOfMove[row + 1] = writer.count() / 2;
    [from[0], from[1], from[2]] = to;
  }
  const ends = writer.ends();
  return { moves, first, lineOfMove, ends, coarse: coarsen(ends, maker.joined), lines: writer.count() / 2 };
}

interface EndWriter {
  readonly add: (
    place: ArrayLike<number>,
    centre: readonly number[],
    way: number,
    look: number,
    tool: number,
    operation: number,
  ) => void;
  readonly count: () => number;
  readonly ends: () => ArrayBuffer;
}

const floatsOfEnd = endBytes / 4;

function createEnds(room: number): EndWriter {
  let buffer = new ArrayBuffer(room * endBytes);
  let floats = new Float32Array(buffer);
  let bytes = new Uint8Array(buffer);
  let count = 0;
  const grow = (): void => {
    const larger = new ArrayBuffer(buffer.byteLength * 2);
    new Uint8Array(larger).set(bytes);
    [buffer, floats, bytes] = [larger, new Float32Array(larger), new Uint8Array(larger)];
  };
  const add: EndWriter["add"] = (place, centre, way, kind, tool, operation) => {
    if ((count + 1) * endBytes > buffer.byteLength) grow();
    const at = count * floatsOfEnd;
    floats[at] = place[0] - centre[0];
    floats[at + 1] = place[1] - centre[1];
    floats[at + 2] = place[2] - centre[2];
    floats[at + 3] = way;
    const what = count * endBytes + 16;
    bytes[what] = kind;
    bytes[what + 1] = tool;
    bytes[what + 2] = operation & 255;
    bytes[what + 3] = operation >> 8;
    count++;
  };
  return { add, count: () => count, ends: () => buffer.slice(0, count * endBytes) };
}

/** Lines that stand for others while the picture moves: one for so many that go on from each other and look alike. */
export interface CoarseLines {
  readonly ends: ArrayBuffer;
  /** First line of each, and behind the last, the number of lines. */
  readonly firstLine: Uint32Array;
}

/** Lines of a piece that are done when so many of all motions are. */
export function lineSplit(
  { lineOfMove, first, moves }: Pick<Piece, "lineOfMove" | "first" | "moves">,
  done: number,
): number {
  return lineOfMove[Math.min(Math.max(done - first, 0), moves.count)];
}

/** The same of its coarse lines. */
export function coarseSplit(
  piece: Pick<Piece, "lineOfMove" | "first" | "moves" | "coarse">,
  done: number,
): number {
  const line = lineSplit(piece, done);
  const { firstLine } = piece.coarse;
  let [low, high] = [0, firstLine.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (firstLine[middle + 1] <= line) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Joins lines of a piece by so many. */
export function coarsen(ends: ArrayBuffer, joined: number): CoarseLines {
  const floats = new Float32Array(ends);
  const looks = new Uint32Array(ends);
  const lines = ends.byteLength / endBytes / 2;
  const taken = new Uint8Array(ends);
  const coarse = new Uint8Array(ends.byteLength);
  const firsts: number[] = [];
  let line = 0;
  while (line < lines) {
    const first = line++;
    while (line < lines && line - first < joined && goesOn(floats, looks, line)) line++;
    const at = 2 * firsts.length * endBytes;
    coarse.set(taken.subarray(2 * first * endBytes, (2 * first + 1) * endBytes), at);
    coarse.set(taken.subarray((2 * line - 1) * endBytes, 2 * line * endBytes), at + endBytes);
    firsts.push(first);
  }
  return {
    ends: coarse.buffer.slice(0, 2 * firsts.length * endBytes),
    firstLine: Uint32Array.from([...firsts, lines]),
  };
}

/** Whether a line begins where the one before it ends, and looks like it. */
export function goesOn(floats: Float32Array, looks: Uint32Array, line: number): boolean {
  const at = 2 * line * floatsOfEnd;
  const last = at - floatsOfEnd;
  return (
    floats[at] === floats[last] &&
    floats[at + 1] === floats[last + 1] &&
    floats[at + 2] === floats[last + 2] &&
    looks[at + 4] === looks[last + 4]
  );
}

function lookOf(mark: number): number {
  const kind = kindOf(mark);
  if ((mark & moveFlag.machine) !== 0) return look.machine;
  if (kind === moveKind.rapid || kind === moveKind.out) return look.rapid;
  if (kind === moveKind.hole) return look.hole;
  return isArcMove(kind) ? look.arc : look.line;
}

function drawLines(
  writer: EndWriter,
  maker: PieceMaker,
  moves: Moves,
  row: number,
  arc: number,
  from: readonly number[],
  to: readonly number[],
): void {
  const mark = moves.mark[row];
  const operation = moves.operation[row];
  const tool = maker.head.operations[operation]?.tool ?? 0;
  const kind = lookOf(mark);
  const { centre } = maker;
  const line = (a: readonly number[], b: readonly number[]): void => {
    const length = Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]);
    if (maker.way > wayAround) maker.way %= wayAround;
    writer.add(a, centre, maker.way, kind, tool, operation);
    writer.add(b, centre, maker.way + length, kind, tool, operation);
    maker.way += length;
  };
  if (arc >= 0) {
    const curve = curveOf(kindOf(mark), from, to, moves.c1[arc], moves.c2[arc], moves.turns[arc]);
    const chords = chordsOf(curve, maker.tolerance);
    chain(chords, (part, place) => placeOnCurve(curve, part, place), line);
    return;
  }
  line(from, to);
  const diameter = maker.head.tools[tool]?.diameter ?? 0;
  if (kindOf(mark) !== moveKind.hole || diameter === 0 || maker.head.counts.holes > mostCircles) return;
  const circle = (part: number, place: number[]): void => {
    place[0] = from[0] + (diameter / 2) * Math.cos(2 * Math.PI * part);
    place[1] = from[1] + (diameter / 2) * Math.sin(2 * Math.PI * part);
    place[2] = from[2];
  };
  chain(circleChords, circle, line);
}

function chain(
  chords: number,
  place: (part: number, target: number[]) => void,
  line: (a: readonly number[], b: readonly number[]) => void,
): void {
  let before = [0, 0, 0];
  place(0, before);
  for (let chord = 1; chord <= chords; chord++) {
    const next = [0, 0, 0];
    place(chord / chords, next);
    line(before, next);
    before = next;
  }
}
