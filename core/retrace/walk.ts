import type { Batch } from "#base";
import { axes, axisBit, frame, linearAxes, rotaryAxes, rowKind } from "#base";
import type { Between, Held, Workshop } from "./held.ts";
import { explain } from "./held.ts";
import type { ProgramState } from "./state.ts";
import { atStart } from "./state.ts";

const xyBits = axisBit.x | axisBit.y;

/** What is done about the parts of a program. The walk finds the same parts each time; what becomes of them differs. */
export interface WalkActions {
  /** A stretch of motions that may be one operation begins at a row. */
  begin(walk: Walk, between: Between, batch: Batch, row: number): void;
  /** The tool has come to where the work begins: x, y and z are known. */
  enter(walk: Walk, source: number): void;
  /** Steps between two motions of one stretch; the second is at `row`. */
  within(walk: Walk, between: Between, batch: Batch, row: number): void;
  /** Motions, from a row to another (not included). */
  motions(walk: Walk, batch: Batch, from: number, to: number): void;
  /** A stretch ends; what stands behind its last motion. */
  end(walk: Walk, between: Between): void;
}

/** Walking through the rows of a program, from motion to motion. */
export interface Walk {
  readonly workshop: Workshop;
  /** Whether each block states all axes, so that those that it states say nothing about what moves. */
  readonly statesAll: boolean;
  readonly act: WalkActions;
  /** What holds behind the last motion. */
  state: ProgramState;
  /** Place of the tool behind it, and which axes are known. */
  readonly at: Float64Array;
  known: number;
  /** Axes whose place a stop has left open, and to which a job brings the tool back behind it. */
  kept: number;
  held: Held[];
  /** How many were left out because there were too many. */
  lost: number;
  section: boolean;
  phase: "outside" | "entering" | "inside";
  /** Stretches begun. */
  stretches: number;
  readonly entry: Entry;
}

/** The way to where the work begins. */
export interface Entry {
  /** Axes beside Z that have been named on the way. */
  named: number;
  /** Z at which X and Y were reached. */
  level: number;
  /** Whether the tool comes from the operation before, and not from above. */
  continued: boolean;
  /** Rotary axes that were named. */
  rotary: number;
  /** Z to which a first rapid goes down behind X and Y, where the tool came from the operation before. */
  drop: number | undefined;
}

/** The most steps between two motions. */
const mostHeld = 4096;

export function createWalk(workshop: Workshop, statesAll: boolean, act: WalkActions): Walk {
  return {
    workshop,
    statesAll,
    act,
    state: atStart,
    at: new Float64Array(6),
    known: 0,
    kept: 0,
    held: [],
    lost: 0,
    section: false,
    phase: "outside",
    stretches: 0,
    entry: { named: 0, level: 0, continued: false, rotary: 0, drop: undefined },
  };
}

/** Walks through the rows of one batch. */
export function walkBatch(walk: Walk, batch: Batch): void {
  const { sections } = batch;
  let section = 0;
  for (let row = 0; row < batch.count;) {
    while (section < sections.length && sections[section] <= row) {
      section++;
      walk.section = true;
    }
    if (isHeld(batch, row)) {
      hold(walk, batch, row++);
      continue;
    }
    if (walk.phase === "outside" || walk.held.length > 0 || walk.section) settle(walk, batch, row);
    if (walk.phase === "entering") {
      if (approachBy(walk, batch, row)) row++;
      continue;
    }
    const end = endOfRun(batch, row, sections[section] ?? batch.count);
    walk.act.motions(walk, batch, row, end);
    follow(walk, batch, end - 1);
    row = end;
  }
}

/** The program is at its end. */
export function endWalk(walk: Walk): void {
  const between = takeHeld(walk);
  if (walk.phase !== "outside") walk.act.end(walk, between);
  walk.phase = "outside";
}

function isHeld({ kind, frame: frames }: Batch, row: number): boolean {
  return kind[row] === rowKind.aside || frames[row] === frame.machine;
}

function endOfRun(batch: Batch, from: number, most: number): number {
  const { kind, frame: frames } = batch;
  let row = from + 1;
  const end = most > from ? Math.min(most, batch.count) : batch.count;
  while (row < end && kind[row] !== rowKind.aside && frames[row] === frame.work) row++;
  return row;
}

function hold(walk: Walk, batch: Batch, row: number): void {
  const source = batch.source[row];
  if (walk.held.length >= mostHeld) {
    walk.lost++;
    return;
  }
  if (batch.kind[row] === rowKind.aside)
    walk.held.push({ kind: "step", step: batch.asides[batch.aside[row]], source });
  else
    walk.held.push({
      kind: "machine-move",
      axes: batch.stated[row],
      at: [batch.x[row], batch.y[row], batch.z[row]],
      feed: batch.kind[row] === rowKind.rapid ? 0 : batch.feed[row],
      source,
    });
}

function takeHeld(walk: Walk): Between {
  const { held, state, workshop, section } = walk;
  const between = explain(held, state, workshop, section);
  walk.held = [];
  walk.section = false;
  walk.state = between.behind;
  return between;
}

/** A motion comes: what stands before it either lies within its stretch, or another begins. */
function settle(walk: Walk, batch: Batch, row: number): void {
  const between = takeHeld(walk);
  const arrives = walk.phase === "entering" && isComplete(walk) && !between.swapped;
  if (arrives && (between.paused || placesLost(between) === 0))
    finishEntry(walk, batch.source[row], batch, row);
  if (walk.phase !== "outside" && !partsAt(walk, between, batch, row)) {
    walk.act.within(walk, between, batch, row);
    const lost = placesLost(between);
    walk.kept = between.paused ? walk.known | walk.kept : walk.kept & ~lost;
    walk.known &= ~lost;
    return;
  }
  const continued = walk.phase === "inside" && !between.swapped && !between.lifted;
  if (walk.phase !== "outside") walk.act.end(walk, between);
  walk.phase = "entering";
  walk.stretches++;
  Object.assign(walk.entry, { named: 0, level: 0, continued, rotary: 0, drop: undefined });
  walk.act.begin(walk, between, batch, row);
  walk.known &= ~placesLost(between);
  walk.kept = 0;
}

/** Axes whose place in work coordinates is not known behind some steps, though it was before. */
function placesLost({ all, before, behind, lifted, stopped }: Between): number {
  let lost = 0;
  for (const { held } of all) if (held.kind === "machine-move") lost |= held.axes;
  if ((before.workOffset ?? 1) !== (behind.workOffset ?? 1) || stopped) return linearAxes | rotaryAxes;
  const otherLength = before.lengthOffset !== behind.lengthOffset;
  return lost | (otherLength || lifted ? axisBit.z : 0);
}

/** Whether the tool has come to where X, Y and Z are known. */
function isComplete({ known, entry }: Walk): boolean {
  return (known & linearAxes) === linearAxes && entry.named !== 0;
}

/** Whether another stretch begins at a motion. */
function partsAt(walk: Walk, between: Between, batch: Batch, row: number): boolean {
  const { before, behind, swapped, lifted, paused, restated, section } = between;
  if (swapped) return true;
  // On the way to the work nothing has been done yet that could be another operation's.
  if (walk.phase === "entering") return false;
  const offset = (before.workOffset ?? 1) !== (behind.workOffset ?? 1);
  if (offset || (lifted && !paused)) return true;
  const turned =
    before.direction !== undefined && behind.direction !== undefined && before.direction !== behind.direction;
  const differs = turned || before.feedMode !== behind.feedMode || !samePath(before, behind);
  if (differs && lifted) return true;
  if (!differs && (paused || (restated < 2 && !section))) return false;
  return isAtHeight(walk) && isAcross(walk, batch, row);
}

function samePath({ path: first }: ProgramState, { path: second }: ProgramState): boolean {
  return first?.value === second?.value && first?.tolerance === second?.tolerance;
}

/** Whether the tool stands where it travels: at the level of the approach. */
export function isAtHeight({ known, kept, at, entry }: Walk): boolean {
  return ((known | kept) & axisBit.z) !== 0 && at[2] >= (entry.drop ?? entry.level);
}

/** Whether a motion is one at rapid that does not go down. */
function isAcross(walk: Walk, batch: Batch, row: number): boolean {
  return batch.kind[row] === rowKind.rapid && batch.z[row] >= walk.at[2];
}

/** Axes that a row moves, and those that were not known before. */
function movedBy(walk: Walk, batch: Batch, row: number): number {
  const known = batch.known[row];
  let moved = known & ~walk.known;
  for (let axis = 0; axis < axes.length; axis++) {
    const bit = 1 << axis;
    if ((known & walk.known & bit) !== 0 && placeIn(batch, row, axis) !== walk.at[axis]) moved |= bit;
  }
  return moved;
}

export function placeIn(batch: Batch, row: number, axis: number): number {
  if (axis >= 3) return batch.abc?.[axis - 3][row] ?? 0;
  return axis === 0 ? batch.x[row] : axis === 1 ? batch.y[row] : batch.z[row];
}

/** Takes the place behind a motion. */
function follow(walk: Walk, batch: Batch, row: number): void {
  const known = batch.known[row];
  for (let axis = 0; axis < axes.length; axis++)
    if ((known & (1 << axis)) !== 0) walk.at[axis] = placeIn(batch, row, axis);
  walk.known = known;
}

/** A motion on the way to the work. @returns whether it is a part of that way */
function approachBy(walk: Walk, batch: Batch, row: number): boolean {
  const { entry } = walk;
  const isRapid = batch.kind[row] === rowKind.rapid;
  const moved = movedBy(walk, batch, row);
  const across = moved & ~axisBit.z;
  // X and Y may come one after the other; any other motion behind them is the work's own.
  const goesOn =
    walk.workshop.machine.rapidAxes === "one-at-a-time" &&
    (moved & axisBit.z) === 0 &&
    (across & entry.named) === 0;
  if (!isRapid || (isComplete(walk) && !goesOn)) {
    finishEntry(walk, batch.source[row], batch, row);
    return false;
  }
  const stated = walk.statesAll ? across : batch.stated[row] & ~axisBit.z;
  const z = (walk.known & axisBit.z) !== 0 ? Math.max(walk.at[2], batch.z[row]) : batch.z[row];
  const isLevel = across !== 0 || entry.named === 0 || (walk.known & axisBit.z) === 0;
  follow(walk, batch, row);
  entry.named |= stated | across;
  entry.rotary |= (stated | across) & rotaryAxes;
  if ((walk.known & axisBit.z) !== 0 && isLevel) entry.level = across === 0 ? walk.at[2] : z;
  return true;
}

/** The work begins: by a motion that is none of the approach. */
function finishEntry(walk: Walk, source: number, batch: Batch, row: number): void {
  const { entry } = walk;
  const isHole = batch.kind[row] === rowKind.hole;
  if ((walk.known & xyBits) !== xyBits && isHole) {
    // A cycle goes to its hole by itself.
    walk.at[0] = batch.x[row];
    walk.at[1] = batch.y[row];
    walk.known |= batch.known[row] & xyBits;
  }
  if ((walk.known & axisBit.z) === 0 && isHole) {
    walk.at[2] = batch.z[row];
    walk.known |= batch.known[row] & axisBit.z;
  }
  if (entry.named === 0 || isHole) entry.level = Math.max(entry.level, walk.at[2]);
  const isRapid = batch.kind[row] === rowKind.rapid;
  if (entry.continued && isRapid && movedBy(walk, batch, row) === axisBit.z && batch.z[row] < entry.level)
    entry.drop = batch.z[row];
  walk.phase = "inside";
  walk.act.enter(walk, source);
}
