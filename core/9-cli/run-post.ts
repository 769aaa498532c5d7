import type { Reportable } from "#report";
import { programText } from "#report";
import type { PostArguments } from "./commands/arguments.ts";
import { loadDialect } from "./dialects/load.ts";
import type { LoadedDialect } from "./dialects/loaded.ts";
import { closeInput, standardStream } from "./files/input.ts";
import type { Protected, Target } from "./files/target.ts";
import { besideInput, protectedDialect, resolveTarget } from "./files/target.ts";
import type { Staged } from "./files/staged.ts";
import { abandon, commit, discard, stage } from "./files/staged.ts";
import { isCarried } from "./files/world.ts";
import { reportOptionsOf, show } from "./output.ts";
import { prepareJob, programOptionsOf, refusedDialect, refusedResult } from "./prepare.ts";
import { perform } from "./work/perform.ts";
import type { Work } from "./work/perform.ts";
import type { PlannedJob, PostPlan, ProgramOptions } from "./work/plan.ts";
import { createProgressBar } from "./work/progress.ts";
import type { Posted } from "./watch/posted.ts";
import { jobFiles } from "./work/sources.ts";
import { pendingSignals, tidyOnSignal } from "./work/signals.ts";

/** `tapewright post`: a job in, a proved program out, or the reasons why not. Gives the exit code. */
export async function runPost(args: PostArguments): Promise<number> {
  if (args.watch === true && args.split === undefined) {
    const { runWatch } = await import("./watch/run-watch.ts");
    return runWatch(args, postOnce);
  }
  if (args.split !== undefined) {
    const { postSplit, splitText } = await import("./run-split.ts");
    return show(await postSplit(args), reportOptionsOf(args), {
      programOnOutput: false,
      text: splitText,
      findingsAreResult: false,
      refusal: "no program was written.",
    });
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
  const loaded = await loadDialect(args.dialect, args.noCache !== true);
  const { input, head, setup } = args;
  const files = [input, head, setup].filter((file) => file !== undefined);
  const madeFrom = [...files, ...Object.values(loaded.paths)];
  const result = "refused" in loaded ? refusedDialect(loaded) : await post(args, options, loaded);
  return { result, madeFrom };
}

async function post(
  args: PostArguments,
  options: ProgramOptions,
  prepared: LoadedDialect,
): Promise<Reportable> {
  try {
    const job = await prepareJob(args.input, args, options);
    if ("verdict" in job) return job;
    try {
      const output =
        outputName(args) ??
        besideInput(args.input, prepared.dialect.format.extension, job.options.airCut ? "air-cut" : "");
      const target = resolveTarget(output, protectedFiles(job, prepared), "program");
      return await produce(target, (staged) => ({ kind: "post", dialect: prepared, job, staged }));
    } finally {
      jobFiles(job).forEach(closeInput);
    }
  } catch (error) {
    if (!isCarried(error)) throw error;
    return refusedResult([error.finding]);
  }
}

/** Does the work, and releases the program if it is proved; in every other case nothing of it is left. */
async function produce(target: Target, planFor: (staged: Staged) => PostPlan): Promise<Reportable> {
  const running: { staged?: Staged; work?: Work } = {};
  const tidy = async (): Promise<void> => {
    await running.work?.stop();
    if (running.staged) discard(running.staged);
  };
  return tidyOnSignal(tidy, async () => {
    const bar = createProgressBar("posting");
    try {
      const staged = (running.staged = stage(target));
      const work = (running.work = perform(planFor(staged), bar.show));
      const { result, proof } = await work.computed;
      bar.end();
      await pendingSignals();
      if (proof === undefined || result.verdict !== "proved") {
        abandon(staged);
        return result;
      }
      commit(staged, proof);
      return { ...result, output: target.shown };
    } finally {
      bar.end();
      if (running.staged) discard(running.staged);
    }
  });
}

/** Undefined: beside the input. */
function outputName({ input, output }: PostArguments): string | undefined {
  return output ?? (input === standardStream ? standardStream : undefined);
}

/** What the program must not replace: what it is made from. */
function protectedFiles(job: PlannedJob, { paths }: LoadedDialect): Protected[] {
  return [...jobFiles(job), ...protectedDialect(Object.values(paths))];
}
