import { describe, expect, test } from "vitest";
import type { MachineFacts } from "#base";
import { find, setMove } from "./break.ts";
import { machineFacts, jobFacts, toolFacts } from "./facts.ts";
import { mm, offsetOf } from "./layout.ts";
import type { Item } from "./layout.ts";
import { holes, move, step } from "./pieces.ts";
import { guardItems } from "./run.ts";
import { controllerSwap, inverseTime, perRevolution, rackSwap, withBody } from "./sequences.ts";
import type { Sequence } from "./sequences.ts";

/*
 * The highest feed of each axis: what an axis really does in a motion, worked out by hand, is allowed as its limit and
 * refused one mm/min below.
 */

type Axis = "x" | "y" | "z";

interface Case {
  readonly what: string;
  readonly axis: Axis;
  /** Speed of the axis at its highest, mm/min. */
  readonly speed: number;
  /** A sequence of which no other motion takes the axis faster. */
  readonly make: (changes: Partial<MachineFacts>) => Sequence;
}

const mill = { tool: 1, rpm: 16000, x: 10, y: 20 };
const down = [move({ kind: "rapid", z: 2 }), move({ kind: "line", z: 0, feed: 1 })];
const up = move({ kind: "rapid", z: 15 });
const body = (changes: Partial<MachineFacts>, ...items: Item[]): Sequence =>
  withBody(mill, [...down, ...items, up], changes);

const cases: readonly Case[] = [
  {
    what: "a plunge",
    axis: "z",
    speed: 200,
    make: (changes) => body(changes, move({ kind: "line", z: -2, feed: 200 })),
  },
  {
    what: "a line aslant: 2, 2 and 1 of 3",
    axis: "z",
    speed: 300,
    make: (changes) => body(changes, move({ kind: "line", x: 12, y: 18, z: -1, feed: 900 })),
  },
  {
    what: "the same in X",
    axis: "x",
    speed: 600,
    make: (changes) => body(changes, move({ kind: "line", x: 12, y: 18, z: -1, feed: 900 })),
  },
  {
    // From 225 to 135 degrees clockwise past 180: only there Y has the whole feed.
    what: "the middle of an arc",
    axis: "y",
    speed: 800,
    make: (changes) =>
      body(changes, move({ kind: "arcXy", x: 10, y: 40, c1: 20, c2: 30, turns: -1, feed: 800 })),
  },
  {
    // The same arc never goes along X at more than sin 45 degrees.
    what: "the ends of an arc",
    axis: "x",
    speed: 800 * Math.SQRT1_2,
    make: (changes) =>
      body(changes, move({ kind: "arcXy", x: 10, y: 40, c1: 20, c2: 30, turns: -1, feed: 800 })),
  },
  {
    // Two turns of radius 10 down by 2: 125.66 round; 2 / hypot(125.66, 2) of the feed.
    what: "a helix of two turns",
    axis: "z",
    speed: (6000 * 2) / Math.hypot(40 * Math.PI, 2),
    make: (changes) => body(changes, move({ kind: "arcXy", z: -2, c1: 20, c2: 20, turns: 2, feed: 6000 })),
  },
  {
    // A turn and a quarter: 2.5 pi times 10 round, 2 down.
    what: "a helix of a turn and a quarter",
    axis: "z",
    speed: (6000 * 2) / Math.hypot(25 * Math.PI, 2),
    make: (changes) =>
      body(changes, move({ kind: "arcXy", x: 20, y: 10, z: -2, c1: 20, c2: 20, turns: 2, feed: 6000 })),
  },
  {
    what: "an arc in ZX",
    axis: "z",
    speed: 500,
    make: (changes) =>
      body(
        changes,
        step({ kind: "plane", value: "zx" }),
        move({ kind: "arcZx", x: 14, c1: 0, c2: 12, turns: 1, feed: 500 }),
        step({ kind: "plane", value: "xy" }),
      ),
  },
  {
    what: "a fixed cycle",
    axis: "z",
    speed: 120,
    make: (changes) => withBody(mill, [...holes({}, [[20, 20]], 120), up], changes),
  },
  {
    what: "feed a revolution",
    axis: "x",
    speed: 1000,
    make: (changes) => {
      const sequence = perRevolution();
      return { ...sequence, facts: { ...sequence.facts, ...changes } };
    },
  },
  {
    what: "inverse time, 4 mm in a fiftieth of a minute",
    axis: "z",
    speed: 200,
    make: (changes) => {
      const sequence = inverseTime();
      return { ...sequence, facts: { ...sequence.facts, ...changes } };
    },
  },
  {
    what: "the way down into a pocket, in machine coordinates",
    axis: "z",
    speed: 600,
    make: (changes) => rackSwap(changes),
  },
];

/** The axis is limited to its speed, give or take some mm/min. */
function told(one: Case, more: number) {
  const most = mm(1e6);
  const axisFeed = { x: most, y: most, z: most, [one.axis]: mm(one.speed + more) };
  const sequence = one.make({ axisFeed, feed: { least: 0, most } });
  const findings = guardItems(sequence, 4096);
  expect(guardItems(sequence, 1), "the same however the rows are batched").toEqual(findings);
  return findings.filter(({ rule }) => rule === "limit/feed");
}

describe("the highest feed of an axis", () => {
  test.each(cases)("$what", (one) => {
    expect(told(one, 0.01)).toEqual([]);
    const [finding, ...others] = told(one, -2);
    // A tool that is picked or put away is a new start, so that it is told for each.
    for (const other of others) expect(other.message).toBe(finding?.message);
    expect(finding?.severity).toBe("error");
    expect(finding?.key).toBe(`machine.axis-feed.${one.axis}`);
    expect(finding?.message).toMatch(
      new RegExp(
        `^${one.axis.toUpperCase()} goes at [\\d.]+ mm/min in this motion, 2(\\.\\d+)? mm/min above its most`,
      ),
    );
  });

  test("the way out is a feed that is then allowed", () => {
    const aslant = (feed: number): Sequence =>
      body({ axisFeed: { z: mm(250) } }, move({ kind: "line", x: 12, y: 18, z: -1, feed }));
    const [finding] = guardItems(aslant(900)).filter(({ rule }) => rule === "limit/feed");
    expect(finding?.fix).toBe("Use a feed of 750 mm/min or less here.");
    expect(guardItems(aslant(750)).filter(({ rule }) => rule === "limit/feed")).toEqual([]);
  });

  test("is told once, and again only where a motion is further out", () => {
    const plunges = [300, 250, 400].flatMap((feed, index) => [
      move({ kind: "line", z: -2 - index, feed }, `plunge ${index}`),
      move({ kind: "line", x: 11 + index, feed: 200 }),
    ]);
    const sequence = body({ axisFeed: { z: mm(200) } }, ...plunges);
    const found = guardItems(sequence).filter(({ rule }) => rule === "limit/feed");
    expect(found.map(({ place }) => place?.offset)).toEqual(
      ["plunge 0", "plunge 2"].map((name) => offsetOf(find(sequence, name))),
    );
  });
});

describe("travel where machine moves name the tip of the tool", () => {
  const retract = { ...machineFacts().retract!, actsOn: "tool-tip" } as const;
  const raised = (z: number): Partial<MachineFacts> => ({
    retract,
    travel: { ...machineFacts().travel, z: [mm(-95), mm(z)] },
  });
  const travels = (z: number, length = 40): string[] => {
    const job = jobFacts({ tools: [toolFacts(1, { length: mm(length) }), toolFacts(2, { length: mm(20) })] });
    const findings = guardItems({ ...controllerSwap(raised(z)), job });
    return findings.filter(({ rule }) => rule === "limit/travel").map(({ message }) => message);
  };

  test("the nose goes above the tip by the tool's length while its offset is active", () => {
    expect(travels(40)).toEqual([]);
    expect(travels(39)).toEqual([
      "Z goes to 40 mm in machine coordinates, 1 mm past the end of travel at 39 mm.",
    ]);
  });

  test("and by nothing where machine moves name the nose", () => {
    const sequence = controllerSwap({ travel: { ...machineFacts().travel, z: [mm(-95), 0] } });
    expect(guardItems(sequence).filter(({ rule }) => rule === "limit/travel")).toEqual([]);
  });
});

test("a limit that no motion reaches changes nothing", () => {
  const limited = controllerSwap({ axisFeed: { x: mm(6000), y: mm(6000), z: mm(6000) } });
  expect(guardItems(limited)).toEqual(guardItems(controllerSwap()));
  expect(guardItems(setMove(limited, "cut", { feed: 5999 }))).toEqual(guardItems(controllerSwap()));
});
