import type { Finding } from "#base";
import { studyDialect } from "#dialect";
import type { StudiedDialect } from "#dialect";
import type { Answer, Answers, Archetype, Choice, Question } from "#interview";
import { answeredKeys, questions, sampleJob, sampleOf, writeDialect } from "#interview";
import { generateEmitter, loadEmitter } from "#emit";
import { postText } from "../../core/index.ts";
import { dialectLoader } from "../support/dialects.ts";

const file = "trial.dialect.yaml";

/** The shipped dialect of a name, to start answers from. */
export async function archetypeOf(name: string): Promise<Archetype> {
  const studied = await studyDialect(name, dialectLoader(), () => undefined);
  if (studied === undefined) throw new Error(`${name} is refused`);
  return { extends: name, keys: studied.keys };
}

/** An answer with the example of each detail. */
export function answerOf(choice: Choice): Answer {
  const details = (choice.asks ?? []).map(({ id, example }) => [id, example] as const);
  return { choice, details: Object.fromEntries(details) };
}

/** Answers to questions that may not be left as they are: the program waits for a signal. */
export function neededAnswers({ keys }: Archetype): Map<string, Answer> {
  const needed = questions.filter(
    ({ notInherited }) => notInherited !== undefined && keys.describe(notInherited).value !== undefined,
  );
  return new Map(needed.map((question) => [question.id, answerOf(choiceOf(question, "wait"))]));
}

export function choiceOf({ id, choices }: Question, name: string): Choice {
  const found = choices.find((choice) => choice.id === name);
  if (found === undefined) throw new Error(`${id} has no choice ${name}`);
  return found;
}

/** A file as it is written for answers, and what came of checking it. */
export interface Drafted {
  readonly text: string;
  readonly findings: readonly Finding[];
  readonly studied: StudiedDialect | undefined;
}

/** The text of a file as it is written for answers. */
export function textOf(answers: Answers, archetype: Archetype): Promise<string> {
  const file = { name: "trial", title: "A trial", schema: "schemas/dialect.schema.json" };
  return writeDialect(file, archetype, answeredKeys(answers, archetype));
}

export async function draft(answers: Answers, archetype: Archetype): Promise<Drafted> {
  const text = await textOf(answers, archetype);
  const findings: Finding[] = [];
  const loader = dialectLoader({ [file]: text });
  const studied = await studyDialect(file, loader, (finding) => findings.push(finding), true);
  return { text, findings, studied };
}

/** The sample of each question that a dialect gives; posted, and so proved. */
export async function samplesOf({ studied }: Drafted): Promise<Record<string, string[]>> {
  if (studied === undefined) throw new Error("refused");
  const { dialect } = studied;
  const emitter = await loadEmitter(generateEmitter(dialect.format, { traced: false }));
  const { outcome, program } = postText({ job: sampleJob }, { dialect, emitter });
  if (program === undefined)
    throw new Error(outcome.findings.map(({ rule, message }) => `${rule}: ${message}`).join("\n"));
  return Object.fromEntries(questions.map(({ id, moment }) => [id, sampleOf(program, dialect, moment)]));
}
