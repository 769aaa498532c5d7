import type { Scale } from "./number.ts";
import { toBaseUnits } from "./number.ts";

/** Decimal places that tell any two numbers of base units apart, with one to spare. */
const mostPlaces = 12;

/**
 * The shortest decimal that reads as a number of base units: 123,450,000 atoms on mm -> "12.345"; 254 atoms on inch ->
 * "0.000001". No exponent, no needless zeros, no "-0".
 *
 * @param value a whole number of base units
 */
export function shortestDecimal(value: number, scale: Scale): string {
  const perUnit = BigInt(scale.factor) * 10n ** BigInt(scale.power);
  const size = BigInt(Math.abs(value));
  for (let places = 0; places <= mostPlaces; places++) {
    const power = 10n ** BigInt(places);
    const digits = (2n * size * power + perUnit) / (2n * perUnit);
    const text = withPoint(digits, places);
    if (toBaseUnits(text, scale) === Math.abs(value)) return value < 0 ? `-${text}` : text;
  }
  throw new Error(`no decimal of ${mostPlaces} places reads as ${value} base units`);
}

function withPoint(digits: bigint, places: number): string {
  const text = digits.toString().padStart(places + 1, "0");
  return places === 0 ? text : `${text.slice(0, -places)}.${text.slice(-places)}`;
}
