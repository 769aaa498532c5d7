import { before, drop, setMove, shift } from "./break.ts";
import { jobFacts } from "./facts.ts";
import { step } from "./pieces.ts";
import type { Item } from "./layout.ts";
import { controllerSwap, operatorSwap, pausing, rackAsking, rackSwap, slideRack } from "./sequences.ts";
import type { Broken } from "./broken.ts";

const named = (items: readonly Item[], name: string): Item => items.find((item) => item.name === name)!;

/** Swaps and the drawbar. Interlocks: from memory. */
export const swaps: readonly Broken[] = [
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
  {
    rule: "swap/retracted",
    how: "rack, spindle stopped first",
    make: () => shift(rackSwap(), "retract", "cancel length", 1, 2),
  },
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
    how: "confirmed before the work motion alone",
    make: () => shift(rackSwap(), "air before release", "cut"),
  },
  {
    rule: "swap/air",
    how: "confirmed before the start of the spindle alone",
    make: () => {
      const { items } = rackSwap();
      const late = ["stop", "confirm stopped"];
      const turned = before(shift(rackSwap(), "air before release", "return clear"), "return clear", [
        ...["start", "settle at-speed", "confirm at-speed"].map((name) => named(items, name)),
        ...late.map((name) => named(items, name)),
      ]);
      return turned;
    },
  },
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
    rule: "swap/pocket",
    how: "a full spindle below the seat",
    make: () => setMove(rackSwap(), "return down", { z: -79 }),
  },
  {
    rule: "swap/pocket",
    how: "an open spindle below the seat",
    make: () => setMove(rackSwap(), "pick down", { z: -79 }),
  },
  {
    rule: "swap/pocket",
    how: "a full spindle down at rapid where the feed begins",
    make: () => setMove(rackSwap(), "return above", { z: -60 }),
  },
  {
    rule: "swap/pocket",
    how: "an open spindle down at rapid to the seat",
    make: () => setMove(rackSwap(), "pick down", { kind: "rapid" }),
  },
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
