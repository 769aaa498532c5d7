import type { Batch } from "#base";
import { batchColumns, clearBatch, createBatch, milliPerRpm, pushAside, rowKind } from "#base";
import type { Holes, Job, JobStep, Operation } from "#job";

/** A dry run above the stock. */
export interface AirCut {
  /** How much higher all motion in the work is, atoms above 0. */
  readonly height: number;
  /** Highest feed, atoms a minute. */
  readonly feed: number;
}

/**
 * A job as it is run in the air: clearance as much higher as all else, feeds a minute, no coolant. Stock and fixtures stand
 * where they are.
 */
export function raiseJob(job: Job, { height }: AirCut): Job {
  const operations = job.operations.map((operation): Operation => ({
    ...operation,
    clearance: operation.clearance + height,
    feedMode: operation.feedMode === "per-revolution" ? "per-minute" : operation.feedMode,
    coolant: [],
  }));
  return { ...job, operations };
}

const rows = 1024;

/**
 * The moves of an operation as they are run in the air: the same places, higher; feeds a minute, capped; taps as plain moves
 * down and up; no coolant. A feed in inverse time is a part of a minute and stays what it is.
 *
 * @param operation as the job has it, before it was raised
 */
export function* raiseMoves(
  moves: Iterable<Batch<JobStep>>,
  operation: Operation,
  airCut: AirCut,
): Generator<Batch<JobStep>> {
  const raising = createRaising(operation, airCut);
  for (const batch of moves) {
    for (let row = 0; row < batch.count; row++) {
      if (batch.abc && !raising.batch.abc) {
        if (raising.batch.count > 0) yield raising.batch;
        raising.batch = createBatch<JobStep>(rows, true);
      }
      // A tap takes the most rows: six motions a hole.
      if (raising.batch.count + 6 > rows) {
        yield raising.batch;
        clearBatch(raising.batch);
      }
      if (batch.kind[row] === rowKind.aside)
        raiseStep(raising, batch.asides[batch.aside[row]], batch.source[row]);
      else raiseRow(raising, batch, row);
    }
  }
  if (raising.batch.count > 0) yield raising.batch;
}

interface Raising {
  readonly operation: Operation;
  readonly airCut: AirCut;
  batch: Batch<JobStep>;
  /** Milli-rpm. */
  rpm: number;
  /** Z of the tool as it is raised, atoms. */
  z: number;
  /** The taps in hand, and the level to which the tool goes between them. */
  tap: { readonly holes: Holes; readonly level: number } | undefined;
}

function createRaising(operation: Operation, airCut: AirCut): Raising {
  return {
    operation,
    airCut,
    batch: createBatch<JobStep>(rows),
    rpm: operation.spindle?.rpm ?? 0,
    z: operation.clearance + airCut.height,
    tap: undefined,
  };
}

/** A feed of the job in the mode in which it is written in the air. */
function feedInAir({ operation, airCut, rpm }: Raising, feed: number): number {
  if (feed === 0 || operation.feedMode === "inverse-time") return feed;
  const perMinute = operation.feedMode === "per-revolution" ? (feed * rpm) / milliPerRpm : feed;
  return Math.min(perMinute, airCut.feed);
}

function raiseStep(raising: Raising, step: JobStep, source: number): void {
  const { airCut, batch } = raising;
  if (step.kind === "coolant") return;
  if (step.kind === "spindle") raising.rpm = step.rpm;
  if (step.kind === "holes") {
    const holes = raiseHoles(raising, step, airCut.height);
    const level = holes.between === "initial" ? Math.max(raising.z, holes.retract) : holes.retract;
    raising.tap = holes.cycle === "tap" ? { holes, level } : undefined;
    raising.z = level;
    if (raising.tap === undefined) pushAside(batch, holes, source);
    return;
  }
  if (step.kind === "holes-end" && raising.tap !== undefined) {
    raising.tap = undefined;
    return;
  }
  pushAside(batch, step, source);
}

function raiseHoles(raising: Raising, holes: Holes, height: number): Holes {
  return {
    ...holes,
    top: holes.top + height,
    depth: holes.depth + height,
    retract: holes.retract + height,
    feed: feedInAir(raising, holes.feed),
    feedOut: feedInAir(raising, holes.feedOut),
  };
}

function raiseRow(raising: Raising, from: Batch<JobStep>, row: number): void {
  const { batch, airCut, tap } = raising;
  if (tap && from.kind[row] === rowKind.hole) {
    tapInAir(raising, from, row, tap);
    return;
  }
  const to = copyRow(batch, from, row);
  batch.z[to] += airCut.height;
  batch.feed[to] = feedInAir(raising, batch.feed[to]);
  // A centre in ZX has Z first, one in YZ second.
  if (batch.kind[to] === rowKind.arcZx) batch.c1[to] += airCut.height;
  if (batch.kind[to] === rowKind.arcYz) batch.c2[to] += airCut.height;
  if (batch.kind[to] !== rowKind.hole) raising.z = batch.z[to];
}

/** Over the hole, down to the retract level, to depth and back at feed, and up to the level between holes. */
function tapInAir(
  raising: Raising,
  from: Batch<JobStep>,
  row: number,
  { holes, level }: NonNullable<Raising["tap"]>,
): void {
  const { airCut, rpm, batch } = raising;
  const feed = Math.min((holes.lead * rpm) / milliPerRpm, airCut.feed);
  const go = (kind: number, z: number, stated: number): void => {
    const to = copyRow(batch, from, row);
    batch.kind[to] = kind;
    batch.z[to] = z;
    batch.stated[to] = stated;
    batch.feed[to] = kind === rowKind.line ? feed : 0;
  };
  go(rowKind.rapid, level, 4);
  go(rowKind.rapid, level, 3);
  if (level > holes.retract) go(rowKind.rapid, holes.retract, 4);
  go(rowKind.line, holes.depth, 4);
  go(rowKind.line, holes.retract, 4);
  if (level > holes.retract) go(rowKind.rapid, level, 4);
}

/** Appends a copy of a row; gives its index. */
function copyRow(batch: Batch<JobStep>, from: Batch<JobStep>, row: number): number {
  const to = batch.count++;
  for (const column of batchColumns) batch[column][to] = from[column][row];
  batch.abc?.forEach((column, axis) => {
    column[to] = from.abc ? from.abc[axis][row] : 0;
  });
  return to;
}
