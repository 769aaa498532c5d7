import type { Finding, Report } from "#base";
import { nearest } from "#base";
import type { DialectFile, TreeNode } from "#dialect";
import { readYaml } from "#dialect";
import type { Answer, Answers, Archetype } from "./answers.ts";
import { clashOf, contradiction, isAsked, mayKeep } from "./answers.ts";
import { whatIsWrong } from "./detail.ts";
import type { Choice, Detail, Question } from "./question.ts";
import { keep } from "./question.ts";
import { questions } from "./questions.ts";

/** Answers as a file gives them. */
export interface AnswersFile {
  readonly file: string;
  /** What the file says to start from; undefined where it does not. */
  readonly from: string | undefined;
  readonly title: string | undefined;
  readonly entries: ReadonlyMap<string, TreeNode>;
  /** Byte offset of `from`. */
  readonly fromAt: number;
}

/** Keys of an answers file beside the questions. */
const others = ["from", "title"] as const;

/**
 * Opens a file of answers (YAML) and checks its keys; what each says is read by `readAnswers`.
 *
 * @returns undefined after a finding: dialect/answers, or what YAML itself gave
 */
export async function openAnswers(found: DialectFile, report: Report): Promise<AnswersFile | undefined> {
  const tree = await readYaml(found, report);
  if (tree === undefined) return undefined;
  const fail = failing(found.file, report);
  if (tree.kind !== "mapping")
    return (fail(tree, "Answers are a mapping, a question on each line: `spindle: start-first`."), undefined);
  const known = [...others, ...questions.map(({ id }) => id)];
  for (const [key, node] of tree.entries)
    if (!known.includes(key))
      fail(node, `There is no question \`${key}\`.${meant(key, known)}`, offered(known));
  const from = textOf("from", tree.entries.get("from"), fail);
  const title = textOf("title", tree.entries.get("title"), fail);
  if (fail.failed()) return undefined;
  const fromAt = tree.entries.get("from")?.origin.offset ?? 0;
  return { file: found.file, from, title, entries: tree.entries, fromAt };
}

/** What the answers say, given where they start from; undefined after findings, rule dialect/answers. */
export function readAnswers(
  { file, entries }: AnswersFile,
  archetype: Archetype,
  report: Report,
): Answers | undefined {
  const fail = failing(file, report);
  const answers = new Map<string, Answer>();
  for (const question of questions) {
    const node = entries.get(question.id);
    const answer =
      node === undefined ? keep : readAnswer(question, node, { archetype, before: answers }, fail);
    if (answer === keep) refuseKeeping(question, node, archetype, fail);
    else if (answer !== undefined) answers.set(question.id, answer);
  }
  if (!fail.failed()) refuseContradiction(answers, entries, archetype, fail);
  return fail.failed() ? undefined : answers;
}

/** Two answers may both need a key, such as the block that waits; then they must say the same. */
function refuseContradiction(
  answers: Answers,
  entries: AnswersFile["entries"],
  archetype: Archetype,
  fail: Fail,
): void {
  const found = contradiction(answers, archetype);
  if (found === undefined) return;
  const [earlier, later] = found;
  const message = `\`${later.question.id}\` makes \`${later.key}\` ${JSON.stringify(later.value)}, and \`${earlier.question.id}\` makes it ${JSON.stringify(earlier.value)}.`;
  fail(entries.get(later.question.id), message, "Say the same in both, or leave it out of the second.");
}

function refuseKeeping(
  question: Question,
  node: TreeNode | undefined,
  archetype: Archetype,
  fail: Fail,
): void {
  if (mayKeep(question, archetype)) return;
  const said = archetype.keys.describe(question.notInherited ?? "").value ?? "";
  const message = `\`${question.id}\` must be answered: ${archetype.extends} trusts the controller (${said}), which is not taken over unread.`;
  fail(node, message, offered(question.choices.map(({ id }) => id)));
}

type Read = Answer | typeof keep | undefined;

/** `start-first`, or `{ answer: wait, input: 4, timeout: 10 s }`. */
function readAnswer(
  question: Question,
  node: TreeNode,
  { archetype, before }: { readonly archetype: Archetype; readonly before: Answers },
  fail: Fail,
): Read {
  const given = node.kind === "mapping" ? node.entries.get("answer") : node;
  const fix = offered([...question.choices.map(({ id }) => id), keep]);
  if (given?.kind !== "scalar") {
    fail(
      given ?? node,
      `\`${question.id}\` is answered with a word, or with \`{ answer: WORD, ... }\`.`,
      fix,
    );
    return undefined;
  }
  const word = String(given.value);
  const choice = question.choices.find(({ id }) => id === word);
  if (choice === undefined && word !== keep) {
    const near = meant(word, [...question.choices.map(({ id }) => id), keep]);
    fail(given, `\`${word}\` is no answer to \`${question.id}\`: ${question.ask}${near}`, fix);
    return undefined;
  }
  const clash = choice && clashOf(choice, archetype, before);
  if (clash !== undefined)
    fail(given, `\`${word}\` cannot be the answer to \`${question.id}\` here: ${clash}.`, fix);
  const more = node.kind === "mapping" ? node.entries : new Map<string, TreeNode>();
  const details = readDetails(question, choice, { node, more, before }, archetype, fail);
  return choice === undefined ? keep : { choice, details };
}

/** An answer of a file, and what stands in it. */
interface Given {
  readonly node: TreeNode;
  readonly more: ReadonlyMap<string, TreeNode>;
  /** The answers before it. */
  readonly before: Answers;
}

function readDetails(
  question: Question,
  choice: Choice | undefined,
  { node, more, before }: Given,
  archetype: Archetype,
  fail: Fail,
): Record<string, string> {
  const asks = choice?.asks ?? [];
  const known = ["answer", ...asks.map(({ id }) => id)];
  for (const [key, inner] of more)
    if (!known.includes(key))
      fail(
        inner,
        `\`${question.id}\` has nothing called \`${key}\` here.${meant(key, known)}`,
        offered(known),
      );
  const details: Record<string, string> = {};
  for (const detail of asks) {
    const value = readDetail(question, detail, more.get(detail.id), fail);
    if (value !== undefined) details[detail.id] = value;
    else if (!more.has(detail.id) && isAsked(detail, archetype, before)) {
      const example = `${question.id}: { answer: ${choice?.id ?? ""}, ${detail.id}: ${quoted(detail.example)} }`;
      fail(
        node,
        `\`${question.id}\` must say \`${detail.id}\`: ${detail.ask}`,
        `For instance \`${example}\`.`,
      );
    }
  }
  return details;
}

function readDetail(
  { id }: Question,
  detail: Detail,
  node: TreeNode | undefined,
  fail: Fail,
): string | undefined {
  if (node === undefined) return undefined;
  const text = node.kind === "scalar" ? node.source.trim() : "";
  const wrong = whatIsWrong(detail, node.kind === "scalar" ? String(node.value) : "");
  if (wrong !== undefined) fail(node, `\`${id}.${detail.id}\` is \`${text}\`; ${wrong}.`);
  return wrong === undefined && node.kind === "scalar" ? String(node.value) : "";
}

function textOf(key: string, node: TreeNode | undefined, fail: Fail): string | undefined {
  if (node === undefined) return undefined;
  if (node.kind === "scalar" && node.value !== null && String(node.value) !== "") return String(node.value);
  fail(node, `\`${key}\` is a text.`);
  return undefined;
}

/** Reports what is wrong with a node of the file. */
type Fail = ((node: TreeNode | undefined, message: string, fix?: string) => void) & { failed: () => boolean };

function failing(file: string, report: Report): Fail {
  const count = { findings: 0 };
  const fail = (node: TreeNode | undefined, message: string, fix?: string): void => {
    count.findings++;
    const place = { source: "dialect", file, offset: node?.origin.offset ?? 0 } as const;
    const finding: Finding = { rule: "dialect/answers", severity: "error", message, place };
    report(fix === undefined ? finding : { ...finding, fix });
  };
  return Object.assign(fail, { failed: () => count.findings > 0 });
}

function meant(word: string, known: readonly string[]): string {
  const near = nearest(word, known);
  return near === undefined ? "" : ` Did you mean \`${near}\`?`;
}

function offered(words: readonly string[]): string {
  return `It can be ${words.slice(0, -1).join(", ")} or ${words.at(-1) ?? ""}.`;
}

function quoted(text: string): string {
  return /[{}:,]/.test(text) ? `"${text}"` : text;
}
