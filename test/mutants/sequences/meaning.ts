import { rowKind } from "#base";
import type { Row } from "./rows.ts";

/**
 * What a sequence makes a controller do, one line a row, written without looking at how the comparison of the product does
 * it: what is known of each axis and where it stands, the shape and the feed of each motion, every field of every step. Which
 * axes a motion names is no part of it: an axis that is named where it stands moves nothing, and one that is not named where
 * it should be stands elsewhere.
 */
export function meaningOf(rows: readonly Row[]): string {
  return rows.map(lineOf).join("\n");
}

function lineOf(row: Row): string {
  if (row.step) {
    const fields = Object.entries(row.step).sort(([one], [other]) => (one < other ? -1 : 1));
    return JSON.stringify(fields);
  }
  const places = [0, 1, 2, 3, 4, 5].map((axis) => {
    if ((row.known & (1 << axis)) === 0) return "?";
    return String(row.at[axis] ?? 0);
  });
  const feed = row.kind === rowKind.rapid ? "" : String(row.feed);
  return [row.kind, row.frame, ...places, feed, row.c1, row.c2, row.turns].join(" ");
}

/** Why a change of a sequence need not be found. */
export interface Harmless {
  /** Changes that it is true of, by their labels. */
  readonly labels: RegExp;
  readonly reason: string;
}

/** Changes that leave the text as it is, byte for byte: the program is the right one. */
export const unwritten: readonly Harmless[] = [
  { labels: /\.known [a-c x-z]$/, reason: "What is known of an axis that does not move has no word." },
  {
    labels: /\.stated [a-c x-z]$/,
    reason: "The dialect says all axes, or those that moved, whatever is named.",
  },
  { labels: /hole\.z$/, reason: "The height behind a hole is the level of its cycle." },
  { labels: /hole\.feed$/, reason: "Later holes have the feed that the definition of their cycle states." },
  { labels: /radius..\.plane$/, reason: "An arc by its radius is said in the plane that is in force." },
  { labels: /compensation\.offset$/, reason: "The code that cancels has no offset word." },
  { labels: /auxiliary\.code$/, reason: "Only opaque codes are written by their code." },
  { labels: /cycle-definition\.(dwell|dwellIs|peck)$/, reason: "This cycle has no such word." },
  {
    labels: /cycle-definition\.level$/,
    reason: "The level is the retract level, or the height before the series.",
  },
  { labels: /cycle-definition\.feedIs$/, reason: "The dialect has one meaning for the feed of a tap." },
  {
    labels: /cycle-definition\.levelStated$/,
    reason: "The dialect says the level with each definition, or never.",
  },
  { labels: /dwell\.time$/, reason: "A dwell in revolutions says no time." },
  { labels: /wait\.level$/, reason: "The dialect's wait is for one level, and the reader reads that." },
  {
    labels: /^doubled (cycle-definition|spindle-speed)$/,
    reason: "It is written once, with the hole or the start.",
  },
  { labels: /^swapped rapid, cycle-definition$/, reason: "A definition is written with its first hole." },
  { labels: /^(dropped|doubled|swapped) program-start/, reason: "The dialect has no program number." },
];

/** Changes of the text that change nothing of what it means: what was read back has the same rows as the job. */
export const saidAgain: readonly Harmless[] = [
  {
    labels: /\.stated [a-c x-z]$/,
    reason:
      "A motion that names no axis is written with all of them, and those that stand still are said again.",
  },
  {
    labels: /hole\.z$/,
    reason: "The motion behind the hole says the height again, where the tool is already.",
  },
  {
    labels: /radius..\.plane$/,
    reason: "The end of the arc says a third axis again, where the tool is already.",
  },
  { labels: /^swapped arcXy, arcXy$/, reason: "Two circles: the second says the height again." },
  {
    labels: /^swapped rapid, cycle-definition$/,
    reason: "The length offset is said in a block of its own, before the height rather than with it.",
  },
];
