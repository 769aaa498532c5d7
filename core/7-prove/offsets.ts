import { axisBit, linearAxes } from "#base";
import { findings } from "./findings.ts";
import { beginApproach, forgetPosition, forgetWork, standUp } from "./position.ts";
import { checkStopped } from "./spindle.ts";
import { nowhere, unknownTool } from "./state.ts";
import { tell, tellOnce } from "./watch.ts";
import type { Watch } from "./watch.ts";

/**
 * Work offset word (NISTIR 6556 3.5.13). Restating the one in force changes nothing; nor does, before anything moves behind a stop
 * that has lost it, the one in which the tool has come there. Where the operator sets Z of each tool, it is set in the work
 * offset of that moment, and no other knows the tool: a change would take Z of some other tool for its own.
 */
export function workOffset(watch: Watch, number: number): void {
  const { offsets, windows, program, approach, compensation, cycle } = watch.state;
  const changes = offsets.work !== number;
  const restates = program.resumes && number === offsets.lost;
  offsets.suspended = false;
  const before = offsets.work === 0 ? offsets.lost : offsets.work;
  if (before !== 0 && before !== number && program.moved && watch.facts.lengths === "operator")
    tell(watch, findings["offset/set-elsewhere"]({ number }));
  if (changes && !restates && program.moved) {
    const say = (fault: "height" | "compensation" | "cycle"): void =>
      tell(watch, findings["offset/change"]({ fault, number }));
    // Where Z still has to go up, the next motion shows whether the change or the motion is the fault.
    if (approach.mustRetract) offsets.changedBelowAt = watch.row.offset;
    else if (!approach.up) say("height");
    else if (compensation.on) say("compensation");
    else if (cycle) say("cycle");
    compensation.on = compensation.entry = false;
    watch.state.cycle = undefined;
    if (!approach.mustRetract) approach.up = true;
  }
  if (!changes) return;
  offsets.work = number;
  windows.staleAxes |= linearAxes;
  windows.outside = 0;
  forgetWork(watch, linearAxes);
  if (program.moved && !approach.mustXy) beginApproach(watch, "the change of work offset", false);
}

/** Length offset word; 0 cancels (NISTIR 6556 3.5.11: it causes no motion by itself). */
export function lengthOffset(watch: Watch, number: number): void {
  const { offsets, program, approach, windows } = watch.state;
  const { facts } = watch;
  if (
    number === 0 &&
    program.moved &&
    !approach.up &&
    facts.lengthOffset?.cancelMoves &&
    offsets.length !== 0
  ) {
    tell(watch, findings["offset/cancel-moves"]());
    standUp(watch);
    watch.state.swap.stopBelowAt = nowhere;
  }
  if (number === 0 && !program.moved && !facts.retract?.cancelLengthFirst)
    offsets.cancelledEarlyAt = watch.row.offset;
  if (number !== offsets.length) {
    forgetWork(watch, axisBit.z);
    windows.staleAxes |= axisBit.z;
  }
  offsets.length = number;
  offsets.lengthByEffect = false;
}

/** The half of offset/active that belongs to a swap: the old length offset is cancelled. */
export function lengthCancelled(watch: Watch): void {
  const { offsets } = watch.state;
  if (!watch.traits.lengthWords || !watch.traits.states.has("length-offset")) return;
  if (offsets.length === 0 && !offsets.lengthByEffect) return;
  tell(watch, findings["offset/not-cancelled"]());
  offsets.length = 0;
  offsets.lengthByEffect = false;
}

/** offset/active: no motion in work coordinates while a motion in machine coordinates has the work offset suspended. */
export function checkSuspended(watch: Watch): void {
  const { offsets } = watch.state;
  if (!offsets.suspended) return;
  tell(watch, findings["offset/suspended"]());
  offsets.suspended = false;
}

/** offset/active, before motion in work coordinates. */
export function checkOffsets(watch: Watch): void {
  const { offsets, swap } = watch.state;
  if (watch.traits.workWords && offsets.work === 0 && !offsets.workExcused) {
    tell(watch, findings["offset/no-work-offset"]());
    offsets.workExcused = true;
  }
  if (!(watch.row.moved & axisBit.z)) return;
  if (watch.facts.lengths === "measured" && !swap.measured) {
    tell(watch, findings["offset/measured"]({ fault: "missing" }));
    swap.measured = true;
  }
  if (offsets.lengthByEffect) return;
  const wanted = swap.tool?.lengthOffset;
  if (!watch.traits.lengthWords && (!watch.traits.lengthInTool || wanted === undefined)) return;
  if (wanted === undefined && offsets.length > 0) {
    const { held } = swap;
    const detail = { tool: held, offset: offsets.length };
    if (!watch.job.known && held > 0 && held !== offsets.length)
      tellOnce(watch, `offset of tool ${held}`, findings["offset/other-number"](detail));
    return;
  }
  if (offsets.length === wanted) return;
  const fault = offsets.length === 0 ? "cancelled" : offsets.length === unknownTool ? "unknown" : "other";
  tell(
    watch,
    findings["offset/active"]({
      fault,
      wanted: wanted ? `length offset ${wanted}` : "the tool's length offset",
    }),
  );
  offsets.length = wanted ?? 1;
}

/** offset/measured, and the stop before it. */
export function measureLength(watch: Watch): void {
  const { approach, swap, offsets, windows } = watch.state;
  checkStopped(watch, "measurement");
  if (!approach.up) tell(watch, findings["offset/measured"]({ fault: "height" }));
  else if (!approach.mustXy) tell(watch, findings["offset/measured"]({ fault: "late" }));
  swap.measured = true;
  const effects = watch.facts.opaqueEffects["measure"];
  forgetPosition(watch, effects?.position === "unchanged" ? axisBit.z : linearAxes);
  beginApproach(watch, "the measurement", true);
  if (effects?.lengthOffset === "active") offsets.lengthByEffect = true;
  windows.staleAxes |= axisBit.z;
}
