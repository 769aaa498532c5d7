import type { Finding } from "#base";
import type { Answers, AnswersFile } from "#interview";
import { openAnswers, readAnswers } from "#interview";
import type { Layout, Reportable } from "#report";
import { clean, hang, locate } from "#report";
import type { NewArguments } from "./commands/arguments.ts";
import { newDialectName, newDialectTarget } from "./dialects/new-file.ts";
import { shippedNames } from "./dialects/shipped.ts";
import { openInput, readWhole } from "./files/input.ts";
import { writeText } from "./files/write.ts";
import { putText } from "./files/put-text.ts";
import type { Target } from "./files/target.ts";
import { carry, fileFinding, isCarried } from "./files/world.ts";
import { openArchetype } from "./new/archetype.ts";
import type { Candidate, CandidateFile } from "./new/candidate.ts";
import { atAnswers, tryCandidate } from "./new/candidate.ts";
import { layoutOf, reportOptionsOf, show } from "./output.ts";
import { schemaAddress } from "./package.ts";
import { refusedResult } from "./prepare.ts";
import { usageError } from "./usage.ts";
import { createTextSources } from "./work/sources.ts";

/** `tapewright dialect new`: questions and answers in, a dialect file out. Gives the exit code. */
export async function runNew(args: NewArguments): Promise<number> {
  const result = await make(args);
  return show(result, reportOptionsOf(args), {
    programOnOutput: false,
    text: writtenText,
    findingsAreResult: false,
    refusal: "no dialect file was written.",
  });
}

const wayOut = "Name another file, or replace this one with --force.";

async function make(args: NewArguments): Promise<Reportable> {
  const name = newDialectName(args.file, "The file");
  if (args.answers === undefined) requireTerminal();
  try {
    const target = newDialectTarget(args.file, args.force === true, wayOut);
    const file: CandidateFile = { path: args.file, name, title: undefined, schema: schemaAddress(args.file) };
    return await (args.answers === undefined
      ? byQuestions(args, file, target)
      : byFile(args.answers, args.from, file, target));
  } catch (error) {
    if (!isCarried(error)) throw error;
    return refusedResult([error.finding]);
  }
}

function requireTerminal(): void {
  if (process.stdin.isTTY && process.stderr.isTTY) return;
  throw usageError(
    "Questions are asked at a terminal, and there is none: give the answers with --answers FILE; dialects/README.md has the questions and their words.",
  );
}

async function byFile(
  answersFile: string,
  from: string | undefined,
  file: CandidateFile,
  target: Target,
): Promise<Reportable> {
  const input = await openInput("answers", answersFile);
  const bytes = readWhole(input);
  const sources = createTextSources({ [input.file]: bytes });
  const findings: Finding[] = [];
  const report = (finding: Finding): void => void findings.push(finding);
  const opened = await openAnswers({ file: input.file, bytes }, report);
  if (opened === undefined) return refusedResult(findings, sources);
  const archetype = await openArchetype(startOf(opened, from), file.path);
  if ("verdict" in archetype) return archetype;
  const answers = readAnswers(opened, archetype, report);
  if (answers === undefined) return refusedResult(findings, sources);
  const candidate = await tryCandidate({ ...file, title: opened.title }, archetype, answers);
  if (candidate.refused) return refusedResult(atAnswers(candidate, opened, file.path), sources);
  return place(candidate, file, target);
}

function startOf(opened: AnswersFile, from: string | undefined): string {
  if (from !== undefined && opened.from !== undefined && from !== opened.from)
    throw usageError(`--from says ${from}, and the answers say \`from: ${opened.from}\`.`);
  const start = from ?? opened.from;
  if (start !== undefined) return start;
  const message = "Nothing says which dialect the answers start from.";
  const fix = `Give it with --from, or as \`from\` in the file. It can be ${shippedNames().join(", ")}, or a file.`;
  throw carry(fileFinding("dialect/answers", opened.file, message, fix));
}

async function byQuestions(args: NewArguments, file: CandidateFile, target: Target): Promise<Reportable> {
  const { interview } = await import("./new/interview.ts");
  try {
    const candidate = await interview(args.from, file, layoutOf(2, reportOptionsOf(args)));
    return "verdict" in candidate ? candidate : await place(candidate, file, target);
  } catch (error) {
    if (!(error instanceof Error) || error.name !== "ExitPromptError") throw error;
    // The prompt takes Ctrl-C for itself; the command ends by the signal all the same, as any other does.
    writeText(2, "\nStopped; nothing was written.\n");
    process.kill(process.pid, "SIGINT");
    return await new Promise<never>(() => undefined);
  }
}

/** Writes the file aside and puts it in its place when it is whole. */
async function place(candidate: Candidate, file: CandidateFile, target: Target): Promise<Reportable> {
  await putText(target, candidate.text);
  const sources = createTextSources({ [file.path]: new TextEncoder().encode(candidate.text) });
  return {
    verdict: "read",
    findings: locate(candidate.findings, sources),
    output: file.path,
    summary: {
      assumptions: [],
      dialect: file.name,
      extends: candidate.archetype.extends,
      keys: candidate.answered.map(({ key }) => key),
      answers: answersOf(candidate.answers),
    },
  };
}

/** The answers as a file of answers has them. */
function answersOf(answers: Answers): Record<string, unknown> {
  const said = [...answers].map(([id, { choice, details }]) => [
    id,
    Object.keys(details).length === 0 ? choice.id : { answer: choice.id, ...details },
  ]);
  return Object.fromEntries(said) as Record<string, unknown>;
}

function writtenText({ output = "", summary }: Reportable, { width, paint }: Layout): string[] {
  const keys = (summary.keys as readonly string[]).length;
  const differs =
    keys === 0 ? "states nothing else yet" : `states ${keys} key${keys === 1 ? "" : "s"} of its own`;
  const [first = "", ...rest] = hang(
    "written  ",
    clean(`${output}, which extends ${String(summary.extends)} and ${differs}`),
    width,
  );
  return [
    first.replace(/^written/, paint("good", "written")),
    ...rest,
    ...hang(
      "         ",
      `\`tapewright dialect check ${output}\` names what it takes over unread: see that it is true of your machine. Prove the first program out above the work, with a hand on feed hold.`,
      width,
    ),
  ];
}
