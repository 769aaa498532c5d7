import type { Reportable } from "#report";
import { programText } from "#report";
import type { PostArguments } from "./commands/arguments.ts";
import { loadDialect } from "./dialects/load.ts";
import type { LoadedDialect } from "./dialects/loaded.ts";
import { closeInput, standardStream } from "./files/input.ts";
import { programBeside, resolveTarget } from "./files/target.ts";
import { isCarried } from "./files/world.ts";
import { reportOptionsOf, show } from "./output.ts";
import { prepareJob, programOptionsOf, refusedDialect, refusedResult, simulationOf } from "./prepare.ts";
import { produce } from "./produce.ts";
import { perform } from "./work/perform.ts";
import type { PostPlan, ProgramOptions } from "./work/plan.ts";
import { createProgressBar } from "./work/progress.ts";
import type { Posted } from "./watch/posted.ts";
import { jobFiles, protectedFiles } from "./work/sources.ts";

/** `tapewright post`: a job in, a proved program out, or the reasons why not. Gives the exit code. */
export async function runPost(args: PostArguments): Promise<number> {
  if (args.split !== undefined) {
    const { postSplit, splitText } = await import("./run-split.ts");
    return show(await postSplit(args), reportOptionsOf(args), {
      programOnOutput: false,
      text: splitText,
      findingsAreResult: false,
      refusal: "no program was written.",
    });
  }
  if (args.watch === true) {
    const { runWatch } = await import("./watch/run-watch.ts");
    return runWatch(args, postOnce);
  }
  const { result } = await postOnce(args);
  return show(result, reportOptionsOf(args), {
    programOnOutput: outputName(args) === standardStream,
    text: programText,
    findingsAreResult: false,
    refusal: "no program was written.",
  });
}

async function postOnce(args: PostArguments): Promise<Posted> {
  const options = programOptionsOf(args);
  const simulate = simulationOf(args);
  const loaded = await loadDialect(args.dialect, args.noCache !== true);
  const { input, head, setup, rack, readAs } = args;
  const files = [input, head, setup, rack].filter((file) => file !== undefined);
  const source = readAs === undefined ? undefined : await loadDialect(readAs, args.noCache !== true);
  const madeFrom = [...new Set([...files, ...Object.values({ ...source?.paths, ...loaded.paths })])];
  const result =
    "refused" in loaded ? refusedDialect(loaded) : await post(args, { options, simulate }, loaded);
  return { result, madeFrom };
}

async function post(
  args: PostArguments,
  { options, simulate }: { options: ProgramOptions; simulate: PostPlan["simulate"] },
  prepared: LoadedDialect,
): Promise<Reportable> {
  try {
    const job = await prepareJob(args.input, args, options);
    if ("verdict" in job) return job;
    try {
      const output =
        outputName(args) ??
        programBeside(args.input, prepared.dialect.format.extension, job.options.airCut !== undefined);
      const target = resolveTarget(output, protectedFiles(job, Object.values(prepared.paths)), "program");
      const bar = createProgressBar("posting");
      try {
        return await produce({
          target,
          planFor: (staged) => ({ kind: "post", dialect: prepared, job, simulate, staged }),
          perform: (plan) => perform(plan, bar.show),
        });
      } finally {
        bar.end();
      }
    } finally {
      jobFiles(job).forEach(closeInput);
    }
  } catch (error) {
    if (!isCarried(error)) throw error;
    return refusedResult([error.finding]);
  }
}

/** Undefined: beside the input. */
function outputName({ input, output }: PostArguments): string | undefined {
  return output ?? (input === standardStream ? standardStream : undefined);
}
