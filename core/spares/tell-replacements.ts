import type { Finding } from "#base";
import type { Operation } from "#job";
import { spareTaken } from "./findings.ts";
import type { SparedJob } from "./take-spares.ts";

/** A note on each tool that takes over from another in some operations of a job, at the first of these that it does. */
export function tellReplacements(
  { job, replacements }: Pick<SparedJob, "job" | "replacements">,
  operations: readonly Operation[],
): Finding[] {
  const inUse = new Map<number, number>();
  return operations.flatMap((operation) => {
    const index = job.operations.indexOf(operation);
    const replacement = replacements[index];
    if (replacement === undefined || inUse.get(replacement.tool) === replacement.by) return [];
    inUse.set(replacement.tool, replacement.by);
    return [spareTaken(job, operation, replacement)];
  });
}
