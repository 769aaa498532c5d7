import type { Observed } from "../evidence.ts";
import { lineOf, settle } from "../evidence.ts";
import type { Program } from "../program.ts";
import type { Sample } from "../sample.ts";
import type { Line } from "../tokens.ts";
import { identityOf } from "./framing.ts";

/** Most comment lines at the head that are taken for a header. */
const mostLines = 6;

/**
 * The comments at the head of several programs as templates: what is the same in all of them is literal, the program's own number is
 * `{{number}}`, and the one part that differs is `{{program}}`. One program does not show which part varies.
 */
export function header({ programs }: Sample): Observed[] {
  const heads = programs.map(headOf);
  const [first] = heads;
  const length = first?.length ?? 0;
  if (programs.length < 2 || length === 0 || length > mostLines || heads.some((head) => head.length !== length)) return []; // prettier-ignore
  const templates = first.map((_line, index) => template(heads.map((head, of) => numbered(textOf(head[index]), programs[of])))); // prettier-ignore
  const varying = templates.filter((line) => line === undefined || line.includes("{{program}}"));
  if (varying.length > 1 || templates.includes(undefined)) return [];
  const evidence = `comments at the head of ${String(programs.length)} programs, e.g. ${lineOf(first[0])}`;
  return [
    settle(
      "idioms.header",
      templates.map((line) => line ?? ""),
      evidence,
    ),
  ];
}

/** Comment lines before the first block. */
function headOf({ lines }: Program): Line[] {
  const end = lines.findIndex(
    ({ kind, aligned, words }) => kind === "block" && !(aligned && words.length === 0),
  );
  return lines.slice(0, Math.max(0, end)).filter(({ kind }) => kind === "comment");
}

function textOf({ comments }: Line): string {
  return (comments[0] ?? "")
    .replace(/^[(;]\s*/, "")
    .replace(/\)$/, "")
    .trim();
}

/** "PART 42" in program O0042 -> "PART {{number}}" */
function numbered(text: string, program: Program): string {
  const identity = identityOf(program);
  const [, digits] = /(\d+)/.exec(identity?.text ?? "") ?? [];
  return digits === undefined ? text : text.replace(new RegExp(`(?<!\\d)0*${String(Number(digits))}(?!\\d)`), "{{number}}"); // prettier-ignore
}

/** ["FOR A, MM", "FOR B, MM"] -> "FOR {{program}}, MM"; undefined where braces of its own would be taken for a name. */
function template(texts: readonly string[]): string | undefined {
  const [first] = texts;
  if (texts.some((text) => /[{}]/.test(text.replaceAll("{{number}}", "")))) return undefined;
  if (texts.every((text) => text === first)) return first;
  const last = texts.map((text) => [...text].reverse().join(""));
  const before = sharedStart(texts);
  const behind = [
    ...sharedStart(last.map((text, index) => text.slice(0, texts[index].length - before.length))),
  ];
  return `${before}{{program}}${behind.reverse().join("")}`;
}

/** What texts have in common from their beginning on, up to a whole word. */
function sharedStart(texts: readonly string[]): string {
  const [first] = texts;
  let length = 0;
  while (length < first.length && texts.every((text) => text[length] === first[length])) length++;
  const isWhole = texts.every((text) => !/[\p{L}\p{N}]/u.test(text[length] ?? ""));
  return isWhole ? first.slice(0, length) : first.slice(0, length).replace(/[\p{L}\p{N}]+$/u, "");
}
