import { axisBit, rowKind } from "#base";
import { compensationOff } from "./compensation.ts";
import { checkFeed } from "./feed.ts";
import { findings } from "./findings.ts";
import { arrive, findMoved, heightText, standUp, xyAxes } from "./position.ts";
import { checkDrawbarRow, checkRackRow, isSlide } from "./rack.ts";
import { beginMotion } from "./start.ts";
import { isPlace, tell } from "./watch.ts";
import type { Watch } from "./watch.ts";
import { checkMachineTravel } from "./travel.ts";
import { axesText } from "./words.ts";

/** A motion row in machine coordinates. */
export function machineRow(watch: Watch): void {
  const { row, state } = watch;
  findMoved(row, state.machine);
  checkRestated(watch);
  compensationOff(watch, "a motion in machine coordinates");
  const travels = checkDrawbarRow(watch);
  const reaches = (row.known & axisBit.z) !== 0 && row.at[2] >= watch.traits.swapZ;
  const right = !state.program.moved ? checkFirst(watch, reaches) : travels && checkHeight(watch, reaches);
  checkRackRow(watch);
  if (row.kind !== rowKind.rapid) checkFeed(watch);
  checkMachineTravel(watch);
  if (right) leaveHeight(watch, reaches);
  if (row.moved & xyAxes) state.approach.mustXy = true;
  arrive(row, state.machine, state.work);
}

/** motion/known: a row in machine coordinates names every axis in X and Y that it moves from an unknown place. */
function checkRestated(watch: Watch): void {
  const { row, state } = watch;
  const claimed = row.known & ~(state.machine.known | row.stated);
  const half = row.moved & xyAxes && (row.known & xyAxes) !== xyAxes ? xyAxes & ~row.known : 0;
  const missing = (claimed | half) & ~state.excusedAxes;
  if (!missing) return;
  tell(watch, findings["motion/known"]({ axes: axesText(missing) }));
  state.excusedAxes |= missing;
}

/** program/start for a first motion in machine coordinates; false where it was wrong and Z counts as up. */
function checkFirst(watch: Watch, reaches: boolean): boolean {
  const right = watch.row.moved === axisBit.z && reaches;
  beginMotion(watch, right ? "up" : "other");
  return right;
}

/**
 * The height rules for a move in machine coordinates: Z alone up, X and Y at height only.
 *
 * @returns false where it was wrong and Z counts as up
 */
function checkHeight(watch: Watch, reaches: boolean): boolean {
  const { row, state } = watch;
  const { approach } = state;
  const movesXy = (row.moved & xyAxes) !== 0;
  const movesZ = (row.moved & axisBit.z) !== 0;
  const rises = !approach.mustRetract || checkRetract(watch, movesXy, movesZ, reaches);
  if (!movesXy) return rises;
  const level = !movesZ || (approach.up && reaches);
  if (level && (approach.up || isRackTravel(watch))) return rises;
  // Whether this belongs to a swap, a stop or the end shows later.
  if (!isPlace(approach.lowAt)) approach.lowAt = row.offset;
  standUp(watch);
  return false;
}

/** Whether the spindle may move in X and Y below swap height: along the rack at its clear height, or into a pocket. */
function isRackTravel(watch: Watch): boolean {
  const { rack } = watch.traits;
  const { machine, swap } = watch.state;
  if (!rack || !(machine.known & axisBit.z)) return false;
  return (machine.at[2] >= rack.clearZ && swap.retracted) || isSlide(watch, rack);
}

/** motion/approach: after a start, swap or stop Z goes up to swap height alone; a tool leaves its pocket first. */
function checkRetract(watch: Watch, movesXy: boolean, movesZ: boolean, reaches: boolean): boolean {
  const { row, state, traits } = watch;
  if (!movesXy && !movesZ) return true;
  const rises =
    !movesXy && (reaches || ((state.machine.known & axisBit.z) !== 0 && row.at[2] > state.machine.at[2]));
  if (rises || (traits.rack && isSlide(watch, traits.rack))) return true;
  const { after } = state.approach;
  tell(watch, findings["motion/approach"]({ fault: "retract", after, height: heightText(watch) }));
  standUp(watch);
  return false;
}

/** Whether Z stands at swap height after the row. */
function leaveHeight(watch: Watch, reaches: boolean): void {
  const { row, state } = watch;
  if (!(row.moved & axisBit.z)) return;
  if (reaches) standUp(watch);
  else state.approach.up = false;
  state.fedTo = Infinity;
}
