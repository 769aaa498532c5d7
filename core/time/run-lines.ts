import type { Batch } from "#base";
import { frame, linearAxes, rowKind } from "#base";
import { isInWork } from "./place.ts";
import { settle } from "./state.ts";
import type { ClockState } from "./state.ts";

/**
 * Takes lines in work coordinates that follow on one another, as most rows do, on columns and local variables alone.
 *
 * @returns index of the first row that it leaves
 */
export function runLines(state: ClockState, batch: Batch, first: number): number {
  const { place, rates, lookAhead, feedUnit } = state;
  if (feedUnit === 0 || !isInWork(place)) return first;
  const { kind, known, x, y, z, feed, source, count } = batch;
  const frames = batch.frame;
  const { begins, ends, operation, ledger } = state;
  const [ax, ay, az] = rates.acceleration;
  const { accelerates } = rates;
  const [shiftX, shiftY, shiftZ] = place.shift;
  let fromX = place.at[0] - shiftX;
  let fromY = place.at[1] - shiftY;
  let fromZ = place.at[2] - shiftZ;
  let seconds = 0;
  let row = first;
  for (; row < count; row++) {
    if (kind[row] !== rowKind.line || frames[row] !== frame.work || known[row] !== linearAxes) break;
    if (source[row] < begins || source[row] >= ends) break;
    const toX = x[row];
    const toY = y[row];
    const toZ = z[row];
    const dx = toX - fromX;
    const dy = toY - fromY;
    const dz = toZ - fromZ;
    fromX = toX;
    fromY = toY;
    fromZ = toZ;
    const length = Math.sqrt(dx * dx + dy * dy + dz * dz);
    if (length === 0) continue;
    const speed = feed[row] * feedUnit;
    if (!accelerates) {
      seconds += length / speed;
      continue;
    }
    // The least of what the axes allow, each by its share; an axis that stands allows anything.
    const share = Math.max(Math.abs(dx) / ax, Math.abs(dy) / ay, Math.abs(dz) / az);
    lookAhead.line(dx, dy, dz, length, speed, length / share, operation);
  }
  if (row === first) return row;
  settle(state);
  if (seconds > 0) ledger.work(operation, "cutting", seconds);
  place.at[0] = fromX + shiftX;
  place.at[1] = fromY + shiftY;
  place.at[2] = fromZ + shiftZ;
  return row;
}
