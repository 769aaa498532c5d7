import { linearAxes } from "#base";
import * as findings from "../findings.ts";
import { tellOnce, withinLengths } from "../items.ts";
import type { ClRun } from "../state.ts";

/** A point that a statement leads to, atoms. */
export interface Point {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** The tool is at a point, and all of it is known. */
export function setPlace(run: ClRun, { x, y, z }: Point, offset: number): void {
  const { state } = run;
  withinLengths(run, offset, x, y, z);
  state.x = x;
  state.y = y;
  state.z = z;
  state.toolZ = z;
  state.known = linearAxes;
}

/** What a motion at feed demands of the spindle. */
export function cutting(run: ClRun, offset: number): void {
  if (run.state.spindle === "off") tellOnce(run, `off ${run.state.tool}`, findings.spindleOff(offset));
}

/** What every motion changes besides the place. */
export function motionDone({ state, options }: ClRun, wasRapid: boolean, offset: number): void {
  if (options.rapid === "one-shot") {
    state.afterRapid = wasRapid;
    state.rapid = false;
  }
  if (state.spindle === "off") state.movedWhileOff ??= offset;
  state.moved = true;
  state.cutterFresh = false;
  state.spindleFresh = false;
}
