import { axisBit, rowKind } from "#base";
import { checkLineAxes } from "./axis-feed.ts";
import { compensationOff } from "./compensation.ts";
import { checkFeed, lineLength } from "./feed.ts";
import { findings } from "./findings.ts";
import { arrive, findMoved, heightText, isOneOfRapid, riseTo, standUp, xyAxes } from "./position.ts";
import { checkDrawbarRow, checkRackRow, isAtPocket, isSlide } from "./rack.ts";
import { beginMotion } from "./start.ts";
import { isPlace, tell, tellOnce } from "./watch.ts";
import type { Draft, Watch } from "./watch.ts";
import { checkMachineTravel } from "./travel.ts";
import { axesText } from "./words.ts";

/** A motion row in machine coordinates. */
export function machineRow(watch: Watch): void {
  const { row, state } = watch;
  findMoved(row, state.machine);
  if (row.moved & xyAxes) state.once.told.delete("down");
  checkRestated(watch);
  compensationOff(watch, "a motion in machine coordinates");
  const travels = checkDrawbarRow(watch);
  const reaches = (row.known & axisBit.z) !== 0 && row.at[2] >= watch.traits.swapZ;
  const right = !state.program.moved ? checkFirst(watch, reaches) : travels && checkHeight(watch, reaches);
  checkRackRow(watch);
  if (row.kind !== rowKind.rapid) {
    checkFeed(watch);
    checkLineAxes(watch, state.machine, lineLength(watch, state.machine));
  }
  checkMachineTravel(watch);
  if (right) leaveHeight(watch, reaches);
  if (row.moved & xyAxes) state.approach.mustXy = true;
  state.offsets.suspended = watch.facts.machineMoveLasts === "until-work-offset";
  arrive(row, state.machine, state.work);
}

/** motion/known: a row in machine coordinates names every axis in X and Y that it moves from an unknown place. */
function checkRestated(watch: Watch): void {
  const { row } = watch;
  // At swap height the axes of one rapid may come one after the other, each in a block of its own.
  if (isOneOfRapid(watch)) return;
  if (row.moved & xyAxes) tellUnknown(watch, xyAxes & ~row.known);
}

/** motion/known, once for each axis until its place is known again. */
function tellUnknown(watch: Watch, axes: number): void {
  const missing = axes & ~watch.state.excusedAxes;
  if (!missing) return;
  tell(watch, findings["motion/known"]({ axes: axesText(missing) }));
  watch.state.excusedAxes |= missing;
}

function approachFinding(watch: Watch, fault: "retract" | "down" | "blind"): Draft {
  const { after } = watch.state.approach;
  return findings["motion/approach"]({ fault, after, height: heightText(watch) });
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
  if (!movesXy) return rises && checkSinks(watch, movesZ);
  const level = !movesZ || (approach.up && reaches);
  if (level && (approach.up || isRackTravel(watch))) return rises;
  // Whether this belongs to a swap, a stop or the end shows later.
  if (!isPlace(approach.lowAt)) approach.lowAt = row.offset;
  standUp(watch);
  return false;
}

/**
 * Z goes down in machine coordinates at a pocket only, whose X and Y are known: motion/known and motion/approach. From an
 * unknown Z each move to below swap height counts as one down.
 *
 * @returns false where it was wrong and Z counts as up
 */
function checkSinks(watch: Watch, movesZ: boolean): boolean {
  const { row, state, traits } = watch;
  const { rack } = traits;
  const { known, at } = state.machine;
  const knows = (known & axisBit.z) !== 0;
  // The rack's clear height is reached from swap height; after work motion it may lie below the tool.
  const floor = rack && (knows || state.approach.up) ? rack.clearZ : topOf(watch);
  if (!movesZ || row.at[2] >= floor || (knows && row.at[2] >= at[2])) return true;
  const placed = (row.known & xyAxes) === xyAxes;
  if (rack && placed && isAtPocket(watch, rack)) return true;
  if (!knows) tellOnce(watch, "down", approachFinding(watch, "blind"));
  else if (rack && !placed) tellUnknown(watch, xyAxes & ~row.known);
  else tellOnce(watch, "down", approachFinding(watch, "down"));
  state.once.told.add("down");
  standUp(watch);
  return false;
}

/** Swap height as machine Z, atoms; where no machine move says it, the top of the travel. */
function topOf(watch: Watch): number {
  const { swapZ } = watch.traits;
  return Number.isFinite(swapZ) ? swapZ : (watch.facts.travel.z?.[1] ?? Infinity);
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
  tell(watch, approachFinding(watch, "retract"));
  standUp(watch);
  return false;
}

/** Whether Z stands at swap height after the row. */
function leaveHeight(watch: Watch, reaches: boolean): void {
  const { row, state } = watch;
  if (!(row.moved & axisBit.z)) return;
  if (reaches) riseTo(watch);
  else state.approach.up = false;
  state.fedTo = Infinity;
}
