import { atomsPerMillimetre } from "#base";
import { after, before, drop, setMove, setStep } from "./break.ts";
import { jobFacts, machineFacts, rackFacts, toolFacts } from "./facts.ts";
import { move, step } from "./pieces.ts";
import {
  arcs,
  controllerSwap,
  inverseTime,
  perRevolution,
  rackSwap,
  singleTool,
  slideRack,
  tapping,
  withBody,
} from "./sequences.ts";
import type { Sequence } from "./sequences.ts";
import type { Broken } from "./broken.ts";

const length = (value: number): number => value * atomsPerMillimetre;
const pauseStep = step({ kind: "pause", optional: false });
const box = {
  name: "post",
  min: [length(343), length(215), length(-95)],
  max: [length(344), length(225), length(-60)],
} as const;
/** Beside the cut along Y 20 of work offset 1: 2.5 mm from the centre of a tool of radius 3 mm. */
const beside = {
  name: "post",
  min: [length(330), length(216), length(-95)],
  max: [length(333), length(217.5), length(-60)],
} as const;
const mill = { tool: 1, rpm: 16000, x: 10, y: 20 };
const body = (...items: Parameters<typeof withBody>[1]): Sequence =>
  withBody(mill, [
    move({ kind: "rapid", z: 2 }),
    move({ kind: "line", z: -2, feed: 200 }),
    ...items,
    move({ kind: "rapid", z: 15 }),
  ]);
/** Limits, arcs (NISTIR 6556 3.5.3: 0.002 mm) and the end (NISTIR 6556 3.6.1 for what an end resets). */
export const limitsAndEnd: readonly Broken[] = [
  { rule: "limit/travel", how: "X", make: () => setMove(controllerSwap(), "cut", { x: 921 }) },
  {
    rule: "limit/travel",
    how: "Z by the tool's length",
    make: () => ({
      ...controllerSwap(),
      job: jobFacts({ tools: [toolFacts(1, { length: length(70) }), toolFacts(2)] }),
    }),
  },
  {
    rule: "limit/travel",
    how: "span without work zero",
    make: () => ({ ...setMove(controllerSwap(), "cut", { x: 1231 }), job: jobFacts({ workOffsets: [] }) }),
  },
  { rule: "limit/travel", how: "rotary", make: () => setMove(inverseTime(), "cut", { a: 361 }) },
  {
    rule: "limit/travel",
    how: "bulge of an arc",
    make: () =>
      body(
        move({ kind: "line", x: 10, y: 600, feed: 800 }),
        move({ kind: "arcXy", x: 40, y: 600, c1: 25, c2: 600, turns: -1, feed: 800 }),
      ),
  },
  {
    rule: "limit/travel",
    how: "in machine coordinates",
    make: () =>
      setMove(
        { ...controllerSwap(), facts: machineFacts({ park: { x: length(1221), y: length(800) } }) },
        "park",
        { x: 1221 },
      ),
  },
  { rule: "limit/feed", how: "too fast", make: () => setMove(controllerSwap(), "cut", { feed: 6000.1 }) },
  {
    rule: "limit/feed",
    how: "too slow",
    make: () =>
      setMove(controllerSwap({ feed: { least: length(100), most: length(6000) } }), "cut", { feed: 99.9 }),
  },
  { rule: "limit/feed", how: "per revolution", make: () => setMove(perRevolution(), "cut", { feed: 0.7 }) },
  { rule: "limit/feed", how: "inverse time", make: () => setMove(inverseTime(), "plunge", { feed: 2000 }) },
  {
    rule: "limit/speed",
    how: "too fast",
    make: () => ({
      ...setStep(controllerSwap(), "speed", { rpm: 24_000_001 }),
      job: jobFacts({ tools: [toolFacts(1, { maxRpm: Infinity }), toolFacts(2)] }),
    }),
  },
  { rule: "limit/speed", how: "too slow", make: () => setStep(controllerSwap(), "speed", { rpm: 299_000 }) },
  {
    rule: "limit/tool",
    how: "faster than the tool may",
    make: () => ({
      ...controllerSwap(),
      job: jobFacts({ tools: [toolFacts(1, { maxRpm: 15_999_000 }), toolFacts(2)] }),
    }),
  },
  {
    rule: "limit/tool",
    how: "slower than the tool may",
    make: () => ({
      ...controllerSwap(),
      job: jobFacts({ tools: [toolFacts(1, { minRpm: 16_001_000 }), toolFacts(2)] }),
    }),
  },
  {
    rule: "limit/tool",
    how: "feed above the tool's",
    make: () => ({
      ...controllerSwap(),
      job: jobFacts({ tools: [toolFacts(1, { maxFeed: length(799) }), toolFacts(2)] }),
    }),
  },
  {
    rule: "limit/tool",
    how: "against its hand",
    make: () => ({
      ...controllerSwap(),
      job: jobFacts({ tools: [toolFacts(1, { direction: "ccw" }), toolFacts(2)] }),
    }),
  },
  {
    rule: "limit/tool",
    how: "not in the job",
    make: () => setStep(controllerSwap(), "select", { tool: 9 }),
  },
  {
    rule: "limit/tapping",
    how: "feed beside speed times lead",
    make: () => setMove(tapping(), "hole 1", { feed: 601 }),
  },
  {
    rule: "limit/tapping",
    how: "machine cannot",
    times: 2,
    make: () => ({
      ...tapping(),
      facts: machineFacts({ tapping: { kind: "none", reversal: 0, longhand: false } }),
    }),
  },
  {
    rule: "limit/tapping",
    how: "wrong way round",
    make: () => setStep(tapping(), "cycle", { cycle: "tap-left" } as never, 2),
  },
  {
    rule: "limit/pockets",
    how: "too wide",
    make: () => ({
      ...rackSwap(),
      job: jobFacts({ spindleHolds: 0, tools: [toolFacts(1, { diameter: length(61) }), toolFacts(2)] }),
    }),
  },
  {
    rule: "limit/pockets",
    how: "too long",
    make: () => ({
      ...rackSwap({ travel: {} }),
      job: jobFacts({ spindleHolds: 0, tools: [toolFacts(1, { length: length(71) }), toolFacts(2)] }),
    }),
  },
  {
    rule: "limit/pockets",
    how: "no such pocket",
    make: () => ({ ...rackSwap(), job: jobFacts({ spindleHolds: 0, rack: [1, 2, 3, 4] }) }),
  },
  { rule: "limit/keep-out", how: "a line through a box", make: () => controllerSwap({ keepOut: [box] }) },
  {
    rule: "limit/keep-out",
    how: "a line beside a box, nearer than the tool's radius",
    make: () => controllerSwap({ keepOut: [beside] }),
  },
  {
    rule: "limit/keep-out",
    how: "a line beside a fixture, nearer than the tool's radius",
    make: () => ({
      ...controllerSwap(),
      job: jobFacts({
        fixtures: [
          {
            name: "clamp",
            min: [length(30), length(16), length(-10)],
            max: [length(33), length(17.5), length(5)],
          },
        ],
      }),
    }),
  },
  {
    rule: "limit/keep-out",
    how: "a fixture",
    times: 2,
    make: () => ({
      ...controllerSwap(),
      job: jobFacts({
        fixtures: [
          {
            name: "clamp",
            min: [length(30), length(15), length(-10)],
            max: [length(37), length(25), length(5)],
          },
        ],
      }),
    }),
  },
  {
    rule: "limit/keep-out",
    how: "the rack zone",
    times: 2,
    make: () => setMove(rackSwap(), "cut", { x: -45, y: -145 }),
  },
  {
    rule: "limit/keep-out",
    how: "an arc",
    times: 4,
    make: () => ({
      ...arcs(),
      job: jobFacts({ tools: [toolFacts(1, { diameter: length(2) })] }),
      facts: machineFacts({
        keepOut: [
          {
            name: "post",
            min: [length(348), length(206), length(-95)],
            max: [length(351), length(234), length(-60)],
          },
        ],
      }),
    }),
  },
  { rule: "limit/keep-out", how: "rack with its cover closed", make: () => drop(slideRack(), "cover open") },
  { rule: "arc/radius", how: "0.003 mm off", make: () => setMove(arcs(), "half", { c1: 20.0015 }) },
  { rule: "arc/radius", how: "no radius", make: () => setMove(arcs(), "full", { c1: 30, c2: 20 }) },
  {
    rule: "arc/radius",
    how: "chord longer than the diameter",
    make: () => setMove(arcs(), "quarter by radius", { c1: 7 }),
  },
  {
    rule: "arc/radius",
    how: "full circle by radius",
    make: () =>
      after(arcs(), "three quarters by radius", [move({ kind: "radiusXy", c1: 10, turns: 1, feed: 600 })]),
  },
  { rule: "arc/plane", how: "not selected", make: () => drop(arcs(), "plane zx") },
  {
    rule: "arc/plane",
    how: "cycle outside XY",
    make: () => before(controllerSwap(), "cycle", [step({ kind: "plane", value: "zx" })], 1),
  },
  { rule: "program/end", how: "no end", make: () => drop(controllerSwap(), "end") },
  { rule: "program/end", how: "something after it", make: () => after(controllerSwap(), "end", [pauseStep]) },
  { rule: "program/end", how: "Z down", make: () => drop(controllerSwap(), "last retract") },
  { rule: "program/end", how: "coolant on", make: () => drop(singleTool(), "last coolant off") },
  { rule: "program/end", how: "hood down", make: () => drop(controllerSwap(), "last hood up") },
  { rule: "program/end", how: "length offset in force", make: () => drop(controllerSwap(), "last cancel") },
  { rule: "program/end", how: "not parked", make: () => drop(controllerSwap(), "park") },
  {
    rule: "program/end",
    how: "tool kept where it goes back",
    make: () => ({ ...controllerSwap({}, jobFacts({ spindleHolds: 0 })), ...keptTool() }),
  },
  {
    rule: "program/end",
    how: "output on",
    make: () => before(controllerSwap(), "cut", [step({ kind: "output", number: 3, on: true })]),
  },
];

/** A rack program that keeps its last tool where the machine says that it goes back. */
function keptTool(): Sequence {
  const facts = rackFacts();
  const kept = rackSwap();
  const from = kept.items.findIndex(
    (item, index) =>
      index > kept.items.findIndex((one) => one.name === "last cancel") && item.name === "return clear",
  );
  const to = kept.items.findIndex((item) => item.name === "retract at end");
  return { ...kept, facts, items: [...kept.items.slice(0, from), ...kept.items.slice(to)] };
}
