import type { DifferenceGroup } from "#report";
import type { Item } from "../../core/compare/index.ts";
import type { ChangedDialect } from "./changed-dialect.ts";
import { leafOf, valuesIn, wholeOf } from "./changed-dialect.ts";
import { comparing } from "./comparing.ts";

/** What became of a group when a dialect says its keys as the other does. */
export interface Confirmation {
  readonly group: DifferenceGroup;
  /** How the change was said, and to which of the two; undefined: with no change did the group go. */
  readonly way: string | undefined;
  /** Why not, for each change that was tried. */
  readonly tried: readonly string[];
}

/** Two dialects whose programs of a job are compared. */
export interface Confirming {
  readonly names: readonly [string, string];
  readonly job: string;
  /** Which groups are tried: the first of each so many. */
  readonly every: number;
}

/**
 * Tries for each group of a comparison whether it goes when its keys have the other dialect's values: the dialect is changed,
 * built, posts, and is compared again. Gone means: at none of its places is there a difference of its kind any more,
 * whatever the keys that would be named for it.
 */
export async function confirmGroups({ names, job, every }: Confirming): Promise<Confirmation[]> {
  const items: Item[] = [];
  const outcome = (await comparing({ names, job, seen: (item) => items.push(item) }))!;
  const known = new Map<string, Set<string> | undefined>();
  const confirmations: Confirmation[] = [];
  const kindsAfter = async (change: ChangedDialect, side: "first" | "second") => {
    const name = `${side} ${change.text}`;
    if (!known.has(name)) known.set(name, await kinds(names, job, change, side));
    return known.get(name);
  };
  const { groups } = outcome.pairs[0];
  for (const group of groups.filter((_, index) => index % every === 0)) {
    const wanted = items.filter((item) => isOf(item, group)).map(kindAt);
    const tried: string[] = [];
    let way: string | undefined;
    for (const [change, side] of await changes(names, group)) {
      const after = await kindsAfter(change, side);
      const left = after === undefined ? undefined : wanted.filter((kind) => after.has(kind));
      if (left?.length === 0) {
        way = `${change.way} of ${side === "first" ? "A" : "B"}`;
        break;
      }
      tried.push(
        `${change.way} of ${side}: ${left === undefined ? "refused" : `${left.length} of ${wanted.length} left, ${left[0]}`}`,
      );
    }
    confirmations.push({ group, way, tried });
  }
  return confirmations;
}

function isOf(item: Item, { id, keys, level }: DifferenceGroup): boolean {
  const isKind = `${item.topic}/${item.aspect}`.replaceAll(" ", "-") === id && item.level === level;
  const shown = keys.map(({ key }) => key);
  const covers = item.keys.every((key) => shown.some((one) => key === one || key.startsWith(`${one}.`)));
  const used = shown.every((one) => item.keys.some((key) => key === one || key.startsWith(`${one}.`)));
  return isKind && covers && used;
}

/** A kind of difference at a place of the job, without its keys. */
function kindAt({ level, topic, aspect, place }: Item): string {
  return `${level} ${topic}: ${aspect} at ${place}`;
}

/** The changes to try, the leaf of the first dialect first. */
async function changes(
  [first, second]: readonly [string, string],
  { keys }: DifferenceGroup,
): Promise<[ChangedDialect, "first" | "second"][]> {
  if (keys.length === 0) return [];
  const [ofFirst, ofSecond] = [valuesIn(keys, "second"), valuesIn(keys, "first")];
  const leaves = [
    [leafOf(first, ofFirst), "first"],
    [leafOf(second, ofSecond), "second"],
  ] as const;
  const wholes = [
    [await wholeOf(first, ofFirst), "first"],
    [await wholeOf(second, ofSecond), "second"],
  ] as const;
  return [...leaves, ...wholes].flatMap(([change, side]) =>
    change === undefined ? [] : [[change, side] as [ChangedDialect, "first" | "second"]],
  );
}

async function kinds(
  names: readonly [string, string],
  job: string,
  change: ChangedDialect,
  side: "first" | "second",
): Promise<Set<string> | undefined> {
  const changed = side === "first" ? [change.name, names[1]] : [names[0], change.name];
  const found = new Set<string>();
  const outcome = await comparing({
    names: changed,
    job,
    texts: { [change.name]: change.text },
    seen: (item) => found.add(kindAt(item)),
  });
  return outcome?.pairs.length === 1 ? found : undefined;
}
