/** What a job says to people: the texts of its pauses and its notes. */
import type { Batch } from "#base";
import { rowKind } from "#base";
import type { JobStep, OpenJob, Operation } from "#job";

/** Notes of one operation that are kept, and how many there are besides. */
export interface OperationNotes {
  readonly kept: readonly string[];
  readonly more: number;
}

export interface JobTexts {
  /** Texts of pauses by their byte offsets in the job. */
  readonly pauses: ReadonlyMap<number, string>;
  /** In the order of the operations. */
  readonly notes: readonly OperationNotes[];
}

/** A sheet is paper: more notes of one operation than these are counted. */
const mostNotes = 12;

/** Reads the moves for their texts; findings about them were reported when the job was posted. */
export function jobTexts({ moves }: OpenJob, operations: readonly Operation[]): JobTexts {
  const pauses = new Map<number, string>();
  const notes = operations.map((operation) => {
    const kept: string[] = [];
    const left = { more: 0 };
    for (const batch of moves(operation, () => undefined))
      eachStep(batch, (step, source) => {
        if (step.kind === "pause") pauses.set(source, step.text);
        if (step.kind !== "note") return;
        if (kept.length < mostNotes) kept.push(step.text);
        else left.more++;
      });
    return { kept, more: left.more };
  });
  return { pauses, notes };
}

function eachStep(batch: Batch<JobStep>, take: (step: JobStep, source: number) => void): void {
  if (batch.asides.length === 0) return;
  for (let row = 0; row < batch.count; row++)
    if (batch.kind[row] === rowKind.aside) take(batch.asides[batch.aside[row]], batch.source[row]);
}
