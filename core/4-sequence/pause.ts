import { axisBit } from "#base";
import { approach } from "./approach.ts";
import type { Destination } from "./approach.ts";
import { confirmHoldDown } from "./confirm.ts";
import { coolantOff, setCoolant } from "./coolant.ts";
import { raiseHood, setHood } from "./hood.ts";
import { showText } from "./message.ts";
import { restateModes } from "./modes.ts";
import { machineMove } from "./motion.ts";
import { retract } from "./retract.ts";
import type { Run } from "./run.ts";
import { operationInHand } from "./run.ts";
import { restartSpindle, stopSpindle } from "./spindle.ts";
import { stopForOperator } from "./stop.ts";
import { fact, need, refuse } from "./words.ts";

/** A stop that the job asks for. */
export interface PauseRequest {
  readonly text: string;
  /** Whether the operator's switch decides if it stops. */
  readonly optional: boolean;
  /** Whether X and Y go to the parking place. */
  readonly park: boolean;
}

/**
 * Stops for the operator with everything safe, and goes on with everything restated. The optional stop does the same: the
 * program cannot know which way the switch is set.
 */
export function pause(run: Run, request: PauseRequest): void {
  const { state } = run;
  const operation = operationInHand(run);
  const before = placeNow(run);
  const { direction } = state.spindle;
  const media = state.coolant ?? [];
  const modes = { ...state.modes };
  checkHeight(run);
  retract(run);
  coolantOff(run);
  raiseHood(run);
  stopSpindle(run);
  retract(run);
  if (request.park) park(run, "the job parks the machine in a pause");
  showText(run, request.text, "warning");
  const word = request.optional ? "stops.optional" : "stops.stop";
  if (need(run, word, "the job pauses")) stopForOperator(run, request.optional);
  retract(run);
  confirmHoldDown(run);
  restartSpindle(run, direction);
  setHood(run, operation);
  setCoolant(run, media);
  restateModes(run, operation, modes);
  resume(run, before);
}

/** Goes back to where an operation was left, or leaves that to its first motion where that is still to come. */
function resume(run: Run, before: Destination): void {
  const { state } = run;
  if (state.awaiting === "nothing") approach(run, before);
  else state.awaiting = "approach";
}

/** Where the tool stands in work coordinates. */
function placeNow(run: Run): Destination {
  const { work } = run.state;
  return { at: Float64Array.from(work.at), known: work.known };
}

/** Refuses to leave and enter the work again below clearance: the way back would be a rapid into it. */
function checkHeight(run: Run): void {
  const { state } = run;
  if (state.awaiting !== "nothing") return;
  const known = (state.work.known & axisBit.z) !== 0;
  if (known && state.work.at[2] >= state.clearance) return;
  refuse(
    run,
    "motion/approach",
    `a pause stands below the clearance of operation ${operationInHand(run).id}`,
    "raise Z to clearance before it",
  );
}

/** X and Y to the parking place, at swap height. */
export function park(run: Run, because: string): void {
  const place = fact(run, run.machine.park, "machine.park", because);
  if (place) machineMove(run, { x: place.x, y: place.y });
}
