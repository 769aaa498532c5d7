/** Differences gathered by kind and cause while they pass: a count, and the first places. */
import type { ComparedLines, DifferenceGroup, DifferencePlace, ListedRow } from "#report";
import type { SaidBlock } from "./blocks.ts";
import { startPlace } from "./blocks.ts";
import type { Item } from "./item.ts";
import type { Causes } from "./keys.ts";
import { topics } from "./topics.ts";

/** Places that are kept of a group, and lines that are kept of a place. */
const mostPlaces = 5;
const mostLines = 8;

/** Gathers items. */
export interface Groups {
  readonly add: (items: readonly Item[]) => void;
  /** Those of meaning first, the more frequent first; and their numbers in that order, counted from 1, by the first ones. */
  readonly end: (causes: Causes) => { groups: DifferenceGroup[]; numbers: ReadonlyMap<string, number> };
}

interface OpenGroup {
  readonly item: Item;
  count: number;
  readonly places: DifferencePlace[];
}

/** The group of an item: its kind and its cause. */
export function groupOf({ level, topic, aspect, keys }: Item): string {
  return [level, topic, aspect, ...keys].join("/");
}

/** Makes an empty gathering. */
export function gatherGroups(): Groups {
  const open = new Map<string, OpenGroup>();
  return {
    add: (items) => {
      for (const item of items) {
        const name = groupOf(item);
        const group = open.get(name) ?? { item, count: 0, places: [] };
        open.set(name, group);
        group.count++;
        if (group.places.length < mostPlaces) group.places.push(placeOf(item));
      }
    },
    end: (causes) => {
      const all = [...open].sort(([, one], [, other]) => rank(one) - rank(other) || other.count - one.count);
      const groups = all.map(([, { item, count, places }]): DifferenceGroup => ({
        id: `${item.topic}/${item.aspect}`.replaceAll(" ", "-"),
        level: item.level,
        ...whatOf(item),
        example: item.example,
        count,
        places,
        keys: causes.shown(item.keys),
      }));
      return { groups, numbers: new Map(all.map(([name], index) => [name, index + 1])) };
    },
  };
}

/** "hood: only in A" -> what, and which program alone says it. */
function whatOf({ topic, aspect }: Item): Pick<DifferenceGroup, "what" | "only"> {
  const [, about, side] = /^(.*?)(?:\bonly in ([AB]))?$/.exec(aspect)!;
  const what = about.trim() === "" ? topics[topic].title : `${topics[topic].title}: ${about.trim()}`;
  return side === undefined ? { what } : { what, only: side === "A" ? "first" : "second" };
}

function rank({ item }: OpenGroup): number {
  return item.level === "meaning" ? 0 : 1;
}

function placeOf({ place, first, second, said }: Item): DifferencePlace {
  return {
    source: place === startPlace ? undefined : place,
    first: linesOf(first),
    second: linesOf(second),
    ...(said === undefined ? {} : { said }),
  };
}

/** The lines of blocks, the first of them as text. */
export function linesOf(blocks: readonly SaidBlock[]): ComparedLines | undefined {
  if (blocks.length === 0) return undefined;
  const texts = blocks.slice(0, mostLines).map(({ written }) => written.text);
  return { line: blocks[0].written.line, texts, more: blocks.length - texts.length };
}

/** A row of the listing before the groups have their numbers. */
export interface OpenRow {
  readonly first: ComparedLines | undefined;
  readonly second: ComparedLines | undefined;
  readonly items: readonly Item[];
}

/** Gives the groups of each row their numbers. */
export function numbered(rows: readonly OpenRow[], numbers: ReadonlyMap<string, number>): ListedRow[] {
  return rows.map(({ first, second, items }) => ({
    first,
    second,
    groups: [...new Set(items.flatMap((item) => numbers.get(groupOf(item)) ?? []))].sort((a, b) => a - b),
  }));
}
