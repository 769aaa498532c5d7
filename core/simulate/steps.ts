import type { Step, StepKind } from "#base";
import { axisBit, linearAxes, milliPerRpm } from "#base";
import { beginContour, endContour } from "./compensation.ts";
import { tell } from "./cut.ts";
import { hearStep } from "./held.ts";
import { touching } from "./motion.ts";
import type { Walk } from "./walk.ts";

/** Stops that must not find the tool in material, in words. A dwell is none: a tool may dwell at the bottom of its cut. */
const stops: Partial<Record<StepKind, string>> = {
  "spindle-stop": "the spindle stops",
  "spindle-orient": "the spindle stops",
  pause: "the program stops",
  "change-tool": "the tool is changed",
  "program-end": "the program ends",
};

/** Takes one step that is no motion. */
export function hear(walk: Walk, step: Step): void {
  const stop = stops[step.kind];
  if (stop !== undefined) checkStop(walk, stop);
  hearStep(walk.held, step, walk.facts);
  hearMode(walk, step);
  hearPlace(walk, step);
}

function checkStop(walk: Walk, what: string): void {
  endContour(walk);
  const height = touching(walk);
  if (height > 0) tell(walk, "stopped", what, height);
}

function hearMode(walk: Walk, step: Step): void {
  if (step.kind === "feed-mode") walk.feedMode = step.value;
  else if (step.kind === "spindle-speed") walk.rpm = step.rpm / milliPerRpm;
  else if (step.kind === "cycle-definition") walk.cycle = step;
  else if (step.kind === "cycle") walk.cycle = undefined;
  else if (step.kind === "compensation") {
    endContour(walk);
    if (step.value !== "off") beginContour(walk, step.value);
  }
}

/** Steps after which nobody knows where the tip is in the work. */
function hearPlace(walk: Walk, step: Step): void {
  if (step.kind === "work-offset") {
    if (step.number !== walk.workOffset) forget(walk, linearAxes);
    walk.workOffset = step.number;
  } else if (step.kind === "length-offset") {
    if (step.number !== walk.lengthOffset) forget(walk, axisBit.z);
    walk.lengthOffset = step.number;
  } else if (step.kind === "reference-return") forget(walk, step.axes);
  else if (step.kind === "pause" || step.kind === "change-tool") forget(walk, linearAxes);
  else if (step.kind === "auxiliary" && step.action === "measure") forget(walk, linearAxes);
}

function forget(walk: Walk, axes: number): void {
  walk.known &= ~axes;
  walk.begun = false;
}
