import type { Batch, JobFacts, MachineFacts, Times } from "#base";
import { frame, rowKind } from "#base";
import { acceptMotion } from "./motion.ts";
import { runLines } from "./run-lines.ts";
import { createState } from "./state.ts";
import type { ClockState, TimedOperation } from "./state.ts";
import { acceptStep } from "./steps.ts";
import { timesOf } from "./times.ts";

/** A clock over one program: it is shown every batch in order. */
export interface Clock {
  /** Takes the rows of a batch; the batch is free again afterwards. */
  accept(batch: Batch): void;
  /** Times of all that it was shown. Called once. */
  end(): Times;
}

/**
 * Estimates how long a program runs. Motions at feed speed up and slow down with the acceleration of the axes, and stop at corners or
 * round them as the program or `machine.blending` says; rapids go from rest to rest at the rates of the axes; cycles are taken
 * apart; waits on the spindle last as long as it takes. Without accelerations times are those of the feeds alone. What is
 * assumed is told with the times.
 *
 * @param operations those of the program, in its order; what a row belongs to follows from its place in the job
 */
export function createClock(
  machine: MachineFacts,
  job: JobFacts,
  operations: readonly TimedOperation[],
): Clock {
  const state = createState(machine, job, operations);
  return {
    accept: (batch) => acceptBatch(state, batch),
    end: () => timesOf(state),
  };
}

function acceptBatch(state: ClockState, batch: Batch): void {
  const { count, kind } = batch;
  let row = 0;
  while (row < count) {
    if (kind[row] === rowKind.line && batch.frame[row] === frame.work && !batch.abc) {
      const next = runLines(state, batch, row);
      if (next > row) {
        row = next;
        continue;
      }
    }
    if (kind[row] === rowKind.aside) acceptStep(state, batch.asides[batch.aside[row]], batch.source[row]);
    else acceptMotion(state, batch, row);
    row++;
  }
}
