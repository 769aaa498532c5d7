import type { Batch, Finding } from "#base";
import { createGuard } from "#prove";
import { layOut } from "./layout.ts";
import type { Sequence } from "./sequences.ts";

/** Shows batches to a guard; gives its findings. */
export function guardBatches(sequence: Sequence, batches: Iterable<Batch>): Finding[] {
  const findings: Finding[] = [];
  const guard = createGuard(sequence.facts, sequence.job, (finding) => findings.push(finding), "program");
  for (const batch of batches) guard.accept(batch);
  guard.end();
  return findings;
}

/** The findings on a sequence. */
export function guardItems(sequence: Sequence, rows = 7): Finding[] {
  return guardBatches(sequence, layOut(sequence.items, sequence.facts, rows));
}

/** Error findings and warnings; notes say only what is not checked. */
export function faults(findings: readonly Finding[]): Finding[] {
  return findings.filter((finding) => finding.severity !== "note");
}
