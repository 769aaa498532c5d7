/** Inks of the page, light and dark. What a colour says is said by dashes, by names and by switching it off, too. */

/** A line's look: colour as red, green, blue from 0 to 255, and its dashes. */
export interface Ink {
  readonly colour: readonly [number, number, number];
  /** Index into `dashes`. */
  readonly dash: number;
}

/** Lengths of strokes and gaps in pixels; the shader has the same. */
export const dashes: readonly (readonly number[])[] = [[], [13, 5], [3, 3], [13, 4, 4, 5], [6, 4], [2, 5]];

/** Dashes of rapids and of motions in machine coordinates. */
const rapidDash = 4;
const machineDash = 5;
const cutDashes = 4;

const inks = {
  light: ["#12386b", "#a85c00", "#0d5a3c", "#a3296b", "#1d2327", "#1f7f90"],
  dark: ["#8fbdf5", "#f0b056", "#7fd6a8", "#f29ac9", "#e9e7e0", "#5fc3d6"],
} as const;

const greys = { light: "#5a646a", dark: "#9aa3a7" } as const;

export type Scheme = keyof typeof inks;

/** Inks of so many tools, operations or kinds: the first 24 have no two alike. */
export function inkOf(index: number, scheme: Scheme): Ink {
  const own = inks[scheme];
  const round = Math.floor(index / own.length);
  return { colour: rgb(own[index % own.length]), dash: (index + round) % cutDashes };
}

export function rapidInk(scheme: Scheme): Ink {
  return { colour: rgb(greys[scheme]), dash: rapidDash };
}

export function machineInk(scheme: Scheme): Ink {
  return { colour: rgb(greys[scheme]), dash: machineDash };
}

export function css({ colour }: Pick<Ink, "colour">): string {
  return `rgb(${colour.join(" ")})`;
}

function rgb(text: string): readonly [number, number, number] {
  const at = (from: number): number => parseInt(text.slice(from, from + 2), 16);
  return [at(1), at(3), at(5)];
}
