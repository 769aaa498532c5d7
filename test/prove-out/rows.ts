import type { Batch, Step } from "#base";
import { frame, memorySource, rowKind } from "#base";
import { read } from "#read";
import type { ReadyDialect } from "../../core/index.ts";

/** A step or a motion of a program, as plain data. */
export interface ReadRow {
  readonly step?: Step;
  readonly kind?: number;
  readonly machine?: boolean;
  readonly at?: readonly [number, number, number];
  readonly known?: number;
  readonly feed?: number;
  readonly arc?: readonly [number, number, number];
}

/** Reads a program back to rows. */
export function rowsOf(program: string, { dialect }: ReadyDialect, units: "mm" | "inch" = "mm"): ReadRow[] {
  const source = memorySource(new TextEncoder().encode(program));
  const bytes = new Uint8Array(source.size);
  source.read(0, bytes);
  const rows: ReadRow[] = [];
  const fail = (finding: { readonly severity: string; readonly message: string }): void => {
    if (finding.severity === "error") throw new Error(finding.message);
  };
  for (const batch of read([bytes], dialect.format, dialect.machine, { units }, fail))
    for (let row = 0; row < batch.count; row++) rows.push(rowOf(batch, row));
  return rows;
}

function rowOf(batch: Batch, row: number): ReadRow {
  const kind = batch.kind[row];
  if (kind === rowKind.aside) return { step: batch.asides[batch.aside[row]] };
  return {
    kind,
    machine: batch.frame[row] === frame.machine,
    at: [batch.x[row], batch.y[row], batch.z[row]],
    known: batch.known[row],
    feed: batch.feed[row],
    arc: [batch.c1[row], batch.c2[row], batch.turns[row]],
  };
}

/** Whether a row cuts: a motion at feed in the work. */
export function cuts({ kind, machine }: ReadRow): boolean {
  return kind !== undefined && kind !== rowKind.rapid && machine !== true;
}
