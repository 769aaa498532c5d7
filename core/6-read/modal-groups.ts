import type { ModeKind } from "#base";
import type { Meaning, MeaningKind } from "./meanings.ts";

/**
 * Modal groups: a block holds one word of each at most. NISTIR 6556 Table 4; its numbers in brackets. `rotation`, `scale`,
 * `arc-centre` and `tap-synchronised` are of later controllers, `extra` codes belong to no group. The end of cycles is of group 1 there and of a
 * group of its own in ISO 6983-1 (e, motions are a); read-motion.ts has what may share a block with it.
 */
export const groups = [
  "motion", // 1
  "cycle-end", // 1
  "plane", // 2
  "distance", // 3
  "feed-mode", // 5
  "units", // 6
  "compensation", // 7
  "length-offset", // 8
  "cycle-return", // 10
  "work-offset", // 12
  "path", // 13
  "non-modal", // 0
  "stop", // M 4
  "tool-change", // M 6
  "spindle", // M 7
  "coolant", // M 8
  "overrides", // M 9
  "arc-centre",
  "look-ahead",
  "corner-feed",
  "rotation",
  "scale",
  "gear",
  "tap-synchronised",
  "extra",
] as const;

/** The name of a modal group. */
export type Group = (typeof groups)[number];

/** A meaning, and where its code stands, bytes from the start of the line. */
export interface Slot {
  readonly meaning: Meaning;
  readonly at: number;
}

/** The meanings of a block's codes, one a group. */
export type Slots = Record<Group, Slot | undefined>;

const groupOfMode = {
  units: "units",
  plane: "plane",
  distance: "distance",
  "arc-centre": "arc-centre",
  "feed-mode": "feed-mode",
  path: "path",
  "look-ahead": "look-ahead",
  "corner-feed": "corner-feed",
  overrides: "overrides",
  cycle: "cycle-end",
  "local-shift": "non-modal",
  rotation: "rotation",
  scale: "scale",
} as const satisfies Record<ModeKind, Group>;

const groupOfMeaning = {
  motion: "motion",
  cycle: "motion",
  "tap-synchronised": "tap-synchronised",
  "cycle-return": "cycle-return",
  compensation: "compensation",
  "length-on": "length-offset",
  "length-off": "length-offset",
  "work-offset": "work-offset",
  "machine-move": "non-modal",
  "reference-return": "non-modal",
  dwell: "non-modal",
  "tool-change": "tool-change",
  "spindle-start": "spindle",
  gear: "gear",
  "spindle-stop": "spindle",
  "spindle-orient": "spindle",
  coolant: "coolant",
  "coolant-off": "coolant",
  stop: "stop",
  end: "stop",
  extra: "extra",
} as const satisfies Record<Exclude<MeaningKind, "mode">, Group>;

/** The modal group of a meaning. */
export function groupOf(meaning: Meaning): Group {
  return meaning.kind === "mode" ? groupOfMode[meaning.step.kind] : groupOfMeaning[meaning.kind];
}

/** Empty slots. */
export function createSlots(): Slots {
  return Object.fromEntries(groups.map((group) => [group, undefined])) as Slots;
}
