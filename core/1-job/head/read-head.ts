import type { ByteSource, Report } from "#base";
import { headKey } from "../cl/findings.ts";
import type { Job } from "../job.ts";
import type { JobSchema } from "../job-schema.generated.ts";
import { readForm } from "../read-form.ts";
import { windowBytes } from "../scan/scanner.ts";
import { checkHead } from "./check-head.ts";
import { fitsSchema } from "./fits-schema.ts";
import { toJob } from "./to-job.ts";
import type { Tree } from "./tree.ts";

/** A head file: a job without operations. */
export interface Head extends Job {
  /** Numbers of the tools whose length offset it states; for the others it is that of their number. */
  readonly lengthOffsets: ReadonlySet<number>;
}

/** Stands for the operations, which come from elsewhere; a list that the schema accepts. */
const anyOperations = [{ id: "-", tool: 1, moves: [{ note: "" }] }];

/**
 * Reads a head file: a job in JSON without its operations, which an input of another form has.
 *
 * @param report gets each finding with its place in the head file
 * @returns a job without operations; undefined after an error
 */
export function readHead(source: ByteSource, report: Report, window: number = windowBytes): Head | undefined {
  const counted = { errors: 0 };
  const inHead: Report = (finding) => {
    if (finding.severity === "error") counted.errors++;
    report(finding.place ? { ...finding, place: { ...finding.place, source: "head" } } : finding);
  };
  const tree = readForm(source, inHead, window);
  const stray = tree?.members?.get("operations");
  if (stray !== undefined) inHead(headKey(stray.keyOffset));
  if (tree === undefined || stray !== undefined) return undefined;
  const whole = withOperations(tree);
  if (!fitsSchema(whole, inHead)) return undefined;
  const raw = whole.value as JobSchema;
  const job: Job = { ...toJob(whole, raw, inHead), operations: [] };
  checkHead(job, tree, inHead);
  if (counted.errors > 0) return undefined;
  const stated = raw.tools.filter(({ lengthOffset }) => lengthOffset !== undefined);
  return { ...job, lengthOffsets: new Set(stated.map(({ number }) => number)) };
}

function withOperations(tree: Tree): Tree {
  if (tree.members === undefined) return tree;
  // Without a prototype, as the tree has it: `__proto__` is a key like any other.
  const value = Object.assign(Object.create(null) as object, tree.value, { operations: anyOperations });
  return { ...tree, value };
}
