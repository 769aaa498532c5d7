import type { MachineFacts, Report } from "#base";
import type { Job, Operation, Tool } from "#job";
import { onLengthGrid } from "./grid.ts";
import type { SequenceRequest } from "./request.ts";
import type { State } from "./state.ts";
import { createState } from "./state.ts";
import type { Writer } from "./writer.ts";
import { createWriter } from "./writer.ts";

/** One program being put in order: what it is made from, what is known, and where it goes. */
export interface Run {
  readonly request: SequenceRequest;
  readonly job: Job;
  readonly machine: MachineFacts;
  readonly state: State;
  readonly writer: Writer;
  /** Reports each finding once. */
  readonly report: Report;
}

/** Begins a program. */
export function createRun(request: SequenceRequest, report: Report): Run {
  const { job, machine } = request;
  const [first] = request.operations;
  const clearance = first === undefined ? job.clearance : job.operations[first].clearance;
  const state = createState(request, onLengthGrid(request, clearance));
  return { request, job, machine, state, writer: createWriter(), report };
}

/** The operation in hand. */
export function operationInHand(run: Run): Operation {
  const operation = run.job.operations[run.state.operation];
  if (operation === undefined) throw new Error("there is no operation in hand");
  return operation;
}

/** The tool with a number. */
export function toolOf(run: Run, number: number): Tool {
  const tool = run.job.tools.find((one) => one.number === number);
  if (tool === undefined) throw new Error(`tool ${String(number)} is not in the job`);
  return tool;
}
