import type { Capabilities, UnitSystem } from "#base";
import { atomsPerUnit, inverseTimeUnit, microsecondsPerSecond } from "#base";
import type { Format, NumberFormat, UnitFormats } from "./dialect.ts";

/** The largest number of an address in its base units; infinite where nothing limits its digits. */
function largest({ decimals, digits, suppressed, wholeDigits }: NumberFormat, unit: number): number {
  const grid = unit / 10 ** decimals;
  const padded = suppressed !== "leading" && digits > 0 ? (10 ** digits - 1) * grid : Infinity;
  return wholeDigits === 0 ? padded : Math.min(padded, unit * 10 ** wholeDigits - grid);
}

function byUnits(formats: UnitFormats): Record<UnitSystem, number> {
  return { mm: largest(formats.mm, atomsPerUnit.mm), inch: largest(formats.inch, atomsPerUnit.inch) };
}

/**
 * The largest numbers that the dialect can write: an implied point with all its digits, or a limit before the point. Undefined
 * where nothing limits any of them.
 */
export function largestNumbers(format: Format): Capabilities["largest"] {
  const largestOf = limits(format);
  const all = Object.values(largestOf).flatMap((one) => (typeof one === "object" ? [one.mm, one.inch] : one));
  return all.some((one) => one !== undefined && one < Infinity) ? largestOf : undefined;
}

function limits(format: Format): NonNullable<Capabilities["largest"]> {
  const { numbers, motion, dwell, speedUnit } = format;
  const perMinute = motion.inverseTimeUnit === "per-second" ? 60 * inverseTimeUnit : inverseTimeUnit;
  const time = dwell?.unit === "ms" ? microsecondsPerSecond / 1000 : microsecondsPerSecond;
  return {
    length: byUnits(numbers.length),
    "per-minute": byUnits(numbers.feedPerMinute),
    "per-revolution": numbers.feedPerRevolution && byUnits(numbers.feedPerRevolution),
    "inverse-time": numbers.inverseTime && largest(numbers.inverseTime, perMinute),
    speed: largest(numbers.speed, speedUnit),
    dwell: largest(numbers.dwell, time),
  };
}
