import type { Step, StepKind } from "#base";
import { compensate } from "./compensation.ts";
import { hearDwell, hearWait } from "./confirm.ts";
import { endProgram } from "./end.ts";
import { lengthOffset, measureLength, workOffset } from "./offsets.ts";
import { clamp, release } from "./rack.ts";
import { referenceReturn } from "./reference.ts";
import {
  checkDueSpeed,
  checkTurnsCounted,
  dwellByTurns,
  leaveCycle,
  spindleSpeed,
  spindleStart,
  spindleStop,
} from "./spindle.ts";
import { applyEffects, changeTool, pauseProgram, selectTool } from "./swap.ts";
import type { Watch } from "./watch.ts";

type StepOf<K extends StepKind> = Extract<Step, { kind: K }>;

/** What the guard does at each kind of step. A kind without an entry does not compile. */
const handlers: { readonly [K in StepKind]: (watch: Watch, step: StepOf<K>) => void } = {
  "program-start": () => undefined,
  units: (watch, step) => {
    watch.state.modes.units = step.value;
  },
  plane: (watch, step) => {
    watch.state.modes.plane = step.value;
  },
  distance: (watch, step) => {
    watch.state.modes.distance = step.value;
  },
  "arc-centre": () => undefined,
  "feed-mode": (watch, step) => {
    watch.state.modes.feed = step.value;
    watch.state.windows.staleFeed = true;
  },
  path: () => undefined,
  "look-ahead": () => undefined,
  "corner-feed": () => undefined,
  overrides: () => undefined,
  cycle: (watch) => {
    watch.state.cycle = undefined;
    watch.state.cycleFaulty = false;
  },
  "local-shift": () => undefined,
  rotation: () => undefined,
  scale: () => undefined,
  compensation: (watch, step) => compensate(watch, step.value, step.offset),
  "work-offset": (watch, step) => workOffset(watch, step.number),
  "length-offset": (watch, step) => lengthOffset(watch, step.number),
  "select-tool": (watch, step) => selectTool(watch, step.tool, step.offset),
  "change-tool": (watch) => changeTool(watch),
  "spindle-speed": (watch, step) => spindleSpeed(watch, step.rpm),
  "spindle-start": (watch, step) => spindleStart(watch, step.direction),
  "spindle-stop": (watch) => spindleStop(watch),
  "spindle-orient": (watch) => {
    watch.state.spindle.oriented = true;
  },
  coolant: (watch, step) => switchCoolant(watch, step),
  output: (watch, step) => {
    if (step.on) watch.state.outputs.add(step.number);
    else watch.state.outputs.delete(step.number);
  },
  wait: (watch, step) => hearWait(watch, step),
  dwell: (watch, step) => {
    if (step.revolutions === undefined) hearDwell(watch, step.time);
    else dwellByTurns(watch);
  },
  pause: (watch, step) => pauseProgram(watch, step.optional),
  message: () => undefined,
  "cycle-definition": (watch, step) => {
    if (step.dwellIs === "revolutions") checkTurnsCounted(watch);
    watch.state.cycle = step;
    watch.state.cycleFaulty = false;
  },
  auxiliary: (watch, step) => workAuxiliary(watch, step),
  "reference-return": (watch, step) => referenceReturn(watch, step.axes),
  "program-end": (watch) => endProgram(watch),
};

function switchCoolant(watch: Watch, step: StepOf<"coolant">): void {
  const { coolant } = watch.state;
  if (step.on) coolant.add(step.medium);
  else if (step.medium === "all") coolant.clear();
  else coolant.delete(step.medium);
}

/** What the guard does at each auxiliary code. */
const auxiliaryHandlers: Record<StepOf<"auxiliary">["action"], (watch: Watch, code: string) => void> = {
  release: (watch) => release(watch),
  clamp: (watch) => clamp(watch),
  // Air that cleans the taper is no coolant.
  "taper-air-on": () => undefined,
  "taper-air-off": () => undefined,
  "cover-open": (watch) => {
    watch.state.drawbar.coverOpen = true;
  },
  "cover-close": (watch) => {
    watch.state.drawbar.coverOpen = false;
  },
  "hood-up": (watch) => {
    watch.state.hood = "up";
  },
  "hood-down": (watch) => {
    watch.state.hood = "down";
  },
  measure: (watch) => measureLength(watch),
  opaque: (watch, code) => applyEffects(watch, watch.facts.opaqueEffects[code], "a code"),
};

function workAuxiliary(watch: Watch, step: StepOf<"auxiliary">): void {
  auxiliaryHandlers[step.action](watch, step.code);
}

/** Whether all coolant has been turned off by now: by one word, or by that of each medium. */
function allOff({ facts, state }: Watch, step: StepOf<"coolant">): boolean {
  const { mediaOff } = state.program;
  if (step.on) mediaOff.delete(step.medium);
  else mediaOff.add(step.medium);
  if (mediaOff.has("all")) return true;
  return facts.offWords.length > 0 && facts.offWords.every((medium) => mediaOff.has(medium));
}

/** Whether a step states what a program states before its first motion: a compensation left on states nothing. */
function isStart(watch: Watch, step: Step): boolean {
  if (step.kind === "compensation") return step.value === "off";
  if (step.kind === "coolant") return allOff(watch, step);
  if (step.kind === "corner-feed") return step.value === "off";
  return step.kind !== "overrides" || step.value === "on";
}

/** Takes one step that is not motion. */
export function acceptStep(watch: Watch, step: Step): void {
  const { state } = watch;
  if (step.kind !== "spindle-speed" && step.kind !== "spindle-start") checkDueSpeed(watch);
  leaveCycle(watch);
  if ((!state.program.moved || state.program.resumes) && isStart(watch, step))
    state.program.stated.add(step.kind);
  const handler = handlers[step.kind] as (watch: Watch, step: Step) => void;
  handler(watch, step);
}
