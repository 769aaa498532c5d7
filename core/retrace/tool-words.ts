import type { ToolKind, UnitSystem } from "#base";
import { atomsPerUnit } from "#base";
import type { Comment } from "./comment.ts";

/** What a comment says of a tool; undefined where it does not say it. */
export interface ToolWords {
  readonly kind: ToolKind | undefined;
  /** Whether the word for the kind is one that people use of any mill. */
  readonly anyMill: boolean;
  /** Atoms. */
  readonly diameter: number | undefined;
}

/** Words for kinds of tools, the closer ones first: a thread mill is no end mill, and a spot drill no drill. */
const kindWords: readonly (readonly [RegExp, ToolKind, "any mill"?])[] = [
  [/\bface[ -]?mill/i, "face-mill"],
  [/\bthread[ -]?mill/i, "thread-mill"],
  [/\bball\b|\bball[ -]?(nose|mill|end)/i, "ball-mill"],
  [/\bbull\b|\bbull[ -]?nose/i, "bull-nose"],
  [/\bspot\b|\bcent(re|er)[ -]?drill/i, "spot-drill"],
  [/\bchamfer/i, "chamfer"],
  [/\bv[ -]?bit\b/i, "v-bit"],
  [/\bengrav/i, "engraver"],
  [/\bream/i, "reamer"],
  [/\btap\b/i, "tap"],
  [/\bboring\b|\bboring[ -]?bar/i, "boring-bar"],
  [/\bdrill/i, "drill"],
  [/\bend[ -]?mill|\bflat\b/i, "end-mill"],
  [/\bmill\b|\bcutter\b/i, "end-mill", "any mill"],
  [/\bdrag[ -]?knife\b|\bknife\b/i, "drag-knife"],
  [/\bprobe\b/i, "probe"],
  [/\bpen\b/i, "pen"],
];

const number = String.raw`(\d+\.?\d*|\.\d+)`;
const diameterWords: readonly RegExp[] = [
  new RegExp(String.raw`\bD(?:IA(?:M(?:ETER)?)?)?\.?\s*[=:-]?\s*${number}\s*(MM|IN(?:CH)?\b|")?`, "i"),
  new RegExp(String.raw`(?<![\d.])${number}\s*(MM|INCH|IN\b|")`, "i"),
  new RegExp(
    String.raw`(?:MILL|DRILL|REAMER|TAP|CUTTER|BALL|NOSE)\s+${number}()(?![\d.])(?!\s*(?:DEG|FLUTE|H\d))`,
    "i",
  ),
  new RegExp(String.raw`(?:REAMER)\s+${number}()(?=\s*H\d)`, "i"),
];

/** Reads what a comment says of a tool; numbers without a unit are in the program's. */
export function readToolWords(text: string, units: UnitSystem): ToolWords {
  const [, kind, more] = kindWords.find(([word]) => word.test(text)) ?? [];
  const anyMill = more === "any mill";
  for (const form of diameterWords) {
    const [, digits, unit = ""] = form.exec(text) ?? [];
    const value = Number(digits);
    if (digits === undefined || !(value > 0)) continue;
    const own = unit === "" ? units : /^mm$/i.test(unit) ? "mm" : "inch";
    return { kind, anyMill, diameter: Math.round(value * atomsPerUnit[own]) };
  }
  return { kind, anyMill, diameter: undefined };
}

/** The comment about a tool: one that begins with T and its number, or has it in a list of tools. */
export function commentOfTool(comments: readonly Comment[], tool: number): Comment | undefined {
  const own = new RegExp(String.raw`^(?:TOOL\s*[-#]?\s*|T\s*)0*${tool}\b[\s:=,-]*(\S.*)$`, "i");
  for (const comment of comments) {
    const [, text] = own.exec(comment.text) ?? [];
    if (text !== undefined) return { ...comment, text: text.trim() };
  }
  return undefined;
}

/** Whether a comment is about a tool, and no name of an operation. */
export function isToolComment(comment: string): boolean {
  return /^(?:TOOL\s*[-#]?\s*|T\s*)\d+\b/i.test(comment);
}

/**
 * The list of tools in the header that programs of ours have: "Tools 1 end-mill 6, 2 drill 5." The numbers rise in no order, so
 * that each is looked for behind the one before.
 */
export function toolsOfHeader(head: readonly Comment[]): ReadonlyMap<number, Comment> {
  const text = textOf(head);
  const [, list] = /\bTools?:? (\d+ .*?)\.(?=\s*(?:Prove out above|$))/i.exec(text) ?? [];
  const tools = new Map<number, Comment>();
  if (list === undefined) return tools;
  const listAt = text.indexOf(list);
  const starts = [...list.matchAll(/(?:^|[,;] )(\d+) (?=[A-Z])/gi)];
  starts.forEach((match, index) => {
    const from = match.index + match[0].length;
    const to = starts[index + 1]?.index ?? list.length;
    const offset = offsetIn(head, listAt + from);
    tools.set(Number(match[1]), { offset, text: list.slice(from, to).trim() });
  });
  return tools;
}

/** Which tool waits in which pocket, where the header says it: "The rack is loaded pocket 1 tool 3, pocket 2 tool 1." */
export function pocketsOfHeader(head: readonly Comment[]): ReadonlyMap<number, number> {
  const text = textOf(head);
  const [, list] = /\bThe rack is loaded:? ((?:pocket \d+ tool \d+(?:, )?)+)/i.exec(text) ?? [];
  const pairs = [...(list ?? "").matchAll(/pocket (\d+) tool (\d+)/gi)];
  return new Map(pairs.map(([, pocket, tool]) => [Number(pocket), Number(tool)]));
}

/** The tool in the spindle at the start, where the header says it: "The spindle holds tool 1." */
export function heldOfHeader(head: readonly Comment[]): number {
  const [, tool] = /\bThe spindle holds tool (\d+)\b/i.exec(textOf(head)) ?? [];
  return Number(tool ?? 0);
}

/** Comments of the header as one text: sentences go on from line to line. */
function textOf(head: readonly Comment[]): string {
  return head.map(({ text }) => text).join(" ");
}

/** Byte offset of the comment in which a place of that text stands. */
function offsetIn(head: readonly Comment[], place: number): number {
  let start = 0;
  for (const { offset, text } of head) {
    start += text.length + 1;
    if (place < start) return offset;
  }
  return 0;
}
