import { chooseOperations } from "#job";
import type { Operation } from "#job";
import type { Finding } from "#base";
import type { Proof } from "#prove";
import type { Layout, Reportable } from "#report";
import { clean, programText } from "#report";
import { openInput } from "#retrace";
import { takeSpares } from "#spares";
import type { PostArguments } from "./commands/arguments.ts";
import { loadDialect } from "./dialects/load.ts";
import type { LoadedDialect } from "./dialects/loaded.ts";
import { byteSource, closeInput, standardStream } from "./files/input.ts";
import { abandon, commit, discard, stage } from "./files/staged.ts";
import type { Staged } from "./files/staged.ts";
import { programBeside, resolveTarget, withMark } from "./files/target.ts";
import { isCarried } from "./files/world.ts";
import { prepareJob, programOptionsOf, refusedDialect, refusedResult, simulationOf } from "./prepare.ts";
import { readingOf } from "./reading.ts";
import { usageError } from "./usage.ts";
import type { PlannedJob, PostPlan } from "./work/plan.ts";
import { perform } from "./work/perform.ts";
import type { Work } from "./work/perform.ts";
import { createProgressBar } from "./work/progress.ts";
import { pendingSignals, tidyOnSignal } from "./work/signals.ts";
import { jobFiles, jobSources, protectedFiles } from "./work/sources.ts";

/** One of the programs: the operations that follow on one another with one tool. */
interface Part {
  readonly tool: number;
  readonly ids: readonly string[];
  /** "t5", and "t5-2" where that tool comes for the second time. */
  readonly mark: string;
}

/** A part that is being made, or was. */
interface Made extends Part {
  readonly staged: Staged;
  readonly result: Reportable;
  readonly proof: Proof | undefined;
}

/**
 * `tapewright post --split tool`: a program for each tool, in the order of the job; a tool that comes again gets a program of its
 * own again, since what lies between may need what it does. No file is written unless all are proved.
 */
export async function postSplit(args: PostArguments): Promise<Reportable> {
  const options = programOptionsOf(args);
  const simulate = simulationOf(args);
  if (args.watch === true)
    throw usageError("--split makes several programs, and --watch shows the changes of one.");
  if (options.spindleHolds !== undefined)
    throw usageError(
      "--spindle-holds is true of the first program of --split alone: state it where you post that one.",
    );
  if (args.output === standardStream || args.input === standardStream)
    throw usageError("--split makes several programs, which need files of their own: name --output FILE.");
  const loaded = await loadDialect(args.dialect, args.noCache !== true);
  if ("refused" in loaded) return refusedDialect(loaded);
  if (loaded.dialect.machine.swap === "rack")
    throw usageError(
      "--split is for machines whose tools are put in by hand: with a rack each program would have to begin with the rack and spindle as the one before leaves them.",
    );
  try {
    const job = await prepareJob(args.input, args, options);
    if ("verdict" in job) return job;
    try {
      const parts = partsOf(job);
      return "verdict" in parts ? parts : await makeAll({ args, dialect: loaded, job, simulate }, parts);
    } finally {
      jobFiles(job).forEach(closeInput);
    }
  } catch (error) {
    if (!isCarried(error)) throw error;
    return refusedResult([error.finding]);
  }
}

/** The programs that a job falls into, or why it cannot be read. */
function partsOf(job: PlannedJob): readonly Part[] | Reportable {
  const findings: Finding[] = [];
  const report = (finding: Finding): void => void findings.push(finding);
  const stated = openInput(byteSource(job.input), readingOf(job.reading), report);
  const opened = stated && takeSpares(stated);
  const { only, from } = job.options;
  const choice = { ...(only === undefined ? {} : { only }), ...(from === undefined ? {} : { from }) };
  const operations = opened && chooseOperations(opened.job, choice, report);
  if (operations && !findings.some(({ severity }) => severity === "error")) return runsOf(operations);
  return refusedResult(findings, jobSources(job));
}

function runsOf(operations: readonly Operation[]): Part[] {
  const runs: { readonly tool: number; readonly ids: string[] }[] = [];
  for (const { id, tool } of operations) {
    const last = runs.at(-1);
    if (last?.tool === tool) last.ids.push(id);
    else runs.push({ tool, ids: [id] });
  }
  return runs.map(({ tool, ids }, index) => {
    const before = runs.slice(0, index).filter((run) => run.tool === tool).length;
    return { tool, ids, mark: `t${String(tool)}${before === 0 ? "" : `-${String(before + 1)}`}` };
  });
}

/** What all parts have in common. */
interface Splitting {
  readonly args: PostArguments;
  readonly dialect: LoadedDialect;
  readonly job: PlannedJob;
  readonly simulate: PostPlan["simulate"];
}

/** Makes the parts one after the other, and releases them together. */
async function makeAll(
  { args, dialect, job, simulate }: Splitting,
  parts: readonly Part[],
): Promise<Reportable> {
  const staged: Staged[] = [];
  const running: { work?: Work } = {};
  const tidy = async (): Promise<void> => {
    await running.work?.stop();
    staged.forEach(discard);
  };
  return tidyOnSignal(tidy, async () => {
    const made: Made[] = [];
    try {
      for (const part of parts) {
        const target = resolveTarget(
          fileOf(args, dialect, job, part),
          protectedFiles(job, Object.values(dialect.paths)),
          "program",
        );
        const file = stage(target);
        staged.push(file);
        const bar = createProgressBar(`posting ${part.mark}`);
        const options = { ...job.options, only: part.ids, from: undefined };
        const work = perform(
          { kind: "post", dialect, job: { ...job, options }, simulate, staged: file },
          bar.show,
        );
        running.work = work;
        const { result, proof } = await work.computed;
        bar.end();
        made.push({ ...part, staged: file, result, proof });
        if (proof === undefined || result.verdict !== "proved") return refused(made);
      }
      await pendingSignals();
      for (const { staged: file, proof } of made) if (proof) commit(file, proof);
      staged.length = 0;
      return joined(made);
    } finally {
      staged.forEach(abandon);
    }
  });
}

function fileOf(args: PostArguments, dialect: LoadedDialect, job: PlannedJob, { mark }: Part): string {
  const own =
    args.output ??
    programBeside(args.input, dialect.dialect.format.extension, job.options.airCut !== undefined);
  return withMark(own, mark);
}

/** The findings of the part that failed: the others would only hide them. */
function refused(made: readonly Made[]): Reportable {
  const last = made[made.length - 1];
  return { ...last.result, summary: { ...last.result.summary, part: last.mark } };
}

/** All programs in one result; each has its file, its operations and its proof. */
function joined(made: readonly Made[]): Reportable {
  const [first] = made;
  const sum = (key: "bytes" | "moves" | "steps"): number =>
    made.reduce((total, { result }) => total + (result.summary[key] ?? 0), 0);
  const seen = new Set<string>();
  const findings = made.flatMap(({ result }) =>
    result.findings.filter((finding) => {
      const text = `${finding.rule} ${finding.message} ${String(finding.line)}`;
      const isNew = !seen.has(text);
      seen.add(text);
      return isNew;
    }),
  );
  const { units, dialect } = first.result.summary;
  return {
    verdict: "proved",
    findings,
    summary: {
      ...(units === undefined ? {} : { units }),
      ...(dialect === undefined ? {} : { dialect }),
      bytes: sum("bytes"),
      moves: sum("moves"),
      steps: sum("steps"),
      tools: [...new Set(made.map(({ tool }) => tool))],
      assumptions: [...ofAll(made), "Each program takes for granted what stands at its head."],
      files: made.map(({ staged, tool, ids, result, proof }) => ({
        output: staged.target.shown,
        tool,
        only: ids,
        time: result.summary.time,
        proof,
      })),
    },
  };
}

/** What all programs take for granted. */
function ofAll(made: readonly Made[]): string[] {
  const [first, ...others] = made.map(({ result }) => result.summary.assumptions);
  return first.filter((text) => others.every((texts) => texts.includes(text)));
}

/** What is said of several programs: each with its operations, then what holds for all. */
export function splitText(result: Reportable, layout: Layout): string[] {
  const files = result.summary["files"] as readonly { output: string; only: readonly string[] }[];
  const lines = files.flatMap(({ output, only }) => [
    clean(output),
    `           prove it with --only ${clean(only.join(","))}`,
  ]);
  const [, ...rest] = programText(result, layout);
  return [
    `${layout.paint("label", "programs".padEnd(11))}${String(files.length)}, one a tool`,
    ...lines,
    ...rest,
  ];
}
