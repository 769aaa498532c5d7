import { describe, expect, test } from "vitest";
import { createBatch, linearAxes, pushAside, rowKind } from "#base";
import type { Batch, MachineFacts, Step, Times } from "#base";
import { createClock, timeOf } from "#time";
import { jobFacts, machineFacts } from "../prove/facts.ts";
import { mm } from "../prove/layout.ts";
import { seeded } from "../support/seeded.ts";
import { simulateFeeds, simulateRapid } from "./simulate.ts";
import type { Path, Triple } from "./simulate.ts";

/** Rates of a router of our own, mm and s. */
const acceleration: Triple = [500, 400, 250];
const rates: Triple = [200, 180, 70];

const byAxis = (values: Triple, factor: number) => ({
  x: mm(values[0] * factor),
  y: mm(values[1] * factor),
  z: mm(values[2] * factor),
});

function machineOf(changes: Partial<MachineFacts> = {}): MachineFacts {
  const { dynamics } = machineFacts();
  const known = { rapidRate: byAxis(rates, 60), acceleration: byAxis(acceleration, 1) };
  return machineFacts({ dynamics: { ...dynamics, ...known }, ...changes });
}

/** A row of a test: a rapid, a line or an arc in XY, millimetres, or a step. */
interface Row {
  readonly kind?: keyof typeof rowKind;
  readonly to?: Triple;
  readonly feed?: number;
  readonly centre?: readonly [number, number];
  readonly turns?: number;
  readonly step?: Step;
}

function batchOf(rows: readonly Row[]): Batch {
  const batch = createBatch(rows.length);
  for (const { kind = "line", to = [0, 0, 0], feed = 0, centre = [0, 0], turns = 0, step } of rows) {
    if (step) {
      pushAside(batch, step, 0);
      continue;
    }
    const row = batch.count++;
    batch.kind[row] = rowKind[kind];
    batch.known[row] = batch.stated[row] = linearAxes;
    batch.x[row] = mm(to[0]);
    batch.y[row] = mm(to[1]);
    batch.z[row] = mm(to[2]);
    batch.feed[row] = mm(feed);
    batch.c1[row] = mm(centre[0]);
    batch.c2[row] = mm(centre[1]);
    batch.turns[row] = turns;
    batch.aside[row] = -1;
  }
  return batch;
}

const operation = { id: "op10", name: "", tool: 1, source: 0 };

function timed(rows: readonly Row[], machine = machineOf()): Times {
  const clock = createClock(machine, jobFacts(), [operation]);
  clock.accept(batchOf(rows));
  return clock.end();
}

const pathStep = (value: "exact" | "stop" | "blend", tolerance?: number): Row => ({
  step: { kind: "path", value, ...(tolerance === undefined ? {} : { tolerance: mm(tolerance) }) },
});
const begin: Row = { kind: "rapid", to: [0, 0, 0] };

describe("one motion by its formula", () => {
  test.each([
    [300, 0, 0, 250, 1000, 1.45],
    [20, 0, 0, 250, 1000, 0.2828],
    [50, 20, 40, 100, 500, 0.6],
    [5, 20, 40, 100, 500, 0.1166],
  ])("%d mm from %d to %d mm/s at %d mm/s and %d mm/s2", (length, entry, exit, speed, rate, seconds) => {
    expect(timeOf(length, entry, exit, speed, rate)).toBeCloseTo(seconds, 4);
  });

  test("a helix of one turn, radius 10, 2 mm down at 600 mm/min, without acceleration: 6.286 s", () => {
    const machine = machineOf({ dynamics: machineFacts().dynamics });
    const times = timed(
      [begin, { kind: "arcXy", to: [0, 0, -2], centre: [10, 0], turns: 1, feed: 600 }],
      machine,
    );
    expect(times.cutting).toBeCloseTo(6.286, 3);
    expect(times.basis).toBe("feeds");
    expect(times.assumptions.join(" ")).toContain("Times come from feeds alone");
  });
});

/** A random path of lines, arcs and helices that often follow on one another smoothly. */
function randomPath(random: () => number, count: number): { rows: Row[]; paths: Path[] } {
  const between = (least: number, most: number): number => least + (most - least) * random();
  const rows: Row[] = [];
  const paths: Path[] = [];
  let at: Triple = [0, 0, 0];
  let heading = between(0, 2 * Math.PI);
  for (let index = 0; index < count; index++) {
    const feed = between(5, 100);
    if (random() < 0.5) heading += between(-3, 3);
    if (random() < 0.6) {
      const length = random() < 0.5 ? between(0.05, 2) : between(2, 60);
      const to: Triple = [
        at[0] + length * Math.cos(heading),
        at[1] + length * Math.sin(heading),
        at[2] + (random() < 0.3 ? between(-3, 3) : 0),
      ];
      rows.push({ to, feed: feed * 60 });
      paths.push({ points: [at, to], feed });
      at = to;
      continue;
    }
    const sense = random() < 0.5 ? 1 : -1;
    const radius = between(0.5, 30);
    const angle = between(0.1, 6.2);
    const drop = random() < 0.4 ? between(-4, 4) : 0;
    const first = heading - (sense * Math.PI) / 2;
    const centre = [at[0] - radius * Math.cos(first), at[1] - radius * Math.sin(first)] as const;
    const steps = 3000;
    const points = Array.from({ length: steps + 1 }, (_, step): Triple => {
      const turned = first + (sense * angle * step) / steps;
      return [
        centre[0] + radius * Math.cos(turned),
        centre[1] + radius * Math.sin(turned),
        at[2] + (drop * step) / steps,
      ];
    });
    const to = points[steps];
    rows.push({ kind: "arcXy", to, feed: feed * 60, centre, turns: sense });
    paths.push({ points, feed, arc: { radius, plane: [0, 1] } });
    heading += sense * angle;
    at = to;
  }
  return { rows, paths };
}

describe("within 1 % of a simulation in steps of time", () => {
  test.each([
    ["stopping at each end", pathStep("stop"), undefined],
    ["exact", pathStep("exact"), 0],
    ["blended within 0.1 mm", pathStep("blend", 0.1), 0.1],
    ["blended within 0.005 mm", pathStep("blend", 0.005), 0.005],
  ] as const)("random lines, arcs and helices, %s", (_, mode, deviation) => {
    const random = seeded(1234);
    let worst = 0;
    for (let run = 0; run < 40; run++) {
      const { rows, paths } = randomPath(random, 2 + Math.floor(random() * 30));
      const simulated = simulateFeeds(paths, acceleration, deviation);
      const { cutting } = timed([begin, mode, ...rows]);
      worst = Math.max(worst, Math.abs(cutting / simulated - 1));
    }
    expect(worst).toBeLessThan(0.01);
  });

  test.each(["straight", "dog-leg"] as const)("random rapids, %s", (rapids) => {
    const random = seeded(99);
    for (let run = 0; run < 60; run++) {
      const to: Triple = [random() * 300 - 150, random() * 200, random() < 0.5 ? 0 : random() * 40 - 40];
      const { rapid } = timed([begin, { kind: "rapid", to }], machineOf({ rapids }));
      const simulated = simulateRapid(to, rates, acceleration, rapids === "straight");
      expect(Math.abs(rapid / simulated - 1), JSON.stringify(to)).toBeLessThan(0.01);
    }
  });

  test("a program longer than the window, in batches, is that of one batch, and of the simulation", () => {
    const random = seeded(5);
    const count = 9000;
    const points = Array.from({ length: count + 1 }, (_, index): Triple => {
      const angle = index / 300;
      return [40 * Math.cos(angle) + random() * 0.01, 40 * Math.sin(2 * angle) + random() * 0.01, 0];
    });
    const rows = points.slice(1).map((to): Row => ({ to, feed: 6000 }));
    const paths = rows.map((_, index): Path => ({ points: [points[index], points[index + 1]], feed: 100 }));
    const clock = createClock(machineOf(), jobFacts(), [operation]);
    clock.accept(batchOf([{ kind: "rapid", to: points[0] }, pathStep("blend", 0.05)]));
    for (let first = 0; first < count; first += 700) clock.accept(batchOf(rows.slice(first, first + 700)));
    const { cutting } = clock.end();
    const whole = timed([{ kind: "rapid", to: points[0] }, pathStep("blend", 0.05), ...rows]);
    expect(cutting).toBe(whole.cutting);
    // Tightly: a stop at the end of each window would be seen.
    expect(Math.abs(cutting / simulateFeeds(paths, acceleration, 0.05, 2e-5) - 1)).toBeLessThan(0.0005);
  });
});
