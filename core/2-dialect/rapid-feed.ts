import type { PerUnit } from "#base";
import { atomsPerUnit } from "#base";
import type { NumberKey } from "./resolve-numbers.ts";
import { decimalsOf } from "./resolve-numbers.ts";
import type { TreeNode } from "./tree.ts";
import { feed, wordOrNone } from "./values.ts";

/** Least increment of an address: 3 decimals of 1 mm -> 10,000 atoms. Never below one base unit. */
export function increment(decimals: number | undefined, unit: number): number | undefined {
  return decimals === undefined ? undefined : Math.max(1, Math.round(unit / 10 ** decimals));
}

/** Least increments of an address in both units, atoms. */
export function unitGrid(tree: TreeNode, key: NumberKey): PerUnit | undefined {
  const mm = increment(decimalsOf(tree, key, "mm"), atomsPerUnit.mm);
  const inch = increment(decimalsOf(tree, key, "inch"), atomsPerUnit.inch);
  return mm === undefined || inch === undefined ? undefined : { mm, inch };
}

/** The feed of rapids as the feed word says it, no faster than stated; null for `none`. */
export function rapidFeed(tree: TreeNode): PerUnit | null | undefined {
  if (wordOrNone(tree, "motion.rapid-feed") === "none") return null;
  const [stated, grids] = [feed(tree, "motion.rapid-feed"), unitGrid(tree, "feed-per-minute")];
  if (stated === undefined || grids === undefined) return undefined;
  const onGrid = (least: number): number => Math.max(least, Math.floor(stated / least) * least);
  return { mm: onGrid(grids.mm), inch: onGrid(grids.inch) };
}
