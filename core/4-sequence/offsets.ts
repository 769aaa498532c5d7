import type { Operation } from "#job";
import { orDeclare } from "./findings.ts";
import type { Run } from "./run.ts";
import { operationInHand, toolOf } from "./run.ts";
import { put } from "./steps.ts";
import { need, optional, refuse } from "./words.ts";

/** Cancels the length offset where the dialect has a word for that, unless the retract has done so just now. */
export function cancelLengthOffset(run: Run): void {
  if (run.machine.retract?.cancelLengthFirst && run.state.lengthOffset === 0) return;
  if (optional(run, "length-offset.off", "a length offset must not outlast its tool")) {
    put(run, { kind: "length-offset", number: 0 });
  } else run.state.lengthOffset ??= 0;
}

/** Makes the length offset of the tool in hand act; the motion that follows goes by it. */
export function applyLengthOffset(run: Run): void {
  const form = run.machine.lengthOffset?.form;
  const tool = toolOf(run, operationInHand(run).tool);
  if (form === "in-tool-word" && run.machine.retract?.cancelLengthFirst && run.state.lengthOffset === 0) {
    refuse(
      run,
      "offset/active",
      "the retract cancels the length offset, and the tool word that brings it back would swap the tool",
      "retract in a way that leaves the length offset alone (`machine.retract.cancel-length-first: no`)",
      "machine.retract.cancel-length-first",
    );
  }
  if (form !== "with-first-z" && form !== "own-block") return;
  if (!need(run, "length-offset.on", "each tool has a length of its own")) return;
  if (!run.request.capabilities.freeOffsets && tool.lengthOffset !== tool.number)
    refuse(
      run,
      "offset/active",
      `tool ${String(tool.number)} has length offset ${String(tool.lengthOffset)}, and each tool has that of its own number here`,
      "give the tool the length offset of its own number",
      "length-offset.number",
    );
  put(run, { kind: "length-offset", number: tool.lengthOffset });
}

/** States the work offset of an operation where the dialect has words for work offsets. */
export function stateWorkOffset(run: Run, operation: Operation): void {
  const key = `work-offset.${String(operation.workOffset)}`;
  if (!needsWorkOffsetWord(run)) return;
  const word = run.request.capabilities.words[key];
  if (word === false) {
    refuse(
      run,
      "lower/work-offset",
      `operation ${operation.id} is in work offset ${String(operation.workOffset)}, and the dialect has no word for it`,
      orDeclare("use a work offset that the controller has", "work-offset"),
      key,
    );
  } else if (optional(run, key, "its operations are in a work offset")) {
    put(run, { kind: "work-offset", number: operation.workOffset });
  }
}

/** A control without any such words has one zero, set by hand: enough for a job that uses one work offset. */
function needsWorkOffsetWord(run: Run): boolean {
  const { words } = run.request.capabilities;
  const numbers = new Set(run.request.operations.map((index) => run.job.operations[index].workOffset));
  return (
    numbers.size > 1 ||
    [1, 2, 3, 4, 5, 6, 7, 8, 9].some((number) => words[`work-offset.${String(number)}`] !== false)
  );
}
