/** Two programs of one job, compared as both are written once more. */
import { microsecondsPerSecond } from "#base";
import type { KeyDifference } from "#dialect";
import type { ComparedPair, ProgramTimes } from "#report";
import type { JobInput } from "../inputs.ts";
import { saidBlocks } from "./blocks.ts";
import { watchCarriedOut } from "./carried-out.ts";
import type { ComparedPlace, PlacedRow } from "./cells.ts";
import { comparePlace } from "./cells.ts";
import { formItems } from "./form-items.ts";
import type { OpenRow } from "./groups.ts";
import { gatherGroups, linesOf, numbered } from "./groups.ts";
import type { Item } from "./item.ts";
import type { Causes } from "./keys.ts";
import { causesOf } from "./keys.ts";
import type { HeaderFacts } from "./page-items.ts";
import { headerItems, silentItems, textItems } from "./page-items.ts";
import { stationPairs, stationsOf } from "./stations.ts";
import type { Series } from "./step-items.ts";
import { isAlike, stepItems } from "./step-items.ts";
import { createSubjects } from "./words.ts";
import type { TracedDialect } from "./traced-dialect.ts";

/** Rows of the listing that are kept. */
const mostListed = 400;

/** Two dialects, the keys about which they differ, and the headers of their programs. */
export interface PairInput {
  readonly job: JobInput;
  readonly dialects: readonly [TracedDialect, TracedDialect];
  readonly headers: readonly [HeaderFacts, HeaderFacts];
  readonly differences: readonly KeyDifference[];
  /** Places of the two in the list of dialects. */
  readonly of: readonly [number, number];
  /** Called with every item; for who looks at them all. */
  readonly seen?: (item: Item) => void;
}

/** Compares two programs that were proved. */
export function comparePair(input: PairInput): ComparedPair {
  const { dialects, differences, headers } = input;
  const causes = causesOf(differences, [dialects[0].keys, dialects[1].keys]);
  const groups = gatherGroups();
  const listing: OpenRow[] = [];
  const state = { alike: 0, unlisted: 0 };
  const series: Series = {
    first: undefined,
    second: undefined,
    isOdd: false,
    lastKeys: [],
    subjects: createSubjects(),
  };
  const add = (items: readonly Item[]): void => {
    groups.add(items);
    if (input.seen !== undefined) items.forEach(input.seen);
  };
  add(headerItems(...headers, causes));
  const times = [timesOf(), timesOf()] as const;
  const carriedOut = watchCarriedOut(causes);
  for (const place of placesOf(input)) {
    for (const { first, second } of place.matches)
      [first, second].forEach((row, side) => times[side].take(row));
    const alike = place.matches.filter(isAlike);
    alike.forEach(carriedOut.take);
    state.alike += alike.length;
    const { items, rows } = compareRows(place, series, causes);
    add(items);
    const room = mostListed - listing.length;
    listing.push(...rows.slice(0, room));
    state.unlisted += Math.max(0, rows.length - room);
  }
  add(carriedOut.items());
  const { groups: found, numbers } = groups.end(causes);
  return {
    of: input.of,
    first: dialects[0].dialect.name,
    second: dialects[1].dialect.name,
    groups: found,
    alikeSteps: state.alike,
    times: [times[0].sum(), times[1].sum()],
    listing: numbered(listing, numbers),
    unlisted: state.unlisted,
  };
}

/** Sums up what the rows of a program take in time. */
function timesOf(): { take: (row: PlacedRow | undefined) => void; sum: () => ProgramTimes } {
  const sum = { microseconds: 0, dwellsInTurns: 0, waits: 0 };
  return {
    take: (row) => {
      const step = row?.row.record.step;
      if (step?.kind === "wait") sum.waits++;
      if (step?.kind !== "dwell") return;
      sum.microseconds += step.time;
      if (step.revolutions !== undefined) sum.dwellsInTurns++;
    },
    sum: () => ({
      dwellSeconds: sum.microseconds / microsecondsPerSecond,
      dwellsInTurns: sum.dwellsInTurns,
      waits: sum.waits,
    }),
  };
}

function* placesOf({ job, dialects }: PairInput): Generator<ComparedPlace> {
  const [first, second] = dialects.map((dialect) => stationsOf(saidBlocks({ ...job, ...dialect })));
  for (const pair of stationPairs(first, second)) yield comparePlace(pair);
}

/** The differences of one place, each once, and its rows for the listing. */
function compareRows(
  place: ComparedPlace,
  series: Series,
  causes: Causes,
): { items: Item[]; rows: OpenRow[] } {
  const steps = stepItems(place, series, causes);
  const silent = silentItems(place, causes);
  const items: Item[] = [...steps, ...silent];
  const rows = silent.map((item) => rowOf(item.first, item.second, [item]));
  const shown = new Set<Item>();
  for (const cell of place.cells) {
    const { first, second } = cell;
    const own = steps.filter((item) => sharesLines(item, first, second));
    series.lastKeys = own.findLast(({ keys }) => keys.length > 0)?.keys ?? series.lastKeys;
    if ((first.length === 0 || second.length === 0) && own.length > 0) {
      // Blocks that the other program has none for stand in one row, beside those that take their place.
      if (!shown.has(own[0])) rows.push(rowOf(own[0].first, own[0].second, own));
      shown.add(own[0]);
      continue;
    }
    const form = [
      ...formItems(cell, place.place, causes, series.subjects),
      ...textItems(cell, place.place, causes),
    ].map((item) => following(item, series.lastKeys));
    items.push(...form);
    rows.push(rowOf(first, second, [...own, ...form]));
  }
  return { items, rows };
}

function rowOf(first: Item["first"], second: Item["second"], items: readonly Item[]): OpenRow {
  return { first: linesOf(first), second: linesOf(second), items };
}

function sharesLines(item: Item, first: Item["first"], second: Item["second"]): boolean {
  return (
    item.first.some((block) => first.includes(block)) || item.second.some((block) => second.includes(block))
  );
}

/** A word that no key of its own accounts for says what the steps before have left otherwise. */
function following(item: Item, keys: readonly string[]): Item {
  const isState = item.topic === "axes" || item.topic === "feed-word" || item.topic === "motion-word";
  return isState && item.keys.length === 0 ? { ...item, keys } : item;
}
