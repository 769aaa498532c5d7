import type { Step } from "#base";
import { applyStep } from "./knowledge.ts";
import type { Run } from "./run.ts";
import { writeStep } from "./writer.ts";

/** Puts a rare step in its place and draws what follows from it for the place of the tool and the modes in force. */
export function put(run: Run, step: Step): void {
  writeStep(run.writer, step, run.state.source);
  applyStep(run, step);
}
