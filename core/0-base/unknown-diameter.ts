import type { UnitSystem } from "./lengths.ts";
import { atomsPerUnit } from "./lengths.ts";

/**
 * Stands for the diameter of a tool of which an input does not say it: 100 m, or 4,000 inches. It is wider than any pocket,
 * any gap and any line, so that every check that needs the diameter refuses.
 */
export const unknownDiameter: Readonly<Record<UnitSystem, number>> = {
  mm: 100_000 * atomsPerUnit.mm,
  inch: 4_000 * atomsPerUnit.inch,
};

/** Whether a diameter, in atoms, is one that a tool may have. */
export function isDiameterKnown(diameter: number): boolean {
  return diameter < unknownDiameter.mm;
}
