import { describe, expect, test } from "vitest";
import { planReloads } from "../../core/4-sequence/reload-plan.ts";
import type { RackNeeds, ReloadPlan } from "../../core/4-sequence/reload-plan.ts";

const never = (): boolean => false;

/** Sequences of tools up to their names: 1 comes first, and each new tool has the next number. */
function* sequences(
  length: number,
  most: number,
  begun: readonly number[] = [],
): Generator<readonly number[]> {
  if (begun.length === length) {
    yield begun;
    return;
  }
  const next = Math.min(most, Math.max(0, ...begun) + 1);
  for (let tool = 1; tool <= next; tool++) yield* sequences(length, most, [...begun, tool]);
}

/** Every way to load pockets with tools of 1 to `most`, empty pockets included. */
function racksOf(pockets: number, most: number): number[][] {
  if (pockets === 0) return [[]];
  return racksOf(pockets - 1, most).flatMap((rack) =>
    Array.from({ length: most + 1 }, (_, tool) => tool)
      .filter((tool) => tool === 0 || !rack.includes(tool))
      .map((tool) => [...rack, tool]),
  );
}

const isAllowed = ({ clash }: RackNeeds, rack: readonly number[]): boolean =>
  rack.every((tool, pocket) =>
    rack.every((other, at) => at <= pocket || tool === 0 || other === 0 || !clash(pocket, tool, at, other)),
  );

/**
 * The fewest stops that there can be, by trying everything: behind each operation any rack may be in the machine, at the price of one
 * stop more than the cheapest had before. Infinite where no rack holds a tool.
 */
function fewest(needs: RackNeeds, racks: readonly (readonly number[])[]): number {
  const allowed = racks.filter((rack) => isAllowed(needs, rack));
  const same = (rack: readonly number[]): boolean => rack.every((tool, at) => tool === (needs.now[at] ?? 0));
  let prices = allowed.map((rack) => (needs.startsAsIs && !same(rack) ? Infinity : 0));
  for (const tool of needs.uses) {
    const cheapest = Math.min(...prices);
    const before = prices;
    prices = allowed.map((rack, at) => (rack.includes(tool) ? Math.min(before[at], cheapest + 1) : Infinity));
    // With the rack as it was, or loaded anew before this operation.
  }
  return Math.min(...prices);
}

/** Follows a plan as a machine would; what is wrong with it. */
function follow(needs: RackNeeds, { start, reloads }: ReloadPlan): string[] {
  const faults: string[] = [];
  let rack = start;
  needs.uses.forEach((tool, operation) => {
    const reload = reloads.find(({ before }) => before === operation);
    if (reload) rack = reload.rack;
    if (!rack.includes(tool)) faults.push(`tool ${tool} is not there`);
    if (!isAllowed(needs, rack)) faults.push("tools touch");
    const filled = rack.filter((one) => one !== 0);
    if (new Set(filled).size !== filled.length) faults.push("a tool is there twice");
    if (rack.length !== needs.pockets) faults.push("another number of pockets");
  });
  return faults;
}

/** Each case by plan and by trying everything. */
function compareAll(cases: Iterable<RackNeeds>, racks: (needs: RackNeeds) => readonly (readonly number[])[]) {
  const counted = { cases: 0, worse: 0, better: 0, faulty: 0 };
  for (const needs of cases) {
    counted.cases++;
    const plan = planReloads(needs);
    const stops = plan.stuck === undefined ? plan.reloads.length : Infinity;
    const least = fewest(needs, racks(needs));
    if (stops > least) counted.worse++;
    if (stops < least) counted.better++;
    if (plan.stuck === undefined && follow(needs, plan).length > 0) counted.faulty++;
  }
  return counted;
}

const cached = new Map<string, number[][]>();

/** Racks by their content, in rising order: without neighbours that touch, places do not matter. */
function contents(pockets: number, most: number): number[][] {
  const key = `${pockets} ${most}`;
  const rising = (rack: readonly number[]): boolean =>
    rack.every((tool, at) => at === 0 || tool === 0 || (rack[at - 1] !== 0 && rack[at - 1] < tool));
  const known = cached.get(key) ?? racksOf(pockets, most).filter(rising);
  cached.set(key, known);
  return known;
}

const needs = (changes: Partial<RackNeeds>): RackNeeds => ({
  uses: [],
  held: 0,
  pockets: 3,
  now: [],
  startsAsIs: false,
  clash: never,
  ...changes,
});

describe("as few stops as there can be", () => {
  test("all cases of up to 6 tools, 3 pockets and 9 operations, loaded before the start", () => {
    function* cases(): Generator<RackNeeds> {
      for (let length = 1; length <= 9; length++)
        for (const uses of sequences(length, 6))
          for (let pockets = 1; pockets <= 3; pockets++) yield needs({ uses, pockets });
    }
    const counted = compareAll(cases(), ({ pockets }) => contents(pockets, 6));
    console.log("all cases,", counted);
    expect(counted).toEqual({ cases: counted.cases, worse: 0, better: 0, faulty: 0 });
    // Restricted growth strings of length 1 to 9 with at most 6 blocks, three times.
    expect(counted.cases).toBe(3 * (1 + 2 + 5 + 15 + 52 + 203 + 876 + 4111 + 20648));
  });

  test("from every rack that may be there and is not loaded before: up to 6 tools, 3 pockets, 6 operations", () => {
    function* cases(): Generator<RackNeeds> {
      for (let length = 1; length <= 6; length++)
        for (const uses of sequences(length, 6))
          for (let pockets = 1; pockets <= 3; pockets++)
            for (const now of contents(pockets, 6)) yield needs({ uses, pockets, now, startsAsIs: true });
    }
    const counted = compareAll(cases(), ({ pockets }) => contents(pockets, 6));
    console.log("all cases that start as they are,", counted);
    expect(counted).toEqual({ cases: counted.cases, worse: 0, better: 0, faulty: 0 });
  });

  test("with every choice of wide tools, which touch each other or anything beside them: up to 4 tools, 3 pockets, 6 operations", () => {
    function* cases(): Generator<RackNeeds> {
      for (let length = 1; length <= 6; length++)
        for (const uses of sequences(length, 4))
          for (let wide = 0; wide < 16; wide++)
            for (const least of [1, 2]) {
              const isWide = (tool: number): number => (wide >> (tool - 1)) & 1;
              const clash: RackNeeds["clash"] = (pocket, tool, at, other) =>
                Math.abs(pocket - at) === 1 && isWide(tool) + isWide(other) >= least;
              yield needs({ uses, clash });
            }
    }
    const all = racksOf(3, 4);
    const counted = compareAll(cases(), () => all);
    console.log("all cases with wide tools,", counted);
    expect(counted).toEqual({ cases: counted.cases, worse: 0, better: 0, faulty: 0 });
  });
});

describe("which tools stay", () => {
  test("as many tools as pockets are loaded in order of first use, and nothing stops", () => {
    const plan = planReloads(needs({ uses: [5, 2, 5, 9] }));
    expect(plan).toEqual({ start: [5, 2, 9], reloads: [], stuck: undefined });
  });

  test("one stop exchanges all that is needed behind it, and no more", () => {
    const { start, reloads } = planReloads(needs({ uses: [1, 2, 3, 1, 4, 5, 1] }));
    expect(start).toEqual([1, 2, 3]);
    expect(reloads).toEqual([{ before: 4, rack: [1, 4, 5] }]);
  });

  test("the tool leaves that is used again last", () => {
    // Tools 4 and 6 are nowhere together, so that tool 4 needs one pocket of three alone: of 1, 2 and 3, 1 is used last.
    const clash: RackNeeds["clash"] = (_pocket, tool, _at, other) => tool + other === 10 && tool !== other;
    const { reloads } = planReloads(needs({ uses: [1, 2, 3, 4, 6, 2, 3, 1], clash }));
    expect(reloads).toEqual([
      { before: 3, rack: [4, 2, 3] },
      { before: 4, rack: [6, 2, 3] },
      { before: 7, rack: [1, 2, 3] },
    ]);
  });

  test("what is in the rack stays in its place, empty pockets are filled first", () => {
    const { start } = planReloads(needs({ uses: [1, 2], now: [7, 2, 0] }));
    expect(start).toEqual([7, 2, 1]);
    const { start: full } = planReloads(needs({ uses: [1, 2], now: [7, 2, 8] }));
    expect(full).toEqual([1, 2, 8]);
  });

  test("the tool in the spindle keeps a pocket until it has gone back", () => {
    const { start, reloads } = planReloads(needs({ uses: [1, 2, 3], held: 9 }));
    expect(start).toEqual([1, 2, 9]);
    expect(reloads).toEqual([{ before: 2, rack: [3, 2, 9] }]);
  });

  test("a wide tool gets room beside it", () => {
    const clash: RackNeeds["clash"] = (pocket, tool, at, other) =>
      Math.abs(pocket - at) === 1 && (tool === 2 || other === 2);
    expect(planReloads(needs({ uses: [1, 2], clash })).start).toEqual([1, 0, 2]);
    expect(planReloads(needs({ uses: [2, 1], now: [0, 1, 0], clash })).start).toEqual([2, 0, 1]);
  });

  test("a tool that no pocket takes is named", () => {
    expect(planReloads(needs({ uses: [1], pockets: 0 })).stuck).toBe(0);
  });

  test("thousands of operations and a long rack take no time to speak of", () => {
    const uses = Array.from({ length: 5000 }, (_, index) => ((index * 7919) % 97) + 1);
    const before = performance.now();
    expect(planReloads(needs({ uses, pockets: 60 })).stuck).toBeUndefined();
    expect(performance.now() - before).toBeLessThan(2000);
  });
});
