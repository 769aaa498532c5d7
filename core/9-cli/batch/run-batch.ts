import { availableParallelism } from "node:os";
import type { BatchEntry, Reportable } from "#report";
import { batchResult, batchText } from "#report";
import type { PostArguments } from "../commands/arguments.ts";
import { loadDialect } from "../dialects/load.ts";
import type { LoadedDialect } from "../dialects/loaded.ts";
import { exit, exitCode } from "../exit-code.ts";
import { closeInput } from "../files/input.ts";
import { resolveTarget } from "../files/target.ts";
import type { Staged } from "../files/staged.ts";
import { isCarried } from "../files/world.ts";
import { reportOptionsOf, show } from "../output.ts";
import { packagePlace } from "../package.ts";
import { prepareJob, programOptionsOf, refusedDialect, refusedResult, simulationOf } from "../prepare.ts";
import { produceAs, tidy } from "../produce.ts";
import type { Making, Running } from "../produce.ts";
import type { Work } from "../work/perform.ts";
import { performHere } from "../work/perform.ts";
import type { Plan, PostPlan, Progress, ProgramOptions } from "../work/plan.ts";
import { createProgressBar } from "../work/progress.ts";
import { tidyOnSignal } from "../work/signals.ts";
import { showFault } from "../trouble.ts";
import { jobFiles, protectedFiles } from "../work/sources.ts";
import type { Thread } from "../work/thread.ts";
import { startThread } from "../work/thread.ts";
import type { WantedProgram } from "./programs.ts";
import { refuseSingles, wantedPrograms } from "./programs.ts";

/**
 * `tapewright post` of several jobs, for several dialects, or both: each program is made, proved and written for itself, on
 * as many threads as there are processors. One that is refused does not stop the others. Gives the highest exit code.
 *
 * @throws a usage error
 */
export async function runBatch(args: PostArguments): Promise<number> {
  const inputs = [args.input, ...args.more];
  refuseSingles(inputs, args);
  const options = { program: programOptionsOf(args), simulate: simulationOf(args) };
  const { dialects, refused } = await loadDialects(args);
  if (dialects.length === 0)
    return show(batchResult(refused), reportOptionsOf(args), {
      ...noProgram,
      refusal: "no program was written.",
    });
  const wanted = wantedPrograms(inputs, dialects, args);
  const entries = [...refused, ...(await makeAll(wanted, args, options))];
  const code = Math.max(
    ...entries.map(({ result, fault }) => (fault === undefined ? exitCode(result) : exit.fault)),
  );
  show(batchResult(entries), reportOptionsOf(args), {
    programOnOutput: false,
    text: (_, layout) => batchText(entries, layout),
    findingsAreResult: true,
    tellsFindings: true,
    isReport: true,
    code,
  });
  for (const { fault } of entries) if (fault !== undefined) showFault(fault);
  return code;
}

/** Of a command without a single dialect. */
const noProgram = { programOnOutput: false, text: () => [], findingsAreResult: false };

/** What holds for every program. */
interface BatchOptions {
  readonly program: ProgramOptions;
  readonly simulate: PostPlan["simulate"];
}

/** The dialects that can be had, and an entry for each that cannot. */
async function loadDialects({
  dialects: names,
  noCache,
}: PostArguments): Promise<{ dialects: LoadedDialect[]; refused: BatchEntry[] }> {
  const dialects: LoadedDialect[] = [];
  const refused: BatchEntry[] = [];
  for (const name of names) {
    const loaded = await loadDialect(name, noCache !== true);
    if ("refused" in loaded) refused.push({ dialect: name, result: refusedDialect(loaded) });
    else dialects.push(loaded);
  }
  return { dialects, refused };
}

/** Makes the programs, each on the next thread that is free; the entries are in the order of the programs. */
async function makeAll(
  wanted: readonly WantedProgram[],
  args: PostArguments,
  options: BatchOptions,
): Promise<BatchEntry[]> {
  const threads = Math.min(availableParallelism(), wanted.length);
  const underWay = new Set<Running>();
  const entries: BatchEntry[] = [];
  const bar = createProgressBar("posting");
  const shares = wanted.map(() => 0);
  const shown = (index: number, share: number): void => {
    shares[index] = share;
    bar.show(
      shares.reduce((sum, one) => sum + one, 0),
      wanted.length,
    );
  };
  let next = 0;
  let ended = false;
  const workThrough = async (): Promise<void> => {
    const worker = createWorker();
    while (!ended && next < wanted.length) {
      const index = next++;
      const running: Running = {};
      underWay.add(running);
      const perform = (plan: Plan): Work => worker.perform(plan, (done, total) => shown(index, done / total));
      entries[index] = await makeOne(wanted[index], args, options, (making) =>
        produceAs(running, { ...making, perform }),
      );
      underWay.delete(running);
      shown(index, 1);
    }
    await worker.stop();
  };
  await tidyOnSignal(
    async () => {
      ended = true; // What was under way looks like a fault now; nothing may be begun in its place.
      await Promise.all([...underWay].map(tidy));
    },
    () => Promise.all(Array.from({ length: threads }, workThrough)),
  );
  bar.end();
  return entries;
}

async function makeOne(
  { input, dialect, output }: WantedProgram,
  args: PostArguments,
  options: BatchOptions,
  produce: (making: Omit<Making, "perform">) => Promise<Reportable>,
): Promise<BatchEntry> {
  const named = { job: input, dialect: dialect.dialect.name };
  try {
    const job = await prepareJob(input, args, options.program);
    if ("verdict" in job) return { ...named, result: job };
    try {
      const target = resolveTarget(output, protectedFiles(job, Object.values(dialect.paths)), "program");
      const planFor = (staged: Staged): PostPlan => ({
        kind: "post",
        dialect,
        job,
        simulate: options.simulate,
        staged,
      });
      return { ...named, result: await produce({ target, planFor }) };
    } finally {
      jobFiles(job).forEach(closeInput);
    }
  } catch (error) {
    if (isCarried(error)) return { ...named, result: refusedResult([error.finding]) };
    // A fault of ours with one program is told at the end; the others are not to suffer from it.
    return { ...named, result: refusedResult([]), fault: error };
  }
}

/** Who works on one plan after the other: a thread in the built command, this thread otherwise. */
interface Worker {
  perform(plan: Plan, progress: Progress): Work;
  stop(): Promise<void>;
}

function createWorker(): Worker {
  const { built } = packagePlace();
  let thread: Thread | undefined;
  const stop = async (): Promise<void> => {
    await thread?.stop();
    thread = undefined;
  };
  const perform = (plan: Plan, progress: Progress): Work => {
    if (!built) return { computed: performHere(plan), stop: () => Promise.resolve() };
    thread ??= startThread();
    const computed = thread.compute(plan, progress).catch(async (error: unknown) => {
      await stop(); // A thread with a fault has ended; the next program gets another one.
      throw error;
    });
    return { computed, stop };
  };
  return { perform, stop };
}
