import { axisBit, lengthText, linearAxes, rowKind } from "#base";
import { findings } from "./findings.ts";
import { nowhere } from "./state.ts";
import type { ApproachState, Position } from "./state.ts";
import { isPlace, tell } from "./watch.ts";
import type { Row, Watch } from "./watch.ts";

/** Bits of X and Y. */
export const xyAxes = axisBit.x | axisBit.y;

/**
 * Works out which axes of a row really move: a value that is only restated moves nothing. That a row claims to know an
 * axis is not enough: it has to name it, or its place was known before.
 */
export function findMoved(row: Row, before: Position): void {
  const named = row.known & (row.stated | before.known);
  let moved = named & ~before.known;
  for (let axis = 0; axis < 6; axis++) {
    const bit = 1 << axis;
    if (named & before.known & bit && row.at[axis] !== before.at[axis]) moved |= bit;
  }
  row.moved = moved;
  row.known = named;
}

/** Takes the row's end as the place of its frame; axes that it names are no longer known in the other frame. */
export function arrive(row: Row, here: Position, other: Position): void {
  for (let axis = 0; axis < 6; axis++) if (row.known & (1 << axis)) here.at[axis] = row.at[axis];
  here.known = row.known;
  other.known &= ~(row.moved | row.stated);
}

/** Forgets the place of axes in both frames. */
export function forgetPosition(watch: Watch, axes: number): void {
  watch.state.work.known &= ~axes;
  watch.state.machine.known &= ~axes;
}

/** Forgets the place of work Z, or of all work axes, when an offset changes. */
export function forgetWork(watch: Watch, axes: number): void {
  watch.state.work.known &= ~axes;
}

/** Whether all of X, Y and Z are known in the work frame. */
export function isPlaced(watch: Watch): boolean {
  return (watch.state.work.known & linearAxes) === linearAxes;
}

/** Whether a row is X or Y alone at swap height under a control whose rapids move one axis at a time. */
export function isOneOfRapid({ row, facts, state }: Watch): boolean {
  const alone = row.moved === axisBit.x || row.moved === axisBit.y;
  return facts.rapidAxes === "one-at-a-time" && row.kind === rowKind.rapid && alone && state.approach.up;
}

/** From here on the way back to the work has to be taken again. */
export function beginApproach(watch: Watch, after: ApproachState["after"], retract: boolean): void {
  const { approach } = watch.state;
  approach.after = after;
  approach.mustXy = true;
  approach.unconfirmedAt = nowhere;
  watch.state.excusedAxes = 0;
  if (!retract) return;
  approach.mustRetract = true;
  approach.up = false;
}

/** Z has reached the swap height, or is taken to have. */
export function standUp(watch: Watch): void {
  const { approach, swap, offsets } = watch.state;
  approach.up = true;
  approach.mustRetract = false;
  swap.retracted = true;
  offsets.changedBelowAt = nowhere;
}

/** Z has gone up as it should: a work offset that was changed before that is a fault of its own. */
export function riseTo(watch: Watch): void {
  const { offsets } = watch.state;
  if (isPlace(offsets.changedBelowAt)) {
    const draft = findings["offset/change"]({ fault: "height", number: offsets.work });
    tell(watch, draft, offsets.changedBelowAt);
  }
  standUp(watch);
}

/** The swap height in words, for the way out of a finding. */
export function heightText(watch: Watch): string {
  const { retract } = watch.facts;
  const { units } = watch.state.modes;
  if (retract?.by === "machine-move") return `machine Z ${lengthText(retract.z, units)}`;
  if (retract?.by === "reference-return") return "its reference point";
  const clearance = watch.job.known ? watch.job.clearance : undefined;
  return clearance === undefined ? "swap height" : `clearance, Z ${lengthText(clearance, units)}`;
}
