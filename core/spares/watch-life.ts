import type { Batch, JobFacts, MachineFacts, Report } from "#base";
import type { Job, Operation, Tool } from "#job";
import { createClock } from "#time";
import { lifePassed } from "./findings.ts";

/** A program whose tools are watched. */
export interface LifeRequest {
  readonly job: Job;
  /** Those of the program, in its order. */
  readonly operations: readonly Operation[];
  readonly machine: MachineFacts;
  readonly facts: JobFacts;
  /** Gets `limit/tool`, a warning. */
  readonly report: Report;
}

/** By so much a life may be passed, seconds: a hundredth of a minute, which is the least that the finding shows. */
const slack = 0.6;

/** Passes a sequence on, and warns at its end of each tool that cuts longer than its life. Without such tools no time is counted. */
export function watchLife(batches: Iterable<Batch>, request: LifeRequest): Iterable<Batch> {
  const used = new Set(request.operations.map(({ tool }) => tool));
  const wearing = request.job.tools.filter(({ number, life }) => life !== undefined && used.has(number));
  return wearing.length === 0 ? batches : watched(batches, request, wearing);
}

function* watched(
  batches: Iterable<Batch>,
  { operations, machine, facts, report }: LifeRequest,
  wearing: readonly Tool[],
): Generator<Batch> {
  const clock = createClock(machine, facts, operations);
  for (const batch of batches) {
    clock.accept(batch);
    yield batch;
  }
  const { operations: times, basis } = clock.end();
  for (const tool of wearing) {
    const most = (tool.life ?? Infinity) / 1e6 + slack;
    let seconds = 0;
    let passing: Operation | undefined;
    times.forEach(({ cutting }, index) => {
      if (operations[index].tool !== tool.number) return;
      seconds += cutting;
      if (seconds > most) passing ??= operations[index];
    });
    if (passing !== undefined) report(lifePassed(tool, seconds, passing, basis));
  }
}
