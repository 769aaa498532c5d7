import { axisBit, linearAxes } from "#base";
import * as findings from "../findings.ts";
import { lengthScale, withinLengths } from "../items.ts";
import type { ClRun, Cycle, HolesHere } from "../state.ts";
import type { Point } from "./place.ts";
import { cutting, motionDone } from "./place.ts";

const xy = axisBit.x | axisBit.y;

/** A point under a cycle: a hole there. Points of one height make one row of holes. */
export function holeAt(run: ClRun, point: Point, offset: number): void {
  const { state, act } = run;
  const { cycle } = state;
  // A cycle with a fault has been reported.
  if (cycle === undefined) return;
  cutting(run, offset);
  if (state.holesTop !== point.z) {
    endHoles(run, offset);
    beginHoles(run, cycle, point, offset);
  }
  if (cycle.kind !== "mill") {
    withinLengths(run, offset, point.x, point.y);
    placeTool(run, point);
    act.hole(offset);
  }
  motionDone(run, false, offset);
  // Behind a hole no motion is taken for one that RAPID was to lead.
  state.afterRapid = false;
}

function placeTool({ state }: ClRun, { x, y, z }: Point): void {
  state.x = x;
  state.y = y;
  state.z = z;
  state.known = linearAxes;
}

/** Ends the row of holes that is open. */
export function endHoles({ state, act }: ClRun, offset: number): void {
  if (state.holesTop !== undefined) act.endHoles(offset);
  state.holesTop = undefined;
}

function beginHoles(run: ClRun, cycle: Cycle, point: Point, offset: number): void {
  const { state, act } = run;
  const depth = bottom(run, cycle, point.z);
  if (depth >= point.z) run.report(findings.depthAbove(cycle.offset));
  const retract = point.z + cycle.start;
  const level = cycle.level === "initial" ? undefined : point.z + cycle.level;
  withinLengths(run, offset, point.x, point.y, point.z, depth, retract, level ?? 0);
  const isAbove = level === undefined || level > retract;
  if (cycle.kind === "mill") {
    plunge(run, point, { retract, level: level ?? retract, depth }, offset);
    return;
  }
  if (level !== undefined && isAbove && level !== state.toolZ) goToLevel(run, point, level, offset);
  // A job's operation begins with a rapid to x and y, which a cycle does by itself.
  else if (!state.moved) positionAt(run, point, offset);
  const between = isAbove ? "initial" : "retract";
  const holes: HolesHere = { cycle, kind: cycle.kind, top: point.z, depth, retract, between };
  state.holesTop = point.z;
  act.holes(holes, offset);
  if (!isAbove) state.toolZ = retract;
  else if (state.toolZ !== undefined) state.toolZ = Math.max(state.toolZ, retract);
}

/** Z of the bottom: a distance down, a step from the point, or Z itself, as the user says. */
function bottom(run: ClRun, { depth }: Cycle, top: number): number {
  if (run.options.depth === "distance") return top - depth;
  if (run.options.depth === "signed") return top + depth;
  lengthScale(run, 0);
  return depth + run.state.shift[2];
}

function positionAt({ state, act }: ClRun, { x, y }: Point, offset: number): void {
  state.x = x;
  state.y = y;
  act.rapid(xy, offset);
  state.moved = true;
}

/** To the level between holes before the first: up at once, down above the hole. */
function goToLevel(run: ClRun, point: Point, level: number, offset: number): void {
  const { state, act } = run;
  const rises = state.toolZ !== undefined && state.toolZ < level;
  if (!rises) positionAt(run, point, offset);
  state.toolZ = level;
  act.rapid(axisBit.z, offset);
}

/** CYCLE/MILL: down at feed, where the tool stays. The next point is reached above the work. */
function plunge(
  run: ClRun,
  point: Point,
  { retract, level, depth }: { readonly retract: number; readonly level: number; readonly depth: number },
  offset: number,
): void {
  const { state, act } = run;
  if (state.toolZ !== undefined && state.toolZ < level) {
    state.toolZ = level;
    act.rapid(axisBit.z, offset);
  }
  positionAt(run, point, offset);
  state.toolZ = retract;
  act.rapid(axisBit.z, offset);
  placeTool(run, { ...point, z: depth });
  state.toolZ = depth;
  act.line(offset, state.cycle?.feed);
  // The next point must say its Z: that of this point is above the tool.
  state.known = xy;
}
