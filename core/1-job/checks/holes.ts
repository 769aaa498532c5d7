import type { Holes } from "../job.ts";
import * as findings from "./findings.ts";
import type { MadeHole } from "./hole-places.ts";
import type { OperationWatch, TradeWatch } from "./watch.ts";
import { count } from "./watch.ts";
import { lengthWords } from "./words.ts";

/** Who made a hole of whatever kind, as the memory of places has it. */
const anyMaker = "any";

/** The deepest hole that this job has made at a place so far, by a tool that leaves one. */
export function madeBefore(
  { places }: TradeWatch,
  { operation }: OperationWatch,
  x: number,
  y: number,
): MadeHole | undefined {
  return places.isFull() ? undefined : places.at(`${operation.workOffset} ${anyMaker}`, x, y);
}

/** Holes that are deeper than the flutes are long keep their chips. A boring bar has its edge at its end alone. */
export function beginHoles(job: TradeWatch, watch: OperationWatch, holes: Holes, offset: number): void {
  const { tool } = watch;
  const { units } = job.job;
  watch.holes = holes;
  watch.cuts = true;
  const depth = holes.top - holes.depth;
  const flutes = tool.fluteLength ?? Infinity;
  if (depth > flutes && tool.kind !== "boring-bar")
    job.causes.add(`flutes in holes ${tool.number}`, offset, depth, (place, deepest) =>
      findings.fluteLength(place, watch, lengthWords(units, deepest), lengthWords(units, flutes), "hole"),
    );
}

/** One hole: whether it is there already, and whether a thread finds one. */
export function checkHole(
  job: TradeWatch,
  watch: OperationWatch,
  x: number,
  y: number,
  offset: number,
): void {
  const { holes, tool, operation, kind } = watch;
  const { places } = job;
  if (holes === undefined || places.isFull()) return;
  if (holes.cycle === "tap") checkTap(job, watch, holes.depth, madeBefore(job, watch, x, y), offset);
  const maker = `${operation.workOffset} ${tool.kind}`;
  const made: MadeHole = { depth: holes.depth, diameter: tool.diameter };
  const before = places.at(maker, x, y);
  // A bore is often gone over twice: the second time without a spring in the bar.
  const isNew = before === undefined || before.depth > made.depth || before.diameter < made.diameter;
  if (!isNew && holes.cycle !== "bore")
    job.causes.add(`twice ${tool.number}`, offset, 0, (place) => findings.holeTwice(place, watch));
  if (isNew) places.add(maker, x, y, made);
  if (kind.makesHole) places.add(`${operation.workOffset} ${anyMaker}`, x, y, made);
}

/** A tap needs a hole, and breaks at its bottom. */
function checkTap(
  job: TradeWatch,
  watch: OperationWatch,
  depth: number,
  hole: MadeHole | undefined,
  offset: number,
): void {
  const { units } = job.job;
  count(hole === undefined ? job.bareTaps : job.drilledTaps, offset, 0);
  if (hole !== undefined && depth < hole.depth)
    job.causes.add(`tap ${watch.tool.number}`, offset, hole.depth - depth, (place, over) =>
      findings.tapTooDeep(place, watch, lengthWords(units, over)),
    );
}

/**
 * Threads without a hole. Where the job makes no hole for any thread, another set-up did; where it was not seen whole, or
 * has more holes than are remembered, nothing is said.
 */
export function endTaps({ bareTaps, drilledTaps, places, whole, causes }: TradeWatch): void {
  if (bareTaps.times === 0 || drilledTaps.times === 0 || places.isFull() || !whole) return;
  causes.add("bare taps", bareTaps.offset, 0, findings.tapWithoutHole, bareTaps.times);
}
