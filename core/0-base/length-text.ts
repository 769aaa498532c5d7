import type { UnitSystem } from "./lengths.ts";
import { atomsPerUnit } from "./lengths.ts";

/** Unit words behind a length, for people. */
export const unitWord = { mm: "mm", inch: "in" } as const satisfies Record<UnitSystem, string>;

/** A decimal number without zeros at its end and without "-0": 12.5000 -> 12.5 */
export function plainNumber(value: number, digits: number): string {
  const text = value.toFixed(digits);
  const short = text.includes(".") ? text.replace(/\.?0+$/, "") : text;
  return short === "-0" ? "0" : short;
}

/** A length to a tenth of a micrometre with its unit: 123450000 atoms -> 12.345 mm */
export function lengthText(atoms: number, units: UnitSystem): string {
  return `${plainNumber(atoms / atomsPerUnit[units], units === "mm" ? 4 : 5)} ${unitWord[units]}`;
}
