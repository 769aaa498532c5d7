import type { Batch } from "#base";
import {
  atomsPerUnit,
  axisBit,
  centreByRadius,
  createArcShape,
  inverseTimeUnit,
  isArc,
  milliPerRpm,
  rotaryAxes,
  rowKind,
  shapeArc,
} from "#base";
import type { Holes, JobStep, OpenJob, Operation } from "#job";

/** Back-off of pecks where the job states none, atoms: 0.25 mm, as lowering has it (common practice, no source). */
const usualBackOff = 2_500_000;

/** Microseconds in a minute. */
const minute = 60_000_000;

/** Where the tool is in an operation, and how long it has cut. */
interface Cut {
  /** x, y, z in atoms, a, b, c in micro-degrees; no number where it is not known. */
  readonly at: Float64Array;
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
    rpm: operation.spindle?.rpm ?? 0,
    holes: undefined,
    minutes: 0,
  };
  const degree = atomsPerUnit[job.units] / 1e6;
  // What is wrong with the moves is told when they are read for the program.
  for (const batch of moves(operation, () => undefined))
    for (let row = 0; row < batch.count; row++)
      if (batch.kind[row] === rowKind.aside) takeStep(cut, batch.asides[batch.aside[row]]);
      else cut.minutes += take(cut, operation, batch, row, degree);
  return cut.minutes * minute;
}

function takeStep(cut: Cut, step: JobStep): void {
  if (step.kind === "spindle") cut.rpm = step.rpm;
  if (step.kind === "holes") cut.holes = step;
}

/** Goes to the end of a row; gives the minutes of feed. @param degree length units of a micro-degree, for the feed of a rotary axis alone */
function take(cut: Cut, operation: Operation, batch: Batch<JobStep>, row: number, degree: number): number {
  const kind = batch.kind[row];
  const from = Float64Array.from(cut.at);
  goTo(cut.at, batch, row);
  if (kind === rowKind.rapid) return 0;
  if (kind === rowKind.hole) return cut.holes === undefined ? 0 : holeMinutes(cut, cut.holes, operation);
  if (operation.feedMode === "inverse-time") return inverseTimeUnit / batch.feed[row];
  const length = isArc(kind)
    ? arcLength(batch, row, from, cut.at)
    : lineLength(from, cut.at, (batch.stated[row] & rotaryAxes) === 0 ? 0 : degree);
  return length / perMinute(cut, operation, batch.feed[row]);
}

function goTo(at: Float64Array, batch: Batch<unknown>, row: number): void {
  const stated = batch.stated[row];
  const columns = [batch.x, batch.y, batch.z, ...(batch.abc ?? [])];
  columns.forEach((column, axis) => {
    if (stated & (axisBit.x << axis)) at[axis] = column[row];
  });
}

/** A feed in atoms a minute. */
function perMinute({ rpm }: Cut, { feedMode }: Operation, feed: number): number {
  return feedMode === "per-revolution" ? (feed * rpm) / milliPerRpm : feed;
}

/** Atoms; of rotary axes alone the longest way, a degree as a unit of length. */
function lineLength(from: Float64Array, to: Float64Array, degree: number): number {
  const ways = from.map((start, axis) => (Number.isNaN(start) ? 0 : Math.abs(to[axis] - start)));
  const [x, y, z, ...turned] = ways;
  const length = Math.hypot(x, y, z);
  return length === 0 ? Math.max(...turned) * degree : length;
}

/** First, second and normal axis by plane, in the order of the row kinds (NISTIR 6556 Table 9: ZX has Z first). */
const planes = [
  [0, 1, 2],
  [2, 0, 1],
  [1, 2, 0],
] as const;

function arcLength(batch: Batch<unknown>, row: number, from: Float64Array, to: Float64Array): number {
  const kind = batch.kind[row];
  const [first, second, normal] = planes[(kind - rowKind.arcXy) % 3];
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
