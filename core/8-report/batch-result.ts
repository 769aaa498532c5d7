import type { Reportable } from "./outcome.ts";
import { jsonFinding } from "./json.ts";

/** One of several programs: what it was to be made of, and what came of it. */
export interface BatchEntry {
  /** The job's file; absent where the dialect cannot be had for any job. */
  readonly job?: string;
  /** Name of the dialect. */
  readonly dialect: string;
  readonly result: Reportable;
  /** What was thrown where it is a fault of ours. */
  readonly fault?: unknown;
}

/** Several programs in one result: "proved" where all of them are; each stands in `summary.programs` with its own findings. */
export function batchResult(entries: readonly BatchEntry[]): Reportable {
  const results = entries.map(({ result }) => result);
  return {
    verdict: results.every(({ verdict }) => verdict === "proved") ? "proved" : "refused",
    findings: results.flatMap(({ findings }) => findings),
    summary: {
      programs: entries.map(({ job, dialect, result, fault }) => ({
        ...(job === undefined ? {} : { job }),
        dialect,
        verdict: result.verdict,
        ...(result.output === undefined ? {} : { output: result.output }),
        ...(result.proof === undefined ? {} : { proof: result.proof }),
        ...(fault === undefined ? {} : { fault: true }),
        findings: result.findings.map(jsonFinding),
        summary: result.summary,
      })),
      // They differ from program to program, and stand there.
      assumptions: [],
    },
  };
}
