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
  return { moves, first, lineOfMove, ends: writer.ends(), lines: writer.count() / 2 };
}

interface EndWriter {
  readonly add: (
    x: number,
    y: number,
    z: number,
    way: number,
    look: number,
    tool: number,
    operation: number,
  ) => void;
  readonly count: () => number;
  readonly ends: () => ArrayBuffer;
}

function createEnds(room: number): EndWriter {
  let buffer = new ArrayBuffer(room * endBytes);
  let view = new DataView(buffer);
  let count = 0;
  const add: EndWriter["add"] = (x, y, z, way, kind, tool, operation) => {
    if ((count + 1) * endBytes > buffer.byteLength) {
      const larger = new ArrayBuffer(buffer.byteLength * 2);
      new Uint8Array(larger).set(new Uint8Array(buffer));
      [buffer, view] = [larger, new DataView(larger)];
    }
    const at = count++ * endBytes;
    [x, y, z, way].forEach((value, index) => view.setFloat32(at + 4 * index, value, true));
    view.setUint8(at + 16, kind);
    view.setUint8(at + 17, tool);
    view.setUint16(at + 18, operation, true);
  };
  return { add, count: () => count, ends: () => buffer.slice(0, count * endBytes) };
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
    for (const [place, way] of [
      [a, maker.way],
      [b, maker.way + length],
    ] as const)
      writer.add(
        place[0] - centre[0],
        place[1] - centre[1],
        place[2] - centre[2],
        way,
        kind,
        tool,
        operation,
      );
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
