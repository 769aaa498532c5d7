import type { Batch } from "#base";
import { rowKind } from "#base";

/** Each row and step with every field that a comparison looks at, as text. */
export function allOfSteps(batches: Iterable<Batch>): string[] {
  const lines: string[] = [];
  for (const batch of batches) for (let row = 0; row < batch.count; row++) lines.push(allOfRow(batch, row));
  return lines;
}

function allOfRow(batch: Batch, row: number): string {
  if (batch.kind[row] === rowKind.aside) return JSON.stringify(batch.asides[batch.aside[row]]);
  const { kind, frame, known, stated, x, y, z, feed, c1, c2, turns } = batch;
  const columns = [kind, frame, known, stated, x, y, z, ...(batch.abc ?? []), feed, c1, c2, turns];
  return columns.map((column) => String(column[row])).join(" ");
}
