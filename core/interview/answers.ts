import type { KeyBook, PlainValue } from "#dialect";
import type { Choice, Detail, Question } from "./question.ts";
import { questions } from "./questions.ts";

/** The dialect that the answers start from. */
export interface Archetype {
  /** What `extends` says: a shipped name, or a file beside or below the one that is written. */
  readonly extends: string;
  readonly keys: KeyBook;
}

/** An answer with what else it says. */
export interface Answer {
  readonly choice: Choice;
  /** By the id of the detail, as it was typed. */
  readonly details: Readonly<Record<string, string>>;
}

/** Answers by the id of their question; one that is left as it is has none. */
export type Answers = ReadonlyMap<string, Answer>;

/** A key that an answer states. */
export interface AnsweredKey {
  readonly key: string;
  readonly value: PlainValue;
  readonly question: Question;
  readonly answer: Answer;
}

/** Whether a detail must be said: neither an answer before nor the dialect that is extended has anything in its place. */
export function isAsked({ unless }: Detail, archetype: Archetype, before: Answers): boolean {
  if (unless === undefined) return true;
  if (answeredKeys(before, archetype).some(({ key }) => key === unless)) return false;
  const { value } = archetype.keys.describe(unless);
  return value === undefined || value === "none";
}

/** What can be said to a question. */
export interface Offer {
  readonly choices: readonly { readonly choice: Choice; /** As it is already. */ readonly same: boolean }[];
  /** Whether leaving it as it is is an answer, and none of the choices says just that. */
  readonly keep: boolean;
}

/** What can be said to a question, given where the answers start from and the answers before. */
export function offerOf(question: Question, archetype: Archetype, before: Answers): Offer {
  const choices = question.choices
    .filter((choice) => clashOf(choice, archetype, before) === undefined)
    .map((choice) => ({ choice, same: isSame(choice, archetype) }));
  const keep = mayKeep(question, archetype) && !choices.some(({ same }) => same);
  return { choices, keep };
}

/** Why a choice cannot be made, in words; undefined where it can. */
export function clashOf({ clashes }: Choice, archetype: Archetype, before: Answers): string | undefined {
  if (clashes === undefined) return undefined;
  const { key, value, why } = clashes;
  const answered = answeredKeys(before, archetype).find((one) => one.key === key);
  const stands = answered === undefined ? archetype.keys.says(key, value) : answered.value === value;
  return stands ? why : undefined;
}

/** Whether a question may be left as it is. */
export function mayKeep({ notInherited }: Question, { keys }: Archetype): boolean {
  return notInherited === undefined || keys.describe(notInherited).value === undefined;
}

function isSame({ sets, asks }: Choice, { keys }: Archetype): boolean {
  return asks === undefined && Object.entries(sets).every(([key, value]) => keys.says(key, value));
}

/**
 * The keys that answers state, without those that the archetype has with the same value, in the order of the questions.
 *
 * Example: `spindle: start-first` from an archetype with the speed first and both in one block -> spindle.order alone.
 */
export function answeredKeys(answers: Answers, archetype: Archetype): AnsweredKey[] {
  const all = allKeys(answers, archetype);
  // Where one answer takes a whole group away, nothing in it is stated by another.
  const gone = all.filter(({ value }) => value === "none").map(({ key }) => `${key}.`);
  return all.filter(
    ({ key }, index) =>
      !gone.some((group) => key.startsWith(group)) && all.findIndex((one) => one.key === key) === index,
  );
}

/** Two answers that state one key otherwise; undefined: there are none. */
export function contradiction(
  answers: Answers,
  archetype: Archetype,
): readonly [AnsweredKey, AnsweredKey] | undefined {
  const all = allKeys(answers, archetype);
  for (const [index, later] of all.entries()) {
    const earlier = all.slice(0, index).find(({ key }) => key === later.key);
    if (earlier !== undefined && JSON.stringify(earlier.value) !== JSON.stringify(later.value))
      return [earlier, later];
  }
  return undefined;
}

/** What each answer states by itself, a key perhaps twice. */
function allKeys(answers: Answers, archetype: Archetype): AnsweredKey[] {
  return questions.flatMap((question) => {
    const answer = answers.get(question.id);
    return answer === undefined ? [] : keysOf(question, answer, archetype);
  });
}

function keysOf(question: Question, answer: Answer, { keys }: Archetype): AnsweredKey[] {
  const changed = (values: Readonly<Record<string, PlainValue>>): AnsweredKey[] =>
    Object.entries(values).flatMap(([key, given]) => {
      const value = filled(given, answer.details);
      return value === undefined || keys.says(key, value) ? [] : [{ key, value, question, answer }];
    });
  const set = changed(answer.choice.sets);
  if (set.length === 0) return [];
  const following = changed(answer.choice.with ?? {}).filter(({ key }) => !isInNone(key, keys));
  return [...set, ...following];
}

/** Whether a key lies in a group that the controller has not: `cycles.words.dwell-unit` where `cycles` is none. */
function isInNone(key: string, keys: KeyBook): boolean {
  const steps = key.split(".");
  return steps.slice(1).some((_, index) => keys.says(steps.slice(0, index + 1).join("."), "none"));
}

/** Details in their places; undefined where the value is a detail that was not asked for. */
function filled(value: PlainValue, details: Answer["details"]): PlainValue | undefined {
  if (typeof value === "object" && !Array.isArray(value)) {
    const entries = Object.entries(value).map(([key, inner]) => [key, filled(inner, details)]);
    return Object.fromEntries(entries) as PlainValue;
  }
  const id = typeof value === "string" ? /^<(.+)>$/.exec(value)?.[1] : undefined;
  if (id === undefined) return value;
  const detail = details[id];
  return detail !== undefined && /^\d+$/.test(detail) ? Number(detail) : detail;
}
