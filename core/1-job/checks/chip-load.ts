import { atomsPerUnit } from "#base";
import type { ChipLoads } from "./materials.ts";

/** Chip load fz = vf / (n z): 2 400 / (16 000 x 2) = 0.075 mm. @param turns revolutions to one unit of the feed's time */
export function chipLoadOf(feed: number, turns: number, flutes: number): number {
  return feed / (turns * flutes);
}

/** Chip loads between which a tool of one diameter is usual, atoms a tooth; `undefined`: the table says nothing on that side. */
export interface UsualChipLoad {
  readonly least: number | undefined;
  readonly most: number | undefined;
}

/**
 * Cutting a twentieth of the diameter wide, h = fz sqrt(1 - (1 - 2 ae/D)^2) is fz / 2.294 (D10, ae 0.5: 0.436): a feed so much over
 * the table still takes the table's chip. How wide a tool cuts is not known here, so nothing below that is told.
 */
export const tooMuch = 2.3;

/**
 * A quarter of the table's least: light machines use a third to a half of it (from memory), and a published chart for
 * polyethylene has 0.0457 mm at 1/4 inch, which is 0.3 of it.
 */
export const tooLittle = 0.25;

/**
 * The table at a diameter: on a straight line between two rows. Chip loads rise with the diameter; so below the first row only its
 * most holds as a bound, and above the last row only its least.
 *
 * @param diameter atoms
 */
export function usualChipLoad({ unit, rows }: ChipLoads, diameter: number): UsualChipLoad {
  const scale = atomsPerUnit[unit];
  const above = rows.findIndex(([size]) => size * scale >= diameter);
  if (above < 0) return { least: rows[rows.length - 1][1] * scale, most: undefined };
  const [nextSize, nextLeast, nextMost] = rows[above];
  if (nextSize * scale === diameter) return { least: nextLeast * scale, most: nextMost * scale };
  if (above === 0) return { least: undefined, most: nextMost * scale };
  const [size, least, most] = rows[above - 1];
  const share = (diameter / scale - size) / (nextSize - size);
  return {
    least: (least + share * (nextLeast - least)) * scale,
    most: (most + share * (nextMost - most)) * scale,
  };
}

/** Whether a chip load, atoms a tooth, is well outside of what is usual. */
export function outside({ least, most }: UsualChipLoad, load: number): "little" | "much" | undefined {
  if (most !== undefined && load > most * tooMuch) return "much";
  return least !== undefined && load < least * tooLittle ? "little" : undefined;
}
