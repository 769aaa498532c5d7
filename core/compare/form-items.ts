/** Differences in form: the same steps, written otherwise. */
import { isArc, rowKind } from "#base";
import type { SaidBlock } from "./blocks.ts";
import type { Cell, RowMatch } from "./cells.ts";
import type { Item } from "./item.ts";
import type { Causes } from "./keys.ts";
import { isAlike, keysOf } from "./step-items.ts";
import { cutKeys, orderKeys } from "./block-keys.ts";
import { topicOfStep } from "./topics.ts";
import type { TopicName } from "./topics.ts";
import { wordDifference } from "./word-difference.ts";
import type { RoleWord, Subjects } from "./words.ts";
import { blockNumber, roleWords } from "./words.ts";

/** The differences in form of one cell. */
export function formItems(cell: Cell, place: number, causes: Causes, subjects: Subjects): Item[] {
  if (cell.first.length === 0 || cell.second.length === 0) return [];
  const words = pairWords(cell, subjects);
  const make = (found: Pick<Item, "topic" | "aspect" | "keys" | "example">): Item => ({
    level: "form",
    place,
    first: cell.first,
    second: cell.second,
    ...found,
  });
  return [
    ...wordItems(cell, words, causes),
    ...orderItems(words, causes),
    ...cutItems(cell, causes),
    ...numberItems(cell, causes),
  ].map(make);
}

type Found = Pick<Item, "topic" | "aspect" | "keys" | "example">;

/** The words of a cell that have the same role, and those of one program alone. */
interface PairedWords {
  readonly pairs: readonly (readonly [RoleWord, RoleWord])[];
  readonly first: readonly RoleWord[];
  readonly second: readonly RoleWord[];
}

/** Words by their role: the first of the one program with the first of the other, and so on. */
function pairWords(cell: Cell, subjects: Subjects): PairedWords {
  const rest = roleWords(cell.second, subjects);
  const pairs: [RoleWord, RoleWord][] = [];
  const first: RoleWord[] = [];
  for (const word of roleWords(cell.first, subjects)) {
    const at = rest.findIndex(({ role }) => role === word.role);
    if (at < 0) first.push(word);
    else pairs.push([word, ...rest.splice(at, 1)] as [RoleWord, RoleWord]);
  }
  return { pairs, first, second: rest };
}

function wordItems(cell: Cell, { pairs, first, second }: PairedWords, causes: Causes): Found[] {
  const odd = oddTopics(cell.matches);
  const isStep = ({ subject }: RoleWord): boolean => odd.has(subject);
  const found = pairs.flatMap(([one, other]) => {
    if (one.word.text === other.word.text) return [];
    const difference = wordDifference(one, other, odd.has(one.subject), causes);
    const example = { first: one.word.text, second: other.word.text };
    return difference === undefined ? [] : [{ topic: one.subject, ...difference, example }];
  });
  const alone = (words: readonly RoleWord[], side: "A" | "B"): Found[] =>
    words
      .filter((word) => !isStep(word))
      .map(({ word, subject }) => ({
        topic: subject,
        aspect: `word only in ${side}`,
        keys: presenceKeys(word.keys, subject, cell, causes),
        example: side === "A" ? { first: word.text, second: "" } : { first: "", second: word.text },
      }));
  return [...found, ...alone(first, "A"), ...alone(second, "B")];
}

/** Of a word that is there or not: what decides about it comes before how its digits are written. */
function presenceKeys(
  keys: readonly string[],
  subject: TopicName,
  { matches, first, second }: Cell,
  causes: Causes,
): readonly string[] {
  const rows = matches.flatMap((match) => [match.first ?? [], match.second ?? []].flat());
  const kinds = rows.map(({ row }) => row.record.step?.kind ?? row.record.kind);
  // Later holes of a series may restate everything; the ends of arcs follow a rule of their own.
  const isApart = [first, second].some((blocks) => blocks.some((block) => block.rows.length === 0));
  if (isApart && causes.differ("cycles.definition")) return causes.among(["cycles.definition"]);
  const isLaterHole = kinds.includes(rowKind.hole) && !kinds.includes("cycle-definition");
  if (isLaterHole && causes.differ("cycles.repeat"))
    return causes.among(subject === "cycle-code" ? ["cycles.repeat", "modal.motion"] : ["cycles.repeat"]);
  const isEnd = subject === "axes" && kinds.some((kind) => typeof kind === "number" && isArc(kind));
  if (isEnd && causes.differ("modal.arc-end")) return causes.among(["modal.arc-end"]);
  const deciding = causes.among(keys.filter((key) => !key.startsWith("numbers.")));
  return deciding.length > 0 ? deciding : keysOf(subject, causes);
}

/** The words of motions. */
const motionSubjects: TopicName[] = [
  "motion-word",
  "axes",
  "feed-word",
  "centre",
  "retract",
  "cycle-words",
  "cycle-code",
];

/** What the steps of a cell that differ in meaning are about: their words differ for that reason. */
function oddTopics(matches: readonly RowMatch[]): Set<TopicName> {
  const topics = matches
    .filter((match) => !isAlike(match))
    .flatMap(({ first, second }) => [first, second])
    .flatMap((placed): TopicName[] => {
      if (placed === undefined) return [];
      const { step } = placed.row.record;
      if (step === undefined) return motionSubjects;
      // The words of a change, and those of a speed, stand under more than one subject.
      if (step.kind === "wait") return ["at-speed"];
      if (step.kind === "cycle-definition") return ["cycle-words", "cycle-code"];
      if (step.kind === "reference-return") return ["retract", "axes"];
      return step.kind === "spindle-start" ? ["spindle", "speed"] : [topicOfStep[step.kind]];
    });
  return new Set(topics);
}

/** Words that both programs have in one block, in another order. */
function orderItems({ pairs }: PairedWords, causes: Causes): Found[] {
  const items: Found[] = [];
  for (let at = 0; at + 1 < pairs.length; at++) {
    const [one, next] = [pairs[at], pairs[at + 1]];
    if (one[0].block !== next[0].block || one[1].block !== next[1].block) continue;
    if (next[1].word.offset > one[1].word.offset) continue;
    const text = (side: 0 | 1): string =>
      [one[side], next[side]]
        .sort((a, b) => a.word.offset - b.word.offset)
        .map(({ word }) => word.text)
        .join(" ");
    items.push({
      topic: next[0].subject,
      aspect: "order of words",
      keys: orderKeys(one[0], next[0], causes),
      example: { first: text(0), second: text(1) },
    });
  }
  return items;
}

/** Steps that follow each other in one block of one program, and in two of the other. */
function cutItems(cell: Cell, causes: Causes): Found[] {
  const both = cell.matches.filter(({ first, second }) => first !== undefined && second !== undefined);
  const items: Found[] = definedApart(cell, causes);
  for (let at = 0; at + 1 < both.length; at++) {
    const [one, next] = [both[at], both[at + 1]];
    const together = [one.first!.block === next.first!.block, one.second!.block === next.second!.block];
    if (together[0] === together[1]) continue;
    const { topic, keys } = cutKeys(one, next, together[0], causes);
    const example = { first: textOf(cell.first), second: textOf(cell.second) };
    items.push({ topic, aspect: "cut of blocks", keys, example });
  }
  return items;
}

/** A block that says no step by itself: a cycle that one program defines apart from its first hole. */
function definedApart({ first, second }: Cell, causes: Causes): Found[] {
  const silent = [first, second].map((blocks) => blocks.filter(({ rows }) => rows.length === 0).length);
  if (silent[0] === silent[1]) return [];
  const example = { first: textOf(first), second: textOf(second) };
  return [{ topic: "cycle", aspect: "cut of blocks", keys: causes.among(["cycles.definition"]), example }];
}

function textOf(blocks: readonly SaidBlock[]): string {
  return blocks.map(({ written }) => written.text).join(" | ");
}

/** The number of the first block: whether there is one, its letter, and its digits where those follow other rules. */
function numberItems(cell: Cell, causes: Causes): Found[] {
  const [first, second] = [blockNumber(cell.first[0]), blockNumber(cell.second[0])];
  const forms = [first, second].map((word) => (word === undefined ? "" : word.text.slice(0, 1)));
  const rules = ["on", "start", "step", "width"].map((name) => `blocks.number.${name}`);
  const isOther = forms[0] !== forms[1] || (forms[0] !== "" && causes.among(rules).length > 0);
  if (!isOther) return [];
  const isMark = forms[0] !== "" && forms[1] !== "" && forms[0] !== forms[1];
  const keys = causes.among(isMark ? ["blocks.sections"] : ["blocks.number"]);
  const example = { first: first?.text ?? "", second: second?.text ?? "" };
  return [{ topic: "block-number", aspect: isMark ? "mark of a section" : "block number", keys, example }];
}
