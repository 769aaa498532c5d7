import type { UnitSystem } from "./lengths.ts";
import { atomsPerUnit } from "./lengths.ts";

/** What a unit of length is called behind a number. */
export const unitWord = { mm: "mm", inch: "in" } as const satisfies Record<UnitSystem, string>;

/** A decimal number without zeros at its end and without "-0": 12.5000 -> 12.5 */
export function shortDecimal(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  const short = text.includes(".") ? text.replace(/\.?0+$/, "") : text;
  return short === "-0" ? "0" : short;
}

/**
 * A length for people, with its unit: 123,450,000 atoms -> 12.345 mm
 *
 * @param decimals how many there are at most, by the unit
 */
export function lengthWithUnit(
  atoms: number,
  units: UnitSystem,
  decimals: Readonly<Record<UnitSystem, number>>,
): string {
  return `${shortDecimal(atoms / atomsPerUnit[units], decimals[units])} ${unitWord[units]}`;
}

/** A length to a tenth of a micrometre with its unit: 123450000 atoms -> 12.345 mm */
export function lengthText(atoms: number, units: UnitSystem): string {
  return lengthWithUnit(atoms, units, { mm: 4, inch: 5 });
}
