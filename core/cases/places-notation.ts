import { axes } from "#base";
import type { Cursor, Word } from "./cursor.ts";
import { endOf, nextNumber, numberOf, took } from "./cursor.ts";
import { fits } from "./grids.ts";
import type { Sequence } from "./sequence.ts";

/** A number behind a name, where it stands. */
export interface Placed {
  readonly value: number;
  readonly word: Word;
}

/** Words of places, x10 y-5.25, as many as there are. */
export function takePlaces(cursor: Cursor, sequence: Sequence): Map<string, Placed> {
  const found = new Map<string, Placed>();
  for (;;) {
    const word = cursor.peek();
    const [, name, digits] = /^(c?[xyz]|[abc])([-+.\d].*)$/.exec(word?.text ?? "") ?? [];
    if (word === undefined || name === undefined || digits === undefined) return found;
    cursor.next();
    if (found.has(name)) cursor.fail(word, `\`${name}\` stands twice.`);
    const isAngle = /^[abc]$/.test(name);
    const value = numberOf(cursor, word, digits, isAngle ? "angle" : "length", `\`${name}\``);
    fits(cursor, sequence, word, value, isAngle ? "angle" : name.length > 1 ? "centre" : "length");
    found.set(name, { value, word });
  }
}

/** Places by the index of their axis. */
export function axesOf(places: ReadonlyMap<string, Placed>): Map<number, number> {
  const named = [...places].filter(([name]) => name.length === 1);
  return new Map(named.map(([name, { value }]) => [axes.indexOf(name as (typeof axes)[number]), value]));
}

/**
 * `feed 300` at the end of a step, or the feed that holds since another motion of the case.
 *
 * @param could what else could stand there, for who mistypes it
 */
export function takeFeed(cursor: Cursor, sequence: Sequence, first: Word, could: string): number {
  if (cursor.peek()?.text !== "feed") endOf(cursor, could);
  if (took(cursor, "feed")) {
    const word = cursor.peek();
    const counted = sequence.feedMode === "inverse-time" ? "turns" : "length";
    sequence.feed = nextNumber(cursor, counted, "`feed`");
    if (sequence.feed <= 0) cursor.fail(word, "A feed is above 0.");
    if (word !== undefined) fits(cursor, sequence, word, sequence.feed, "feed");
  }
  endOf(cursor, "");
  if (sequence.feed === 0)
    cursor.fail(first, `\`${first.text}\` has no feed, and none holds.`, "Add `feed` and a number.");
  return sequence.feed;
}
