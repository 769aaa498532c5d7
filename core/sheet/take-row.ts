/** Counts a program row by row. */
import type { Batch, Step } from "#base";
import { rowKind } from "#base";
import { takeMotion } from "./take-motion.ts";
import type { Tally } from "./tally.ts";

/**
 * Counts one row, in the order of the program.
 *
 * @param line line of the program in which its block stands, from 1; undefined where that is not known
 */
export function takeRow(tally: Tally, batch: Batch<Step>, row: number, line: number | undefined): void {
  enter(tally, batch.source[row], line);
  if (batch.kind[row] !== rowKind.aside) {
    forget(tally);
    takeMotion(tally, batch, row);
  } else takeStep(tally, batch.asides[batch.aside[row]], batch.source[row], line);
}

/** Rows come in the order of the job, so that the byte that a row comes from tells its operation. */
function enter(tally: Tally, source: number, line: number | undefined): void {
  const { operations } = tally;
  while (
    operations[tally.index + 1] !== undefined &&
    operations[tally.index + 1].operation.source <= source
  ) {
    tally.index++;
    tally.underWay = false;
    operations[tally.index].line = line;
  }
}

function forget(tally: Tally): void {
  if (tally.messages.length > 0) tally.messages = [];
  tally.selected = undefined;
}

function takeStep(tally: Tally, step: Step, source: number, line: number | undefined): void {
  if (step.kind === "message") {
    tally.messages.push(step.text);
    return;
  }
  if (step.kind === "select-tool") {
    const own = tally.operations[Math.max(tally.index, 0)]?.operation.tool;
    if (tally.swap === "operator") tally.selected = step.tool;
    // What is staged for the next change is not in the spindle yet.
    if (step.tool === own) tally.active = own;
    return;
  }
  if (step.kind === "pause") takeStop(tally, step.optional, source, line);
  else takeState(tally, step);
  forget(tally);
}

function takeStop(tally: Tally, optional: boolean, source: number, line: number | undefined): void {
  const { index, selected, messages, swap, active } = tally;
  tally.stops.push({
    optional,
    operation: index,
    tool: selected,
    isBeforeFirstTool: swap === "rack" && active === undefined,
    messages,
    source,
    line,
  });
  tally.underWay = false;
  tally.known = 0;
}

/** What a step changes of what the motions after it are counted by. */
function takeState(tally: Tally, step: Step): void {
  switch (step.kind) {
    case "spindle-speed":
      tally.rpm = step.rpm;
      break;
    case "spindle-start":
      tally.direction = step.direction;
      break;
    case "spindle-stop":
      tally.direction = undefined;
      break;
    case "feed-mode":
      tally.feedMode = step.value;
      break;
    case "coolant":
      if (step.medium === "all") tally.media.clear();
      else if (step.on) tally.media.add(step.medium);
      else tally.media.delete(step.medium);
      break;
    case "cycle-definition":
      tally.cycle = step;
      break;
    case "auxiliary":
      // A rack names no tool: what is clamped is the tool of the operation.
      if (step.action === "clamp") tally.active = tally.operations[Math.max(tally.index, 0)]?.operation.tool;
      break;
    default:
      break;
  }
}
