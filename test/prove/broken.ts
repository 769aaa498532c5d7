import { atomsPerMillimetre } from "#base";
import { after, before, drop, setMove, setStep, shift } from "./break.ts";
import { dwells, jobFacts, machineFacts, rackFacts, toolFacts, unchanged, waits } from "./facts.ts";
import { move, step } from "./pieces.ts";
import {
  arcs,
  compensated,
  controllerSwap,
  coreWords,
  inverseTime,
  knife,
  operatorSwap,
  pausing,
  perRevolution,
  rackAsking,
  rackSwap,
  sameTool,
  singleTool,
  slideRack,
  tapping,
  withBody,
} from "./sequences.ts";
import type { Sequence } from "./sequences.ts";

/** A good sequence broken in one way, and where the standard or practice behind the rule stands. */
export interface Broken {
  rule: string;
  how: string;
  make: () => Sequence;
  /** How often it is named: once, unless the fault itself comes again. */
  times?: number;
}

const length = (value: number): number => value * atomsPerMillimetre;
const pauseStep = step({ kind: "pause", optional: false });
const box = {
  name: "post",
  min: [length(340), length(215), length(-95)],
  max: [length(345), length(225), length(-60)],
} as const;
const mill = { tool: 1, rpm: 16000, x: 10, y: 20 };
const body = (...items: Parameters<typeof withBody>[1]): Sequence =>
  withBody(mill, [
    move({ kind: "rapid", z: 2 }),
    move({ kind: "line", z: -2, feed: 200 }),
    ...items,
    move({ kind: "rapid", z: 15 }),
  ]);

/** Start and spindle. Order of the first motion and of confirmations: common practice, no source. */
const startAndSpindle: Broken[] = [
  ...[
    "units",
    "plane",
    "distance",
    "arc-centre",
    "feed-mode",
    "path",
    "compensation",
    "cycle",
    "local-shift",
    "rotation",
    "scale",
    "overrides",
  ].map((name) => ({
    rule: "program/start",
    how: `${name} not stated`,
    make: () => drop(controllerSwap(), name),
  })),
  {
    rule: "program/start",
    how: "no spindle stop",
    make: () => drop(drop(controllerSwap(), "first stop"), "confirm stopped"),
  },
  { rule: "program/start", how: "stop not confirmed", make: () => drop(controllerSwap(), "confirm stopped") },
  {
    rule: "program/start",
    how: "coolant unknown",
    make: () => drop(drop(controllerSwap(), "coolant off"), "coolant off"),
  },
  {
    rule: "program/start",
    how: "first motion is an approach",
    make: () => drop(singleTool(), "first retract"),
  },
  {
    rule: "program/start",
    how: "first retract with X",
    make: () => setMove(controllerSwap(), "first retract", { x: 10, y: 10 }),
  },
  {
    rule: "program/start",
    how: "first retract too low",
    make: () => setMove(controllerSwap(), "first retract", { z: -1 }),
  },
  {
    rule: "program/start",
    how: "length cancelled first",
    make: () => shift(controllerSwap(), "cancel length", "first retract"),
  },
  {
    rule: "program/start",
    how: "retract to clearance in an unknown work offset",
    make: () => drop(operatorSwap({ statable: [...coreWords, "work-offset"] }), "work-offset"),
  },
  { rule: "spindle/at-speed", how: "wait dropped", make: () => drop(controllerSwap(), "confirm at-speed") },
  {
    rule: "spindle/at-speed",
    how: "settling dwell dropped",
    make: () => drop(controllerSwap(), "settle at-speed"),
  },
  {
    rule: "spindle/at-speed",
    how: "wrong input",
    make: () => setStep(controllerSwap(), "confirm at-speed", { input: 5 }),
  },
  {
    rule: "spindle/at-speed",
    how: "wrong level",
    make: () => setStep(controllerSwap(), "confirm at-speed", { level: "off" }),
  },
  {
    rule: "spindle/at-speed",
    how: "wait before the start",
    make: () => shift(controllerSwap(), "confirm at-speed", "start"),
  },
  {
    rule: "spindle/at-speed",
    how: "waits go on when their time is up",
    times: 2,
    make: () =>
      controllerSwap({
        onTimeout: "continues",
        confirm: { ...dwells, "at-speed": waits["at-speed"]! },
        signals: { ...machineFacts().signals },
      }),
  },
  {
    rule: "spindle/at-speed",
    how: "dwell too short",
    make: () => setStep(operatorSwap(), "confirm at-speed", { time: 4_490_000 }),
  },
  {
    rule: "spindle/at-speed",
    how: "no way declared",
    times: 2,
    make: () => ({ ...controllerSwap(), facts: machineFacts({ confirm: { stopped: waits.stopped! } }) }),
  },
  {
    rule: "spindle/at-speed",
    how: "never started",
    make: () => drop(drop(drop(controllerSwap(), "start"), "confirm at-speed"), "settle at-speed"),
  },
  { rule: "spindle/at-speed", how: "no speed stated", make: () => drop(controllerSwap(), "speed") },
  {
    rule: "spindle/at-speed",
    how: "speed changed in the cut",
    make: () => before(controllerSwap(), "cut", [step({ kind: "spindle-speed", rpm: 9_000_000 })]),
  },
  {
    rule: "spindle/at-speed",
    how: "after a tapping cycle",
    make: () => drop(tapping(), "confirm at-speed", 1),
  },
  { rule: "spindle/stopped-for-swap", how: "stop dropped", make: () => drop(controllerSwap(), "stop", 1) },
  {
    rule: "spindle/stopped-for-swap",
    how: "not confirmed",
    make: () => drop(controllerSwap(), "confirm stopped", 2),
  },
  {
    rule: "spindle/stopped-for-swap",
    how: "dwell from the new speed, not the old",
    make: () => setStep(operatorSwap(), "confirm stopped", { time: 500_000 }, 2),
  },
  { rule: "spindle/stopped-for-swap", how: "rack", make: () => drop(rackSwap(), "confirm stopped", 2) },
  { rule: "spindle/stopped-for-swap", how: "operator stop", make: () => drop(pausing(), "pause stop") },
  { rule: "spindle/stopped-for-swap", how: "not oriented", make: () => drop(slideRack(), "orient", 1) },
  {
    rule: "spindle/stopped-for-swap",
    how: "measured with the spindle turning",
    make: () => {
      const measured = controllerSwap({ lengths: "measured" });
      const start = [
        step({ kind: "spindle-speed", rpm: 9_000_000 }),
        step({ kind: "spindle-start", direction: "cw" }),
      ];
      return before(measured, "measure", start, 1);
    },
  },
  {
    rule: "spindle/clamped",
    how: "a knife",
    make: () => before(knife(), "approach xy", [step({ kind: "spindle-start", direction: "cw" })]),
  },
  {
    rule: "spindle/clamped",
    how: "a tool that nobody knows",
    make: () => ({ ...singleTool(), job: jobFacts() }),
  },
  {
    rule: "spindle/clamped",
    how: "an empty spindle",
    make: () => ({ ...singleTool(), job: jobFacts({ spindleHolds: 0 }) }),
  },
  {
    rule: "spindle/clamped",
    how: "tool selected and never put in",
    make: () => drop(operatorSwap(), "swap", 1),
  },
  { rule: "spindle/clamped", how: "tool not sensed", make: () => drop(slideRack(), "sense tool") },
  {
    rule: "spindle/reversal",
    how: "no stop between",
    make: () => {
      const turned = sameTool();
      return drop(drop(turned, "stop", -1), "confirm stopped", -1);
    },
  },
  {
    rule: "spindle/reversal",
    how: "stop not confirmed",
    make: () => drop(sameTool(), "confirm stopped", -1),
  },
  { rule: "spindle/ends-stopped", how: "no stop", make: () => drop(controllerSwap(), "last stop") },
  { rule: "spindle/ends-stopped", how: "not confirmed", make: () => drop(controllerSwap(), "last confirm") },
];

/** Swaps and the drawbar. Interlocks: from memory. */
const swaps: Broken[] = [
  { rule: "swap/retracted", how: "no retract", make: () => drop(controllerSwap(), "retract") },
  {
    rule: "swap/retracted",
    how: "spindle stopped first",
    make: () => shift(controllerSwap(), "retract", "cancel length", 0, 1),
  },
  {
    rule: "swap/retracted",
    how: "with X and Y",
    make: () => setMove(controllerSwap(), "retract", { x: 0, y: 0 }),
  },
  { rule: "swap/retracted", how: "too low", make: () => setMove(controllerSwap(), "retract", { z: -3 }) },
  { rule: "swap/retracted", how: "rack", make: () => drop(rackSwap(), "retract", 1) },
  {
    rule: "swap/retracted",
    how: "by hand",
    make: () => setMove(drop(operatorSwap(), "retract", 1), "rise", { z: 14 }),
  },
  { rule: "swap/coolant-off", how: "controller", make: () => drop(controllerSwap(), "coolant off", 2) },
  { rule: "swap/coolant-off", how: "rack", make: () => drop(rackSwap(), "coolant off", 2) },
  {
    rule: "swap/coolant-off",
    how: "operator stop",
    make: () => before(pausing(), "pause", [step({ kind: "coolant", medium: "air", on: true })]),
  },
  { rule: "swap/air", how: "before the release", make: () => drop(rackSwap(), "air before release") },
  { rule: "swap/air", how: "before the clamp", make: () => drop(rackSwap(), "air before clamp") },
  {
    rule: "swap/air",
    how: "before the drawbar opens for a pick",
    make: () => drop(rackSwap(), "air before opening"),
  },
  {
    rule: "swap/pocket",
    how: "back to another pocket",
    make: () => ({
      ...setMove(rackSwap(), "return xy", { x: 200 }),
      job: jobFacts({ spindleHolds: 0, rack: [1, 2, 0] }),
    }),
  },
  {
    rule: "swap/pocket",
    how: "back to a filled pocket",
    make: () => setMove(rackSwap(), "return xy", { x: 120 }),
  },
  {
    rule: "swap/pocket",
    how: "released above its pocket",
    make: () => setMove(rackSwap(), "return down", { z: -78 }),
  },
  {
    rule: "swap/pocket",
    how: "picked from an empty pocket",
    make: () => ({ ...rackSwap(), job: jobFacts({ spindleHolds: 0, rack: [1, 0, 3] }) }),
  },
  {
    rule: "swap/pocket",
    how: "lifted out of a pocket that it slides into",
    make: () => drop(slideRack(), "slide out"),
  },
  { rule: "swap/pocket", how: "nobody knows what the spindle holds", make: () => drop(rackAsking(), "ask") },
  {
    rule: "swap/drawbar",
    how: "leaves before the release is confirmed",
    make: () => drop(rackSwap(), "confirm released", 1),
  },
  {
    rule: "swap/drawbar",
    how: "leaves before the clamp is confirmed",
    make: () => drop(rackSwap(), "confirm clamped"),
  },
  {
    rule: "swap/drawbar",
    how: "down over a filled pocket, clamped",
    make: () => drop(drop(drop(rackSwap(), "open"), "confirm released"), "air before opening"),
  },
  {
    rule: "swap/drawbar",
    how: "travels released where it must not",
    make: () => {
      const clamped = rackSwap({ drawbar: { travels: "clamped", taperAir: false } });
      const open = ["air before opening", "open", "confirm released"].reduce(
        (sequence, name, index) => drop(sequence, name, index === 0 ? 1 : index === 1 ? 1 : 2),
        clamped,
      );
      return drop(open, "clamp empty");
    },
  },
  {
    rule: "swap/drawbar",
    how: "travels below the clear height",
    make: () => drop(setMove(rackSwap(), "leave pocket", { z: -30 }), "pick clear", 1),
  },
  { rule: "swap/drawbar", how: "ends open", make: () => drop(rackSwap(), "clamp at end") },
  { rule: "swap/timed", how: "all by dwell", make: () => operatorSwap() },
];

/** Offsets and motion: NISTIR 6556 3.5.11, 3.5.13, 3.5.20 and appendix B where it speaks, else common practice, no source. */
const offsetsAndMotion: Broken[] = [
  {
    rule: "offset/active",
    how: "no work offset",
    make: () => drop(drop(controllerSwap(), "work-offset"), "work-offset"),
  },
  { rule: "offset/active", how: "no length offset", make: () => drop(controllerSwap(), "length") },
  {
    rule: "offset/active",
    how: "another tool's length offset",
    make: () => setStep(controllerSwap(), "length", { number: 1 }, 1),
  },
  {
    rule: "offset/active",
    how: "old length offset at the swap",
    make: () => drop(controllerSwap(), "cancel length", 2),
  },
  {
    rule: "offset/active",
    how: "old length offset at the rack",
    make: () => drop(rackSwap(), "cancel length", 2),
  },
  {
    rule: "offset/active",
    how: "cancelling moves Z down in the work",
    make: () =>
      shift(
        controllerSwap({ lengthOffset: { form: "own-block", selectMoves: false, cancelMoves: true } }),
        "cancel length",
        "retract",
        2,
      ),
  },
  { rule: "offset/change", how: "at clearance", make: () => drop(sameTool(), "retract") },
  {
    rule: "offset/change",
    how: "with a cycle on",
    make: () =>
      before(sameTool(), "other work offset", [
        step({
          kind: "cycle-definition",
          cycle: "drill",
          depth: length(-5),
          retract: length(2),
          level: length(2),
          between: "retract",
          levelStated: true,
          peck: 0,
          dwell: 0,
        }),
      ]),
  },
  {
    rule: "offset/change",
    how: "with compensation on",
    make: () =>
      before(sameTool(), "other work offset", [step({ kind: "compensation", value: "left", offset: 1 })]),
  },
  {
    rule: "offset/measured",
    how: "not measured",
    make: () => drop(controllerSwap({ lengths: "measured" }), "measure"),
  },
  {
    rule: "offset/measured",
    how: "away from swap height",
    make: () =>
      drop(
        controllerSwap({ lengths: "measured", changeEffects: { ...unchanged, position: "unknown" } }),
        "retract",
      ),
  },
  {
    rule: "offset/measured",
    how: "after the approach",
    make: () =>
      before(controllerSwap({ lengths: "measured" }), "measure", [
        step({ kind: "work-offset", number: 1 }),
        move({ kind: "rapid", x: 10, y: 20 }),
      ]),
  },
  { rule: "motion/approach", how: "no retract after a stop", make: () => drop(pausing(), "retract again") },
  { rule: "motion/approach", how: "no X and Y", make: () => drop(pausing(), "approach xy", 1) },
  {
    rule: "motion/approach",
    how: "all axes together",
    make: () => setMove(shift(controllerSwap(), "length", "approach xy"), "approach xy", { z: 15 }),
  },
  {
    rule: "motion/approach",
    how: "Z first",
    make: () => shift(shift(controllerSwap(), "length", "approach xy"), "approach z", "approach xy"),
  },
  {
    rule: "motion/approach",
    how: "below clearance at once",
    make: () => setMove(controllerSwap(), "approach z", { z: 3 }),
  },
  {
    rule: "motion/approach",
    how: "spindle started after X and Y",
    make: () =>
      ["speed", "start", "settle at-speed", "confirm at-speed"].reduce(
        (sequence, name) => shift(sequence, name, "approach z"),
        controllerSwap(),
      ),
  },
  { rule: "motion/approach", how: "stops at clearance", make: () => drop(pausing(), "retract") },
  {
    rule: "motion/approach",
    how: "machine move at work height",
    make: () => before(controllerSwap(), "cut", [move({ kind: "rapid", machine: true, x: 400, y: 300 })]),
  },
  { rule: "motion/feed", how: "no feed", make: () => setMove(controllerSwap(), "cut", { feed: 0 }) },
  {
    rule: "motion/feed",
    how: "cycle in inverse time",
    make: () => before(controllerSwap(), "cycle", [step({ kind: "feed-mode", value: "inverse-time" })], 1),
  },
  {
    rule: "motion/feed",
    how: "at the rack by the revolution",
    make: () =>
      before(rackSwap(), "release", [
        step({ kind: "feed-mode", value: "per-revolution" }),
        move({ kind: "line", machine: true, z: -78, feed: 0.1 }),
        move({ kind: "rapid", machine: true, z: -78.4 }),
        step({ kind: "feed-mode", value: "per-minute" }),
      ]),
  },
  {
    rule: "motion/feed",
    how: "rotary and linear by the minute",
    make: () => drop(inverseTime(), "feed-mode", 1),
  },
  {
    rule: "motion/known",
    how: "one axis after a machine move",
    make: () => setMove(pausing(), "approach xy", { y: undefined as never }),
  },
  {
    rule: "motion/known",
    how: "Z not named after a length offset",
    make: () =>
      before(controllerSwap(), "cut", [
        step({ kind: "length-offset", number: 5 }),
        step({ kind: "length-offset", number: 1 }),
      ]),
  },
  {
    rule: "motion/known",
    how: "down to a pocket at an unknown place",
    make: () => drop(slideRack(), "return xy"),
  },
  {
    rule: "motion/approach",
    how: "down in machine coordinates at no pocket",
    make: () => setMove(rackSwap(), "return xy", { x: 60 }),
  },
  {
    rule: "motion/known",
    how: "absolute intermediate point",
    make: () =>
      drop(
        controllerSwap({
          retract: { ...machineFacts().retract!, by: "reference-return", intermediate: "incremental-zero" },
        }),
        "incremental",
      ),
  },
  { rule: "motion/known", how: "a hole without a cycle", make: () => drop(controllerSwap(), "cycle", 1) },
  {
    rule: "motion/comp",
    how: "entry by arc",
    make: () => setMove(compensated(), "entry", { kind: "arcXy", c1: 20, c2: 20, turns: -1 }),
  },
  {
    rule: "motion/comp",
    how: "entry too short",
    make: () => setMove(compensated(), "entry", { x: 12, y: 22 }),
  },
  {
    rule: "motion/comp",
    how: "on while on",
    make: () => after(compensated(), "entry", [step({ kind: "compensation", value: "right", offset: 1 })]),
  },
  {
    rule: "motion/comp",
    how: "another tool's radius",
    make: () => setStep(compensated(), "on", { offset: 2 } as never),
  },
  { rule: "motion/comp", how: "left on", make: () => drop(compensated(), "off") },
  {
    rule: "motion/rapid-in-stock",
    how: "across below the top",
    make: () => setMove(controllerSwap(), "cut", { kind: "rapid" }),
  },
  {
    rule: "motion/rapid-in-stock",
    how: "down into it",
    make: () => setMove(controllerSwap(), "plunge", { kind: "rapid" }),
  },
];

/** Limits, arcs (NISTIR 6556 3.5.3: 0.002 mm) and the end (NISTIR 6556 3.6.1 for what an end resets). */
const limitsAndEnd: Broken[] = [
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
    make: () => setStep(controllerSwap(), "select", { tool: 9 } as never),
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
    how: "a fixture",
    times: 2,
    make: () => ({
      ...controllerSwap(),
      job: jobFacts({
        fixtures: [
          {
            name: "clamp",
            min: [length(30), length(15), length(-10)],
            max: [length(40), length(25), length(5)],
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
      facts: machineFacts({
        keepOut: [
          {
            name: "post",
            min: [length(347), length(205), length(-95)],
            max: [length(352), length(235), length(-60)],
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

export const brokenSequences: readonly Broken[] = [
  ...startAndSpindle,
  ...swaps,
  ...offsetsAndMotion,
  ...limitsAndEnd,
];
