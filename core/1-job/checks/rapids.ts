import { atomsPerMillimetre, lineCrosses } from "#base";
import type { OperationWatch, TradeWatch } from "./watch.ts";
import { count } from "./watch.ts";

/** Nearer over the stock than this no rapid should pass, atoms: feed begins 2 to 5 mm over it (common practice, no source). */
export const leastGap = atomsPerMillimetre;

/**
 * A rapid in X and Y below the clearance and close over the stock. From cut to cut many go at the height where feed begins, which is
 * no fault; raw stock is seldom flat to a millimetre, and chips lie on it. X and Y go at the higher of its two heights: lowering raises Z first and
 * lowers it last. Below the top of the stock it is `motion/rapid-in-stock`, which the guard looks for.
 */
export function checkRapid(
  { job, lowRapids }: TradeWatch,
  { operation, x: fromX, y: fromY, z: fromZ }: OperationWatch,
  x: number,
  y: number,
  z: number,
  offset: number,
): void {
  const { stock } = job;
  const level = Math.max(fromZ, z);
  // The first rapid, from a place that is not known, is at clearance.
  if (stock === undefined || level >= operation.clearance) return;
  const gap = level - stock.max[2];
  if (gap < 0 || gap >= leastGap) return;
  const { min, max } = stock;
  const enters = lineCrosses([fromX, x, min[0], max[0]], [fromY, y, min[1], max[1]]);
  if (enters) count(lowRapids, offset, gap);
}
