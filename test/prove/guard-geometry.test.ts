import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { createBatch, linearAxes, rowKind } from "#base";
import type { Batch, Finding } from "#base";
import { createGuard } from "#prove";
import { find } from "./break.ts";
import { jobFacts, machineFacts, toolFacts } from "./facts.ts";
import { layOut, mm } from "./layout.ts";
import type { Move } from "./layout.ts";
import { move } from "./pieces.ts";
import { guardItems } from "./run.ts";
import { controllerSwap, withBody } from "./sequences.ts";

const mill = { tool: 1, rpm: 16000, x: 10, y: 20 };

/** Gives batches rotary columns that hold nothing, so that the guard takes a closer look at every row. */
function withRotary(batch: Batch): Batch {
  const size = batch.kind.length;
  return { ...batch, abc: [new Float64Array(size), new Float64Array(size), new Float64Array(size)] };
}

const place = fc.record({
  x: fc.integer({ min: -20, max: 140 }),
  y: fc.integer({ min: -20, max: 110 }),
  z: fc.integer({ min: -14, max: 18 }),
});
const rows = fc.array(
  fc.record({
    place,
    sort: fc.constantFrom(rowKind.rapid, rowKind.line, rowKind.arcXy),
    off: fc.constantFrom(0, 0, 0, 0.0005, 1),
    turns: fc.constantFrom(-1, 1),
    one: fc.nat(3),
    feed: fc.constantFrom(0, 100, 800, 6001),
  }),
  { minLength: 1, maxLength: 60 },
);

type Rows = typeof rows extends fc.Arbitrary<infer T> ? T : never;

/** Rapids, lines and arcs that move one axis or all. */
function batchOf(list: Rows): Batch {
  const batch = createBatch(list.length);
  const at = { x: 10, y: 20, z: 15 };
  list.forEach(({ place: to, sort, one, feed, off, turns }, row) => {
    const from = { ...at };
    if (one === 0 || one === 3) at.x = to.x;
    if (one === 1 || one === 3) at.y = to.y;
    if (one === 2 || one === 3) at.z = to.z;
    batch.kind[row] = sort;
    batch.known[row] = batch.stated[row] = linearAxes;
    batch.x[row] = mm(at.x);
    batch.y[row] = mm(at.y);
    batch.z[row] = mm(at.z);
    batch.feed[row] = sort === rowKind.rapid ? 0 : mm(feed);
    if (sort === rowKind.arcXy) {
      // About the middle between its ends, or beside it.
      batch.c1[row] = mm((from.x + at.x) / 2 + off);
      batch.c2[row] = mm((from.y + at.y) / 2);
      batch.turns[row] = turns;
    }
    batch.aside[row] = -1;
    batch.source[row] = 10_000 + row;
  });
  batch.count = list.length;
  return batch;
}

test("the fast way over columns finds what the closer look finds", () => {
  const sequence = controllerSwap();
  const boxes = [
    { name: "post", min: [mm(320), mm(215), mm(-95)], max: [mm(330), mm(225), mm(-75)] } as const,
  ];
  const head = sequence.items.slice(0, find(sequence, "approach z") + 1);
  const guard = (facts: ReturnType<typeof machineFacts>, batches: Batch[]): Finding[] => {
    const findings: Finding[] = [];
    const watch = createGuard(facts, jobFacts(), (finding) => findings.push(finding), "job");
    for (const batch of batches) watch.accept(batch);
    return findings;
  };
  fc.assert(
    fc.property(
      rows,
      fc.constantFrom("straight" as const, "dog-leg" as const),
      fc.boolean(),
      fc.constantFrom({}, { z: mm(90) }, { x: mm(799), y: mm(500) }),
      (list, rapids, boxed, axisFeed) => {
        const facts = machineFacts({ rapids, axisFeed, keepOut: boxed ? boxes : [] });
        const start = layOut(head, facts);
        const body = batchOf(list);
        expect(guard(facts, [...start, body])).toEqual(guard(facts, [...start, withRotary(body)]));
      },
    ),
    { numRuns: 400 },
  );
});

/** Places along a motion in XY, densely. */
function* along(from: [number, number], to: Move): Generator<[number, number]> {
  const radius = Math.hypot(from[0] - to.c1!, from[1] - to.c2!);
  const first = Math.atan2(from[1] - to.c2!, from[0] - to.c1!);
  const last = Math.atan2(to.y! - to.c2!, to.x! - to.c1!);
  const sense = Math.sign(to.turns!);
  let sweep = (sense * (last - first)) % (2 * Math.PI);
  if (sweep <= 1e-12) sweep += 2 * Math.PI;
  for (let share = 0; share <= 2000; share++) {
    const angle = first + (sense * sweep * share) / 2000;
    yield [to.c1! + radius * Math.cos(angle), to.c2! + radius * Math.sin(angle)];
  }
}

describe("arcs against places along them", () => {
  const arc = fc.record({
    radius: fc.integer({ min: 2, max: 30 }),
    start: fc.nat(359),
    sweep: fc.integer({ min: 5, max: 355 }),
    ccw: fc.boolean(),
  });
  const turned = ({
    radius,
    start,
    sweep,
    ccw,
  }: {
    radius: number;
    start: number;
    sweep: number;
    ccw: boolean;
  }): { from: [number, number]; to: Move } => {
    const point = (degrees: number): [number, number] => [
      60 + radius * Math.cos((degrees * Math.PI) / 180),
      60 + radius * Math.sin((degrees * Math.PI) / 180),
    ];
    const [x, y] = point(start + (ccw ? sweep : -sweep));
    return {
      from: point(start),
      to: { kind: "arcXy", x, y, c1: 60, c2: 60, turns: ccw ? 1 : -1, feed: 600 },
    };
  };

  test("keep-out boxes", () => {
    fc.assert(
      fc.property(
        arc,
        fc.integer({ min: 20, max: 95 }),
        fc.integer({ min: 20, max: 95 }),
        fc.integer({ min: 2, max: 12 }),
        (shape, x, y, size) => {
          const { from, to } = turned(shape);
          const inside = (margin: number): boolean =>
            [...along(from, to)].some(
              ([px, py]) =>
                px > x + margin && px < x + size - margin && py > y + margin && py < y + size - margin,
            );
          // Close to a corner or an edge the places along it do not decide.
          if (inside(-0.05) !== inside(0.05)) return;
          const facts = machineFacts({
            keepOut: [
              {
                name: "post",
                min: [mm(300.5 + x), mm(200.5 + y), mm(-95)],
                max: [mm(299.5 + x + size), mm(199.5 + y + size), mm(-75)],
              },
            ],
          });
          const body = [
            move({ kind: "rapid", x: from[0], y: from[1] }),
            move({ kind: "line", z: 4, feed: 200 }),
            move(to, "arc"),
            move({ kind: "rapid", z: 15 }),
          ];
          // The box is smaller by the radius of the tool, so that its centre stays out of what the places are held against.
          const job = jobFacts({ tools: [toolFacts(1, { diameter: mm(1) })] });
          const sequence = { ...withBody(mill, body, {}, job), facts };
          const at = 100 + 10 * find(sequence, "arc");
          const told = guardItems(sequence).some(
            (finding) => finding.rule === "limit/keep-out" && finding.place?.offset === at,
          );
          expect(told).toBe(inside(0));
        },
      ),
      { numRuns: 300 },
    );
  });

  test("ends of travel", () => {
    fc.assert(
      fc.property(arc, fc.integer({ min: 31, max: 89 }), (shape, end) => {
        const { from, to } = turned(shape);
        const most = Math.max(...[...along(from, to)].map(([px]) => px));
        if (Math.abs(most - end) < 0.01 || from[0] > end || to.x! > end) return;
        const facts = { travel: { x: [0, mm(300 + end)] }, park: undefined } as const;
        const body = [
          move({ kind: "rapid", x: from[0], y: from[1] }),
          move(to),
          move({ kind: "rapid", z: 15 }),
        ];
        const told = guardItems(withBody(mill, body, facts)).some(({ rule }) => rule === "limit/travel");
        expect(told).toBe(most > end);
      }),
      { numRuns: 300 },
    );
  });
});

describe("rapids and the stock", () => {
  const rapidFrom = (from: Move, to: Move, rapids: "straight" | "dog-leg"): string[] => {
    const body = [
      move({ kind: "rapid", x: from.x!, y: from.y! }),
      move({ kind: "line", z: from.z!, feed: 200 }),
      move(to, "rapid"),
      move({ kind: "rapid", z: 15 }),
    ];
    const sequence = { ...withBody(mill, body), facts: machineFacts({ rapids }) };
    return guardItems(sequence).map(({ rule }) => rule);
  };
  const stock = ["motion/rapid-in-stock"];

  test("past a corner: straight it passes, as a dog-leg it may not", () => {
    const from = { kind: "line", x: -20, y: 70, z: -5 } as const;
    const to = { kind: "rapid", x: 20, y: 120 } as const;
    expect(rapidFrom(from, to, "straight")).toEqual([]);
    expect(rapidFrom(from, to, "dog-leg")).toEqual(stock);
  });
  test("over the top, at the top, and below it", () => {
    const over = (z: number): string[] =>
      rapidFrom({ kind: "line", x: -5, y: 40, z }, { kind: "rapid", x: 105 }, "dog-leg");
    expect(over(1)).toEqual([]);
    expect(over(0)).toEqual([]);
    expect(over(-0.1)).toEqual(stock);
  });
  test("along the edge outside", () => {
    const along = (x: number, rapids: "straight" | "dog-leg"): string[] =>
      rapidFrom({ kind: "line", x, y: -10, z: -5 }, { kind: "rapid", y: 90 }, rapids);
    for (const rapids of ["straight", "dog-leg"] as const) {
      expect(along(-3.1, rapids)).toEqual([]);
      expect(along(-2.9, rapids), "nearer than the radius of 3 mm").toEqual(stock);
    }
  });
  test("past a corner the distance counts, not that of each axis", () => {
    // From the corner at 0, 80 the straight way at 45 degrees keeps the sum of both distances by the root of 2.
    const past = (sum: number, rapids: "straight" | "dog-leg"): string[] =>
      rapidFrom(
        { kind: "line", x: -5, y: 85 + sum - 10, z: -5 },
        { kind: "rapid", x: 0, y: 80 + sum },
        rapids,
      );
    expect(past(4.3, "straight")).toEqual([]);
    expect(past(4.1, "straight")).toEqual(stock);
    expect(rapidFrom({ kind: "line", x: -2.2, y: 82.2, z: -5 }, { kind: "rapid", y: 90 }, "dog-leg")).toEqual(
      [],
    );
    expect(rapidFrom({ kind: "line", x: -2, y: 82, z: -5 }, { kind: "rapid", y: 90 }, "dog-leg")).toEqual(
      stock,
    );
  });
  test("straight up and sideways, rising out of it", () => {
    expect(
      rapidFrom({ kind: "line", x: 50, y: 40, z: -5 }, { kind: "rapid", x: 60, z: 10 }, "straight"),
    ).toEqual(stock);
  });
  test("down beside it", () => {
    expect(rapidFrom({ kind: "line", x: -5, y: 40, z: 5 }, { kind: "rapid", z: -12 }, "dog-leg")).toEqual([]);
    const nearer = { kind: "line", x: -2.9, y: 40, z: 5 } as const;
    expect(rapidFrom(nearer, { kind: "rapid", z: -12 }, "dog-leg")).toEqual(stock);
  });
});
