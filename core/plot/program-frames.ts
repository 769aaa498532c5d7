/**
 * Where work and machine coordinates lie in the picture, as the steps of a program change it: work offset, length offset, and the
 * tool that the spindle holds. Machine places are drawn where work zero is known; otherwise they are unknown here.
 */
import type { Effects, JobFacts, MachineFacts, Step } from "#base";
import { axisBit, linearAxes } from "#base";
import { atomsPerMicrometre } from "#report";
import type { Trail } from "./trail.ts";

/** What is told of a run beside its steps. */
export interface ProgramFacts {
  readonly machine: MachineFacts;
  readonly facts: JobFacts;
  /** Work offset whose zero is that of the picture. */
  readonly workOffset: number;
}

export interface ProgramFrames {
  /**
   * Takes a step that is no motion.
   *
   * @param tool number of the tool of the operation that it belongs to
   */
  readonly step: (step: Step, tool: number) => void;
  /** Takes note of where a motion in machine coordinates ended, atoms. */
  readonly machinePlace: (axis: number, atoms: number) => void;
  /** Whether the program came to its end. */
  readonly ended: () => boolean;
  /** Tools whose length would place the tip, and is not known. */
  readonly unknownLengths: ReadonlySet<number>;
}

/** Begins at the start of a program. */
export function createProgramFrames(trail: Trail, given: ProgramFacts): ProgramFrames {
  const state: FrameState = {
    trail,
    given,
    offset: given.workOffset,
    lengthActive: false,
    selected: 0,
    held: given.facts.spindleHolds ?? 0,
    pockets: [...given.facts.rack],
    machine: new Float64Array(3),
    unknownLengths: new Set(),
    ended: false,
  };
  place(state);
  return {
    step: (step, tool) => takeStep(state, step, tool),
    machinePlace: (axis, atoms) => (state.machine[axis] = atoms),
    ended: () => state.ended,
    unknownLengths: state.unknownLengths,
  };
}

interface FrameState {
  readonly trail: Trail;
  readonly given: ProgramFacts;
  offset: number;
  lengthActive: boolean;
  selected: number;
  /** Tool in the spindle, 0 for none or unknown. */
  held: number;
  readonly pockets: number[];
  /** Last machine place that was named, atoms. */
  readonly machine: Float64Array;
  readonly unknownLengths: Set<number>;
  ended: boolean;
}

/** Length of the tool in the spindle, micrometres. */
function lengthOf({ held, given, unknownLengths }: FrameState): number {
  if (held === 0) return 0;
  const length = given.facts.tools.find(({ number }) => number === held)?.length;
  if (length === undefined) unknownLengths.add(held);
  return (length ?? 0) / atomsPerMicrometre;
}

/** Works out where both frames lie now. */
function place(state: FrameState): void {
  const { trail, given } = state;
  const [work, machine] = trail.shifts;
  const { workOffsets } = given.facts;
  const [zero, own] = [given.workOffset, state.offset].map((offset) => workOffsets[Math.max(offset, 1)]);
  for (let axis = 0; axis < 3; axis++)
    work.by[axis] = zero && own ? (own[axis] - zero[axis]) / atomsPerMicrometre : 0;
  const { lengthOffset, retract } = given.machine;
  const hasLengthWords = lengthOffset?.form === "with-first-z" || lengthOffset?.form === "own-block";
  if (hasLengthWords && !state.lengthActive) work.by[2] -= lengthOf(state);
  machine.known = zero ? linearAxes : 0;
  if (!zero) return;
  for (let axis = 0; axis < 3; axis++) machine.by[axis] = -zero[axis] / atomsPerMicrometre;
  const isTip = retract?.actsOn === "tool-tip" && state.lengthActive;
  if (!isTip) machine.by[2] -= lengthOf(state);
}

/** The spindle holds another tool: its tip is elsewhere, though nothing has moved. */
function hold(state: FrameState, tool: number): void {
  const { writer } = state.trail;
  const before = lengthOf(state);
  state.held = tool;
  writer.at[2] += before - lengthOf(state);
  place(state);
}

function forget({ trail }: FrameState, axes: number): void {
  trail.writer.known &= ~axes;
}

function takeEffects(state: FrameState, effects: Effects | undefined): void {
  if (effects === undefined || effects.position === "unknown") forget(state, linearAxes);
  else if (effects.position === "swap-height") forget(state, axisBit.z);
  if (effects?.lengthOffset === "active") state.lengthActive = true;
  if (effects?.lengthOffset === "cancelled") state.lengthActive = false;
}

function takeStep(state: FrameState, step: Step, tool: number): void {
  const { machine } = state.given;
  switch (step.kind) {
    case "work-offset":
      state.offset = step.number;
      break;
    case "length-offset":
      setLength(state, step.number !== 0);
      break;
    case "select-tool":
      state.selected = step.tool;
      if (step.offset !== undefined) state.lengthActive = step.offset !== 0;
      break;
    case "change-tool":
      hold(state, state.selected === 0 ? tool : state.selected);
      takeEffects(state, machine.changeEffects);
      break;
    case "pause":
      // Whoever stands at the machine may have moved the axes, and changed the tool.
      forget(state, linearAxes);
      if (machine.swap !== "rack") hold(state, tool);
      break;
    case "auxiliary":
      takeAuxiliary(state, step);
      break;
    case "reference-return":
      forget(state, step.axes & linearAxes);
      break;
    case "cycle-definition":
      state.trail.holes = step;
      break;
    case "program-end":
      state.ended = true;
      break;
    default:
      return;
  }
  place(state);
}

function setLength(state: FrameState, isActive: boolean): void {
  const { lengthOffset } = state.given.machine;
  const moves = isActive ? lengthOffset?.selectMoves : lengthOffset?.cancelMoves;
  if (moves === true && isActive !== state.lengthActive) forget(state, axisBit.z);
  state.lengthActive = isActive;
}

function takeAuxiliary(state: FrameState, step: Extract<Step, { kind: "auxiliary" }>): void {
  const { rack, opaqueEffects } = state.given.machine;
  if (step.action === "measure") return forget(state, linearAxes);
  if (step.action === "opaque") return takeEffects(state, opaqueEffects[step.code]);
  if (!rack || (step.action !== "clamp" && step.action !== "release")) return;
  const [x, y, z] = state.machine;
  const pocket = rack.pockets.findIndex((one) => one.x === x && one.y === y && rack.pocketZ === z);
  if (pocket < 0) return;
  const put = step.action === "release";
  const tool = put ? state.held : (state.pockets[pocket] ?? 0);
  state.pockets[pocket] = put ? tool : 0;
  hold(state, put ? 0 : tool);
}
