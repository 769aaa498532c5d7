import type { Step } from "#base";
import type { SimulationFacts } from "./facts.ts";

/** Which tool the spindle of a program holds, as its steps tell it. */
export interface Held {
  /** 0 for none or unknown. */
  tool: number;
  selected: number;
  /** Machine coordinates of the spindle in X and Y, atoms, for the pockets of a rack. */
  x: number;
  y: number;
}

/** The tool at the start: as it is said, or the only one of a machine that does not swap. */
export function heldAtStart({ spindleHolds, machine, tools }: SimulationFacts): Held {
  const cannotSwap = machine.swap === undefined || machine.swap === "none";
  const only = cannotSwap && tools.length === 1 ? tools[0].number : 0;
  return { tool: spindleHolds ?? only, selected: 0, x: NaN, y: NaN };
}

/** Takes a step; the spindle holds another tool after a change, a stop of the program for one, or a pick at the rack. */
export function hearStep(held: Held, step: Step, { machine, rack }: SimulationFacts): void {
  if (step.kind === "select-tool") held.selected = step.tool;
  else if (step.kind === "change-tool") held.tool = held.selected;
  else if (step.kind === "pause" && !step.optional && machine.swap === "operator")
    held.tool = held.selected === 0 ? held.tool : held.selected;
  else if (step.kind === "auxiliary" && step.action === "release") held.tool = 0;
  else if (step.kind === "auxiliary" && step.action === "clamp") {
    const pocket = machine.rack?.pockets.findIndex(({ x, y }) => x === held.x && y === held.y) ?? -1;
    if (pocket >= 0) held.tool = rack[pocket] ?? 0;
  }
}
