import {
  atomsPerUnit,
  inverseTimeUnit,
  lengthText,
  microRevolutions,
  microsecondsPerSecond,
  milliPerRpm,
  shortDecimal,
  unitWord,
} from "#base";
import type { CycleKind, FeedMode, Step, StepKind, UnitSystem } from "#base";

/** Unit words behind a feed. */
const feedWord = {
  "per-minute": "/min",
  "per-revolution": "/rev",
  "inverse-time": " 1/min",
} as const satisfies Record<FeedMode, string>;

/** A length in the program's units with all its digits and no unit: 123450000 atoms -> 12.345 */
export function lengthNumber(atoms: number, units: UnitSystem): string {
  return shortDecimal(atoms / atomsPerUnit[units], units === "mm" ? 7 : 8);
}

/** Micro-degrees -> 90 degrees */
export function angleText(microDegrees: number): string {
  return `${shortDecimal(microDegrees / 1e6, 6)} degrees`;
}

/** Milli-rpm -> 16000 rpm */
export function speedText(rpm: number): string {
  return `${shortDecimal(rpm / milliPerRpm, 3)} rpm`;
}

/** Microseconds -> 0.5 s */
export function timeText(time: number): string {
  return `${shortDecimal(time / microsecondsPerSecond, 6)} s`;
}

/** A feed in the unit of its mode: 800 mm/min, 0.1 mm/rev, 2.5 1/min */
export function feedText(feed: number, mode: FeedMode, units: UnitSystem): string {
  if (mode === "inverse-time") return `${shortDecimal(feed / inverseTimeUnit, 6)}${feedWord[mode]}`;
  return `${shortDecimal(feed / atomsPerUnit[units], 7)} ${unitWord[units]}${feedWord[mode]}`;
}

/** Names with commas and a last "and": X, Y and Z. */
export function listText(names: readonly string[]): string {
  if (names.length < 2) return names.join("");
  return `${names.slice(0, -1).join(", ")} and ${names[names.length - 1]}`;
}

/** The letters of an axis mask: 5 -> X and Z */
export function axesText(mask: number): string {
  return listText([..."XYZABC"].filter((_, index) => mask & (1 << index)));
}

/** What a fixed cycle is called. */
const cycleWord = {
  drill: "drilling cycle",
  dwell: "drilling cycle with dwell",
  peck: "peck drilling cycle",
  "chip-break": "chip-breaking cycle",
  tap: "right-hand tapping cycle",
  "tap-left": "left-hand tapping cycle",
  ream: "reaming cycle",
  "bore-dwell": "boring cycle with dwell",
  "bore-stop": "boring cycle with spindle stop",
  "bore-manual": "boring cycle with manual withdrawal",
} as const satisfies Record<CycleKind, string>;

type Words = { readonly [K in StepKind]: (step: Extract<Step, { kind: K }>, units: UnitSystem) => string };

const stepWords: Words = {
  "program-start": (step) => (step.number ? `program start, number ${step.number}` : "program start"),
  units: (step) => `units ${step.value}`,
  plane: (step) => `plane ${step.value.toUpperCase()}`,
  distance: (step) => `${step.value} distances`,
  "arc-centre": (step) => `${step.value} arc centres`,
  "feed-mode": (step) => `feed ${step.value}`,
  path: (step, units) =>
    `path mode ${step.value}${step.tolerance === undefined ? "" : `, tolerance ${lengthText(step.tolerance, units)}`}`,
  "look-ahead": (step) => `look-ahead ${step.value}`,
  "corner-feed": (step) => `slowing at inside corners ${step.value}`,
  overrides: (step) => `overrides ${step.value}`,
  cycle: () => "cycle off",
  "local-shift": () => "local shift off",
  rotation: () => "rotation off",
  scale: () => "scale off",
  compensation: (step) => `compensation ${step.value}${step.offset ? `, radius offset ${step.offset}` : ""}`,
  "work-offset": (step) => `work offset ${step.number}`,
  "length-offset": (step) => (step.number ? `length offset ${step.number}` : "length offset cancelled"),
  "select-tool": (step) =>
    `tool ${step.tool} selected${step.offset === undefined ? "" : `, length offset ${step.offset}`}`,
  "change-tool": () => "tool change",
  "spindle-speed": (step) => `spindle speed ${speedText(step.rpm)}`,
  "spindle-start": (step) => `spindle start ${step.direction}`,
  "spindle-stop": () => "spindle stop",
  "spindle-orient": () => "spindle orientation",
  coolant: (step) => `coolant ${step.medium} ${step.on ? "on" : "off"}`,
  output: (step) => `output ${step.number} ${step.on ? "on" : "off"}`,
  wait: (step) => {
    const limit = step.timeout ? `, at most ${timeText(step.timeout)}` : "";
    return `wait for input ${step.input} ${step.level}${limit}`;
  },
  dwell: (step) => `dwell ${dwellText(step.revolutions ?? step.time, step.revolutions !== undefined)}`,
  pause: (step) => (step.optional ? "optional stop" : "program stop"),
  message: (step) => `message "${step.text}"`,
  "cycle-definition": (step, units) => {
    const peck = step.peck ? `, peck ${lengthText(step.peck, units)}` : "";
    const dwell = step.dwell ? `, dwell ${dwellText(step.dwell, step.dwellIs === "revolutions")}` : "";
    const levels = `to Z ${lengthText(step.depth, units)} from ${lengthText(step.retract, units)}`;
    return `${cycleWord[step.cycle]} ${levels}, back to ${step.between} ${lengthText(step.level, units)}${peck}${dwell}`;
  },
  auxiliary: (step) => (step.action === "opaque" ? `code ${step.code}` : step.action.replaceAll("-", " ")),
  "reference-return": (step) => `reference return of ${axesText(step.axes)}`,
  "program-end": () => "program end",
};

/** A step in trade words: { kind: "dwell", time: 500000 } -> dwell 0.5 s */
export function stepText(step: Step, units: UnitSystem): string {
  const words = stepWords[step.kind] as (step: Step, units: UnitSystem) => string;
  return words(step, units);
}

/** A dwell: 0.5 s, or 20 revolutions of the spindle. */
function dwellText(amount: number, byTurns: boolean): string {
  return byTurns ? `${String(amount / microRevolutions)} revolutions` : timeText(amount);
}
