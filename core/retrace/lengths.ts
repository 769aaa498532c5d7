import type { UnitSystem } from "#base";
import { atomsPerUnit } from "#base";

/** A length for people: 150000000 -> "15 mm". */
export function lengthText(atoms: number, units: UnitSystem): string {
  return `${String(Number((atoms / atomsPerUnit[units]).toFixed(4)))} ${units}`;
}
