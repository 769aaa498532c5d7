import type { Finding } from "#base";
import { nearest } from "#base";
import type { Dialect } from "#dialect";
import { loadEmitter } from "#emit";
import type { Reportable, SourceText, WhyAnswer } from "#report";
import { locate, placesOf, whyText } from "#report";
import type { Question, WhyInput } from "../why.ts";
import { why } from "../why.ts";
import type { WhyArguments } from "./commands/arguments.ts";
import { pathsOf } from "./dialects/loader.ts";
import { buildDialect } from "./dialects/own.ts";
import { refuseChanged } from "./files/input.ts";
import { isCarried } from "./files/world.ts";
import { reportOptionsOf, show } from "./output.ts";
import { prepareJob, programOptionsOf, refusedResult } from "./prepare.ts";
import { usageError } from "./usage.ts";
import { createDigest, jobInput } from "./work/compute.ts";
import { createDialectSources, jobFiles, jobSources } from "./work/sources.ts";

/** `tapewright why`: what shaped a line of the program that `post` would write. Gives the exit code; writes no file. */
export async function runWhy(args: WhyArguments): Promise<number> {
  const question = questionOf(args);
  const options = programOptionsOf(args);
  const { built, chain, findings } = await buildDialect(args.dialect, false, true);
  const sources = createDialectSources(pathsOf(chain));
  const reporting = reportOptionsOf(args);
  if (built === undefined) return show(refusedResult(findings, sources), reporting);
  const { dialect, emitterSource, keys } = built;
  try {
    const job = await prepareJob(args.input, args, options);
    if ("verdict" in job) return show(job, reporting);
    const emitter = await loadEmitter(emitterSource);
    const input = { dialect, emitter, keys, createDigest, question, ...jobInput(job) };
    const unknown = refuseKey(input);
    if (unknown !== undefined) return show(refusedResult([unknown]), reporting);
    const { outcome, answer } = why(input);
    jobFiles(job).forEach(refuseChanged);
    const all = jobSources(job, pathsOf(chain));
    if (answer === undefined) {
      const located = locate([...findings, ...outcome.findings], all, dialect);
      const summary = { ...outcome.summary, dialect: dialect.name };
      return show({ verdict: outcome.verdict, findings: located, summary }, reporting, refusal);
    }
    const missing = refusePast(question, answer, outcome.summary.steps ?? 0);
    if (missing !== undefined) return show(refusedResult([missing]), reporting);
    return showAnswer(answer, dialect, all("job", undefined)!, args);
  } catch (error) {
    if (!isCarried(error)) throw error;
    return show(refusedResult([error.finding]), reporting);
  }
}

const refusal = {
  programOnOutput: false,
  text: () => [],
  findingsAreResult: false,
  refusal: "there is no program to ask about.",
};

function questionOf({ line, step, key }: WhyArguments): Question {
  const asked: Question[] = [
    ...(line === undefined ? [] : [{ lines: [wholeNumber("--line", line)] }]),
    ...(step === undefined ? [] : [{ step: wholeNumber("--step", step) }]),
    ...(key === undefined ? [] : [{ key }]),
  ];
  if (asked.length !== 1) throw usageError("Say what to ask: one of --line N, --step N and --key K.");
  return asked[0];
}

function wholeNumber(option: string, text: string): number {
  const number = Number(text);
  if (/^[1-9][0-9]*$/.test(text) && Number.isSafeInteger(number)) return number;
  throw usageError(`${option} is a whole number from 1 on, and not ${text}.`);
}

/** A key that is none of the schema's, with the one that was probably meant. */
function refuseKey({ question, keys, dialect, emitter }: WhyInput): Finding | undefined {
  if (!("key" in question) || keys.knows(question.key)) return undefined;
  const near = nearest(question.key, [...(emitter.traceKeys ?? []), ...Object.keys(dialect.origins)]);
  const hint = near === undefined ? "" : ` Did you mean \`${near}\`?`;
  const message = `There is no key \`${question.key}\`.${hint}`;
  return {
    rule: "job/usage",
    severity: "error",
    message,
    fix: "`tapewright dialect show D` lists the keys of a dialect.",
  };
}

/** A line or step that the program does not have. */
function refusePast(question: Question, { lines, blocks }: WhyAnswer, steps: number): Finding | undefined {
  if ("key" in question || blocks.length > 0) return undefined;
  const message =
    "lines" in question
      ? `There is no line ${question.lines.join(", ")}: the program has ${lines} lines.`
      : `There is no step ${question.step}: the program has ${steps} steps.`;
  return { rule: "job/usage", severity: "error", message, fix: "Ask about one that it has." };
}

function showAnswer(answer: WhyAnswer, { name }: Dialect, job: SourceText, args: WhyArguments): number {
  const places = placesOf(answer.blocks, job);
  const blocks = answer.blocks.map(({ source: _, ...block }, index) => {
    const place = places[index];
    if (place === undefined) return block;
    const { file, line, column } = place;
    return { ...block, place: { file, line, column } };
  });
  const result: Reportable = {
    verdict: "proved",
    findings: [],
    summary: { assumptions: [], dialect: name, why: { ...answer, blocks } },
  };
  return show(result, reportOptionsOf(args), {
    programOnOutput: false,
    text: (_, layout) => whyText(answer, places, layout),
    findingsAreResult: true,
  });
}
