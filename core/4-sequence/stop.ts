import { stateAllModes } from "./modes.ts";
import { stateWorkOffset } from "./offsets.ts";
import type { Run } from "./run.ts";
import { put } from "./steps.ts";
import { fact } from "./words.ts";

/**
 * A stop that the operator ends. Where the control then goes on with modes of its own, all of them are stated anew before
 * anything moves: the offsets follow before the approach, as behind any stop.
 */
export function stopForOperator(run: Run, optional: boolean): void {
  const { machine, request, job, state } = run;
  const { workOffset } = state;
  put(run, { kind: "pause", optional });
  if (fact(run, machine.afterStop, "stops.resume", "it stops for the operator") !== "loses-modes") return;
  const operation = job.operations[state.operation] ?? job.operations[request.operations[0] ?? -1];
  stateAllModes(run, operation);
  // A retract to clearance is in work coordinates: those in which the tool has come here, not yet those of what follows.
  if (machine.retract?.by !== "clearance") return;
  if (workOffset !== undefined) put(run, { kind: "work-offset", number: workOffset });
  else if (operation) stateWorkOffset(run, operation);
}
