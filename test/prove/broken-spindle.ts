import type { JobFacts } from "#base";
import { after, before, drop, find, setMove, setStep, shift } from "./break.ts";
import { dwells, jobFacts, machineFacts, unchanged, waits } from "./facts.ts";
import { move, step } from "./pieces.ts";
import {
  controllerSwap,
  coreWords,
  knife,
  operatorSwap,
  pausing,
  rackSwap,
  sameTool,
  singleTool,
  slideRack,
  tapping,
} from "./sequences.ts";
import type { Broken } from "./broken.ts";
import type { Item } from "./layout.ts";
import type { Sequence } from "./sequences.ts";

/** The spindle started anew, and confirmed. */
const again = (sequence: Sequence): Item[] =>
  ["speed", "start", "settle at-speed", "confirm at-speed"].map(
    (name) => sequence.items[find(sequence, name)],
  );

/** A drill that takes the 8000 rpm of its section, and not the 16000 rpm of the tool before. */
const slowDrill = (): JobFacts => {
  const job = jobFacts();
  const tools = job.tools.map((tool) => (tool.number === 2 ? { ...tool, maxRpm: 9_000_000 } : tool));
  return { ...job, tools };
};

/** On a control that keeps no modes over a stop. */
const losing = (sequence: Sequence): Sequence => ({
  ...sequence,
  facts: { ...sequence.facts, afterStop: "loses-modes" },
});

/** On a machine that senses whether the work is held. */
const holding = (sequence: Sequence): Sequence => ({
  ...sequence,
  facts: {
    ...sequence.facts,
    signals: { ...sequence.facts.signals, "hold-down": { input: 9, level: "on", settle: 0 } },
    confirm: {
      ...sequence.facts.confirm,
      "hold-down": { by: "wait", signal: "hold-down", timeout: 10e6 },
    },
  },
});

const waitHeld = step({ kind: "wait", input: 9, level: "on", timeout: 10e6 });

/** All modes but the plane. */
const lostModes: Item[] = (
  [
    { kind: "units", value: "mm" },
    { kind: "distance", value: "absolute" },
    { kind: "arc-centre", value: "incremental" },
    { kind: "feed-mode", value: "per-minute" },
    { kind: "path", value: "exact" },
    { kind: "compensation", value: "off", offset: 0 },
    { kind: "cycle", value: "off" },
    { kind: "local-shift", value: "off" },
    { kind: "rotation", value: "off" },
    { kind: "scale", value: "off" },
    { kind: "overrides", value: "on" },
  ] as const
).map((mode) => step(mode));

/** Start and spindle. Order of the first motion and of confirmations: common practice, no source. */
export const startAndSpindle: readonly Broken[] = [
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
    rule: "program/resume",
    how: "modes are lost at two stops",
    times: 2,
    make: () => losing(pausing()),
  },
  {
    rule: "program/resume",
    how: "modes are lost at two swaps by hand",
    times: 2,
    make: () => losing(operatorSwap()),
  },
  {
    rule: "program/resume",
    how: "one of the modes is not stated again",
    times: 2,
    make: () => losing(before(before(pausing(), "retract again", lostModes), "retract again", lostModes, 1)),
  },
  {
    rule: "spindle/restarted",
    how: "two changes that start the spindle again",
    times: 2,
    make: () => controllerSwap({ changeEffects: { ...unchanged, spindle: "restarts" } }),
  },
  {
    rule: "motion/held",
    how: "no wait for the hold-down, at the start and behind two stops",
    times: 3,
    make: () => holding(pausing()),
  },
  {
    rule: "motion/held",
    how: "no wait for the hold-down behind two stops",
    times: 2,
    make: () => before(holding(pausing()), "first stop", [waitHeld]),
  },
  {
    rule: "motion/held",
    how: "a wait on another input",
    times: 3,
    make: () =>
      before(holding(pausing()), "first stop", [step({ kind: "wait", input: 8, level: "on", timeout: 1e6 })]),
  },
  {
    rule: "program/end",
    how: "ends in inverse time where the end puts nothing back",
    make: () =>
      before({ ...singleTool(), facts: { ...singleTool().facts, endResets: false } }, "last stop", [
        step({ kind: "feed-mode", value: "inverse-time" }),
      ]),
  },
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
    how: "one of two media is not turned off by its own word",
    make: () =>
      setStep(controllerSwap({ offWords: ["mist", "flood"] }), "coolant off", { medium: "mist" } as const),
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
    how: "no speed stated for the second tool",
    make: () => drop(controllerSwap(), "speed", 1),
  },
  {
    rule: "spindle/at-speed",
    how: "no speed stated for the second tool, which may not run as fast as the first",
    make: () => drop(controllerSwap({}, slowDrill()), "speed", 1),
  },
  {
    rule: "spindle/at-speed",
    how: "no speed stated after a swap by hand",
    make: () => drop(controllerSwap({ swap: "operator" }), "speed", 1),
  },
  {
    rule: "spindle/at-speed",
    how: "no speed stated after a swap at the rack",
    make: () => drop(rackSwap(), "speed", 1),
  },
  {
    rule: "spindle/at-speed",
    how: "no speed stated after a stop of the program",
    make: () => drop(pausing(), "speed", 1),
  },
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
  {
    rule: "spindle/stopped-for-swap",
    how: "a stop of the program with the spindle turning confirms nothing",
    make: () => {
      const asked = drop(controllerSwap(), "coolant on");
      const stop = step({ kind: "pause", optional: false });
      return before(asked, "approach xy", [
        stop,
        move({ kind: "rapid", machine: true, z: 0 }),
        ...again(asked),
      ]);
    },
  },
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
  {
    rule: "spindle/clamped",
    how: "a staged tool is never put in: its change is missing",
    make: () => after(controllerSwap(), "swap", [step({ kind: "select-tool", tool: 3 })]),
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
