import { frame, rowKind } from "#base";
import type { Batch, JobFacts, MachineFacts, Report } from "#base";
import { forgetAir } from "./confirm.ts";
import { endInput } from "./end.ts";
import { findings } from "./findings.ts";
import { machineRow } from "./machine-row.ts";
import { checkRackList } from "./reload.ts";
import { checkDueSpeed, checkRestarted } from "./spindle.ts";
import { checkResumed } from "./start.ts";
import { acceptStep } from "./steps.ts";
import type { WindowState } from "./window-state.ts";
import { createWatch, loadRow, tell, tellUnlisted } from "./watch.ts";
import type { Watch } from "./watch.ts";
import { mayCruise, refreshWindows } from "./windows.ts";
import { workRow } from "./work-row.ts";

/** A watch over one program: it is shown every batch in order, and told when there are no more. */
export interface Guard {
  /** Takes the rows of a batch; the batch is free again afterwards. */
  accept(batch: Batch): void;
  /** Says what only the end of the input shows. */
  end(): void;
}

/**
 * The safety rules as a state machine of its own: it sees steps and facts, and knows nothing of how either came about.
 * After a finding the state counts as repaired, so that each fault is named once.
 *
 * @param facts what the dialect declares of the machine
 * @param job what is known of the job and its set-up; with `known` false what depends on it is skipped, with one note
 * @param source which text the byte offsets of the rows belong to
 */
export function createGuard(
  facts: MachineFacts,
  job: JobFacts,
  report: Report,
  source: "job" | "program",
): Guard {
  const watch = createWatch(facts, job, report, source);
  checkRackList(watch, job.rack);
  return {
    accept: (batch) => acceptBatch(watch, batch),
    end: () => {
      endInput(watch);
      tellUnlisted(watch);
    },
  };
}

function acceptBatch(watch: Watch, batch: Batch): void {
  let index = 0;
  while (index < batch.count) {
    if (watch.state.cruising && !batch.abc) index = cruise(watch, batch, index);
    if (index >= batch.count) return;
    acceptRow(watch, batch, index++);
  }
}

/** Takes one row that needs a closer look. */
function acceptRow(watch: Watch, batch: Batch, index: number): void {
  const { row, state } = watch;
  loadRow(row, batch, index);
  if (state.program.ended) {
    if (!state.program.wentOn) tell(watch, findings["program/after-end"]());
    state.program.wentOn = true;
    return;
  }
  if (row.kind === rowKind.aside) {
    acceptStep(watch, batch.asides[batch.aside[index]]);
  } else {
    checkDueSpeed(watch);
    checkResumed(watch);
    checkRestarted(watch);
    refreshWindows(watch);
    state.spindle.timePassed = true;
    if (row.frame === frame.machine) machineRow(watch);
    else workRow(watch);
  }
  refreshWindows(watch);
  state.cruising = mayCruise(watch);
}

/** On which sides of the column around all boxes a place lies; two places that share a side have no box between them. */
function sidesOf(watch: Watch, x: number, y: number, z: number): number {
  const { around } = watch.state.windows;
  const sideX = x <= around.lowX ? 1 : x >= around.highX ? 2 : 0;
  const sideY = y <= around.lowY ? 4 : y >= around.highY ? 8 : 0;
  return sideX | sideY | (z >= around.top ? 16 : 0);
}

/** Whether an arc by centre agrees with its radii, and its whole circle lies within the windows. Start in atoms. */
function arcPasses(watch: Watch, batch: Batch, index: number, fromX: number, fromY: number): boolean {
  const tolerance = watch.facts.arcTolerance;
  if (!tolerance) return false;
  const { low, high } = watch.state.windows;
  const centreX = batch.c1[index];
  const centreY = batch.c2[index];
  const start = Math.sqrt((fromX - centreX) ** 2 + (fromY - centreY) ** 2);
  const end = Math.sqrt((batch.x[index] - centreX) ** 2 + (batch.y[index] - centreY) ** 2);
  const allowed = Math.max(tolerance[watch.state.modes.units], tolerance.relative * start);
  const fits = start > 0 && end > 0 && Math.abs(start - end) <= allowed;
  const insideX = centreX - start >= low[0] && centreX + start <= high[0];
  return fits && insideX && centreY - start >= low[1] && centreY + start <= high[1];
}

/** Whether no axis of a line, or of an arc in XY that stays at its height, can be above its own highest feed. */
function axesPass(
  { axisMost, feedUnit }: WindowState,
  sort: number,
  feed: number,
  dx: number,
  dy: number,
  dz: number,
): boolean {
  const speed = feed * feedUnit;
  // Inverse time needs the length of the path, and a helix its angle.
  if (speed === 0 || (sort !== rowKind.line && dz !== 0)) return false;
  // Somewhere in an arc X or Y may have the whole feed.
  if (sort !== rowKind.line) return speed <= axisMost[0] && speed <= axisMost[1];
  const length = Math.sqrt(dx * dx + dy * dy + dz * dz);
  const inPlane =
    speed * Math.abs(dx) <= axisMost[0] * length && speed * Math.abs(dy) <= axisMost[1] * length;
  return inPlane && speed * Math.abs(dz) <= axisMost[2] * length;
}

/**
 * Passes rapids, lines and plain arcs that lie within the windows, as most rows do, on columns and local variables alone.
 *
 * @returns index of the first row that needs a closer look
 */
function cruise(watch: Watch, batch: Batch, first: number): number {
  const { state } = watch;
  const { kind, known, x, y, z, feed, count } = batch;
  const frames = batch.frame;
  const { low, high, lowFeed, highFeed, stockTop, columns, freeFeed } = state.windows;
  const [lowX, lowY, lowZ] = low;
  const [highX, highY, highZ] = high;
  const { at, known: placed } = state.work;
  const boxed = columns.length > 0;
  let [fromX, fromY, fromZ] = at;
  let fedTo = state.fedTo;
  let sides = boxed ? sidesOf(watch, fromX, fromY, fromZ) : 0;
  // Past boxes an arc needs a closer look: its ends do not show where it goes.
  const lastKind = state.modes.plane === "xy" && !boxed ? rowKind.arcXy : rowKind.line;
  let cuts = false;
  let index = first;
  for (; index < count; index++) {
    const sort = kind[index];
    if (sort > lastKind || frames[index] !== frame.work || known[index] !== placed) break;
    const toX = x[index];
    const toY = y[index];
    const toZ = z[index];
    if (!(toX >= lowX && toX <= highX && toY >= lowY && toY <= highY && toZ >= lowZ && toZ <= highZ)) break;
    const moves = toX !== fromX || toY !== fromY;
    if (sort !== rowKind.rapid) {
      if (!(feed[index] >= lowFeed && feed[index] <= highFeed)) break;
    } else if (toZ < stockTop || fromZ < stockTop) break;
    if (sort !== rowKind.rapid && feed[index] > freeFeed) {
      if (!axesPass(state.windows, sort, feed[index], toX - fromX, toY - fromY, toZ - fromZ)) break;
    }
    if (sort === rowKind.arcXy && !arcPasses(watch, batch, index, fromX, fromY)) break;
    if (boxed) {
      const next = sidesOf(watch, toX, toY, toZ);
      if ((next & sides) === 0) break;
      sides = next;
    }
    if (sort !== rowKind.rapid) {
      cuts = true;
      fedTo = moves || toZ < fedTo ? toZ : fedTo;
    } else if (moves) fedTo = Infinity;
    fromX = toX;
    fromY = toY;
    fromZ = toZ;
  }
  if (index > first) leaveCruise(watch, fromX, fromY, fromZ, fedTo);
  if (cuts) state.feedExcused = false;
  return index;
}

/** Brings the state up to the last row passed. */
function leaveCruise(watch: Watch, x: number, y: number, z: number, fedTo: number): void {
  const { state, traits } = watch;
  state.work.at[0] = x;
  state.work.at[1] = y;
  state.work.at[2] = z;
  state.machine.known = 0;
  state.fedTo = fedTo;
  state.spindle.timePassed = true;
  forgetAir(watch);
  if (!traits.byClearance) return;
  state.approach.up = state.swap.retracted = z >= traits.clearance;
}
