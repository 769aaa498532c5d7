import type { StepKind } from "#base";
import { checkEndsStopped } from "./spindle.ts";
import { compensationOff } from "./compensation.ts";
import { findings } from "./findings.ts";
import type { EndFault } from "./findings-limits.ts";
import { xyAxes } from "./position.ts";
import { checkReloads } from "./reload.ts";
import { unknownTool } from "./state.ts";
import { isPlace, tell } from "./watch.ts";
import type { Watch } from "./watch.ts";

/** Program end (NISTIR 6556 3.6.1): spindle/ends-stopped and program/end. */
export function endProgram(watch: Watch): void {
  const { state } = watch;
  checkEndsStopped(watch);
  compensationOff(watch, "the program end");
  if (state.drawbar.open) tell(watch, findings["swap/drawbar"]({ fault: "end", how: "" }));
  checkReloads(watch);
  const faults = endFaults(watch);
  if (faults.length > 0) tell(watch, findings["program/end"]({ faults }));
  state.program.ended = true;
}

/** All that is left undone. */
function endFaults(watch: Watch): EndFault[] {
  const { state, traits, facts } = watch;
  const { program, approach, swap, offsets } = state;
  const undone: Record<EndFault, boolean> = {
    z: program.moved && (!approach.up || isPlace(approach.lowAt)),
    coolant: state.coolant.size > 0,
    hood: facts.hood && state.hood !== "up",
    tool:
      (traits.rack?.atEnd === "return" || facts.endsEmpty) &&
      swap.held !== 0 &&
      (watch.job.known || swap.held !== unknownTool),
    length:
      traits.lengthWords &&
      traits.states.has("length-offset") &&
      (offsets.length !== 0 || offsets.lengthByEffect),
    park: program.moved && !isParked(watch),
    outputs: state.outputs.size > 0,
    modes: facts.endResets === false && leavesModes(watch),
    suspended: facts.endResets === false && offsets.suspended,
  };
  return (Object.keys(undone) as EndFault[]).filter((fault) => undone[fault]);
}

/** Whether the next program would find other modes than those that it may count on. */
function leavesModes({ state, traits }: Watch): boolean {
  const { plane, distance, feed } = state.modes;
  const wrong: Partial<Record<StepKind, boolean>> = {
    plane: plane !== "xy",
    distance: distance !== "absolute",
    "feed-mode": feed !== "per-minute",
    cycle: state.cycle !== undefined,
  };
  return (Object.keys(wrong) as StepKind[]).some((kind) => traits.states.has(kind) && wrong[kind] === true);
}

function isParked(watch: Watch): boolean {
  const { park } = watch.facts;
  const { known, at } = watch.state.machine;
  if (!park) return true;
  return (known & xyAxes) === xyAxes && at[0] === park.x && at[1] === park.y;
}

/** The input is at its end: a program that never ended is told so. */
export function endInput(watch: Watch): void {
  if (watch.state.program.ended) return;
  tell(watch, findings["program/no-end"]());
  checkEndsStopped(watch);
}
