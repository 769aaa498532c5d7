import type { ByteSource, Report } from "#base";
import { checkHead } from "./head/check-head.ts";
import { fitsSchema } from "./head/fits-schema.ts";
import { toJob } from "./head/to-job.ts";
import type { Job } from "./job.ts";
import type { JobSchema } from "./job-schema.generated.ts";
import { readForm } from "./read-form.ts";
import { readMoves } from "./read-moves.ts";
import { windowBytes } from "./scan/scanner.ts";

/**
 * Reads a job's head: everything but the moves, whose spans it keeps for `readMoves`. The source is read once, in
 * windows; memory does not grow with the moves.
 *
 * @param source the job as JSON, UTF-8; of any size
 * @param report gets each finding with its place in the source
 * @param window bytes read at a time
 * @returns the head in base units; undefined if there is an error, and then the moves have been checked as well, if
 *   that was possible
 */
export function readJob(source: ByteSource, report: Report, window: number = windowBytes): Job | undefined {
  let errors = 0;
  const counted: Report = (finding) => {
    if (finding.severity === "error") errors++;
    report(finding);
  };
  const tree = readForm(source, counted, window);
  if (tree === undefined || !fitsSchema(tree, counted)) return undefined;
  const job = toJob(tree, tree.value as JobSchema, counted);
  checkHead(job, tree, counted);
  if (errors === 0) return job;
  // Nobody will read the moves of a job that is refused, so their findings are gathered here.
  const sizes = { windowBytes: window, rows: 64 };
  for (const operation of job.operations) for (const _ of readMoves(source, job, operation, report, sizes));
  return undefined;
}
