import { input, select } from "@inquirer/prompts";
import type { Answer, Archetype, Choice, Detail, Question } from "#interview";
import { isAsked, keep, offerOf, questions, sampleOf, whatIsWrong } from "#interview";
import type { Layout, Reportable } from "#report";
import { clean, findingsText, hang, locate, wrap } from "#report";
import { shippedTitles } from "../dialects/titles.ts";
import { writeText } from "../files/write.ts";
import { createTextSources } from "../work/sources.ts";
import { openArchetype } from "./archetype.ts";
import type { Candidate, CandidateFile } from "./candidate.ts";
import { tryCandidate } from "./candidate.ts";

/** Questions go to standard error: standard output has the result alone. */
const context = { output: process.stderr };

/** Choices that are shown at once. */
const pageSize = 12;

const indent = "           ";

/**
 * Asks every question at the terminal, and shows five blocks of the sample job after each answer.
 *
 * @param from the dialect to start from; undefined: it is the first question
 * @returns what is to be written, or why the dialect to start from cannot be had
 * @throws inquirer's ExitPromptError when the user leaves
 */
export async function interview(
  from: string | undefined,
  file: CandidateFile,
  layout: Layout,
): Promise<Candidate | Reportable> {
  say(wrap(introduction(file.path), layout.width));
  const archetype = await openArchetype(from ?? (await askArchetype(layout)), file.path);
  if ("verdict" in archetype) return archetype;
  const answers = new Map<string, Answer>();
  let candidate = await tryCandidate(file, archetype, answers);
  for (const [index, question] of questions.entries()) {
    const number = `${String(index + 1)}/${String(questions.length)}`;
    candidate = await askUntilSound({ question, number, file, archetype, answers, candidate }, layout);
  }
  return candidate;
}

function introduction(path: string): string {
  return `${path}: ${String(questions.length)} questions about your controller. After each answer stand five blocks of a small job as the file would write them. Ctrl-C stops, and leaves nothing.`;
}

async function askArchetype(layout: Layout): Promise<string> {
  const titles = await shippedTitles();
  return select(
    {
      message: "Which of these comes nearest to your controller?",
      choices: titles.map(({ name, title }) => ({
        value: name,
        name: fitted(`${name.padEnd(16)} ${title}`, layout),
        short: name,
      })),
      pageSize,
      loop: false,
    },
    context,
  );
}

/** What a question is asked with. */
interface Asking {
  readonly question: Question;
  /** "3/14" */
  readonly number: string;
  readonly file: CandidateFile;
  readonly archetype: Archetype;
  /** The answers so far; the new one joins them. */
  readonly answers: Map<string, Answer>;
  readonly candidate: Candidate;
}

/** Asks a question until the dialect holds together with its answer, and shows the sample. */
async function askUntilSound(asking: Asking, layout: Layout): Promise<Candidate> {
  const { question, archetype, answers, file } = asking;
  const offer = offerOf(question, archetype, answers);
  // With one answer there is nothing to ask.
  if (offer.choices.length + (offer.keep ? 1 : 0) < 2) return asking.candidate;
  for (;;) {
    const choice = await askChoice(asking, layout);
    answers.delete(question.id);
    if (choice !== keep)
      answers.set(question.id, { choice, details: await askDetails(choice, asking, layout) });
    const candidate = await tryCandidate(file, archetype, answers);
    if (!candidate.refused) {
      say(sampleText(candidate, question, layout));
      return candidate;
    }
    answers.delete(question.id);
    const sources = createTextSources({ [file.path]: new TextEncoder().encode(candidate.text) });
    say([...findingsText(locate(candidate.findings, sources), layout), "That does not go together:"]);
  }
}

async function askChoice(
  { question, number, archetype, answers }: Asking,
  layout: Layout,
): Promise<Choice | typeof keep> {
  const { choices, keep: kept } = offerOf(question, archetype, answers);
  const found = choices.map(({ choice, same }) => ({
    value: choice.id,
    name: fitted(same ? `${choice.words}${asItIs}` : choice.words, layout),
    short: chosenText(choice.words),
  }));
  const name = fitted(`leave it as ${archetype.extends} has it${stated(question, archetype)}`, layout);
  const left = { value: keep, name, short: chosenText("left as it is") };
  const chosen = await select(
    {
      message: messageText(`${number} ${question.ask}`, layout),
      choices: kept ? [left, ...found] : found,
      default: choices.find(({ same }) => same)?.choice.id ?? (kept ? keep : found[0].value),
      pageSize,
      loop: false,
    },
    context,
  );
  return question.choices.find(({ id }) => id === chosen) ?? keep;
}

async function askDetails(
  choice: Choice,
  { archetype, answers }: Asking,
  layout: Layout,
): Promise<Record<string, string>> {
  const details: Record<string, string> = {};
  for (const detail of choice.asks ?? [])
    if (isAsked(detail, archetype, answers)) details[detail.id] = await askDetail(detail, layout);
  return details;
}

async function askDetail(detail: Detail, layout: Layout): Promise<string> {
  const { usual, example, ask } = detail;
  const said = await input(
    {
      message: messageText(usual === undefined ? `${ask} (for instance ${example})` : ask, layout),
      ...(usual === undefined ? {} : { default: usual }),
      validate: (text) => {
        const wrong = whatIsWrong(detail, text);
        return wrong === undefined ? true : wrong.replace(/^it/, "It");
      },
    },
    context,
  );
  return said.trim();
}

function sampleText({ sample, findings }: Candidate, { moment }: Question, layout: Layout): string[] {
  if (sample === undefined) {
    const reason = findings.find(({ rule }) => rule === "dialect/sample")?.message ?? "";
    return [...hang(indent, reason, layout.width), ""];
  }
  const blocks = sampleOf(sample.program, sample.dialect, moment);
  return [...blocks.map((block) => indent + layout.paint("label", clean(block))), ""];
}

/** Behind a choice that the dialect to start from has made already. */
const asItIs = " (as it is)";

/** What the dialect to start from states, where that is short: ": { dwell: 20 s }" */
function stated({ choices }: Question, { keys }: Archetype): string {
  const [key] = Object.keys(choices[0]?.sets ?? {});
  const { value } = keys.describe(key ?? "");
  return value === undefined || value.length > 36 ? "" : `: ${value}`;
}

/** A question, broken between words; the prompt itself would break it anywhere. Two columns are the prompt's mark. */
function messageText(text: string, { width }: Layout): string {
  return wrap(text, width - 3).join("\n  ");
}

/** What was chosen, below its question. */
function chosenText(words: string): string {
  return `\n  ${words}`;
}

/** A choice stands on one line, behind the two columns of the mark. */
function fitted(text: string, { width }: Layout): string {
  const room = width - 3;
  return text.length <= room ? text : `${text.slice(0, room - 3)}...`;
}

function say(lines: readonly string[]): void {
  writeText(2, `${lines.join("\n")}\n`);
}
