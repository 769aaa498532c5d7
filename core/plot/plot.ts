import type { Finding } from "#base";
import { chooseOperations } from "#job";
import type { Packing, Plot } from "#report";
import { gather } from "#report";
import { openInput } from "#retrace";
import { takeSpares } from "#spares";
import type { Outcome } from "../compile.ts";
import { post } from "../compile.ts";
import type { JobInput, Means } from "../inputs.ts";
import { plotJob } from "./plot-job.ts";
import { plotProgram } from "./plot-program.ts";

/** What came of it: the findings, and the picture where the job could be read. */
export interface PlotOutcome {
  readonly findings: readonly Finding[];
  /** What posting came to; absent where no dialect was given. */
  readonly posted?: Outcome;
  /** Undefined where the job cannot be read to its end: nothing of it is drawn then. Its marks have no `where` yet. */
  readonly plot?: Plot;
}

/** Draws a job alone. */
export function plotJobAlone(
  input: JobInput,
  packing: Packing,
  posted: readonly Finding[] = [],
): PlotOutcome {
  const gathering = gather();
  const report = gathering.reportOf("job");
  const stated = openInput(input.source, input.reading ?? { form: "json" }, report);
  const opened = stated && takeSpares(stated);
  const operations = opened && chooseOperations(opened.job, input.options, report);
  if (!opened || !operations || gathering.failedBy("job")) return { findings: gathering.findings() };
  const findings = [...gathering.findings(), ...posted];
  const plot = plotJob({ source: input.source, opened, operations, findings, packing }, report);
  if (gathering.failedBy("job")) return { findings: gathering.findings() };
  // What the moves themselves gave came too late for a place in the picture.
  return { findings, plot };
}

/** Posts a job to nowhere, and draws what came of it. */
export function plotUnder(input: JobInput & Means, packing: Packing): PlotOutcome {
  return plotPosted(input, post({ ...input, sink: { write: () => undefined } }), packing);
}

/**
 * Draws the program of a job that was posted; of a job that is refused before there is one, the job alone. The picture is a
 * diagnostic: it is made of a refused program, too, and says so.
 */
export function plotPosted(input: JobInput & Means, posted: Outcome, packing: Packing): PlotOutcome {
  const { findings, proof } = posted;
  const plot = plotProgram({ ...input, findings, isProved: proof !== undefined, packing });
  if (plot !== undefined) return { findings, posted, plot };
  const alone = plotJobAlone(input, packing, findings);
  if (alone.plot === undefined) return { findings, posted };
  const { name, title } = input.dialect;
  return {
    findings: alone.findings,
    posted,
    plot: { ...alone.plot, head: { ...alone.plot.head, dialect: { name, title } } },
  };
}
