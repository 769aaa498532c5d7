/** Differences in meaning: steps of one program alone, and steps with other values. */
import type { CycleDefinition, Step } from "#base";
import type { SaidBlock } from "./blocks.ts";
import { saidText } from "./blocks.ts";
import { equal } from "./align.ts";
import type { ComparedPlace, PlacedRow, RowMatch } from "./cells.ts";
import type { Item } from "./item.ts";
import type { Causes } from "./keys.ts";
import { aspectOf } from "./step-aspect.ts";
import { topicOf } from "./step-topic.ts";
import type { TopicName } from "./topics.ts";
import type { Subjects } from "./words.ts";
import { topicOfStep, topics } from "./topics.ts";

/** Steps that are put into words at one place. */
const mostSaid = 6;

/** A step that the other program does not say so, and what it is about. */
interface Odd {
  readonly row: PlacedRow;
  readonly topic: TopicName;
}

/** What is kept from place to place: the fixed cycle of each program that was defined last, and why both differ. */
export interface Series extends Record<Side, CycleDefinition | undefined> {
  /** Whether both programs do not say it alike. */
  isOdd: boolean;
  /** Keys that account for the last difference in meaning. */
  lastKeys: readonly string[];
  readonly subjects: Subjects;
}

type Side = "first" | "second";

/** Whether the rows of a match mean the same. */
export function isAlike({ first, second }: RowMatch): boolean {
  return first !== undefined && second !== undefined && equal(first.row, second.row);
}

/** The differences in meaning at one place of the job. */
export function stepItems(place: ComparedPlace, series: Series, causes: Causes): Item[] {
  const runs = oddRuns(place.matches);
  follow(place, series);
  return runs.flatMap((run) => {
    const odd = { first: oddOf(place, run, "first"), second: oddOf(place, run, "second") };
    const absorbed = absorb(odd, series);
    const names = [...new Set([...absorbed.first, ...absorbed.second].map(({ topic }) => topic))];
    return names.map((topic) => itemOf(topic, absorbed, place.place, series, causes));
  });
}

/** Takes note of the cycles that a place defines. */
function follow({ matches }: ComparedPlace, series: Series): void {
  for (const match of matches)
    for (const side of ["first", "second"] as const) {
      const step = match[side]?.row.record.step;
      if (step?.kind !== "cycle-definition") continue;
      series[side] = step;
      series.isOdd = !isAlike(match);
    }
}

/** Why a cycle is none in the other program, or has other values there. */
function cycleKeys({ first, second }: Series, causes: Causes): readonly string[] {
  const step = first ?? second;
  if (step === undefined) return keysOf("cycle", causes);
  const own = causes.among([`cycles.${step.cycle}`]);
  if (own.length > 0) return own;
  const pecks = step.cycle === "peck" || step.cycle === "chip-break";
  const found = causes.among([
    "cycles.return",
    ...(pecks ? ["cycles.back-off", "cycles.words.back-off"] : []),
    ...(step.dwell > 0 ? ["cycles.words.dwell-unit"] : []),
    ...(step.cycle.startsWith("tap")
      ? ["cycles.tap-feed", "cycles.tap-synchronised", "machine.tapping"]
      : []),
  ]);
  return found.length > 0 ? found : keysOf("cycle", causes);
}

/** Matches that follow each other and are not alike, as indexes. */
function oddRuns(matches: readonly RowMatch[]): number[][] {
  const runs: number[][] = [];
  let open = false;
  matches.forEach((match, index) => {
    if (isAlike(match)) {
      open = false;
    } else {
      if (!open) runs.push([]);
      open = true;
      runs.at(-1)!.push(index);
    }
  });
  return runs;
}

function oddOf({ matches }: ComparedPlace, run: readonly number[], side: Side): Odd[] {
  const rows = matches.flatMap((match) => match[side] ?? []);
  const odd: Odd[] = [];
  for (const index of run) {
    const row = matches[index][side];
    if (row === undefined) continue;
    const topic = topicOf({ rows, at: rows.indexOf(row) });
    // What follows a stop that the other program does not make goes with that stop.
    const stop = odd.find((before) => before.topic === "spindle" && isAlone(matches, before.row, side));
    const follows = topic === "stopped" || topic === "length-cancel";
    odd.push({ row, topic: follows && stop !== undefined ? "spindle" : topic });
  }
  return odd;
}

function isAlone(matches: readonly RowMatch[], row: PlacedRow, side: Side): boolean {
  const other = side === "first" ? "second" : "first";
  return matches.some((match) => match[side] === row && match[other] === undefined);
}

type OddSides = Readonly<Record<Side, readonly Odd[]>>;

/** What takes in the topics beside it: a cycle the moves that stand for it, a change the steps that belong to it. */
const takesIn: readonly (readonly [topic: TopicName, others: readonly TopicName[]])[] = [
  ["cycle", ["motion", "rapids", "dwell", "cancel-cycle"]],
  ["arc-form", ["motion"]],
  ["swap", ["select-tool", "message", "pause"]],
];

function absorb(odd: OddSides, series: Series): OddSides {
  const present = new Set([...odd.first, ...odd.second].map(({ topic }) => topic));
  const home = (topic: TopicName): TopicName =>
    (topic === "cancel-cycle" && series.isOdd ? "cycle" : undefined) ??
    takesIn.find(([name, others]) => present.has(name) && others.includes(topic))?.[0] ??
    topic;
  const told = (rows: readonly Odd[]): Odd[] => {
    // What follows a stop for the operator states anew what may have changed meanwhile.
    const stop = rows.findIndex(({ topic }) => topic === "pause");
    return rows.map(({ row, topic }, index) => ({
      row,
      topic: stop >= 0 && index > stop ? "pause" : home(topic),
    }));
  };
  return { first: told(odd.first), second: told(odd.second) };
}

function itemOf(name: TopicName, odd: OddSides, place: number, series: Series, causes: Causes): Item {
  const own = (side: Side): PlacedRow[] =>
    odd[side].filter((one) => one.topic === name).map(({ row }) => row);
  const [first, second] = [own("first"), own("second")];
  const topic = name === "arc-form" && isFedOtherwise(first, second) ? "arc-feed" : name;
  const said = { first: saidOf(first), second: saidOf(second) };
  return {
    level: "meaning",
    topic,
    aspect: aspectOf(topic, first, second),
    keys: topic === "cycle" ? cycleKeys(series, causes) : stepKeys(topic, [first, second], causes),
    place,
    example: { first: said.first.at(0) ?? "", second: said.second.at(0) ?? "" },
    first: blocksOf(first),
    second: blocksOf(second),
    said,
  };
}

/** Whether arcs that both programs have go at other feeds. */
function isFedOtherwise(first: readonly PlacedRow[], second: readonly PlacedRow[]): boolean {
  const feeds = [first, second].map((rows) => new Set(rows.map(({ row }) => row.record.feed)));
  return first.length > 0 && second.length > 0 && [...feeds[0]].some((feed) => !feeds[1].has(feed));
}

/**
 * Why steps differ. Other units round otherwise, whatever else differs; a step for which the other dialect has no word is not said
 * for that reason. A retract of one program alone may stand elsewhere in the other: before the length offset is cancelled, or behind.
 * A mode for whose place there is no reason may have another word.
 */
function stepKeys(
  topic: TopicName,
  rows: readonly (readonly PlacedRow[])[],
  causes: Causes,
): readonly string[] {
  const [units, otherUnits] = rows.map((side) => side.at(0)?.row.units);
  const isOtherUnit = units !== undefined && otherUnits !== undefined && units !== otherUnits;
  if (isOtherUnit && rounded.includes(topic))
    return causes.among([
      "units.programs-in",
      "numbers.length",
      "numbers.feed-per-minute",
      ...arcKeys(topic),
    ]);
  const isAlone = rows.some((side) => side.length === 0);
  if (topic === "rapids" && isAlone && causes.differ("machine.retract.by"))
    return causes.among(["machine.retract.by"]);
  const steps = rows.flat().flatMap(({ row }) => row.record.step ?? []);
  const lacking = steps.map((step) => causes.lacking([wordOf(step) ?? ""]));
  if (isAlone && lacking.length > 0 && lacking.every((keys) => keys.length > 0))
    return [...new Set(lacking.flat())];
  const keys = keysOf(topic, causes);
  if (topic === "retract" && isAlone)
    return [...keys, ...causes.among(["machine.retract.cancel-length-first"])];
  if (keys.length > 0) return keys;
  return [...new Set(steps.flatMap(({ kind }) => keysOf(topicOfStep[kind], causes)))];
}

/** What lowering rounds to the grid of the program's units. */
const rounded: readonly TopicName[] = ["motion", "rapids", "arc-form", "arc-feed", "cycle"];

function arcKeys(topic: TopicName): readonly string[] {
  return topic === "arc-form" || topic === "arc-feed" ? topics["arc-feed"].tiers[0] : [];
}

/** The key of the word of a step, where the step is said for its own sake. */
function wordOf(step: Step): string | undefined {
  switch (step.kind) {
    case "units":
    case "plane":
    case "path":
      return `${step.kind}.${step.value}`;
    case "feed-mode":
      return `feed.${step.value}`;
    case "coolant":
      return `coolant.${step.on ? step.medium : "off"}`;
    case "overrides":
      return "cancel.overrides";
    case "work-offset":
      return "work-offset";
    default:
      return undefined;
  }
}

/** The keys of the first tier of which any differs. */
export function keysOf(topic: TopicName, causes: Causes): readonly string[] {
  for (const tier of topics[topic].tiers) {
    const found = causes.among(tier);
    if (found.length > 0) return found;
  }
  return [];
}

function saidOf(rows: readonly PlacedRow[]): readonly string[] {
  const texts = rows.slice(0, mostSaid).map(({ row }) => saidText(row));
  return rows.length > mostSaid ? [...texts, `${rows.length - mostSaid} steps more`] : texts;
}

function blocksOf(rows: readonly PlacedRow[]): SaidBlock[] {
  return [...new Set(rows.map(({ block }) => block))];
}
