import type { Batch, ByteSource, Report } from "#base";
import { readClMoves } from "./cl/read-moves.ts";
import type { ClOptions } from "./cl/options.ts";
import { clDefaults } from "./cl/options.ts";
import { readOutline } from "./cl/outline.ts";
import { toClJob } from "./cl/to-job.ts";
import type { ClJob } from "./cl/to-job.ts";
import { checkOperations, checkTools } from "./head/check-head.ts";
import { readHead } from "./head/read-head.ts";
import type { Job, JobStep, Operation } from "./job.ts";
import type { ReadingSizes } from "./moves/reader.ts";
import { readingSizes } from "./moves/reader.ts";
import { readJob } from "./read-job.ts";
import { readMoves } from "./read-moves.ts";

/** In which form a job stands in its input. */
export type Reading =
  | { readonly form: "json" }
  | {
      /** Cutter location source (ISO 3592, ISO 4343; APT words). */
      readonly form: "cl";
      readonly options?: ClOptions;
      /** What the source cannot say: a job in JSON without `operations`. */
      readonly head?: ByteSource;
    };

/** A job that was read: its head, and its moves as often as they are asked for. */
export interface OpenJob {
  readonly job: Job;
  /** The moves of one of its operations; see `readMoves`. */
  readonly moves: (operation: Operation, report: Report) => Iterable<Batch<JobStep>>;
}

/**
 * Reads a job in any form that jobs may have.
 *
 * @param source of any size; memory does not grow with the moves
 * @param report gets each finding with its place in the source
 * @returns undefined after an error
 */
export function openJob(
  source: ByteSource,
  reading: Reading,
  report: Report,
  sizes: ReadingSizes = readingSizes,
): OpenJob | undefined {
  if (reading.form === "json") {
    const job = readJob(source, report, sizes.windowBytes);
    return job && { job, moves: (operation, to) => readMoves(source, job, operation, to, sizes) };
  }
  return openSource(source, reading, report, sizes);
}

function openSource(
  source: ByteSource,
  { options = clDefaults, head: headSource }: Extract<Reading, { form: "cl" }>,
  report: Report,
  sizes: ReadingSizes,
): OpenJob | undefined {
  const counted = countErrors(report);
  const head = headSource && readHead(headSource, counted.report, sizes.windowBytes);
  const outline = readOutline(source, options, head, counted.report, sizes.windowBytes);
  // A source with faults may lack what a job needs for the same reason; one of them is enough.
  const made: ClJob | undefined =
    counted.errors === 0 ? toClJob(outline, options, head, counted.report) : undefined;
  if (made !== undefined) {
    const { job } = made;
    checkTools(job, (index) => job.tools[index].source, counted.report);
    checkOperations(job, (index) => job.operations[index].source, counted.report);
  }
  if (made === undefined || counted.errors > 0) return undefined;
  const { job, drafts } = made;
  const { habits, headClearance } = outline;
  return {
    job,
    moves: (operation, to) => {
      const state = drafts.get(operation)!.state;
      return readClMoves(source, job, operation, { state, habits, options, headClearance }, to, sizes);
    },
  };
}

function countErrors(report: Report): { errors: number; readonly report: Report } {
  const counted = {
    errors: 0,
    report: (finding: Parameters<Report>[0]): void => {
      if (finding.severity === "error") counted.errors++;
      report(finding);
    },
  };
  return counted;
}
