import { describe, expect, test } from "vitest";
import type { MachineFacts, Times } from "#base";
import { createClock } from "#time";
import { jobFacts, machineFacts } from "../prove/facts.ts";
import { layOut, mm } from "../prove/layout.ts";
import type { Item } from "../prove/layout.ts";
import { holes, move, step } from "../prove/pieces.ts";
import { goodSequences, controllerSwap, operatorSwap, pausing, rackSwap } from "../prove/sequences.ts";
import type { Sequence } from "../prove/sequences.ts";

/*
 * Steps that take time, with seconds worked out by hand. The machine: 24,000 rpm in 6 s up and 6 s down (free run 24 s), rapids of
 * 6000 and Z 3000 mm/min; no acceleration unless a test states it, so that ways divide by rates.
 */

const rapidRate = { x: mm(6000), y: mm(6000), z: mm(3000) };
const quick = (changes: Partial<MachineFacts["dynamics"]> = {}): Partial<MachineFacts> => ({
  dynamics: { ...machineFacts().dynamics, rapidRate, ...changes },
});

function timed({ items, facts, job }: Pick<Sequence, "items" | "facts" | "job">, tools = [1]): Times {
  const operations = tools.map((tool, index) => ({ id: `op${index}`, name: "", tool, source: index * 1e6 }));
  const clock = createClock(facts, job, operations);
  for (const batch of layOut(items, facts)) clock.accept(batch);
  return clock.end();
}

const body = (...items: Item[]): Sequence => ({
  items: [move({ kind: "rapid", x: 0, y: 0, z: 10 }), ...items],
  facts: machineFacts(quick()),
  job: jobFacts(),
});

describe("the spindle", () => {
  const speed = (rpm: number): Item => step({ kind: "spindle-speed", rpm: rpm * 1000 });
  const start = step({ kind: "spindle-start", direction: "cw" });
  const stop = step({ kind: "spindle-stop" });
  const atSpeed = step({ kind: "wait", input: 4, level: "on", timeout: 10e6 });
  const stands = step({ kind: "wait", input: 5, level: "on", timeout: 10e6 });
  const settle = step({ kind: "dwell", time: 300_000 });

  test("a wait lasts as long as it takes to come to speed, settling included", () => {
    expect(timed(body(speed(16000), start, settle, atSpeed)).spindle).toBeCloseTo(4, 3);
    expect(timed(body(speed(16000), start, settle, atSpeed, speed(20000), atSpeed)).spindle).toBeCloseTo(
      5,
      3,
    );
    expect(timed(body(speed(16000), start, atSpeed, stop, stands)).spindle).toBeCloseTo(8, 3);
  });

  test("a dwell that confirms counts as it is; one of the job is a dwell", () => {
    const dwell = step({ kind: "dwell", time: 7_000_000 });
    expect(timed(body(speed(16000), start, dwell)).spindle).toBe(7);
    const cut = move({ kind: "line", z: 9, feed: 60 });
    const times = timed(body(speed(16000), start, atSpeed, cut, step({ kind: "dwell", time: 500_000 }), cut));
    expect(times).toMatchObject({ dwell: 0.5, spindle: 4, cutting: 1 });
  });

  test("a controller that holds by itself takes that time, too", () => {
    const confirm = {
      ...machineFacts().confirm,
      "at-speed": { by: "intrinsic", reason: "it holds" },
    } as const;
    const facts = machineFacts({ ...quick(), confirm });
    expect(timed({ ...body(speed(12000), start), facts }).spindle).toBeCloseTo(3, 3);
  });

  test("what is not known is said", () => {
    const { spindle } = machineFacts();
    const facts = machineFacts({ ...quick(), spindle: { ...spindle, spinUp: undefined } });
    const times = timed({ ...body(speed(12000), start, atSpeed), facts });
    expect(times.spindle).toBe(0);
    expect(times.assumptions.join("\n")).toContain("machine.spindle.spin-up is not stated");
  });

  test("a dwell in revolutions and a feed a revolution go by the speed", () => {
    const turns = step({ kind: "dwell", time: 0, revolutions: 3_000_000 });
    const perTurn = step({ kind: "feed-mode", value: "per-revolution" });
    const cut = move({ kind: "line", x: 10, feed: 0.1 });
    const { dwell, cutting } = timed(
      body(perTurn, speed(600), start, atSpeed, cut, turns, move({ kind: "line", x: 0, feed: 0.1 })),
    );
    // 600 rpm: ten a second; 20 mm at 60 mm/min.
    expect(dwell).toBeCloseTo(0.3, 3);
    expect(cutting).toBeCloseTo(20, 3);
  });
});

describe("holes", () => {
  const times = (cycle: Parameters<typeof holes>[0], feed = 600): Times =>
    timed(body(...holes(cycle, [[0, 0]], feed)));

  test("drilling: down to 2 at rapid, 10 mm at feed, out at rapid", () => {
    const { cutting, rapid } = times({});
    expect(cutting).toBeCloseTo(1, 3);
    // 8 down and 10 up at 50 mm/s.
    expect(rapid).toBeCloseTo(18 / 50, 3);
  });

  test("pecks of 4 from the retract level, out each time and back to 0.25 mm above", () => {
    const { cutting, rapid } = times({ cycle: "peck", peck: 4 });
    expect(cutting).toBeCloseTo((4 + 4.25 + 2.25) / 10, 3);
    expect(rapid).toBeCloseTo((8 + 4 + 3.75 + 8 + 7.75 + 10) / 50, 3);
  });

  test("chip breaking backs off by 0.25 mm", () => {
    const { cutting, rapid } = times({ cycle: "chip-break", peck: 4 });
    expect(cutting).toBeCloseTo((4 + 4.25 + 2.25) / 10, 3);
    expect(rapid).toBeCloseTo((8 + 0.5 + 10) / 50, 3);
  });

  test("a dwell at depth; reaming goes out at feed; a tap reverses", () => {
    expect(times({ cycle: "dwell", dwell: 200_000 }).dwell).toBeCloseTo(0.2, 3);
    expect(times({ cycle: "ream" }).cutting).toBeCloseTo(2, 3);
    expect(times({ cycle: "tap" })).toMatchObject({ cutting: 2, spindle: 1 });
  });
});

describe("tools", () => {
  test("the program's own swap takes its ways and waits; what it saves is against the hand", () => {
    const times = timed({ ...rackSwap(quick()), facts: { ...rackSwap(quick()).facts } });
    expect(times.swap).toBeGreaterThan(2);
    expect(times.assumptions.join("\n")).toContain("0.5 s each");
  });

  test("the controller's own change takes what the file says, or what is assumed", () => {
    const one = (changes: Partial<MachineFacts["dynamics"]>): Times => timed(controllerSwap(quick(changes)));
    const said = one({ controllerSwap: 4e6 });
    const assumed = one({});
    expect(assumed.swap - said.swap).toBeCloseTo(2 * (10 - 4), 3);
    expect(assumed.assumptions.join("\n")).toContain("taken to last 10 s");
    expect(said.assumptions.join("\n")).not.toContain("taken to last 10 s");
  });

  test("stops count apart", () => {
    expect(timed(operatorSwap(quick()))).toMatchObject({ stops: 2, optionalStops: 0 });
    const { stops, optionalStops } = timed(pausing());
    expect([stops, optionalStops]).toEqual([1, 1]);
  });
});

test("inverse time takes a part of a minute, whatever moves", () => {
  const mode = step({ kind: "feed-mode", value: "inverse-time" });
  expect(timed(body(mode, move({ kind: "line", x: 10, feed: 20 }))).cutting).toBeCloseTo(3, 3);
});

test("a way from the work to the machine is counted where the shift is known", () => {
  const up = move({ kind: "rapid", machine: true, z: 0 });
  const offset = step({ kind: "work-offset", number: 1 });
  const length = step({ kind: "length-offset", number: 1 });
  const items = [offset, length, move({ kind: "rapid", x: 0, y: 0, z: 10 }), up];
  // Work Z 10 is machine Z 10 - 80 + 40 (the tool); 30 mm to 0 at 50 mm/s.
  expect(timed({ ...body(), items }).rapid).toBeCloseTo(30 / 50, 3);
  expect(timed({ ...body(), items, job: jobFacts({ workOffsets: [] }) }).rapid).toBe(0);
});

test("all parts of all sequences are finite, none is negative, and they add up", () => {
  const accelerated = { acceleration: { x: mm(500), y: mm(500), z: mm(300) }, blending: mm(0.05) };
  for (const [name, make] of Object.entries(goodSequences)) {
    const sequence = make();
    for (const changes of [{}, accelerated]) {
      const facts = { ...sequence.facts, ...quick(changes) };
      const { cutting, rapid, dwell, spindle, swap, total } = timed({ ...sequence, facts });
      for (const part of [cutting, rapid, dwell, spindle, swap])
        expect(Number.isFinite(part) && part >= 0, `${name}: ${part}`).toBe(true);
      expect(total, name).toBeCloseTo(cutting + rapid + dwell + spindle + swap, 2);
    }
  }
});
