import type { Batch } from "#base";
import {
  atomsPerUnit,
  axisBit,
  centreByRadius,
  createArcShape,
  inverseTimeUnit,
  isArc,
  milliPerRpm,
  planeOfArc,
  rotaryAxes,
  rowKind,
  shapeArc,
  usualBackOff,
} from "#base";
import type { Holes, JobStep, OpenJob, Operation } from "#job";

/** Microseconds in a minute. */
const minute = 60_000_000;

/** Where the tool is in an operation, and how long it has cut. */
interface Cut {
  /** x, y, z in atoms, a, b, c in micro-degrees; no number where it is not known. */
  readonly at: Float64Array;
  /** Where it was before the row at hand. */
  readonly from: Float64Array;
  /** Milli-rpm. */
  rpm: number;
  holes: Holes | undefined;
  minutes: number;
}

/**
 * Time for which an operation cuts by its feeds alone, feed motion of holes included: no machine is faster, and one that has
 * to speed up and slow down takes longer. The moves are read once; after an error in them the time is that up to it.
 *
 * @returns microseconds
 */
export function cuttingTime({ job, moves }: OpenJob, operation: Operation): number {
  const cut: Cut = {
    at: Float64Array.of(NaN, NaN, operation.clearance, NaN, NaN, NaN),
    from: new Float64Array(6),
    rpm: operation.spindle?.rpm ?? 0,
    holes: undefined,
    minutes: 0,
  };
  const degree = atomsPerUnit[job.units] / 1e6;
  // What is wrong with the moves is told when they are read for the program.
  for (const batch of moves(operation, () => undefined)) {
    const columns = [batch.x, batch.y, batch.z, ...(batch.abc ?? [])];
    for (let row = 0; row < batch.count; row++) {
      if (batch.kind[row] === rowKind.aside) {
        takeStep(cut, batch.asides[batch.aside[row]]);
        continue;
      }
      cut.from.set(cut.at);
      for (let axis = 0; axis < columns.length; axis++)
        if (batch.stated[row] & (axisBit.x << axis)) cut.at[axis] = columns[axis][row];
      cut.minutes += minutesOf(cut, operation, batch, row, degree);
    }
  }
  return cut.minutes * minute;
}

function takeStep(cut: Cut, step: JobStep): void {
  if (step.kind === "spindle") cut.rpm = step.rpm;
  if (step.kind === "holes") cut.holes = step;
}

/** Minutes of feed of the row whose end has been gone to. @param degree length units of a micro-degree, for the feed of a rotary axis alone */
function minutesOf(
  cut: Cut,
  operation: Operation,
  batch: Batch<JobStep>,
  row: number,
  degree: number,
): number {
  const kind = batch.kind[row];
  const { from, at } = cut;
  if (kind === rowKind.rapid) return 0;
  if (kind === rowKind.hole) return cut.holes === undefined ? 0 : holeMinutes(cut, cut.holes, operation);
  if (operation.feedMode === "inverse-time") return inverseTimeUnit / batch.feed[row];
  const length = isArc(kind)
    ? arcLength(batch, row, from, at)
    : lineLength(from, at, (batch.stated[row] & rotaryAxes) === 0 ? 0 : degree);
  return length / perMinute(cut, operation, batch.feed[row]);
}

/** A feed in atoms a minute. */
function perMinute({ rpm }: Cut, { feedMode }: Operation, feed: number): number {
  return feedMode === "per-revolution" ? (feed * rpm) / milliPerRpm : feed;
}

/** Atoms; of rotary axes alone the longest way, a degree as a unit of length. */
function lineLength(from: Float64Array, to: Float64Array, degree: number): number {
  const way = (axis: number): number => (Number.isNaN(from[axis]) ? 0 : Math.abs(to[axis] - from[axis]));
  const length = Math.hypot(way(0), way(1), way(2));
  return length === 0 ? Math.max(way(3), way(4), way(5)) * degree : length;
}

function arcLength(batch: Batch<unknown>, row: number, from: Float64Array, to: Float64Array): number {
  const kind = batch.kind[row];
  const [first, second, normal] = planeOfArc(kind);
  const ends = [from[first], from[second], to[first], to[second]] as const;
  const turns = batch.turns[row];
  const shape = createArcShape();
  if (kind >= rowKind.radiusXy) centreByRadius(shape, ...ends, batch.c1[row], turns < 0 ? -1 : 1);
  else Object.assign(shape, { centre1: batch.c1[row], centre2: batch.c2[row] });
  shapeArc(shape, ...ends, turns);
  return Math.hypot(shape.radius * shape.angle, to[normal] - from[normal]);
}

/** One hole: in from the retract level, by pecks where it has them, and out at feed where its kind does. */
function holeMinutes(cut: Cut, holes: Holes, operation: Operation): number {
  const { cycle, depth, retract, between, feed, feedOut, lead } = holes;
  const deep = retract - depth;
  cut.at[2] = between === "initial" ? Math.max(cut.at[2], retract) : retract;
  if (cycle === "tap") return (2 * deep) / ((lead * cut.rpm) / milliPerRpm);
  const comesOut = cycle === "bore" || cycle === "ream";
  const out = comesOut ? deep / perMinute(cut, operation, feedOut === 0 ? feed : feedOut) : 0;
  return (deep + backOffs(holes, deep)) / perMinute(cut, operation, feed) + out;
}

/** The ways back down over what a peck was backed off: from the second peck on, as far as there was a hole before. */
function backOffs({ peck, backOff }: Holes, deep: number): number {
  const off = backOff === 0 ? usualBackOff : backOff;
  let sum = 0;
  if (peck > 0) for (let reached = peck; reached < deep; reached += peck) sum += Math.min(off, reached);
  return sum;
}
