import { axisBit, linearAxes, rowKind } from "#base";
import { findings } from "./findings.ts";
import { heightText, isOneOfRapid, riseTo, standUp, xyAxes } from "./position.ts";
import { isTurning, neverTurns } from "./spindle.ts";
import { beginMotion } from "./start.ts";
import type { FirstMotion } from "./start.ts";
import { nowhere } from "./state.ts";
import { isPlace, tell } from "./watch.ts";
import type { Watch } from "./watch.ts";

type Fault = "retract" | "together" | "z-first" | "deep" | "curve" | "low";

/** Names a fault of the approach; afterwards the way counts as taken. */
function fail(watch: Watch, fault: Fault, offset?: number): void {
  const { state } = watch;
  const { after } = state.approach;
  tell(watch, findings["motion/approach"]({ fault, after, height: heightText(watch) }), offset);
  state.excusedAxes |= linearAxes & ~state.work.known;
  standUp(watch);
  state.approach.mustXy = false;
}

/** Whether a row is Z alone up to clearance, which is the swap height of a machine without a better one. */
function isClearanceRetract(watch: Watch): boolean {
  const { row, traits } = watch;
  const alone = (row.moved & linearAxes) === axisBit.z;
  return traits.byClearance && row.kind === rowKind.rapid && alone && row.at[2] >= traits.clearance;
}

/** What kind of first motion a row in work coordinates is: one to clearance depends on the offsets in force. */
function firstMotion(watch: Watch): FirstMotion {
  const { offsets } = watch.state;
  if (!isClearanceRetract(watch)) return "other";
  if (watch.traits.lengthWords) return "depends-length";
  return watch.traits.workWords && offsets.work === 0 ? "depends-work" : "up";
}

/**
 * motion/approach and the motion half of program/start, for a row in work coordinates.
 *
 * @returns whether the offsets are still to be checked for this row
 */
export function checkApproach(watch: Watch): boolean {
  const { row, state } = watch;
  const { approach } = state;
  if (isPlace(approach.lowAt)) {
    fail(watch, "low", approach.lowAt);
    approach.lowAt = nowhere;
  }
  if (!(row.moved & linearAxes)) {
    // Named again where the tool stands already: that is the approach in X and Y.
    if (row.stated & xyAxes && !approach.mustRetract && (state.work.known & xyAxes) === xyAxes)
      approach.mustXy = false;
    return true;
  }
  if (!state.program.moved) {
    const first = firstMotion(watch);
    beginMotion(watch, first);
    if (first === "other") state.excusedAxes |= linearAxes & ~state.work.known;
    if (first === "other" && row.moved & xyAxes) approach.mustXy = false;
    return first === "other";
  }
  if (approach.mustRetract) {
    if (isClearanceRetract(watch)) riseTo(watch);
    else fail(watch, "retract");
    return true;
  }
  if (approach.mustXy) approachXy(watch);
  else if (approach.up && !(state.work.known & axisBit.z)) approachZ(watch);
  return true;
}

/** At swap height: X and Y first, unless the swap has left them where they are known to be. */
function approachXy(watch: Watch): void {
  const { row, state } = watch;
  const { approach, spindle } = state;
  if (isClearanceRetract(watch)) return;
  const placed = (state.work.known & xyAxes) === xyAxes && !(row.moved & xyAxes);
  if (row.kind > rowKind.line) fail(watch, "curve");
  else if (placed) approachZ(watch);
  else if (row.moved & axisBit.z) fail(watch, row.moved & xyAxes ? "together" : "z-first");
  const named = state.work.known | row.stated;
  approach.mustXy = isOneOfRapid(watch) && (named & xyAxes) !== xyAxes;
  const confirmed = isTurning(watch) && spindle.confirmed;
  if (!confirmed && !neverTurns(watch) && !spindle.excused) approach.unconfirmedAt = row.offset;
}

/** Above the place of work: Z alone down to clearance. */
function approachZ(watch: Watch): void {
  const { row, traits } = watch;
  if (row.kind > rowKind.line) fail(watch, "curve");
  else if (!(row.moved & axisBit.z)) return;
  else if (row.moved & xyAxes) fail(watch, "together");
  else if (row.at[2] < traits.clearance) fail(watch, "deep");
}

/** Whether Z stands at swap height after a row in work coordinates. */
export function leaveApproach(watch: Watch): void {
  const { row, state, traits } = watch;
  if (!(row.moved & axisBit.z)) return;
  const up = traits.byClearance && row.at[2] >= traits.clearance;
  state.approach.up = up;
  state.swap.retracted = up;
}
