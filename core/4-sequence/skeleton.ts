import type { Batch } from "#base";
import { axisBit, createBatch, frame, linearAxes, pushAside, rowKind } from "#base";
import type { LoweredStep } from "#lower";
import { onLengthGrid } from "./grid.ts";
import type { SequenceRequest } from "./request.ts";

/** The operations of a job without their moves: each is entered, approached and left. */
export function* skeletonOf(request: SequenceRequest): Generator<Batch<LoweredStep>> {
  for (const index of request.operations) {
    const { clearance, source } = request.job.operations[index];
    const batch = createBatch<LoweredStep>(4);
    pushAside(batch, { kind: "operation-start", index }, source);
    const row = batch.count++;
    batch.kind[row] = rowKind.rapid;
    batch.frame[row] = frame.work;
    batch.known[row] = linearAxes;
    batch.stated[row] = axisBit.x | axisBit.y;
    batch.z[row] = onLengthGrid(request, clearance);
    batch.aside[row] = -1;
    batch.source[row] = source;
    pushAside(batch, { kind: "operation-end", index }, source);
    yield batch;
  }
}
