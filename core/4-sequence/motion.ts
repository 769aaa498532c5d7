import { axisBit, axisGroups, frame, rowKind } from "#base";
import { setDistance } from "./distance.ts";
import type { Run } from "./run.ts";
import type { Place } from "./state.ts";
import { put } from "./steps.ts";
import { need } from "./words.ts";
import { writeRow } from "./writer.ts";

/** Where a motion goes, atoms. Axes left out stay where they are. */
export interface Target {
  readonly x?: number;
  readonly y?: number;
  readonly z?: number;
}

/** A rapid in work coordinates that states the axes given; the numbers are on the grid already. */
export function workRapid(run: Run, target: Target): void {
  moveWork(run, ...targetOf(run.state.work, target));
}

/** A rapid in work coordinates of the axes in a mask to a place, x y z a b c. */
export function moveWork(run: Run, at: Float64Array, stated: number): void {
  move(run, run.state.work, run.state.machine, at, stated, 0);
}

/**
 * A motion in machine coordinates that states the axes given: a line where a feed (atoms a minute) is, else a rapid. The
 * facts of the machine have been brought onto the grid of the program before.
 */
export function machineMove(run: Run, target: Target, feed = 0): void {
  if (!need(run, "machine-move", "the program moves to places of the machine")) return;
  const { machine, work } = run.state;
  move(run, machine, work, ...targetOf(machine, target), feed);
}

/** A place with the axes given in it, and their mask. */
function targetOf(place: Place, target: Target): [at: Float64Array, stated: number] {
  const at = Float64Array.from(place.at);
  let stated = 0;
  [target.x, target.y, target.z].forEach((value, axis) => {
    if (value === undefined) return;
    stated |= 1 << axis;
    at[axis] = value;
  });
  return [at, stated];
}

/** Motions of our own are absolute: most of them start where an increment has nothing to count from. */
function move(run: Run, place: Place, other: Place, at: Float64Array, stated: number, feed: number): void {
  const { state } = run;
  const inWork = place === state.work;
  if (inWork) restoreWorkOffset(run);
  setDistance(run, "absolute");
  if (stated & axisBit.z) state.atSwapHeight = false;
  if (!inWork) state.workSuspended = run.machine.machineMoveLasts === "until-work-offset";
  // The dialect is refused where it does not say how many axes a rapid moves; all together then stand in.
  const most = feed === 0 ? (run.request.capabilities.axesOfRapid ?? 6) : 6;
  for (const group of axisGroups(stated, most)) {
    for (let axis = 0; axis < 6; axis++) if (group & (1 << axis)) place.at[axis] = at[axis];
    place.known |= group;
    other.known &= ~group;
    writeRow(run.writer, {
      kind: feed === 0 ? rowKind.rapid : rowKind.line,
      frame: inWork ? frame.work : frame.machine,
      known: place.known,
      stated: group,
      at: place.at,
      feed,
      source: state.source,
    });
  }
}

/** States the work offset anew where a move in machine coordinates has suspended it. */
export function restoreWorkOffset(run: Run): void {
  const { workOffset, workSuspended } = run.state;
  if (workSuspended && workOffset !== undefined) put(run, { kind: "work-offset", number: workOffset });
}
