import type { MachineFacts, Step } from "#base";
import { axisBit } from "#base";
import * as findings from "./findings.ts";
import type { Gathering } from "./gathering.ts";
import { current, tellOnce } from "./gathering.ts";
import type { Between, Explained } from "./held.ts";
import { holeKindOf } from "./holes.ts";
import { isAtHeight } from "./walk.ts";
import type { Walk } from "./walk.ts";

/** What a job has no words for. */
export function checkSteps(all: Gathering, walk: Walk, steps: readonly Explained[], between: Between): void {
  const { machine, report } = all;
  if (walk.lost > 0) {
    report(findings.tooMuch(steps.at(-1)?.held.source ?? 0));
    walk.lost = 0;
  }
  const { unclear } = between;
  if (unclear !== undefined)
    tellOnce(all.told, unclear.said, () => void report(findings.swapUnclear(unclear.source, unclear.said)));
  for (const { held } of steps) {
    if (held.kind === "machine-move") {
      const across = (held.axes & (axisBit.x | axisBit.y)) !== 0;
      if (
        across &&
        !between.lifted &&
        !between.swapped &&
        machine.swap !== "rack" &&
        all.stretches.length > 0
      )
        tellOnce(all.told, "low", () => void report(findings.travelsLow(held.source)));
      if (held.feed > 0 && machine.swap !== "rack") report(findings.machineCut(held.source));
      continue;
    }
    if (returnsLow(all, walk, held.step, between))
      tellOnce(all.told, "low", () => void report(findings.travelsLow(held.source)));
    const what = unsaid(held.step, machine, between);
    if (what !== undefined) report(findings.codeUnsaid(held.source, what));
    if (held.step.kind === "cycle-definition" && holeKindOf(held.step) === undefined)
      report(findings.manualCycle(held.source, held.step.cycle));
  }
}

/**
 * Whether X or Y go to the reference point while the tool is below where it travels: a job would have it go on from where it
 * cut, by a way through the work that the program never had.
 */
function returnsLow(all: Gathering, walk: Walk, step: Step, { lifted, swapped }: Between): boolean {
  if (step.kind !== "reference-return" || (step.axes & (axisBit.x | axisBit.y)) === 0) return false;
  return !lifted && !swapped && all.stretches.length > 0 && current(all).cut && !isAtHeight(walk);
}

/** What a job has no word for, in words; undefined where it has, or needs none. */
function unsaid(step: Step, machine: MachineFacts, between: Between): string | undefined {
  switch (step.kind) {
    case "auxiliary":
      if (step.action === "opaque") return `The code ${step.code}`;
      if (step.action === "hood-up" || step.action === "hood-down")
        return between.swapped || between.lifted || between.paused
          ? undefined
          : "Moving the hood inside an operation";
      if (step.action === "measure") return undefined;
      return machine.swap === "rack" ? undefined : "Working the drawbar or the rack";
    case "output":
      return machine.outputs.some(({ number }) => number === step.number)
        ? undefined
        : `Output ${step.number}, which the dialect does not declare as one of the machine,`;
    case "wait":
      return Object.values(machine.signals).some((signal) => signal.input === step.input)
        ? undefined
        : `A wait on input ${step.input}, which the dialect does not declare as a signal,`;
    case "overrides":
      return step.value === "off" ? "Switching the overrides off" : undefined;
    default:
      return undefined;
  }
}
