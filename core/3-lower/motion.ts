import type { Batch } from "#base";
import { axes, axisBit, axisCount, axisGroups, linearAxes, rotaryAxes, rowKind } from "#base";
import type { JobStep } from "#job";
import { rotaryNotThere, tooManyAxes } from "./findings.ts";
import { lowerFeed } from "./feed.ts";
import { makeRoom, writeRow } from "./output.ts";
import type { Lowering } from "./state.ts";
import { movedAxes, need, rounded, tellOnce } from "./state.ts";

const xyBits = axisBit.x | axisBit.y;

/** Takes the axes that a row of the job names into the exact place of the tool. */
export function takeTarget(state: Lowering, moves: Batch<JobStep>, row: number): void {
  const stated = moves.stated[row];
  if (stated & axisBit.x) state.exact[0] = moves.x[row];
  if (stated & axisBit.y) state.exact[1] = moves.y[row];
  if (stated & axisBit.z) state.exact[2] = moves.z[row];
  if ((stated & rotaryAxes) === 0 || !moves.abc) return;
  state.unstated |= stated & rotaryAxes & ~state.rotary;
  state.rotary |= stated & rotaryAxes;
  for (let axis = 0; axis < 3; axis++) {
    if ((stated & (axisBit.a << axis)) === 0) continue;
    const name = axes[3 + axis];
    if (state.machine.travel[name] === undefined) {
      tellOnce(state, `machine.travel.${name}`, () => {
        state.report(rotaryNotThere(name, moves.source[row]));
      });
    }
    state.exact[3 + axis] = moves.abc[axis][row];
  }
}

/** The axes whose places are known: the linear ones, and the rotary ones that the operation has named. */
export function knownAxes(state: Lowering): number {
  return linearAxes | state.rotary;
}

/** Where the tool is to stand, on the grid. */
function roundedTarget(state: Lowering): Float64Array {
  return state.at.map((_, axis) => rounded(state, axis));
}

/** Moves the axes of a mask to a target and writes the row. */
function moveAxes(
  state: Lowering,
  target: Float64Array,
  mask: number,
  source: number,
  fields: { kind: number; feed: number },
): void {
  for (let axis = 0; axis < axes.length; axis++) if (mask & (1 << axis)) state.at[axis] = target[axis];
  writeRow(
    state.output,
    { ...fields, known: knownAxes(state), stated: mask, c1: 0, c2: 0, turns: 0 },
    state.at,
    source,
  );
}

/** The first rapid of an operation: X and Y at clearance, and Z behind it where it is named. */
function lowerFirstRapid(state: Lowering, target: Float64Array, source: number): void {
  state.atStart = false;
  moveAxes(state, target, xyBits | state.rotary, source, { kind: rowKind.rapid, feed: 0 });
  if (target[2] !== state.at[2]) moveAxes(state, target, axisBit.z, source, { kind: rowKind.rapid, feed: 0 });
}

/**
 * A rapid. Where the controller's rapids are not straight, Z and the other axes move one after the other: rising Z first,
 * falling Z last.
 */
export function lowerRapid(state: Lowering, moves: Batch<JobStep>, row: number): void {
  takeTarget(state, moves, row);
  rapidTo(state, moves.source[row]);
}

/** A rapid to the exact place that the state holds. */
export function rapidTo(state: Lowering, source: number): void {
  const target = roundedTarget(state);
  if (state.atStart) {
    lowerFirstRapid(state, target, source);
    return;
  }
  const moved = movedAxes(state, target);
  const others = moved & ~axisBit.z;
  const rises = target[2] > state.at[2];
  if (moved === 0) state.summary.dropped++;
  else if (others === 0 || (moved & axisBit.z) === 0 || goesStraight(state, moved, source))
    rapidAxes(state, target, moved, source);
  else {
    if (rises) rapidAxes(state, target, axisBit.z, source);
    rapidAxes(state, target, others, source);
    if (!rises) rapidAxes(state, target, axisBit.z, source);
  }
}

/** A rapid of some axes, in as many rows as the dialect's blocks need for them. */
export function rapidAxes(state: Lowering, target: Float64Array, mask: number, source: number): void {
  for (const group of axisGroups(mask, state.axesOfRapid))
    moveAxes(state, target, group, source, { kind: rowKind.rapid, feed: 0 });
}

/** Whether Z and other axes may share a rapid. */
function goesStraight(state: Lowering, moved: number, source: number): boolean {
  return axisCount(moved) <= state.axesOfRapid && rapidsAreStraight(state, source);
}

/** Refuses a motion at feed that moves more axes than a block may. */
export function checkAxes(state: Lowering, moved: number, source: number): void {
  if (axisCount(moved) <= state.axesAtOnce) return;
  tellOnce(state, `motion.axes-at-once ${state.operation.id}`, () => {
    state.report(tooManyAxes(state.axesAtOnce, source));
  });
}

/** Z alone at rapid to an exact height. */
export function rapidZ(state: Lowering, z: number, source: number): void {
  state.exact[2] = z;
  const height = rounded(state, 2);
  if (height === state.at[2]) return;
  const target = Float64Array.from(state.at);
  target[2] = height;
  moveAxes(state, target, axisBit.z, source, { kind: rowKind.rapid, feed: 0 });
}

function rapidsAreStraight(state: Lowering, offset: number): boolean {
  const key = {
    path: "motion.rapids",
    why: "since a rapid changes Z together with another axis",
    example: "motion: { rapids: dog-leg }",
    offset,
  };
  return need(state, state.capabilities.rapids, key, "dog-leg" as const) === "straight";
}

/** A line at feed. */
export function lowerLine(state: Lowering, moves: Batch<JobStep>, row: number): void {
  takeTarget(state, moves, row);
  lineTo(state, lowerFeed(state, moves.feed[row], moves.source[row]), moves.source[row]);
}

/** A line to the exact place that the state holds, with a feed as it is written. */
export function lineTo(state: Lowering, feed: number, source: number): void {
  const target = roundedTarget(state);
  const moved = movedAxes(state, target);
  if (moved === 0) state.summary.dropped++;
  else {
    checkAxes(state, moved, source);
    moveAxes(state, target, moved, source, { kind: rowKind.line, feed });
  }
}

/**
 * The hot path: a run of lines in x, y and z. Does what `lowerLine` does, without a call or an object a row.
 *
 * @returns the first row that is not such a line
 */
export function lowerLines(state: Lowering, moves: Batch<JobStep>, from: number): number {
  const { at, exact, summary } = state;
  const grid = state.grids.length;
  let row = from;
  for (; row < moves.count && moves.kind[row] === rowKind.line; row++) {
    const named = moves.stated[row];
    if (named & rotaryAxes) break;
    let moved = 0;
    if (named & 1) {
      exact[0] = moves.x[row];
      const x = onGrid(exact[0], grid);
      if (x !== at[0]) moved |= 1;
      at[0] = x;
    }
    if (named & 2) {
      exact[1] = moves.y[row];
      const y = onGrid(exact[1], grid);
      if (y !== at[1]) moved |= 2;
      at[1] = y;
    }
    if (named & 4) {
      exact[2] = moves.z[row];
      const z = onGrid(exact[2], grid);
      if (z !== at[2]) moved |= 4;
      at[2] = z;
    }
    if (moves.feed[row] !== state.rawFeed) lowerFeed(state, moves.feed[row], moves.source[row]);
    if (moved === 0) summary.dropped++;
    else appendLine(state, moved, moves.source[row]);
    // Three axes are all that these lines have.
    if (moved === linearAxes && state.axesAtOnce < 3) checkAxes(state, moved, moves.source[row]);
  }
  return row;
}

/** As `roundToGrid`, small enough to be inlined. */
function onGrid(value: number, grid: number): number {
  return (value < 0 ? -Math.floor(-value / grid + 0.5) : Math.floor(value / grid + 0.5)) * grid + 0;
}

function appendLine(state: Lowering, moved: number, source: number): void {
  const { at } = state;
  const batch = makeRoom(state.output);
  const index = batch.count++;
  batch.kind[index] = rowKind.line;
  batch.frame[index] = 0;
  batch.known[index] = linearAxes | state.rotary;
  batch.stated[index] = moved;
  batch.x[index] = at[0];
  batch.y[index] = at[1];
  batch.z[index] = at[2];
  if (batch.abc) for (let axis = 0; axis < 3; axis++) batch.abc[axis][index] = at[3 + axis];
  batch.feed[index] = state.feed;
  batch.c1[index] = batch.c2[index] = 0;
  batch.turns[index] = 0;
  batch.aside[index] = -1;
  batch.source[index] = source;
}
