import type { Finding } from "#base";
import type { CaseResult, Means } from "#cases";
import { runCase } from "#cases";
import { loadEmitter } from "#emit";
import type { Reportable } from "#report";
import { locate } from "#report";
import type { CasesFile } from "./cases/load.ts";
import { loadCases } from "./cases/load.ts";
import { isToRewrite, rewrite } from "./cases/rewrite.ts";
import { casesText } from "./cases/text.ts";
import type { TestArguments } from "./commands/arguments.ts";
import { pathsOf } from "./dialects/loader.ts";
import { buildDialect } from "./dialects/own.ts";
import { shippedNames } from "./dialects/shipped.ts";
import { isCarried } from "./files/world.ts";
import { reportOptionsOf, show } from "./output.ts";
import { refusedResult } from "./prepare.ts";
import { usageError } from "./usage.ts";
import { createDialectSources, createTextSources } from "./work/sources.ts";

/** `tapewright dialect test`: runs the cases of a dialect, and rewrites what they expect with --update. Gives the exit code. */
export async function runTest(args: TestArguments): Promise<number> {
  if (args.update === true && shippedNames().includes(args.name))
    throw usageError("--update rewrites a file of yours; the cases of a shipped dialect stay as they are.");
  const { result, results } = await test(args);
  return show(result, reportOptionsOf(args), {
    programOnOutput: false,
    text: (shown, layout) => casesText(results, shown, layout),
    findingsAreResult: true,
  });
}

interface Tested {
  readonly result: Reportable;
  readonly results: readonly CaseResult[];
}

async function test(args: TestArguments): Promise<Tested> {
  const { built, chain, findings } = await buildDialect(args.name);
  const dialectSources = createDialectSources(pathsOf(chain));
  if (built === undefined) return { result: refusedResult(findings, dialectSources), results: [] };
  try {
    const said: Finding[] = [];
    const report = (finding: Finding): void => void said.push(finding);
    const files = await loadCases(args.name, built, report);
    const sources = createTextSources(
      Object.fromEntries(files.map(({ input, bytes }) => [input.file, bytes])),
    );
    if (said.length > 0) return { result: refusedResult(said, sources), results: [] };
    const emitter = await loadEmitter(built.emitterSource);
    const runs = files.map((file) => runFile(file, { dialect: built.dialect, emitter }));
    const results = runs.flatMap((run) => run.results);
    const found = runs.flatMap((run) => run.findings);
    const invalid = found.filter(({ rule }) => rule === "dialect/case");
    if (invalid.length > 0) return { result: refusedResult(invalid, sources), results: [] };
    const rewritten = args.update === true ? await rewriteAll(runs) : [];
    // What was rewritten is expected from now on.
    const left = runs.flatMap((run) =>
      rewritten.includes(run.file.input.file)
        ? run.findings.filter((finding) => !isSettled(finding, run))
        : run.findings,
    );
    const summary = {
      assumptions: [],
      dialect: built.dialect.name,
      cases: results.map(asReported),
      rewritten,
    };
    const located = locate([...findings, ...left], sources, built.dialect);
    return { result: { verdict: "read", findings: located, summary }, results };
  } catch (error) {
    if (!isCarried(error)) throw error;
    return { result: refusedResult([error.finding]), results: [] };
  }
}

/** The cases of one file, run. */
interface FileRun {
  readonly file: CasesFile;
  readonly results: readonly CaseResult[];
  readonly findings: readonly Finding[];
}

function runFile(file: CasesFile, means: Means): FileRun {
  const findings: Finding[] = [];
  const results = (file.cases ?? []).flatMap(
    (one) => runCase(one, file.input.file, means, (finding) => findings.push(finding)) ?? [],
  );
  return { file, results, findings };
}

async function rewriteAll(runs: readonly FileRun[]): Promise<string[]> {
  const rewritten: string[] = [];
  for (const { file, results } of runs) if (await rewrite(file, results)) rewritten.push(file.input.file);
  return rewritten;
}

/** Whether a finding is about blocks that have been rewritten. */
function isSettled({ rule, place }: Finding, { file, results }: FileRun): boolean {
  const index = (file.cases ?? []).findIndex(({ expectOffset }) => expectOffset === place?.offset);
  return rule === "block/case" && index >= 0 && isToRewrite(results[index]);
}

/** A result as the JSON report has it. */
function asReported({ name, passed, written, difference }: CaseResult): Readonly<Record<string, unknown>> {
  return { name, passed, written: written ?? null, difference: passed ? [] : difference };
}
