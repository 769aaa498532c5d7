import type { CycleDefinition } from "#base";
import type { LoweredStep } from "#lower";
import { setCoolant } from "./coolant.ts";
import { setDistance } from "./distance.ts";
import { showText } from "./message.ts";
import { putCompensation, resumeDistance } from "./modes.ts";
import { enterOperation, leaveOperation } from "./operation.ts";
import { restartAfterTapping } from "./pass.ts";
import { pause } from "./pause.ts";
import type { Run } from "./run.ts";
import { changeSpeed } from "./spindle.ts";
import { put } from "./steps.ts";
import { refuse } from "./words.ts";

/** What each kind that lowering leaves to sequencing becomes; all other steps of lowering pass as they are. */
export function handleAside(run: Run, step: LoweredStep, source: number): void {
  run.state.source = source;
  switch (step.kind) {
    case "operation-start":
      enterOperation(run, step.index);
      break;
    case "operation-end":
      leaveOperation(run);
      break;
    case "pause-request":
      pause(run, step);
      break;
    case "coolant-request":
      setCoolant(run, step.media);
      break;
    case "speed-request":
      changeSpeed(run, step.rpm);
      break;
    case "note":
      showText(run, step.text, "note");
      break;
    case "cycle-definition":
      defineCycle(run, step, source);
      break;
    case "cycle":
      endCycle(run);
      break;
    case "dwell":
      putDwell(run, step, source);
      break;
    case "compensation":
      if (run.state.awaiting === "nothing") resumeDistance(run);
      putCompensation(run, step);
      break;
    default:
      if (run.state.awaiting === "nothing") resumeDistance(run);
      put(run, step);
  }
}

/**
 * A series of holes begins; not before the spindle is at speed again where the last one tapped. Its levels are absolute:
 * from where increments count in a cycle differs between controllers.
 */
function defineCycle(run: Run, cycle: CycleDefinition, source: number): void {
  restartAfterTapping(run, source);
  if (cycle.dwellIs === "revolutions") needTurning(run, "cycles.words.dwell-unit");
  setDistance(run, "absolute");
  put(run, cycle);
  run.state.cycle = cycle.cycle;
}

/** A dwell of the job; one in revolutions needs a spindle whose speed is known. */
function putDwell(run: Run, step: Extract<LoweredStep, { kind: "dwell" }>, source: number): void {
  if (step.revolutions !== undefined) {
    restartAfterTapping(run, source);
    needTurning(run, "dwell.unit");
  }
  if (run.state.awaiting === "nothing") resumeDistance(run);
  put(run, step);
}

/** Revolutions of a spindle that stands, as it does in an air cut and with a tool that never turns, would be waited for without end. */
function needTurning(run: Run, key: string): void {
  const { direction, speed } = run.state.spindle;
  if (direction !== undefined && speed !== undefined && speed > 0) return;
  refuse(
    run,
    "lower/dwell",
    `the dialect counts this dwell in revolutions (\`${key}: rev\`), and the spindle stands here`,
    run.request.airCut
      ? "leave the dwell out of the job for the air cut, or state another unit if the controller has one"
      : "leave the dwell out of the job, or state another unit if the controller has one",
    key,
  );
}

/** A tapping cycle has reversed the spindle, which then counts as neither at speed nor confirmed. */
function endCycle(run: Run): void {
  const { state } = run;
  put(run, { kind: "cycle", value: "off" });
  if (state.cycle === "tap" || state.cycle === "tap-left") state.tapped = true;
  state.cycle = undefined;
}
