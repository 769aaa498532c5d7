import { atomsPerMillimetre } from "#base";

/** Radii may differ by the larger of 0.005 mm and 0.1 %. */
const tolerance = { size: 0.005 * atomsPerMillimetre, share: 0.001 };

/** Whether two radii of one arc, in atoms, are too far apart for it to be one. */
export function radiiDiffer(first: number, second: number): boolean {
  return Math.abs(first - second) > Math.max(tolerance.size, tolerance.share * first);
}
