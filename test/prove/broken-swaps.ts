import { before, drop, setMove, shift } from "./break.ts";
import { jobFacts } from "./facts.ts";
import { step } from "./pieces.ts";
import { controllerSwap, operatorSwap, pausing, rackAsking, rackSwap, slideRack } from "./sequences.ts";
import type { Broken } from "./broken.ts";

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
