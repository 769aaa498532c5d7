import type { Batch, Capabilities, Effects, FeedMode, MachineFacts, Plane, Step, UnitSystem } from "#base";
import { axisBit, createBatch, frame, pushAside } from "#base";

/** A motion before it is a row. */
export interface Motion {
  readonly kind: number;
  readonly machine: boolean;
  /** Places that it names, by axis: atoms and micro-degrees. */
  readonly at: ReadonlyMap<number, number>;
  readonly feed: number;
  readonly c1?: number;
  readonly c2?: number;
  readonly turns?: number;
  /** Axes that are said though they stand where they are: those of a full circle, and X of a hole at the place of the last. */
  readonly said?: number;
}

/** The steps of a case as they come, with what is known of the tool's place. */
export interface Sequence {
  readonly units: UnitSystem;
  readonly capabilities: Capabilities;
  readonly machine: MachineFacts;
  readonly batch: Batch;
  /** Places in work and in machine coordinates, and which are known. */
  readonly places: readonly [work: number[], machine: number[]];
  readonly known: [work: number, machine: number];
  feed: number;
  feedMode: FeedMode;
  plane: Plane;
  workOffset: number | undefined;
  lengthOffset: number | undefined;
  /** Whether the case is a whole program, which starts nowhere. */
  whole: boolean;
}

const everyAxis = 63;

/** Where a case starts that is no whole program: X, Y and Z are known to be 0. */
export const startKnown = axisBit.x | axisBit.y | axisBit.z;

/** Rows of a case at most. */
const room = 512;

export function startSequence(
  units: UnitSystem,
  { capabilities, machine }: Pick<Sequence, "capabilities" | "machine">,
): Sequence {
  return {
    units,
    capabilities,
    machine,
    batch: createBatch(room, true),
    places: [
      [0, 0, 0, 0, 0, 0],
      [0, 0, 0, 0, 0, 0],
    ],
    known: [startKnown, 0],
    feed: 0,
    feedMode: "per-minute",
    plane: "xy",
    workOffset: undefined,
    lengthOffset: undefined,
    whole: false,
  };
}

/** Whether there is room for another step. */
export function isFull({ batch }: Sequence): boolean {
  return batch.count >= room - 1;
}

/** Appends a motion; gives whether it moves or states anything. */
export function pushMotion(sequence: Sequence, motion: Motion, source: number): boolean {
  const { batch, places, known } = sequence;
  const inFrame = motion.machine ? frame.machine : frame.work;
  const place = places[inFrame];
  let stated = motion.said ?? 0;
  for (const [axis, value] of motion.at) {
    if (place[axis] !== value || (known[inFrame] & (1 << axis)) === 0) stated |= 1 << axis;
    place[axis] = value;
    known[inFrame] |= 1 << axis;
    known[1 - inFrame] &= ~(1 << axis);
  }
  if (stated === 0) return false;
  const row = batch.count++;
  batch.kind[row] = motion.kind;
  batch.frame[row] = inFrame;
  batch.known[row] = known[inFrame];
  batch.stated[row] = stated;
  const value = (axis: number): number => (known[inFrame] & (1 << axis) ? place[axis] : 0);
  [batch.x[row], batch.y[row], batch.z[row]] = [value(0), value(1), value(2)];
  batch.abc?.forEach((column, axis) => (column[row] = value(3 + axis)));
  batch.feed[row] = motion.feed;
  batch.c1[row] = motion.c1 ?? 0;
  batch.c2[row] = motion.c2 ?? 0;
  batch.turns[row] = motion.turns ?? 0;
  batch.aside[row] = -1;
  batch.source[row] = source;
  return true;
}

/** Appends a step that is no motion, and forgets the places that it makes unknown. */
export function pushStep(sequence: Sequence, step: Step, source: number): void {
  pushAside(sequence.batch, step, source);
  const { machine } = sequence;
  if (step.kind === "plane") sequence.plane = step.value;
  if (step.kind === "feed-mode") sequence.feedMode = step.value;
  if (step.kind === "feed-mode" || step.kind === "units") sequence.feed = 0;
  if (step.kind === "work-offset" && sequence.workOffset !== step.number) {
    sequence.workOffset = step.number;
    sequence.known[0] = 0;
  }
  if (step.kind === "length-offset" && sequence.lengthOffset !== step.number) {
    sequence.lengthOffset = step.number;
    sequence.known[0] &= ~axisBit.z;
    const { cancelMoves, selectMoves } = machine.lengthOffset ?? {};
    const moves = step.number === 0 ? cancelMoves : selectMoves;
    if (moves === true || machine.retract?.actsOn === "tool-tip") sequence.known[1] &= ~axisBit.z;
  }
  if (step.kind === "change-tool") applyEffects(sequence, machine.changeEffects);
  if (step.kind === "auxiliary" && step.action === "opaque")
    applyEffects(sequence, machine.opaqueEffects[step.code]);
  if (step.kind === "auxiliary" && step.action === "measure") forget(sequence, axisBit.z);
  if (step.kind === "pause") stop(sequence);
  if (step.kind === "reference-return") forget(sequence, step.axes);
}

function applyEffects(sequence: Sequence, effects: Effects | undefined): void {
  if (effects?.position !== "unchanged") forget(sequence, everyAxis);
  if (effects === undefined || effects.lengthOffset === "unchanged") return;
  sequence.known[0] &= ~axisBit.z;
  sequence.lengthOffset = effects.lengthOffset === "cancelled" ? 0 : undefined;
}

/** While the program stands the operator may move the machine, and some controllers forget which offsets act. */
function stop(sequence: Sequence): void {
  forget(sequence, everyAxis);
  if (sequence.machine.afterStop === "loses-modes") sequence.workOffset = sequence.lengthOffset = undefined;
}

function forget({ known }: Sequence, mask: number): void {
  known[0] &= ~mask;
  known[1] &= ~mask;
}
