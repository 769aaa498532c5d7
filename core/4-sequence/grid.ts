import type { Capabilities, UnitSystem } from "#base";
import { roundToGrid } from "#base";

/** What rounding goes by. */
interface Grids {
  readonly capabilities: Capabilities;
  readonly units: UnitSystem;
}

/** A length of the job's head as lowering writes it, atoms. */
export function onLengthGrid(grids: Grids, length: number): number {
  return roundToGrid(length, grids.capabilities.lengthGrid?.[grids.units] ?? 1);
}

/** The longest length of the length grid that is no longer than a length above 0, atoms; 0 where it is shorter than the grid. */
export function downToLengthGrid({ capabilities, units }: Grids, length: number): number {
  const grid = capabilities.lengthGrid?.[units] ?? 1;
  return Math.floor(length / grid) * grid;
}

/** The shortest time of the dwell word that is no shorter than a time, microseconds; at least one increment. */
export function upToDwellGrid(time: number, grid: number): number {
  return Math.max(1, Math.ceil(time / grid)) * grid;
}
