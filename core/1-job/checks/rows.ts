import type { Batch } from "#base";
import { atomsPerMillimetre, axisBit, isArc, rowKind } from "#base";
import type { JobStep } from "../job.ts";
import { beginHoles, checkHole } from "./holes.ts";
import { endSpeed } from "./feeds.ts";
import { checkPlunge } from "./plunge.ts";
import { checkRapid } from "./rapids.ts";
import type { OperationWatch, TradeWatch } from "./watch.ts";
import { count, raise } from "./watch.ts";

/** Arcs from this radius on are arcs, atoms: five times the 0.002 mm by which their radii may differ (NISTIR 6556 3.5.3.2). */
export const leastRadius = atomsPerMillimetre / 100;

/** Looks at the rows of one batch. With rotary axes a place in the stock's box means nothing, so such batches are left out. */
export function watchRows(job: TradeWatch, watch: OperationWatch, batch: Batch<JobStep>): void {
  if (batch.abc !== undefined) return;
  const top = job.job.stock?.max[2] ?? -Infinity;
  for (
    let row = watchLines(watch, batch, 0, top);
    row < batch.count;
    row = watchLines(watch, batch, row, top)
  )
    watchRow(job, watch, batch, row++, top);
}

/**
 * The hot path: lines that go sideways, which most rows are. Does what `watchRow` does with them, without a call a row.
 *
 * @returns the first row that is no such line
 */
function watchLines(watch: OperationWatch, batch: Batch<JobStep>, from: number, top: number): number {
  const { kind, stated, feed, source, count: end } = batch;
  let { x, y, z } = watch;
  let most = watch.lateral.value;
  let lowest = top - watch.depth.value;
  let row = from;
  for (; row < end && kind[row] === rowKind.line; row++) {
    const named = stated[row];
    const toX = named & axisBit.x ? batch.x[row] : x;
    const toY = named & axisBit.y ? batch.y[row] : y;
    if (toX === x && toY === y) break;
    x = toX;
    y = toY;
    if (named & axisBit.z) z = batch.z[row];
    if (z >= top) continue;
    watch.cuts = true;
    if (feed[row] > most) {
      most = feed[row];
      watch.lateral.offset = source[row];
    }
    if (z < lowest) {
      lowest = z;
      watch.depth.offset = source[row];
    }
  }
  watch.x = x;
  watch.y = y;
  watch.z = z;
  watch.lateral.value = most;
  if (lowest < top) watch.depth.value = top - lowest;
  return row;
}

function watchRow(
  job: TradeWatch,
  watch: OperationWatch,
  batch: Batch<JobStep>,
  row: number,
  top: number,
): void {
  const kind = batch.kind[row];
  const at = batch.source[row];
  if (kind === rowKind.aside) {
    watchAside(job, watch, batch.asides[batch.aside[row]], at);
    return;
  }
  const named = batch.stated[row];
  const x = named & axisBit.x ? batch.x[row] : watch.x;
  const y = named & axisBit.y ? batch.y[row] : watch.y;
  const z = named & axisBit.z ? batch.z[row] : watch.z;
  const sideways = x !== watch.x || y !== watch.y;
  if (kind === rowKind.hole) checkHole(job, watch, x, y, at);
  else if (kind === rowKind.rapid) {
    if (sideways && z < watch.operation.clearance) checkRapid(job, watch, x, y, z, at);
  } else {
    if (isArc(kind)) watchArc(job, kind, [x, y, z], batch, row);
    if (z < top) {
      watch.cuts = true;
      if (isArc(kind) || sideways) raise(watch.lateral, batch.feed[row], at);
      else if (z < watch.z) checkPlunge(job, watch, z, batch.feed[row], at);
      raise(watch.depth, top - z, at);
    }
  }
  watch.x = x;
  watch.y = y;
  watch.z = z;
}

function watchArc(
  job: TradeWatch,
  kind: number,
  [x, y, z]: readonly [number, number, number],
  batch: Batch<JobStep>,
  row: number,
): void {
  // The plane's axes in the order of their centre words (NISTIR 6556 Table 9: ZX has Z first).
  const first = kind === rowKind.arcXy ? x : kind === rowKind.arcZx ? z : y;
  const second = kind === rowKind.arcXy ? y : kind === rowKind.arcZx ? x : z;
  const radius = Math.hypot(first - batch.c1[row], second - batch.c2[row]);
  if (radius < leastRadius) count(job.tinyArcs, batch.source[row], radius);
}

function watchAside(job: TradeWatch, watch: OperationWatch, step: JobStep, offset: number): void {
  if (step.kind === "holes") beginHoles(job, watch, step, offset);
  else if (step.kind === "holes-end") endHoles(watch);
  else if (step.kind === "spindle") {
    endSpeed(watch);
    watch.rpm = step.rpm;
  }
}

/** Behind its holes the tool stands at the level between them. */
function endHoles(watch: OperationWatch): void {
  const { holes } = watch;
  if (holes === undefined) return;
  watch.z = holes.between === "initial" ? Math.max(watch.z, holes.retract) : holes.retract;
  watch.holes = undefined;
}
