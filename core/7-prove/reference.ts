import { axisBit, linearAxes } from "#base";
import { compensationOff } from "./compensation.ts";
import { findings } from "./findings.ts";
import { forgetPosition, riseTo, standUp, xyAxes } from "./position.ts";
import { checkHeldStill } from "./rack.ts";
import { checkRestarted } from "./spindle.ts";
import { beginMotion, checkResumed } from "./start.ts";
import { isPlace, tell } from "./watch.ts";
import type { Watch } from "./watch.ts";

/** Return to the reference point (NISTIR 6556 3.5.8). */
export function referenceReturn(watch: Watch, axes: number): void {
  const { state, facts, row } = watch;
  const { approach, drawbar } = state;
  const alone = (axes & linearAxes) === axisBit.z;
  checkResumed(watch);
  checkRestarted(watch);
  compensationOff(watch, "a reference return");
  checkHeldStill(watch);
  // Z alone only leaves the pocket.
  if (drawbar.open && !alone) {
    tell(watch, findings["swap/drawbar"]({ fault: "work", how: "" }));
    drawbar.open = false;
  }
  if (facts.retract?.intermediate === "incremental-zero" && state.modes.distance === "absolute") {
    tell(watch, findings["motion/absolute-return"]());
  }
  if (!state.program.moved) beginMotion(watch, alone ? "up" : "other");
  else if (axes & xyAxes && !approach.up && !isPlace(approach.lowAt)) approach.lowAt = row.offset;
  if (alone) riseTo(watch);
  else if (axes & (axisBit.z | xyAxes)) standUp(watch);
  forgetPosition(watch, axes);
  if (axes & xyAxes) approach.mustXy = true;
}
