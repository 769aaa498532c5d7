import type { Batch, Report, Step } from "#base";
import { rowKind } from "#base";
import type { LoweredStep } from "#lower";
import { handleAside } from "./asides.ts";
import { checkHead } from "./check.ts";
import { finishProgram } from "./finish.ts";
import { noteMotion, passMotion, passesWhole } from "./pass.ts";
import { withinDigits } from "./ranges.ts";
import type { SequenceRequest } from "./request.ts";
import type { Run } from "./run.ts";
import { createRun } from "./run.ts";
import { skeletonOf } from "./skeleton.ts";
import { startProgram } from "./start.ts";
import { onlyOnce } from "./words.ts";
import { drain, flush, useRotary } from "./writer.ts";

/**
 * Puts every spindle, swap, offset, coolant and retract action in its place between the motions of a job, in the order that
 * standards and practice ask for (a swap by the program: air, release, clamp, each confirmed; an approach: X and Y at swap
 * height, length offset, Z alone).
 *
 * Findings come in two waves: all that the head of the job decides before the first batch, what only the moves show
 * (pauses, changes of speed) on the way. After an error it goes on, to gather more; the program is then not to be used.
 *
 * @param lowered rows in work coordinates as lowering gives them, on the grids of the dialect
 * @returns batches, each valid until the next is pulled
 */
export function* sequence(
  lowered: Iterable<Batch<LoweredStep>>,
  request: SequenceRequest,
  report: Report,
): Generator<Batch> {
  const once = onlyOnce(report);
  // A dry run over the operations without their moves says every word that the head of the job makes necessary.
  const rehearsal = createRun(request, once);
  checkHead(rehearsal);
  for (const _batch of drive(rehearsal, skeletonOf(request))) continue;
  const steps = drive(createRun(request, once), lowered);
  yield* withinDigits(steps, request.capabilities, request.units, once);
}

function* drive(run: Run, lowered: Iterable<Batch<LoweredStep>>): Generator<Batch> {
  startProgram(run);
  for (const batch of lowered) {
    if (batch.abc) useRotary(run.writer);
    if (passesWhole(run, batch)) {
      yield* flush(run.writer);
      noteMotion(run, batch, batch.count - 1);
      // It holds motion only, and so is a batch of steps as well as one of lowered steps.
      yield batch as Batch<unknown> as Batch<Step>;
    } else yield* passRows(run, batch);
  }
  finishProgram(run);
  yield* flush(run.writer);
}

function* passRows(run: Run, batch: Batch<LoweredStep>): Generator<Batch> {
  const kinds = batch.kind.subarray(0, batch.count);
  let row = 0;
  while (row < batch.count) {
    if (kinds[row] === rowKind.aside) {
      handleAside(run, batch.asides[batch.aside[row]], batch.source[row]);
      row++;
    } else {
      const next = kinds.indexOf(rowKind.aside, row);
      const end = next < 0 ? batch.count : next;
      passMotion(run, batch, row, end);
      row = end;
    }
    yield* drain(run.writer);
  }
}
