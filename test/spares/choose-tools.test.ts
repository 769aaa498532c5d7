import { describe, expect, test } from "vitest";
import { chooseTools, hasSpares } from "../../core/spares/choose-tools.ts";
import { toolOf } from "../sequence/jobs.ts";

/** Tool 1 and its spares 2, 3, ..., by their lives; infinite for none stated. */
function familyOf(lives: readonly number[]) {
  return lives.map((life, index) =>
    toolOf(index + 1, "end-mill", {
      life: life === Infinity ? undefined : life,
      ...(index === 0 ? {} : { spareFor: 1 }),
    }),
  );
}

/** Which member of the family does each operation, counted from 0. */
function chosen(lives: readonly number[], times: readonly number[]): number[] {
  const uses = times.map((time) => ({ tool: 1, time }));
  return chooseTools(uses, familyOf(lives)).map((replacement) => (replacement?.by ?? 1) - 1);
}

function* listsOf<T>(length: number, values: readonly T[]): Generator<readonly T[]> {
  if (length === 0) yield [];
  else for (const rest of listsOf(length - 1, values)) for (const value of values) yield [...rest, value];
}

const spentOf = (members: readonly number[], times: readonly number[], member: number): number =>
  times.reduce((sum, time, at) => (members[at] === member ? sum + time : sum), 0);

const isKept = (lives: readonly number[], times: readonly number[], members: readonly number[]): boolean =>
  lives.every((life, member) => spentOf(members, times, member) <= life);

/** Every way to give the operations tools of which none comes back. */
function* assignments(operations: number, members: number, from = 0): Generator<readonly number[]> {
  if (operations === 0) {
    yield [];
    return;
  }
  for (let member = from; member < members; member++)
    for (const rest of assignments(operations - 1, members, member)) yield [member, ...rest];
}

/** The rule as it is told, worked out for one operation from what was chosen before it. */
function asTold(
  lives: readonly number[],
  times: readonly number[],
  before: readonly number[],
  time: number,
): number {
  const inHand = before.at(-1) ?? 0;
  const spent = spentOf(before, times, inHand);
  if (spent + time <= lives[inHand]) return inHand;
  const bears = lives.findIndex((life, member) => member > inHand && time <= life);
  if (bears !== -1) return bears;
  return spent === 0 || inHand === lives.length - 1 ? inHand : inHand + 1;
}

const cases = [1, 2, 3].flatMap((members) =>
  [1, 2, 3, 4, 5].flatMap((operations) =>
    [...listsOf(members, [1, 2, 3, Infinity])].flatMap((lives) =>
      [...listsOf(operations, [0, 1, 2, 4])].map((times) => ({ lives, times })),
    ),
  ),
);

describe("which tool does an operation, against every other choice", () => {
  test("no tool passes its life where that can be, and none is taken before it must", () => {
    let possible = 0;
    for (const { lives, times } of cases) {
      const members = chosen(lives, times);
      const kept = [...assignments(times.length, lives.length)].filter((all) => isKept(lives, times, all));
      if (kept.length === 0) continue;
      possible++;
      const words = JSON.stringify({ lives, times, members });
      expect(isKept(lives, times, members), words).toBe(true);
      for (const other of kept)
        expect(
          members.every((member, at) => member <= other[at]),
          words,
        ).toBe(true);
    }
    // So that a change of the cases that leaves none is seen.
    expect(possible).toBeGreaterThan(20_000);
  });

  test("it is the rule as it is told, also where a life is passed", () => {
    for (const { lives, times } of cases) {
      const members = chosen(lives, times);
      const told = members.map((_, at) => asTold(lives, times, members.slice(0, at), times[at]));
      expect(members, JSON.stringify({ lives, times })).toEqual(told);
    }
  });
});

test("a replacement says from which operation on, and why", () => {
  const uses = [3, 2, 2, 2, 2].map((time, at) => ({ tool: at === 1 ? 9 : 1, time }));
  const [first, other, second, third, fourth] = chooseTools(uses, [
    ...familyOf([4, 4, Infinity]),
    toolOf(9, "drill", { life: 1 }),
  ]);
  expect([first, other]).toEqual([undefined, undefined]);
  const since = { operation: 2, from: 1, spent: 3, takes: 2, life: 4 };
  expect(second).toEqual({ tool: 1, by: 2, since });
  expect(third).toEqual({ tool: 1, by: 2, since });
  expect(fourth).toEqual({ tool: 1, by: 3, since: { operation: 4, from: 2, spent: 4, takes: 2, life: 4 } });
});

test("spares are taken in the order of the list, not of their numbers", () => {
  const [worn, two, three] = familyOf([1, 1, 1]);
  const uses = [1, 1].map((time) => ({ tool: 1, time }));
  expect(chooseTools(uses, [three, worn, two])[1]?.by).toBe(3);
});

test.each([
  ["a life and a spare", [4, 4], true],
  ["a life and no spare", [4], false],
  ["a spare and no life", [Infinity, 4], false],
])("%s", (_, lives, has) => {
  expect(hasSpares(1, familyOf(lives))).toBe(has);
});
