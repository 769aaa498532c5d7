import { isDiameterKnown } from "#base";
import * as findings from "./findings.ts";
import { madeBefore } from "./holes.ts";
import type { OperationWatch, TradeWatch } from "./watch.ts";
import { raise } from "./watch.ts";

/** A tenth of the diameter is a touch and no plunge (common practice, no source). */
const touch = 0.1;

/**
 * A line straight down that ends in the stock: a tool that does not cut at its centre leaves a core there. A place that this job
 * has drilled as deep is open. What was milled open is not known, so a plunge there is told as well.
 */
export function checkPlunge(
  job: TradeWatch,
  watch: OperationWatch,
  z: number,
  feed: number,
  offset: number,
): void {
  const { stock } = job.job;
  const { tool, kind } = watch;
  if (stock === undefined || !isDiameterKnown(tool.diameter)) return;
  if (Math.min(watch.z, stock.max[2]) - z <= tool.diameter * touch) return;
  const outX = Math.max(stock.min[0] - watch.x, watch.x - stock.max[0], 0);
  const outY = Math.max(stock.min[1] - watch.y, watch.y - stock.max[1], 0);
  if (Math.hypot(outX, outY) >= tool.diameter / 2) return;
  const open = madeBefore(job, watch, watch.x, watch.y);
  if (open !== undefined && open.depth <= z) return;
  const hasCore = tool.centreCutting === false || (kind.openCentre === true && !tool.centreCutting);
  if (hasCore) job.causes.add(`plunge ${tool.number}`, offset, 0, (place) => findings.plunge(place, watch));
  else raise(watch.plunge, feed, offset);
}
