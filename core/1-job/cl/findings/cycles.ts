import type { Finding } from "#base";
import { error, note } from "./finding.ts";

/* Holes. */

const cycleError = (offset: number, message: string, fix: string): Finding =>
  error("job/cl-cycle", offset, message, fix);

export const cyclePositional = (offset: number): Finding =>
  cycleError(
    offset,
    "The numbers of this cycle have no names, and their order is not fixed.",
    "Write FEDTO,d, MMPM,f, CLEAR,c; or state `--cl cycle=positional` for depth, feed, unit, clearance.",
  );

export const depthSign = (offset: number): Finding =>
  cycleError(
    offset,
    "FEDTO is not above 0, so that it is no distance down from the point.",
    "State what it is: `--cl depth=signed` (from the point) or `--cl depth=z` (absolute Z).",
  );

export const depthAbove = (offset: number): Finding =>
  cycleError(offset, "The bottom of the hole is not below its point.", "Correct FEDTO, or `--cl depth`.");

export const cycleNeeds = (offset: number, kind: string, what: string): Finding =>
  cycleError(offset, `CYCLE/${kind} needs ${what}.`, `Add ${what}.`);

export const cycleStray = (offset: number, kind: string, word: string): Finding =>
  cycleError(offset, `${word} has no meaning in CYCLE/${kind}.`, `Leave ${word} out.`);

export const cycleTwice = (offset: number, word: string): Finding =>
  cycleError(offset, `${word} stands twice in this cycle.`, "Keep one of the two.");

export const cycleLevel = (offset: number): Finding =>
  cycleError(
    offset,
    "The level between holes is below the one where the feed starts.",
    "Give RTRCTO not below CLEAR and RAPTO.",
  );

export const cycleStill = (offset: number, word: string): Finding =>
  cycleError(offset, `A cycle is still on at ${word}.`, "Put CYCLE/OFF before it.");

export const noCycle = (offset: number): Finding =>
  cycleError(offset, "CYCLE/ON resumes a cycle, but none was stated.", "State the cycle.");

export const cycleNote = (offset: number, message: string, fix: string): Finding =>
  note("job/cl-cycle", offset, message, fix);
