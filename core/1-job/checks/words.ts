import type { FeedMode, UnitSystem } from "#base";
import { atomsPerUnit, unitWord } from "#base";

/** A number to four digits that count, without an exponent: 0.0381 -> "0.0381", 1592.36 -> "1592". */
export function shortNumber(value: number): string {
  const places = Math.max(0, Math.min(6, 3 - Math.floor(Math.log10(Math.abs(value) || 1))));
  return String(Number(value.toFixed(places)));
}

/** A length in the units of the job: 60,000,000 atoms -> "6 mm". */
export function lengthWords(units: UnitSystem, atoms: number): string {
  return `${shortNumber(atoms / atomsPerUnit[units])} ${unitWord[units]}`;
}

/** A feed in the units of the job, as its mode counts it. */
export function feedWords(units: UnitSystem, mode: FeedMode, atoms: number): string {
  const unit = mode === "per-revolution" ? "/rev" : "/min";
  return `${lengthWords(units, atoms)}${unit}`;
}

/** "a to b", "a and more" or "up to b"; one of the two there must be. */
export function rangeWords(least: string | undefined, most: string | undefined): string {
  if (least === undefined) return `up to ${most}`;
  return most === undefined ? `${least} and more` : `${least} to ${most}`;
}
