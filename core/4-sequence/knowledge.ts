import type { Effects, Step, StepKind } from "#base";
import { axisBit } from "#base";
import type { Run } from "./run.ts";
import { losePlace } from "./state.ts";

type StepOf<Kind extends StepKind> = Extract<Step, { kind: Kind }>;

/** What a step does to our knowledge of place and modes. */
type Consequence<Kind extends StepKind> = (run: Run, step: StepOf<Kind>) => void;

const none = (): void => undefined;

/** Both frames lose axes that a code moves without saying where to. */
function forget(run: Run, mask: number): void {
  run.state.work.known &= ~mask;
  run.state.machine.known &= ~mask;
}

/** Another length offset puts work Z elsewhere; one whose cancelling moves Z takes the tool off its height, too. */
function changeLengthOffset(run: Run, step: StepOf<"length-offset">): void {
  const { state, machine } = run;
  if (state.lengthOffset === step.number) return;
  state.lengthOffset = step.number;
  state.work.known &= ~axisBit.z;
  const moves = step.number === 0 ? machine.lengthOffset?.cancelMoves : machine.lengthOffset?.selectMoves;
  if (moves || machine.retract?.actsOn === "tool-tip") state.machine.known &= ~axisBit.z;
  if (moves) state.atSwapHeight = false;
}

function changeWorkOffset(run: Run, step: StepOf<"work-offset">): void {
  const { state } = run;
  state.workSuspended = false;
  if (state.workOffset === step.number) return;
  state.workOffset = step.number;
  state.work.known = 0;
}

/** Effects that a code has besides its meaning. */
function applyEffects(run: Run, effects: Effects | undefined): void {
  if (!effects) return;
  const { state } = run;
  if (effects.position !== "unchanged") losePlace(state);
  if (effects.position === "swap-height") state.atSwapHeight = true;
  if (effects.coolant === "off") state.coolant = [];
  if (effects.lengthOffset === "unchanged") return;
  state.work.known &= ~axisBit.z;
  state.lengthOffset = effects.lengthOffset === "cancelled" ? 0 : undefined;
}

function changeTool(run: Run): void {
  applyEffects(run, run.machine.changeEffects);
}

function workAuxiliary(run: Run, step: StepOf<"auxiliary">): void {
  if (step.action === "opaque") applyEffects(run, run.machine.opaqueEffects[step.code]);
  if (step.action !== "measure") return;
  forget(run, axisBit.z);
  run.state.atSwapHeight = false;
}

/** While the program stands the operator may move the machine, turn the spindle by hand controls, and open a valve. */
function stop(run: Run): void {
  const { state } = run;
  losePlace(state);
  state.coolant = undefined;
  state.spindle.speed = undefined;
  state.spindle.direction = undefined;
  state.workHeld = false;
  if (run.machine.afterStop !== "loses-modes") return;
  state.workOffset = state.lengthOffset = undefined;
}

/** The consequences by kind of step; those of spindle, coolant and outputs are drawn where these are switched. */
const consequences: { readonly [Kind in StepKind]: Consequence<Kind> } = {
  "program-start": none,
  units: none,
  plane: (run, step) => (run.state.modes.plane = step.value),
  distance: (run, step) => (run.state.modes.distance = step.value),
  "arc-centre": none,
  "feed-mode": (run, step) => (run.state.modes.feedMode = step.value),
  path: (run, step) => (run.state.modes.path = step.value),
  "look-ahead": none,
  "corner-feed": none,
  overrides: none,
  cycle: none,
  "local-shift": none,
  rotation: none,
  scale: none,
  compensation: none,
  "work-offset": changeWorkOffset,
  "length-offset": changeLengthOffset,
  "select-tool": none,
  "change-tool": changeTool,
  "spindle-speed": none,
  "spindle-start": none,
  "spindle-stop": none,
  "spindle-orient": none,
  coolant: none,
  output: none,
  wait: none,
  dwell: none,
  pause: stop,
  message: none,
  "cycle-definition": none,
  auxiliary: workAuxiliary,
  "reference-return": (run, step) => {
    forget(run, step.axes);
  },
  "program-end": none,
};

/** Draws the consequences of a step for what is known of place and modes. */
export function applyStep(run: Run, step: Step): void {
  const apply = consequences[step.kind] as (run: Run, step: Step) => void;
  apply(run, step);
}
