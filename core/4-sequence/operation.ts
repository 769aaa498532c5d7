import { linearAxes } from "#base";
import type { Operation } from "#job";
import { confirmHoldDown } from "./confirm.ts";
import { coolantOff, setCoolant } from "./coolant.ts";
import { onLengthGrid } from "./grid.ts";
import { raiseHood, setHood } from "./hood.ts";
import { stateOperationModes } from "./modes.ts";
import { cancelLengthOffset } from "./offsets.ts";
import { reloadRack } from "./reload.ts";
import { retract } from "./retract.ts";
import type { Run } from "./run.ts";
import { operationInHand, toolOf } from "./run.ts";
import {
  changeSpeed,
  orientSpindle,
  restartSpindle,
  shiftsGear,
  startSpindle,
  stopSpindle,
  turnsSpindle,
} from "./spindle.ts";
import { beginSection } from "./writer.ts";
import { keepTool, measureTool, swapTool } from "./swap.ts";

/** Enters an operation: with another tool by way of a swap, with the same one by what differs. */
export function enterOperation(run: Run, index: number): void {
  const { state } = run;
  const entered = state.operation >= 0;
  state.operation = index;
  const operation = operationInHand(run);
  state.source = operation.source;
  const continues = entered && state.held === operation.tool;
  const byOperation = run.request.capabilities.sectionsBeginAt === "operation";
  if (!continues || byOperation) beginSection(run.writer, sectionName(run, operation, byOperation));
  if (continues) continueWithTool(run, operation);
  else enterToolSection(run, operation);
}

/** What a section is called: its operation, or the tool with which it begins. */
function sectionName(run: Run, operation: Operation, byOperation: boolean): string {
  if (byOperation) return operation.name || operation.id;
  const { number, description } = toolOf(run, operation.tool);
  return `T${number} ${description}`;
}

/** A tool section states everything anew, so that a program can be taken up at it. */
function enterToolSection(run: Run, operation: Operation): void {
  const { state } = run;
  makeSafe(run);
  // On the way from the old work to the new one, the higher of both clearances counts.
  state.clearance = Math.max(state.clearance, onLengthGrid(run.request, operation.clearance));
  // At a stop the operator may have turned the spindle, or opened a valve.
  if (reloadRack(run, state.operation)) makeSafe(run);
  const tool = toolOf(run, operation.tool);
  if (state.held === operation.tool) keepTool(run, tool);
  else swapTool(run, tool);
  measureTool(run, tool);
  stateOperationModes(run, operation);
  confirmHoldDown(run);
  if (turnsSpindle(run, operation) && operation.spindle) {
    startSpindle(run, operation.spindle.rpm, operation.spindle.direction);
  }
  setHood(run, operation);
  setCoolant(run, operation.coolant);
  state.awaiting = "approach";
}

/** Up, coolant off, hood up, the spindle confirmed to stand, the old length offset cancelled. */
function makeSafe(run: Run): void {
  const { state } = run;
  if (state.fresh) {
    // The start of the program has just done all this but for the hood, whose place it does not know.
    raiseHood(run);
  } else {
    retract(run);
    coolantOff(run);
    raiseHood(run);
    stopSpindle(run);
    retract(run);
  }
  if (state.held !== operationInHand(run).tool) orientSpindle(run);
  if (!state.fresh) {
    cancelLengthOffset(run);
    retract(run);
  }
  state.fresh = false;
}

/** The next operation with the same tool: no swap and no stop, unless the spindle has to turn the other way or in another gear. */
function continueWithTool(run: Run, operation: Operation): void {
  const { state } = run;
  const { spindle } = operation;
  const reverses =
    turnsSpindle(run, operation) &&
    spindle !== undefined &&
    (spindle.direction !== state.spindle.direction || shiftsGear(run, spindle.rpm));
  const moves = state.workOffset !== undefined && operation.workOffset !== state.workOffset;
  if (reverses || moves) retract(run);
  if (reverses) stopSpindle(run);
  state.clearance = Math.max(state.clearance, onLengthGrid(run.request, operation.clearance));
  stateOperationModes(run, operation);
  confirmHoldDown(run);
  adjustSpindle(run, operation);
  setHood(run, operation);
  setCoolant(run, operation.coolant);
  state.awaiting = knowsPlace(run) && !reverses && !moves ? "next" : "approach";
}

function adjustSpindle(run: Run, operation: Operation): void {
  const { state } = run;
  const { spindle } = operation;
  if (!turnsSpindle(run, operation) || !spindle) return;
  if (spindle.direction !== state.spindle.direction) startSpindle(run, spindle.rpm, spindle.direction);
  else if (spindle.rpm !== state.spindle.asked) changeSpeed(run, spindle.rpm);
  else if (state.tapped) restartSpindle(run, spindle.direction);
}

/** Whether the tool stands somewhere in the work: not where the operation before had no motion. */
function knowsPlace(run: Run): boolean {
  const { work } = run.state;
  return (work.known & linearAxes) === linearAxes;
}

/** Leaves an operation; its last motion has brought Z to clearance. */
export function leaveOperation(run: Run): void {
  run.state.awaiting = "nothing";
}
