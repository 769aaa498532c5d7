import { describe, expect, test } from "vitest";
import { dialectName, weatherPlate } from "../support/examples.ts";
import { quarryRouter } from "../support/dialects.ts";
import { confirmGroups } from "./confirming.ts";

/*
 * What `compare` names as the cause is the cause: the keys of each group are given the other dialect's values in a leaf, which is
 * built and posts, and the comparison with it has none of the group's differences any more. Where the other dialect does not
 * state a key, which no leaf can say, the dialect is written out whole without it.
 */

/** One group of so many is tried, since each is a dialect to be built; TAPEWRIGHT_COMPARE_EVERY=1 tries them all. */
const every = Number(process.env["TAPEWRIGHT_COMPARE_EVERY"] ?? 8);

/** The shipped dialects that can post the example of the workshop, and the kinds of difference at least. */
const others: readonly (readonly [name: string, groups: number])[] = [
  ["explicit-words", 12],
  ["rs274ngc", 38],
  ["din-66025", 48],
  ["staged-tools", 42],
];

describe.each(others)("the router's program and that of %s", (other, least) => {
  test("each difference goes with the keys that are named for it", async () => {
    const confirmations = await confirmGroups({ names: [quarryRouter, other], job: weatherPlate, every });
    const confirmed = confirmations.filter(({ way }) => way !== undefined);
    const ways = [...new Set(confirmed.map(({ way }) => way!))].sort();
    const counts = ways.map((way) => `${confirmed.filter((one) => one.way === way).length} by the ${way}`);
    console.log(
      `${dialectName(quarryRouter)} and ${other}: groups confirmed ${confirmed.length} of ${confirmations.length} (${counts.join(", ")})`,
    );
    const open = confirmations.filter(({ way }) => way === undefined);
    expect(open.map(({ group, tried }) => [group.what, group.keys.map(({ key }) => key), tried])).toEqual([]);
    expect(confirmations.length).toBeGreaterThanOrEqual(Math.floor(least / every));
  }, 600_000);
});
