import type { Emitter } from "#emit";
import type { Located, Plot, Reportable } from "#report";
import { locate, plotDrawing, plotPage, plotText } from "#report";
import type { PlotOutcome } from "../plot/index.ts";
import { plotJobAlone, plotUnder } from "../plot/index.ts";
import type { PlotArguments } from "./commands/arguments.ts";
import { loadDialect } from "./dialects/load.ts";
import type { LoadedDialect } from "./dialects/loaded.ts";
import { refuseChanged, standardStream } from "./files/input.ts";
import { putText } from "./files/put-text.ts";
import { besideInput, resolveTarget } from "./files/target.ts";
import { isCarried } from "./files/world.ts";
import { reportOptionsOf, show } from "./output.ts";
import { packing } from "./packing.ts";
import { prepareJob, programOptionsOf, refusedDialect, refusedResult } from "./prepare.ts";
import { usageError } from "./usage.ts";
import { createDigest, jobInput } from "./work/compute.ts";
import type { PlannedJob } from "./work/plan.ts";
import { jobFiles, jobSources, protectedFiles } from "./work/sources.ts";

/** `tapewright plot`: a picture of a job or of its program. Gives the exit code of posting; the picture is written all the same. */
export async function runPlot(args: PlotArguments): Promise<number> {
  const output = outputName(args);
  const result = await plot(args, output);
  return show(result, reportOptionsOf(args), {
    programOnOutput: output === standardStream,
    text: (shown, layout) => plotText(shown, layout),
    findingsAreResult: true,
    refusal: result.output === undefined ? "no picture was written." : `the picture is ${result.output}.`,
  });
}

function outputName(args: PlotArguments): string {
  refuseWithoutDialect(args);
  const { input, output } = args;
  const name = output ?? (input === standardStream ? standardStream : besideInput(input, "svg"));
  if (name !== standardStream && !/\.(svg|html?)$/i.test(name))
    throw usageError(`--output is the name of a picture, .svg or .html, and not ${name}.`);
  return name;
}

/** The picture of a job alone shows nothing of what is about a program. */
function refuseWithoutDialect({ dialect, ...args }: PlotArguments): void {
  const { spindleHolds, setup, rack, airCut, airFeed, optionalStops } = args;
  const about = {
    "spindle-holds": spindleHolds,
    setup,
    rack,
    "air-cut": airCut,
    "air-feed": airFeed,
    "optional-stops": optionalStops,
  };
  const stated = Object.entries(about).find(([, value]) => value !== undefined && value !== false);
  if (dialect === undefined && stated !== undefined)
    throw usageError(`--${stated[0]} is about a program: state --dialect, too.`);
}

async function plot(args: PlotArguments, output: string): Promise<Reportable> {
  const options = programOptionsOf(args);
  const loaded =
    args.dialect === undefined ? undefined : await loadDialect(args.dialect, args.noCache !== true);
  if (loaded && "refused" in loaded) return refusedDialect(loaded);
  try {
    const job = await prepareJob(args.input, args, options);
    if ("verdict" in job) return job;
    const target = resolveTarget(output, protectedFiles(job, Object.values(loaded?.paths ?? {})), "picture");
    const outcome = await compute(job, loaded);
    const told = tell(outcome, job, loaded);
    const drawn = outcome.plot && withPlaces(outcome.plot, told.findings);
    jobFiles(job).forEach(refuseChanged);
    if (drawn === undefined) return told;
    const text = /\.html?$/i.test(output) ? await plotPage(drawn, packing) : plotDrawing(drawn, packing);
    await putText(target, text, () => jobFiles(job).forEach(refuseChanged));
    return { ...told, output: target.shown };
  } catch (error) {
    if (!isCarried(error)) throw error;
    return refusedResult([error.finding]);
  }
}

async function compute(job: PlannedJob, loaded: LoadedDialect | undefined): Promise<PlotOutcome> {
  if (loaded === undefined) return plotJobAlone(jobInput(job), packing);
  const emitter = (await import(loaded.emitter)) as Emitter;
  const { dialect } = loaded;
  return plotUnder({ ...jobInput(job), dialect, emitter, createDigest }, packing);
}

function tell(
  { findings, posted, plot: drawn }: PlotOutcome,
  job: PlannedJob,
  loaded?: LoadedDialect,
): Reportable {
  // Those of the dialect's files belong to the report, and have no place in the picture.
  const all = [...findings, ...(loaded?.findings ?? [])];
  const head = drawn?.head;
  return {
    verdict: posted?.verdict ?? (drawn === undefined ? "refused" : "read"),
    findings: locate(all, jobSources(job, loaded?.paths), loaded?.dialect),
    summary: {
      assumptions: [],
      ...(loaded === undefined ? {} : { dialect: loaded.dialect.name }),
      ...(head === undefined
        ? {}
        : {
            units: head.units,
            tools: head.tools.map(({ number }) => number),
            plot: {
              shows: head.shows,
              counts: head.counts,
              cut: head.cut ?? null,
              all: head.all ?? null,
              remarks: head.remarks,
            },
          }),
    },
  };
}

/** The plot with the places of its findings as a person looks them up; findings of the job's own come first in both. */
function withPlaces(drawn: Plot, located: readonly Located[]): Plot {
  const marks = drawn.head.marks.map((mark, index) => {
    const { file, line, column } = located[index];
    const where = [file, line, column].filter((part) => part !== undefined).join(":");
    return { ...mark, where };
  });
  return { ...drawn, head: { ...drawn.head, marks } };
}
