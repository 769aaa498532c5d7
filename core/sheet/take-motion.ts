/** Counts one motion of a program: how far it goes, at which feed and speed. */
import type { ArcShape, Batch, CycleKind, Step } from "#base";
import { axisBit, centreByRadius, createArcShape, frame, isArc, linearAxes, rowKind, shapeArc } from "#base";
import type { FeedUse } from "#report";
import type { Reach } from "./span.ts";
import { widen } from "./span.ts";
import type { OperationTally, ReachTally, Tally } from "./tally.ts";
import { reachOf } from "./tally.ts";

/** First, second and normal axis of the planes, in the order of the row kinds (NISTIR 6556 Table 9: ZX has Z first). */
const planes = [
  [0, 1, 2],
  [2, 0, 1],
  [1, 2, 0],
] as const;

/**
 * Counts a row that is a motion. Motion in machine coordinates says nothing of the work, and the way up from the work before
 * belongs to no tool that is known here: an operation is under way from its first rapid in X and Y on, with its tool.
 */
export function takeMotion(tally: Tally, batch: Batch<Step>, row: number): void {
  if (batch.frame[row] === frame.machine) {
    tally.known = 0;
    return;
  }
  const counted = tally.operations[tally.index];
  if (counted === undefined || tally.active !== counted.operation.tool) return;
  if (!tally.underWay && (batch.stated[row] & (axisBit.x | axisBit.y)) === 0) return;
  tally.underWay = true;
  const reach = reachOf(tally, counted.operation);
  const kind = batch.kind[row];
  if (kind === rowKind.hole) takeHole(tally, counted, reach, batch, row);
  else {
    const isFeed = kind !== rowKind.rapid;
    takePath(tally, reach, batch, row, isFeed);
    if (isFeed) takeFeed(tally, counted, useOf(tally, batch, row), batch.feed[row]);
  }
  for (let axis = 0; axis < 3; axis++) tally.at[axis] = columnOf(batch, axis)[row];
  tally.known = batch.known[row] & linearAxes;
  if (kind === rowKind.hole && tally.cycle) tally.at[2] = tally.cycle.level;
  const [, , z] = reach.motion;
  if (tally.known & axisBit.z) widen(counted.z, Math.min(tally.at[2], lowestOf(tally, kind)));
  if (tally.known & axisBit.z) widen(z, tally.at[2]);
}

/** The bottom of a hole; of other motion its end is what counts. */
function lowestOf({ cycle }: Tally, kind: number): number {
  return kind === rowKind.hole && cycle ? cycle.depth : Infinity;
}

function columnOf(batch: Batch<Step>, axis: number): Float64Array {
  return axis === 0 ? batch.x : axis === 1 ? batch.y : batch.z;
}

/** Both ends of a motion, and the quadrants that an arc passes. */
function takePath(tally: Tally, reach: ReachTally, batch: Batch<Step>, row: number, isFeed: boolean): void {
  const known = batch.known[row];
  for (let axis = 0; axis < 3; axis++) {
    if ((known & (1 << axis)) === 0) continue;
    const place = columnOf(batch, axis)[row];
    widen(reach.motion[axis], place);
    if (!isFeed) continue;
    widen(reach.cutting[axis], place);
    if (tally.known & (1 << axis)) widen(reach.cutting[axis], tally.at[axis]);
  }
  const isWhole = (tally.known & known & linearAxes) === linearAxes;
  if (isArc(batch.kind[row]) && isWhole) takeArc(tally, [reach.motion, reach.cutting], batch, row);
}

function takeArc({ at }: Tally, reaches: readonly Reach[], batch: Batch<Step>, row: number): void {
  const kind = batch.kind[row];
  const byRadius = kind >= rowKind.radiusXy;
  const [first, second] = planes[(kind - rowKind.arcXy) % 3];
  const [p, q] = [columnOf(batch, first)[row], columnOf(batch, second)[row]];
  const turns = batch.turns[row];
  const shape: ArcShape = createArcShape();
  if (byRadius) centreByRadius(shape, at[first], at[second], p, q, batch.c1[row], turns < 0 ? -1 : 1);
  else [shape.centre1, shape.centre2] = [batch.c1[row], batch.c2[row]];
  shapeArc(shape, at[first], at[second], p, q, turns);
  for (const reach of reaches) {
    widen(reach[first], shape.low1);
    widen(reach[first], shape.high1);
    widen(reach[second], shape.low2);
    widen(reach[second], shape.high2);
  }
}

/** A hole of a cycle: from the retract level to the depth at feed, and out to the level between holes. */
function takeHole(
  tally: Tally,
  counted: OperationTally,
  { cutting, motion }: ReachTally,
  batch: Batch<Step>,
  row: number,
): void {
  const { cycle } = tally;
  if (cycle === undefined) return;
  const place = [batch.x[row], batch.y[row]];
  for (const reach of [cutting, motion]) {
    place.forEach((value, axis) => widen(reach[axis], value));
    widen(reach[2], cycle.depth);
    widen(reach[2], cycle.retract);
  }
  const use = isTap(cycle.cycle) ? "tap" : "plunge";
  const isLead = cycle.feedIs === "lead" || tally.feedMode === "per-revolution";
  // The feed of a tap is speed by lead; what a person checks against the tap is the lead.
  const feed = use === "plunge" || isLead ? batch.feed[row] : (batch.feed[row] * 1000) / tally.rpm;
  takeFeed(tally, counted, use, feed);
}

function isTap(cycle: CycleKind): boolean {
  return cycle === "tap" || cycle === "tap-left";
}

/** Straight down is a plunge; straight up at feed is neither that nor a cut. */
function useOf({ at, known }: Tally, batch: Batch<Step>, row: number): FeedUse | undefined {
  const isAxial = batch.x[row] === at[0] && batch.y[row] === at[1];
  if (isArc(batch.kind[row]) || !isAxial || (known & linearAxes) !== linearAxes) return "cut";
  if (batch.z[row] === at[2]) return "cut";
  return batch.z[row] < at[2] ? "plunge" : undefined;
}

function takeFeed(tally: Tally, counted: OperationTally, use: FeedUse | undefined, feed: number): void {
  const { rpm, feedMode, media, direction } = tally;
  counted.feedMode = feedMode;
  counted.direction = direction;
  if (direction !== undefined) widen(counted.rpm, rpm);
  media.forEach((medium) => counted.media.add(medium));
  const seen = use && counted.feeds.get(use);
  if (seen === undefined) return;
  widen(seen.feed, feed);
  const flutes = counted.tool?.flutes;
  if (flutes === undefined || use === "tap" || feedMode === "inverse-time") return;
  if (feedMode === "per-revolution") widen(seen.perTooth, feed / flutes);
  else if (rpm > 0 && direction !== undefined) widen(seen.perTooth, (feed * 1000) / (rpm * flutes));
}
