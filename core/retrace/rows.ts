import type { Batch } from "#base";
import { axisBit, capacity, isArc, planeOfArc, rowKind } from "#base";
import type { JobStep } from "#job";
import { arcEnds, endAxes, helixShare, isByRadius, kindByCentre } from "./arcs.ts";
import type { Between, Explained } from "./held.ts";
import { writeHole } from "./hole-rows.ts";
import { timeOfTurns } from "./holes.ts";
import { partAt } from "./parts.ts";
import type { RowWriter } from "./row-batches.ts";
import { closeHoles, copyColumns, handOn, push, pushRapid, room, useBatch } from "./row-batches.ts";
import type { ProgramState } from "./state.ts";
import type { Walk, WalkActions } from "./walk.ts";
import { placeIn } from "./walk.ts";

/** Actions that write the rows of operations. */
export function rowActions(writer: RowWriter): WalkActions {
  return {
    begin: (walk, between, batch) => begin(writer, walk, between, batch.abc !== undefined),
    enter: (walk, source) => enter(writer, walk, source),
    within: (walk, between) => within(writer, walk, between),
    motions: (walk, batch, from, to) => {
      if (writer.draft) motions(writer, walk, batch, from, to);
    },
    end: (_walk, between) => end(writer, between),
  };
}

function begin(writer: RowWriter, walk: Walk, between: Between, rotary: boolean): void {
  const draft = writer.stretches[walk.stretches - 1];
  writer.draft = draft.operation < 0 ? undefined : draft;
  if (writer.draft === undefined) return;
  writer.rpm = draft.spindle?.rpm ?? 0;
  writer.media = draft.coolant;
  writer.compensated = "off";
  useBatch(writer, rotary);
  const from = walk.stretches === 1 ? 0 : partAt(between);
  // What stands before the tool is up to speed is the program's own, but for what the operator is told.
  for (const step of between.all.slice(from)) writeStep(writer, step, "entering");
}

/** Steps on the way to the work, or between two motions. */
function within(writer: RowWriter, walk: Walk, between: Between): void {
  if (writer.draft === undefined) return;
  if (walk.phase === "entering") {
    for (const step of between.all) writeStep(writer, step, "entering");
    return;
  }
  writer.settling ||= between.lifted || between.stopped;
  const confirm: Confirming = { dwells: 0 };
  for (const step of between.all) writeStep(writer, step, confirm);
}

/** The first motion: X and Y, at the Z of safe travel. */
function enter(writer: RowWriter, walk: Walk, source: number): void {
  const { draft, at } = writer;
  if (draft === undefined) return;
  at.set(walk.at);
  at[2] = draft.clearance;
  const { rotary } = walk.entry;
  pushRapid(writer, axisBit.x | axisBit.y | rotary, source);
  writer.settling = true;
  if (draft.drop === draft.clearance || walk.at[2] === draft.clearance) return;
  at[2] = walk.at[2];
  pushRapid(writer, axisBit.z, source);
}

function end(writer: RowWriter, between: Between): void {
  if (writer.draft === undefined) return;
  const confirm: Confirming = { dwells: 0 };
  for (const step of between.all.slice(0, partAt(between))) writeStep(writer, step, confirm);
  closeHoles(writer, between.all[0]?.held.source ?? 0);
  handOn(writer);
  writer.draft = undefined;
}

/** Dwells that confirm a change of the spindle's speed, and are still to come. */
interface Confirming {
  dwells: number;
}

function confirming({ dialect }: RowWriter, name: "at-speed" | "stopped"): number {
  const { confirm, signals } = dialect.machine;
  const how = confirm[name];
  if (how?.by === "dwell") return 1;
  return how?.by === "wait" && (signals[how.signal]?.settle ?? 0) > 0 ? 1 : 0;
}

/** Writes what a job says of a step; at the start of an operation only what the operator is told. */
function writeStep(
  writer: RowWriter,
  { held, belongs, text, state }: Explained,
  mode: Confirming | "entering",
): void {
  if (belongs !== "job" || held.kind !== "step") return;
  const { step, source } = held;
  const entering = mode === "entering";
  switch (step.kind) {
    case "message":
      if (!entering) writeChanges(writer, state, source);
      push(writer, { kind: "note", text: step.text }, source);
      break;
    case "pause":
      push(writer, { kind: "pause", text, optional: step.optional, park: false }, source);
      break;
    case "dwell":
      if (entering) break;
      if (mode.dwells > 0) {
        mode.dwells--;
        break;
      }
      writeChanges(writer, state, source);
      push(
        writer,
        {
          kind: "dwell",
          time: step.revolutions === undefined ? step.time : timeOfTurns(step.revolutions, state.rpm),
        },
        source,
      );
      break;
    case "wait":
      if (!entering) mode.dwells = 0;
      break;
    case "spindle-speed":
    case "spindle-start":
    case "spindle-stop":
      if (entering) break;
      if (step.kind === "spindle-speed") writeSpeed(writer, state, source);
      mode.dwells = confirming(writer, step.kind === "spindle-stop" ? "stopped" : "at-speed");
      break;
    case "compensation":
      compensate(writer, step.value, source);
      break;
    default:
      break;
  }
}

function compensate(writer: RowWriter, side: "off" | "left" | "right", source: number): void {
  if (side === writer.compensated) return;
  writer.compensated = side;
  push(writer, { kind: "compensation", side }, source);
}

/** Writes speed and coolant where they are not those that the job has by now. */
function writeChanges(writer: RowWriter, state: ProgramState, source: number): void {
  writeSpeed(writer, state, source);
  if (!sameMedia(state.media, writer.media)) {
    writer.media = state.media;
    push(writer, { kind: "coolant", media: state.media }, source);
  }
}

function writeSpeed(writer: RowWriter, { rpm, direction }: ProgramState, source: number): void {
  if (writer.draft?.spindle === undefined || direction === undefined || rpm === writer.rpm) return;
  writer.rpm = rpm;
  push(writer, { kind: "spindle", rpm }, source);
}

function sameMedia(first: readonly string[], second: readonly string[]): boolean {
  return first.length === second.length && first.every((medium) => second.includes(medium));
}

function motions(writer: RowWriter, walk: Walk, batch: Batch, from: number, to: number): void {
  writeChanges(writer, walk.state, batch.source[from]);
  let row = from;
  while (row < to) {
    if (batch.kind[row] === rowKind.hole) {
      writeHole(writer, walk, batch, row++);
      continue;
    }
    closeHoles(writer, batch.source[row]);
    if (writer.settling && batch.kind[row] === rowKind.rapid && isThere(writer, batch, row)) {
      row++;
      continue;
    }
    let end = row + 1;
    if (batch.kind[row] !== rowKind.rapid) writer.settling = false;
    if (!writer.settling) while (end < to && batch.kind[end] !== rowKind.hole) end++;
    copy(writer, walk, batch, row, end, from);
    for (let axis = 0; axis < 6; axis++)
      if ((batch.known[end - 1] & (1 << axis)) !== 0) writer.at[axis] = placeIn(batch, end - 1, axis);
    row = end;
  }
}

/** Whether a rapid leads to where the job has the tool already. */
function isThere({ at }: RowWriter, batch: Batch, row: number): boolean {
  for (let axis = 0; axis < 6; axis++)
    if ((batch.stated[row] & (1 << axis)) !== 0 && placeIn(batch, row, axis) !== at[axis]) return false;
  return true;
}

/** Copies motions that are no holes; arcs become those of a job. */
function copy(writer: RowWriter, walk: Walk, batch: Batch, from: number, to: number, runFrom: number): void {
  let row = from;
  while (row < to) {
    const target = room(writer, 1, batch.abc !== undefined);
    const count = Math.min(to - row, capacity(target) - target.count);
    const at = target.count;
    copyColumns(target, batch, row, row + count);
    target.count += count;
    amend(writer, walk, batch, { from: row, to: row + count, at, runFrom });
    row += count;
  }
}

/** Makes arcs of the copied rows those of a job, and their feeds those of its operation. */
function amend(
  writer: RowWriter,
  walk: Walk,
  batch: Batch,
  { from, to, at, runFrom }: { from: number; to: number; at: number; runFrom: number },
): void {
  const target = writer.batch!;
  const { feedMode, rpm } = walk.state;
  const converts = feedMode === "per-revolution" && writer.draft?.feedMode === "per-minute";
  const alongCircle = writer.dialect.capabilities.arcs.feedAlong === "circle" && feedMode !== "inverse-time";
  for (let row = from; row < to; row++) {
    const index = at + row - from;
    if (isArc(batch.kind[row])) {
      const before = row === runFrom ? walk.at : [batch.x[row - 1], batch.y[row - 1], batch.z[row - 1]];
      amendArc(target, index, batch, row, before, alongCircle);
    }
    if (converts && batch.kind[row] !== rowKind.rapid)
      target.feed[index] = Math.max(1, Math.round((target.feed[index] * rpm) / 1000));
  }
}

function amendArc(
  target: Batch<JobStep>,
  index: number,
  batch: Batch,
  row: number,
  before: ArrayLike<number>,
  alongCircle: boolean,
): void {
  const plane = planeOfArc(batch.kind[row]);
  const [, , normal] = plane;
  const ends = arcEnds(batch, row, before);
  if (ends === undefined) return;
  target.kind[index] = kindByCentre(batch.kind[row]);
  target.stated[index] |= endAxes(plane);
  target.known[index] = target.stated[index];
  if (isByRadius(batch.kind[row])) [target.c1[index], target.c2[index]] = ends.centre;
  if (!alongCircle) return;
  const height = [batch.x, batch.y, batch.z][normal][row] - before[normal];
  if (height !== 0)
    target.feed[index] = Math.round(target.feed[index] * helixShare(ends, batch.turns[row], height));
}
