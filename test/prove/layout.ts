import { axes, atomsPerMillimetre, axisBit, createBatch, frame, linearAxes, pushAside, rowKind } from "#base";
import type { Batch, MachineFacts, RowKindName, Step } from "#base";

/** A motion as a test says it: millimetres and degrees; axes left out stay where they are. */
export interface Move {
  kind: RowKindName;
  machine?: boolean;
  x?: number;
  y?: number;
  z?: number;
  a?: number;
  /** mm/min, mm/rev or 1/min by the feed mode. */
  feed?: number;
  /** Centre, or signed radius, in millimetres. */
  c1?: number;
  c2?: number;
  turns?: number;
}

/** One item of a sequence: a step or a motion, with a name by which a test finds it. */
export interface Item {
  step?: Step;
  move?: Move;
  name?: string;
}

export const mm = (value: number): number => Math.round(value * atomsPerMillimetre);

/** Position knowledge as a reader has it, kept apart from the guard's own. */
interface Knowledge {
  known: [number, number];
  at: [number[], number[]];
  workOffset: number;
  lengthOffset: number;
  level: number;
}

function forget(knowledge: Knowledge, mask: number): void {
  knowledge.known = [knowledge.known[0] & ~mask, knowledge.known[1] & ~mask];
}

function afterStep(knowledge: Knowledge, step: Step, facts: MachineFacts): void {
  if (step.kind === "reference-return") forget(knowledge, step.axes);
  if (step.kind === "pause") forget(knowledge, linearAxes);
  if (step.kind === "work-offset" && step.number !== knowledge.workOffset) {
    knowledge.known[0] = 0;
    knowledge.workOffset = step.number;
  }
  if (step.kind === "length-offset" && step.number !== knowledge.lengthOffset) {
    knowledge.known[0] &= ~axisBit.z;
    knowledge.lengthOffset = step.number;
  }
  if (step.kind === "change-tool" && facts.changeEffects?.position !== "unchanged")
    forget(knowledge, linearAxes);
  if (step.kind === "auxiliary" && step.action === "measure") forget(knowledge, linearAxes);
  if (step.kind === "auxiliary" && step.action === "opaque") {
    if (facts.opaqueEffects[step.code]?.position !== "unchanged") forget(knowledge, linearAxes);
  }
  if (step.kind === "cycle-definition") knowledge.level = step.level;
}

function pushMove(batch: Batch, knowledge: Knowledge, move: Move, source: number, inverse: boolean): void {
  const side = move.machine ? frame.machine : frame.work;
  const at = knowledge.at[side];
  let stated = 0;
  axes.forEach((axis, index) => {
    const value =
      axis === "z" && move.kind === "hole" ? knowledge.level / atomsPerMillimetre : move[axis as "x"];
    if (value === undefined) return;
    const place = index < 3 ? mm(value) : Math.round(value * 1e6);
    if (!(knowledge.known[side] & axisBit[axis]) || at[index] !== place) stated |= axisBit[axis];
    at[index] = place;
  });
  knowledge.known[side] |= stated;
  knowledge.known[1 - side] &= ~stated;
  const row = batch.count++;
  const known = knowledge.known[side];
  batch.kind[row] = rowKind[move.kind];
  batch.frame[row] = side;
  batch.known[row] = known;
  batch.stated[row] = stated;
  batch.x[row] = known & axisBit.x ? at[0] : 0;
  batch.y[row] = known & axisBit.y ? at[1] : 0;
  batch.z[row] = known & axisBit.z ? at[2] : 0;
  batch.abc?.forEach((column, index) => (column[row] = known & (8 << index) ? at[3 + index] : 0));
  batch.feed[row] = inverse ? Math.round((move.feed ?? 0) * 1e6) : mm(move.feed ?? 0);
  batch.c1[row] = mm(move.c1 ?? 0);
  batch.c2[row] = mm(move.c2 ?? 0);
  batch.turns[row] = move.turns ?? 0;
  batch.aside[row] = -1;
  batch.source[row] = source;
}

/** Byte offset that `layOut` gives to an item. */
export const offsetOf = (index: number): number => 100 + 10 * index;

/** Turns items into batches, as a reader would: known axes follow from the steps. */
export function layOut(items: readonly Item[], facts: MachineFacts, rows = 7): Batch[] {
  const batches: Batch[] = [];
  const knowledge: Knowledge = {
    known: [0, 0],
    at: [
      [0, 0, 0, 0, 0, 0],
      [0, 0, 0, 0, 0, 0],
    ],
    workOffset: 0,
    lengthOffset: -1,
    level: 0,
  };
  const rotary = items.some((item) => item.move?.a !== undefined);
  let inverse = false;
  items.forEach((item, index) => {
    let batch = batches[batches.length - 1];
    if (!batch || batch.count === rows) batches.push((batch = createBatch(rows, rotary)));
    if (item.step) {
      pushAside(batch, item.step, offsetOf(index));
      afterStep(knowledge, item.step, facts);
      if (item.step.kind === "feed-mode") inverse = item.step.value === "inverse-time";
    } else if (item.move) {
      pushMove(batch, knowledge, item.move, offsetOf(index), inverse);
    }
  });
  return batches;
}
