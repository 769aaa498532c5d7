import type { Chance } from "./chance.ts";
import type { Word } from "./spell.ts";
import { code, whole } from "./spell.ts";

/** What a writer of random programs keeps of the control, so that what it writes next is legal. Lengths in whole least increments. */
export interface Model {
  readonly chance: Chance;
  inch: boolean;
  incremental: boolean;
  plane: 17 | 18 | 19;
  /** Motion mode: 0 to 3, 80 for none, 81 to 89 for a cycle. */
  motion: number;
  /** Feed in force, in hundredths; 0 for none. */
  feed: number;
  readonly at: number[];
  /** Whether the place of X, Y and Z follows from the program. */
  readonly known: boolean[];
  spins: boolean;
  /** Number of the length offset in force, and of the work offset. */
  length: number;
  offset: number;
}

export type Axis = 0 | 1 | 2;
export const letters = ["X", "Y", "Z"] as const;
export const centres = ["I", "J", "K"] as const;

/** First, second and normal axis of each plane (NISTIR 6556 Table 9). */
export const axesOfPlane = { 17: [0, 1, 2], 18: [2, 0, 1], 19: [1, 2, 0] } as const;

export function createModel(chance: Chance): Model {
  return {
    chance,
    inch: false,
    incremental: false,
    plane: 17,
    motion: 80,
    feed: 0,
    at: [0, 0, 0],
    known: [false, false, false],
    spins: false,
    length: 0,
    offset: 54,
  };
}

/** Decimals of a length. */
export function decimalsOf({ inch }: Model): number {
  return inch ? 4 : 3;
}

/** A length as a word. */
export function length(model: Model, letter: string, steps: number): Word {
  return { letter, steps, decimals: decimalsOf(model) };
}

/** The word that takes an axis to a place, and the place noted. */
export function goTo(model: Model, axis: Axis, to: number): Word {
  const { at, known, incremental } = model;
  const word = length(model, letters[axis], incremental ? to - at[axis] : to);
  at[axis] = to;
  known[axis] = true;
  return word;
}

/** Whether incremental words and arcs may be written: all three places are known. */
export function knowsAll({ known }: Model): boolean {
  return known.every(Boolean);
}

export function forget({ known }: Model, axes: readonly Axis[]): void {
  for (const axis of axes) known[axis] = false;
}

/** Changes to absolute words if a place must be named that is not known; the words for it. */
export function absolute(model: Model): Word[] {
  if (!model.incremental) return [];
  model.incremental = false;
  return [code("G", 90)];
}

/** The motion word, where it must be said, or is said all the same. */
export function motionWord(model: Model, motion: number, stated = false): Word[] {
  const must = model.motion !== motion;
  model.motion = motion;
  return must || stated || model.chance.happens(0.3) ? [code("G", motion)] : [];
}

/** A feed word, where there is none in force, and now and then. */
export function feedWord(model: Model): Word[] {
  const { chance } = model;
  if (model.feed !== 0 && !chance.happens(0.25)) return [];
  model.feed = chance.between(1, 40) * (model.inch ? 50 : 1000);
  return [{ letter: "F", steps: model.feed / 10, decimals: 1 }];
}

/** A place not too far from where the axis is, on the grid of the units. */
export function near({ chance, at, known }: Model, axis: Axis): number {
  const from = known[axis] ? at[axis] : 0;
  const reach = chance.pick([10, 500, 20_000]);
  return from + chance.between(-reach, reach);
}

/** A tool number with an entry in the table of tools. */
export function toolNumber({ chance }: Model): Word {
  return whole("T", chance.between(1, 20));
}
