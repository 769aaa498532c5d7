/** The way of the tool, row by row, in the frame of the picture. */
import type { Batch } from "#base";
import {
  axisBit,
  centreByRadius,
  createArcShape,
  frame,
  isArc,
  linearAxes,
  planeOfArc,
  rowKind,
} from "#base";
import { atomsPerMicrometre, moveKind } from "#report";
import type { MoveWriter } from "./move-writer.ts";

/** How far the coordinates of a frame lie from those of the picture, micrometres, and on which axes that is known. */
export interface Shift {
  readonly by: Float64Array;
  known: number;
}

/** Levels of the holes that follow, atoms; `level` is undefined for the initial level. */
export interface HoleLevels {
  readonly depth: number;
  readonly retract: number;
  readonly level: number | undefined;
}

/** The way of a tool. */
export interface Trail {
  readonly writer: MoveWriter;
  /** By `frame`: work, machine. */
  readonly shifts: readonly [Shift, Shift];
  holes: HoleLevels | undefined;
  /** Whether a rotary axis moved, which is not drawn. */
  rotary: boolean;
}

/** Begins a way whose work frame is that of the picture. */
export function createTrail(writer: MoveWriter): Trail {
  const shift = (known: number): Shift => ({ by: new Float64Array(3), known });
  return { writer, shifts: [shift(linearAxes), shift(0)], holes: undefined, rotary: false };
}

/** Where and in what a row belongs. */
export interface RowPlace {
  readonly operation: number;
  readonly line: number;
}

/** Draws a row that is a motion. */
export function drawRow(trail: Trail, batch: Batch<unknown>, row: number, place: RowPlace): void {
  const kind = batch.kind[row];
  const { writer, shifts } = trail;
  if ((batch.stated[row] & ~linearAxes) !== 0) trail.rotary = true;
  if ((batch.stated[row] & linearAxes) === 0) return;
  const shift = shifts[batch.frame[row]];
  const to = Float64Array.from(writer.at);
  let known = writer.known;
  const columns = [batch.x, batch.y, batch.z];
  for (let axis = 0; axis < 3; axis++) {
    const bit = 1 << axis;
    if ((batch.stated[row] & bit) === 0) continue;
    known = (shift.known & bit) === 0 ? known & ~bit : known | bit;
    to[axis] = shifted(columns[axis][row], shift, axis);
  }
  const isMachine = batch.frame[row] === frame.machine;
  if (kind === rowKind.hole) return drawHole(trail, to, known, place);
  if (isArc(kind)) return writer.go(to, known, { ...arcOf(trail, batch, row, to), isMachine, ...place });
  writer.go(to, known, {
    kind: kind === rowKind.rapid ? moveKind.rapid : moveKind.line,
    isMachine,
    ...place,
  });
}

/** Atoms of a frame as micrometres of the picture. */
function shifted(atoms: number, { by }: Shift, axis: number): number {
  return Math.round(atoms / atomsPerMicrometre + by[axis]);
}

function arcOf({ writer, shifts }: Trail, batch: Batch<unknown>, row: number, to: Float64Array) {
  const kind = batch.kind[row];
  const byRadius = kind >= rowKind.radiusXy;
  const plane = kind - (byRadius ? rowKind.radiusXy : rowKind.arcXy);
  const [first, second] = planeOfArc(kind);
  const turns = batch.turns[row];
  const shift = shifts[batch.frame[row]];
  const named = { kind: moveKind.arcXy + plane, turns };
  if (!byRadius) {
    const c1 = shifted(batch.c1[row], shift, first);
    return { ...named, c1, c2: shifted(batch.c2[row], shift, second) };
  }
  const shape = createArcShape();
  const radius = batch.c1[row] / atomsPerMicrometre;
  const { at } = writer;
  centreByRadius(shape, at[first], at[second], to[first], to[second], radius, Math.sign(turns));
  return { ...named, c1: Math.round(shape.centre1), c2: Math.round(shape.centre2) };
}

/** Over the hole, down to the retract level, in by feed, and out to the level between holes. */
function drawHole(trail: Trail, over: Float64Array, known: number, place: RowPlace): void {
  const { writer, holes, shifts } = trail;
  if (holes === undefined) return;
  const [work] = shifts;
  const [retract, depth] = [holes.retract, holes.depth].map((atoms) => shifted(atoms, work, 2));
  const before = writer.at[2];
  const isHigh = (known & axisBit.z) !== 0 && before > retract;
  const level = holes.level === undefined ? (isHigh ? before : retract) : shifted(holes.level, work, 2);
  const go = (kind: number, place3: readonly [number, number, number], axes: number): void =>
    writer.go(Float64Array.from(place3), axes, { kind, isMachine: false, ...place });
  const [x, y] = over;
  if ((writer.known & axisBit.z) !== 0 && before < retract)
    go(moveKind.rapid, [writer.at[0], writer.at[1], retract], writer.known);
  if (writer.at[0] !== x || writer.at[1] !== y || writer.known !== known)
    go(moveKind.rapid, [x, y, writer.at[2]], known);
  const all = known | axisBit.z;
  if (writer.at[2] !== retract || writer.known !== all) go(moveKind.rapid, [x, y, retract], all);
  go(moveKind.hole, [x, y, depth], all);
  go(moveKind.out, [x, y, level], all);
}
