import type { Capabilities, PerUnit } from "#base";
import type { Format, NumberFormat, UnitFormats } from "./dialect.ts";

/** The largest number of an address in its base units; infinite where nothing limits its digits, or nothing is counted in it. */
function largest({ decimals, digits, suppressed, wholeDigits }: NumberFormat, grid = Infinity): number {
  const padded = suppressed !== "leading" && digits > 0 ? (10 ** digits - 1) * grid : Infinity;
  return wholeDigits === 0 ? padded : Math.min(padded, (10 ** (decimals + wholeDigits) - 1) * grid);
}

function byUnits(formats: UnitFormats, grids: PerUnit | undefined): PerUnit {
  return { mm: largest(formats.mm, grids?.mm), inch: largest(formats.inch, grids?.inch) };
}

/**
 * The largest numbers that the dialect can write: an implied point with all its digits, or a limit before the point. Undefined
 * where nothing limits any of them.
 *
 * @param capabilities the grids of the addresses
 */
export function largestNumbers({ numbers }: Format, capabilities: Capabilities): Capabilities["largest"] {
  const { feedPerRevolution, inverseTime } = numbers;
  const largestOf = {
    length: byUnits(numbers.length, capabilities.lengthGrid),
    "per-minute": byUnits(numbers.feedPerMinute, capabilities.feedPerMinuteGrid),
    "per-revolution": feedPerRevolution && byUnits(feedPerRevolution, capabilities.feedPerRevolutionGrid),
    "inverse-time": inverseTime && largest(inverseTime, capabilities.inverseTimeGrid),
    speed: largest(numbers.speed, capabilities.speedGrid),
    dwell: largest(numbers.dwell, capabilities.dwellGrid),
  };
  const all = Object.values(largestOf).flatMap((one) => (typeof one === "object" ? [one.mm, one.inch] : one));
  return all.some((one) => one !== undefined && one < Infinity) ? largestOf : undefined;
}
