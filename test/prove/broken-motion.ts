import { machineFacts, unchanged, jobFacts } from "./facts.ts";
import { atomsPerMillimetre } from "#base";
import { after, before, drop, find, setMove, setStep, shift } from "./break.ts";
import { move, step } from "./pieces.ts";
import {
  compensated,
  controllerSwap,
  inverseTime,
  pausing,
  rackSwap,
  sameTool,
  slideRack,
} from "./sequences.ts";
import type { Broken } from "./broken.ts";
import type { Item } from "./layout.ts";
import type { Sequence } from "./sequences.ts";

const length = (value: number): number => value * atomsPerMillimetre;
/** The spindle stopped and started again. */
const restart = (sequence: Sequence): Item[] =>
  ["first stop", "confirm stopped", "start", "settle at-speed", "confirm at-speed"].map(
    (name) => sequence.items[find(sequence, name)],
  );

/** Offsets and motion: NISTIR 6556 3.5.11, 3.5.13, 3.5.20 and appendix B where it speaks, else common practice, no source. */
export const offsetsAndMotion: readonly Broken[] = [
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
  {
    rule: "offset/active",
    how: "in another work offset than the operator has set Z in",
    make: () => sameTool({ lengths: "operator" }),
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
  {
    rule: "motion/approach",
    how: "down in machine coordinates from an unknown Z",
    make: () => before(controllerSwap(), "rise", [move({ kind: "rapid", machine: true, z: -90 })]),
  },
  {
    rule: "motion/approach",
    how: "from an unknown Z to the rack's clear height",
    make: () => before(rackSwap(), "rise", [move({ kind: "rapid", machine: true, z: -5 })]),
  },
  {
    rule: "motion/approach",
    how: "a retract that is too low",
    make: () => setMove(controllerSwap(), "retract", { z: -3 }),
  },
  {
    rule: "motion/approach",
    how: "spindle stopped and started again in the cut",
    make: () => before(controllerSwap(), "cut", restart(controllerSwap())),
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
        step({ kind: "feed-mode", value: "per-minute" }),
        move({ kind: "line", machine: true, z: -78.4, feed: 600 }),
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
    make: () => setStep(compensated(), "on", { offset: 2 }),
  },
  { rule: "motion/comp", how: "left on", make: () => drop(compensated(), "off") },
  {
    rule: "motion/air-cut",
    how: "in the stock, with a tool that does not turn",
    make: () => {
      const own = controllerSwap();
      const turns = new Set(["spindle-start", "spindle-speed", "confirm at-speed", "settle at-speed"]);
      const items = own.items.filter(
        ({ step, name = "" }) => !turns.has(step?.kind ?? "") && !turns.has(name),
      );
      return { ...own, items, job: jobFacts({ airCut: true }) };
    },
    times: 2,
  },
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
