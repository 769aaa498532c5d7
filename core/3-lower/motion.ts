import type { Batch } from "#base";
import {
  axes,
  axisBit,
  axisCount,
  axisGroups,
  batchRows,
  fillLines,
  linearAxes,
  rotaryAxes,
  rowKind,
} from "#base";
import type { JobStep } from "#job";
import { rotaryNotThere, tooManyAxes } from "./findings.ts";
import { lowerFeed } from "./feed.ts";
import type { LoweredStep } from "./lowered.ts";
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
    example: "motion: { rapids: ? } # straight or dog-leg",
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
  let row = from;
  while (isPlainLine(moves, row)) row = lowerInto(state, moves, row, makeRoom(state.output));
  return row;
}

function isPlainLine({ kind, stated, count }: Batch<JobStep>, row: number): boolean {
  return row < count && kind[row] === rowKind.line && (stated[row] & rotaryAxes) === 0;
}

/** Lowers lines as long as there are any and the batch has room; gives the row that comes next. */
function lowerInto(state: Lowering, moves: Batch<JobStep>, from: number, batch: Batch<LoweredStep>): number {
  const { at, exact, summary } = state;
  const { x, y, z, feed, source, stated, count: first } = batch;
  const grid = state.grids.length;
  let [toX, toY, toZ] = at;
  let index = first;
  let row = from;
  for (; index < batchRows && isPlainLine(moves, row); row++) {
    const named = moves.stated[row];
    let moved = 0;
    if (named & axisBit.x) {
      const place = onGrid((exact[0] = moves.x[row]), grid);
      if (place !== toX) moved |= axisBit.x;
      toX = place;
    }
    if (named & axisBit.y) {
      const place = onGrid((exact[1] = moves.y[row]), grid);
      if (place !== toY) moved |= axisBit.y;
      toY = place;
    }
    if (named & axisBit.z) {
      const place = onGrid((exact[2] = moves.z[row]), grid);
      if (place !== toZ) moved |= axisBit.z;
      toZ = place;
    }
    if (moves.feed[row] !== state.rawFeed) lowerFeed(state, moves.feed[row], moves.source[row]);
    // Three axes are all that these lines have.
    if (moved === linearAxes && state.axesAtOnce < 3) checkAxes(state, moved, moves.source[row]);
    if (moved === 0) {
      summary.dropped++;
      continue;
    }
    stated[index] = moved;
    x[index] = toX;
    y[index] = toY;
    z[index] = toZ;
    feed[index] = state.feed;
    source[index] = moves.source[row];
    index++;
  }
  at.set([toX, toY, toZ]);
  finishLines(state, batch, first, index);
  return row;
}

/** As `roundToGrid`, small enough to be inlined. */
function onGrid(value: number, grid: number): number {
  return (value < 0 ? -Math.floor(-value / grid + 0.5) : Math.floor(value / grid + 0.5)) * grid + 0;
}

/** Gives the rows of a run the columns that are the same in all of them. */
function finishLines(state: Lowering, batch: Batch<LoweredStep>, first: number, end: number): void {
  fillLines(batch, first, end);
  batch.known.fill(linearAxes | state.rotary, first, end);
  for (let axis = 0; axis < 3; axis++) batch.abc?.[axis].fill(state.at[3 + axis], first, end);
  batch.count = end;
}
