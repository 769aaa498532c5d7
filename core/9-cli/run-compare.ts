import type { Finding } from "#base";
import type { KeyDifference } from "#dialect";
import { compareDialects } from "#dialect";
import { loadEmitter } from "#emit";
import type {
  CompareAnswer,
  ComparedProgram,
  DifferenceKey,
  Located,
  ProgramTimes,
  Reportable,
  SourceText,
} from "#report";
import { comparePage, compareText, jsonFinding, locate, withJobPlaces } from "#report";
import type { CompareOutcome, TracedDialect, TriedDialect } from "../compare/index.ts";
import { compare } from "../compare/index.ts";
import type { CompareArguments } from "./commands/arguments.ts";
import { createFileLoader, pathsOf } from "./dialects/loader.ts";
import type { ChainFile } from "./dialects/loader.ts";
import { buildDialect } from "./dialects/own.ts";
import { exit } from "./exit-code.ts";
import { byteSource, refuseChanged } from "./files/input.ts";
import { putText } from "./files/put-text.ts";
import { protectedDialect, resolveTarget } from "./files/target.ts";
import type { Target } from "./files/target.ts";
import { isCarried } from "./files/world.ts";
import { reportOptionsOf, show } from "./output.ts";
import { prepareJob, programOptionsOf, refusedResult } from "./prepare.ts";
import { usageError } from "./usage.ts";
import { createDigest, jobInput } from "./work/compute.ts";
import type { PlannedJob } from "./work/plan.ts";
import { createDialectSources, jobFiles, jobSources, protectedFiles } from "./work/sources.ts";

/** Widest layout: two programs side by side. */
const widest = 160;

/** `tapewright compare`: one job under several dialects. Gives the exit code; writes no program. */
export async function runCompare(args: CompareArguments): Promise<number> {
  const options = programOptionsOf(args);
  refuseNames(args);
  const reporting = reportOptionsOf(args);
  const dialects = await openDialects(args.dialect);
  if ("verdict" in dialects) return show(dialects, reporting);
  try {
    const job = await prepareJob(args.input, args, options);
    if ("verdict" in job) return show(job, reporting);
    const target = args.output === undefined ? undefined : pageTarget(args.output, job, dialects);
    const outcome = compare({
      job: jobInput(job),
      dialects: dialects.map(({ traced }) => traced),
      differences: await differencesOf(dialects.map(({ name }) => name)),
    });
    jobFiles(job).forEach(refuseChanged);
    const told = tell(outcome, dialects, job);
    if (target !== undefined) await putText(target, await comparePage(told.answer));
    return showAnswer(told, dialects, args, target?.shown);
  } catch (error) {
    if (!isCarried(error)) throw error;
    return show(refusedResult([error.finding]), reporting);
  }
}

/** Fewer than two dialects, or one of them twice. */
function refuseNames({ dialect, output }: CompareArguments): void {
  if (dialect.length < 2)
    throw usageError("A comparison needs two dialects or more: state --dialect once for each.");
  const twice = dialect.find((name, index) => dialect.indexOf(name) !== index);
  if (twice !== undefined)
    throw usageError(`The dialect ${twice} is stated twice; a comparison needs two that differ.`);
  if (output !== undefined && !/\.html?$/i.test(output))
    throw usageError(`--output is the name of a page, such as plate.html, and not ${output}.`);
}

/** A dialect of the comparison. */
interface OpenDialect {
  /** As the command line has it. */
  readonly name: string;
  readonly traced: TracedDialect;
  readonly chain: readonly ChainFile[];
  readonly findings: readonly Finding[];
}

/** All dialects, or why one of them cannot be had. */
async function openDialects(names: readonly string[]): Promise<OpenDialect[] | Reportable> {
  const open: OpenDialect[] = [];
  for (const name of names) {
    const { built, chain, findings } = await buildDialect(name, false, true);
    if (built === undefined) return refusedResult(findings, createDialectSources(pathsOf(chain)));
    const { dialect, emitterSource, keys } = built;
    const same = open.find(({ chain: other }) => isOneFile(other[0].path, chain[0].path));
    if (same !== undefined)
      throw usageError(`${same.name} and ${name} are one dialect; a comparison needs two that differ.`);
    const traced = { dialect, emitter: await loadEmitter(emitterSource), createDigest, keys };
    open.push({ name, traced, chain, findings });
  }
  return open;
}

/** Whether two paths lead to one file. */
function isOneFile(one: string, other: string): boolean {
  const [a, b] = [one, other].map((path) => protectedDialect([path]).at(0)?.identity);
  return a !== undefined && a.inode === b?.inode && a.device === b.device;
}

/** The keys about which any two differ, each pair with loaders of its own. */
async function differencesOf(
  names: readonly string[],
): Promise<(first: number, second: number) => readonly KeyDifference[]> {
  const found = new Map<string, readonly KeyDifference[]>();
  for (let first = 0; first < names.length; first++)
    for (let second = first + 1; second < names.length; second++) {
      const loaders = [createFileLoader(), createFileLoader()] as const;
      const differences = await compareDialects([names[first], names[second]], loaders, () => undefined);
      found.set(`${first} ${second}`, differences ?? []);
    }
  return (first, second) => found.get(`${first} ${second}`) ?? [];
}

function pageTarget(output: string, job: PlannedJob, dialects: readonly OpenDialect[]): Target {
  const paths = dialects.flatMap(({ chain }) => chain.map(({ path }) => path));
  return resolveTarget(output, protectedFiles(job, paths), "page");
}

/** The answer, and the findings of all dialects. */
interface Told {
  readonly answer: CompareAnswer;
  readonly findings: readonly Located[];
}

function tell({ tried, pairs }: CompareOutcome, dialects: readonly OpenDialect[], job: PlannedJob): Told {
  const told = new Set<string>();
  const located = tried.map(({ outcome }, index) => {
    const { chain, findings, traced } = dialects[index];
    const own = outcome.findings.filter((finding) => isNew(finding, told));
    return locate([...findings, ...own], jobSources(job, pathsOf(chain)), traced.dialect);
  });
  const programs = tried.map((one, index) => {
    const times = pairs.flatMap(({ of, times }) => (of.includes(index) ? [times[of.indexOf(index)]] : []));
    return programOf(one, dialects[index], located[index], times.at(0));
  });
  const text: SourceText = { file: job.input.file, bytes: byteSource(job.input) };
  return { answer: withJobPlaces({ job: text.file, programs, pairs }, text), findings: located.flat() };
}

/** What is odd in the job is odd under each dialect: it is told with the first. What keeps a job from being posted is told with each. */
function isNew({ rule, severity, message, place }: Finding, told: Set<string>): boolean {
  if (!rule.startsWith("job/") || severity === "error") return true;
  const key = JSON.stringify([rule, message, place]);
  if (told.has(key)) return false;
  told.add(key);
  return true;
}

function programOf(
  { outcome, lines }: TriedDialect,
  { traced }: OpenDialect,
  findings: readonly Located[],
  times: ProgramTimes | undefined,
): ComparedProgram {
  const { name, title, files } = traced.dialect;
  const { bytes, steps, assumptions } = outcome.summary;
  const common = { name, title, files, findings };
  if (outcome.proof === undefined || lines === undefined) return { ...common, verdict: "refused" };
  return {
    ...common,
    verdict: "proved",
    lines,
    ...(bytes === undefined ? {} : { bytes }),
    ...(steps === undefined ? {} : { steps }),
    ...(times === undefined ? {} : { times }),
    assumptions,
  };
}

function showAnswer(
  { answer, findings }: Told,
  dialects: readonly OpenDialect[],
  args: CompareArguments,
  page: string | undefined,
): number {
  const proved = answer.programs.filter(({ verdict }) => verdict === "proved").length;
  const result: Reportable = {
    verdict: proved === dialects.length ? "proved" : "refused",
    findings,
    ...(page === undefined ? {} : { output: page }),
    summary: { assumptions: [], compare: plainAnswer(answer) },
  };
  return show(result, reportOptionsOf(args), {
    programOnOutput: page === "standard output",
    text: (_, layout) => compareText(answer, page, layout),
    findingsAreResult: true,
    tellsFindings: true,
    widest,
    // A dialect that cannot post what another can is what was asked about, whatever the rule is that says so.
    ...(proved > 0 && proved < dialects.length ? { code: exit.findings } : {}),
  });
}

/** The answer for the JSON report: the listing side by side is for readers of the page. */
function plainAnswer({ job, programs, pairs }: CompareAnswer): unknown {
  return {
    job,
    programs: programs.map((program) => ({ ...program, findings: program.findings.map(jsonFinding) })),
    pairs: pairs.map(({ listing: _listing, unlisted: _unlisted, ...pair }) => ({
      ...pair,
      groups: pair.groups.map((group) => ({ ...group, keys: group.keys.map(plainKey) })),
    })),
  };
}

/** A value that no file states is null: JSON leaves out what is undefined. */
function plainKey({ key, first, second }: DifferenceKey): unknown {
  return { key, first: first ?? null, second: second ?? null };
}
