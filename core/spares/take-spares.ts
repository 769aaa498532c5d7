import type { OpenJob, Operation } from "#job";
import type { Replacement } from "./choose-tools.ts";
import { chooseTools, hasSpares } from "./choose-tools.ts";
import { cuttingTime } from "./cutting-time.ts";

/** A job whose operations have the tools that do them. */
export interface SparedJob extends OpenJob {
  /** By the index of the operation; undefined where the tool is the one that the job names. */
  readonly replacements: readonly (Replacement | undefined)[];
}

/**
 * Puts spares in the place of worn tools, in the whole job, so that a part of it has the tools that the whole has. It goes by the feeds
 * of the job alone: which tool does an operation is the same under each dialect. Only a job that has a tool with a life and a spare pays
 * for it, by one more reading of what that tool does.
 */
export function takeSpares(opened: OpenJob): SparedJob {
  const { job } = opened;
  const wears = new Set(job.tools.filter(({ number }) => hasSpares(number, job.tools)).map((t) => t.number));
  if (!job.operations.some(({ tool }) => wears.has(tool))) return { ...opened, replacements: [] };
  const uses = job.operations.map((operation) => ({
    tool: operation.tool,
    time: wears.has(operation.tool) ? cuttingTime(opened, operation) : 0,
  }));
  const replacements = chooseTools(uses, job.tools);
  const operations = job.operations.map((operation, index): Operation => {
    const by = replacements[index]?.by;
    return by === undefined ? operation : { ...operation, tool: by };
  });
  const own = new Map(operations.map((operation, index) => [operation, job.operations[index]]));
  return {
    job: { ...job, operations },
    moves: (operation, report) => opened.moves(own.get(operation) ?? operation, report),
    replacements,
  };
}
