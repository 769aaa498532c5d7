import type { Batch } from "#base";
import { axes, axisBit, rowKind } from "#base";
import { approach, goToNext } from "./approach.ts";
import type { Destination } from "./approach.ts";
import { needsResume, resumeDistance } from "./modes.ts";
import type { Run } from "./run.ts";
import { restartSpindle } from "./spindle.ts";
import { copyRows } from "./writer.ts";

/** Whether a batch can be handed on as it is: motion only, and nothing to be put in its way. */
export function passesWhole(run: Run, batch: Batch<unknown>): boolean {
  const { state } = run;
  if (state.awaiting !== "nothing" || state.tapped || batch.count === 0) return false;
  if ((state.cycle === undefined && needsResume(run)) || axesLeftOut(run, batch, 0) !== 0) return false;
  return !batch.kind.subarray(0, batch.count).includes(rowKind.aside);
}

/** Passes the motion rows `from` to `to` (not included) on; the first row of an operation is approached. */
export function passMotion(run: Run, batch: Batch<unknown>, from: number, to: number): void {
  let row = from;
  if (run.state.awaiting !== "nothing") row = enterMotion(run, batch, row);
  if (run.state.tapped && row < to) row = passUntilFeed(run, batch, row, to);
  copy(run, batch, row, to);
}

/** The first row of an operation, reached in the way that the state awaits. */
function enterMotion(run: Run, batch: Batch<unknown>, row: number): number {
  const { state } = run;
  const destination = destinationOf(batch, row);
  state.source = batch.source[row];
  if (state.awaiting === "approach") approach(run, destination);
  else goToNext(run, destination);
  state.clearance = batch.z[row];
  state.awaiting = "nothing";
  return row + 1;
}

/** After a tapping cycle: rapids pass, and before the first motion at feed the spindle is started and confirmed anew. */
function passUntilFeed(run: Run, batch: Batch<unknown>, from: number, to: number): number {
  let row = from;
  while (row < to && batch.kind[row] === rowKind.rapid) row++;
  copy(run, batch, from, row);
  if (row < to) restartAfterTapping(run, batch.source[row]);
  return row;
}

/** Restates and confirms speed and direction where a tapping cycle has left them open. */
export function restartAfterTapping(run: Run, source: number): void {
  if (!run.state.tapped) return;
  run.state.source = source;
  restartSpindle(run, run.state.spindle.direction);
}

/** The hot path: copies rows column by column. */
function copy(run: Run, batch: Batch<unknown>, from: number, to: number): void {
  if (from >= to) return;
  if (run.state.cycle === undefined) resumeDistance(run);
  const more = axesLeftOut(run, batch, from);
  const { at } = run.state.work;
  if (more === 0) copyRows(run.writer, batch, from, to);
  else
    copyRows(run.writer, batch, from, to, (copied, first, end) => {
      addAxes(copied, first, end, more, at);
    });
  noteMotion(run, batch, to - 1);
}

/** Axes whose place is known although the rows say nothing of it: rotary axes that only an earlier operation named. */
function axesLeftOut(run: Run, batch: Batch<unknown>, row: number): number {
  return run.state.work.known & ~batch.known[row];
}

/** Adds the places of such axes to rows, up to the row that names them itself. */
function addAxes(batch: Batch, from: number, end: number, more: number, at: Float64Array): void {
  for (let row = from; row < end; row++) {
    const added = more & ~batch.known[row];
    batch.known[row] |= added;
    batch.abc?.forEach((column, axis) => {
      if (added & (axisBit.a << axis)) column[row] = at[3 + axis];
    });
  }
}

/** What is known after a motion of the job. */
export function noteMotion(run: Run, batch: Batch<unknown>, row: number): void {
  const { state } = run;
  const { at, known } = destinationOf(batch, row);
  for (let axis = 0; axis < axes.length; axis++) if (known & (1 << axis)) state.work.at[axis] = at[axis];
  state.work.known |= known;
  state.machine.known = 0;
  state.atSwapHeight = false;
  state.source = batch.source[row];
}

function destinationOf(batch: Batch<unknown>, row: number): Destination {
  const at = new Float64Array(6);
  at[0] = batch.x[row];
  at[1] = batch.y[row];
  at[2] = batch.z[row];
  batch.abc?.forEach((column, axis) => (at[3 + axis] = column[row]));
  return { at, known: batch.known[row] };
}
