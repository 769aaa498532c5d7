/** Differences that no step shows: separators, line ends, marks, comments, and what the header takes for granted. */
import type { SaidBlock } from "./blocks.ts";
import type { Cell, ComparedPlace } from "./cells.ts";
import type { Item } from "./item.ts";
import type { Causes } from "./keys.ts";
import { startPlace } from "./blocks.ts";
import { isSpoken } from "./words.ts";

type Found = Pick<Item, "topic" | "aspect" | "keys" | "example">;

/** How the lines of a cell are set: separator, mark and line end of its first blocks. */
export function textItems({ first, second }: Cell, place: number, causes: Causes): Item[] {
  const [one, other] = [first.at(0), second.at(0)];
  if (one === undefined || other === undefined) return [];
  const [gaps, marks, ends] = [
    [gapOf(one), gapOf(other)],
    [markOf(one), markOf(other)],
    [endOf(one), endOf(other)],
  ];
  const found: Found[] = [];
  const add = (aspect: string, texts: string[], keys: readonly string[]): void => {
    const example = { first: texts[0], second: texts[1] };
    if (texts[0] !== texts[1]) found.push({ topic: "text", aspect, keys: causes.among(keys), example });
  };
  if (gaps.every((gap) => gap !== undefined))
    add(
      "separator of words",
      gaps.map((gap) => gapNames[gap] ?? "other"),
      ["blocks.separator"],
    );
  add("mark at the end of a block", marks, ["file.end-of-block"]);
  add("line end", ends, ["file.line-end", "file.last-line-end"]);
  return found.map((item) => ({ level: "form", place, first: [one], second: [other], ...item }));
}

const gapNames: Readonly<Record<string, string>> = { "": "none", " ": "blank", "\t": "tab" };

/** What stands between the first two words that say something; undefined where there are none. */
function gapOf({ written }: SaidBlock): string | undefined {
  const [one, other] = written.words.filter(isSpoken);
  if (one === undefined || other === undefined) return undefined;
  const from = one.offset - written.start + one.text.length;
  return written.text.slice(from, other.offset - written.start);
}

function markOf({ written }: SaidBlock): string {
  return written.words.find(({ keys }) => keys.includes("file.end-of-block"))?.text ?? "";
}

function endOf({ written }: SaidBlock): string {
  const bytes = new TextEncoder().encode(written.text).length;
  return ["none", "one character", "two characters"][written.end - written.start - bytes] ?? "more";
}

/** Lines that say nothing and that one program has alone; header comments are compared by what they take for granted. */
export function silentItems({ place, silent }: ComparedPlace, causes: Causes): Item[] {
  const texts = [silent.first, silent.second].map((blocks) => blocks.map(({ written }) => written.text));
  const lone = (blocks: readonly SaidBlock[], others: readonly string[]): SaidBlock[] =>
    blocks.filter(({ written }) => !others.includes(written.text) && !isHeader(place, written.text));
  const item = (block: SaidBlock, side: "A" | "B"): Item => {
    const { text } = block.written;
    const [aspect, ...paths] = silentKind(block, place);
    return {
      level: "form",
      topic: "page",
      aspect: `${aspect} only in ${side}`,
      keys: causes.among(paths),
      place,
      example: side === "A" ? { first: text, second: "" } : { first: "", second: text },
      first: side === "A" ? [block] : [],
      second: side === "B" ? [block] : [],
    };
  };
  return [
    ...lone(silent.first, texts[1]).map((block) => item(block, "A")),
    ...lone(silent.second, texts[0]).map((block) => item(block, "B")),
  ];
}

function isHeader(place: number, text: string): boolean {
  return place === startPlace && /^[(;]/.test(text);
}

/** What a silent line is, and the keys that put it there. */
function silentKind({ written }: SaidBlock, place: number): string[] {
  const keys = written.words.flatMap((word) => word.keys);
  if (keys.includes("file.delimiter"))
    return ["mark of start and end", "file.delimiter", "file.program-number"];
  if (keys.includes("file.program-number")) return ["program number", "file.program-number"];
  if (/^[(;]/.test(written.text) && place !== startPlace)
    return ["comment", "blocks.sections.comments", "file.footer", "comments"];
  return written.text === "" ? ["blank line", "file.blank-lines", "file.leader"] : ["line", ...keys];
}

/** What the header of a program says, in sentences. */
export interface HeaderFacts {
  readonly name: string;
  readonly assumptions: readonly string[];
}

/** Sentences of a header, what they are about, and the keys that put them there. */
const sentences: readonly (readonly [pattern: RegExp, about: string, keys: readonly string[]])[] = [
  [/rack|pocket/i, "rack", ["machine.swap"]],
  [/empty spindle|spindle holds/i, "spindle", ["machine.swap"]],
  [/air is on/i, "air", ["confirm.air", "machine.swap"]],
  [/homed/i, "homing", ["machine.retract.by"]],
  [/length/i, "lengths", ["machine.lengths"]],
  [/Z is set/i, "Z", ["machine.lengths", "machine.retract.by"]],
  [/block delete/i, "block delete", ["stops.optional", "blocks.delete"]],
];

/** The header: the dialect's name, and what one program takes for granted and the other does not. */
export function headerItems(first: HeaderFacts, second: HeaderFacts, causes: Causes): Item[] {
  const item = (aspect: string, keys: readonly string[], example: Item["example"]): Item => ({
    level: "form",
    topic: "page",
    aspect,
    keys: causes.among(keys),
    place: startPlace,
    example,
    first: [],
    second: [],
  });
  const lone = (one: HeaderFacts, other: HeaderFacts): string[] =>
    one.assumptions.filter((sentence) => !other.assumptions.includes(sentence));
  const taken = (text: string, side: "A" | "B"): Item => {
    const [, about, keys] = sentences.find(([pattern]) => pattern.test(text)) ?? [undefined, "other", []];
    const example = side === "A" ? { first: text, second: "" } : { first: "", second: text };
    return item(`${about} taken for granted only in ${side}`, keys, example);
  };
  return [
    ...(first.name === second.name
      ? []
      : [item("name of the dialect in the header", ["dialect"], { first: first.name, second: second.name })]),
    ...lone(first, second).map((text) => taken(text, "A")),
    ...lone(second, first).map((text) => taken(text, "B")),
  ];
}
