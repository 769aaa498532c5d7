import type { UnitSystem } from "#base";
import { atomsPerUnit, largestLength, inverseTimeUnit, milliPerRpm } from "#base";
import type { Format, NumberFormat, UnitFormats } from "#dialect";

/** How the numbers of one address become whole base units. */
export interface Quantity {
  readonly format: NumberFormat;
  /** Base units in 1. */
  readonly unit: number;
  /** Base units in one step of the last digit. */
  readonly grid: number;
  /**
   * Factor by the block's `point`: base units = mantissa * factor. 0 where the number needs a closer look: a point that
   * must not be there, one that is missing, digits beyond the grid, suppressed zeros, another form than the dialect's.
   */
  readonly factors: Float64Array;
  /** 1 where a zero at the end, behind the point, is not as the dialect writes it; otherwise 0. */
  readonly tails: 0 | 1;
  /** Whether the form of each number needs a closer look: a sign, or a zero that must not stand before the point. */
  readonly looks: boolean;
  /** The largest number in base units: what stays exact, and what the digits before the point can say. */
  readonly most: number;
  /** Key that states the format. */
  readonly key: string;
  /** Unit for messages. */
  readonly name: string;
}

/** Digits behind a point that the tables know; a block never has more, see `scanNumber`. */
const mostDecimals = 15;

/** Makes the quantity of one address. */
export function quantity(format: NumberFormat, unit: number, key: string, name: string): Quantity {
  const grid = unit / 10 ** format.decimals;
  const factors = new Float64Array(mostDecimals + 2);
  const implied = format.point === "never";
  if (implied) factors[0] = format.suppressed === "leading" || format.digits === 0 ? grid : 0;
  else factors[0] = format.point === "always" && format.decimals > 0 ? 0 : unit;
  const isKept = format.trailingZeros === "keep";
  const least = isKept
    ? format.decimals
    : format.trailingZeros === "one" || format.point === "when-needed"
      ? 1
      : 0;
  if (!implied && format.decimals > 0)
    for (let decimals = least; decimals <= format.decimals; decimals++)
      factors[1 + decimals] = unit / 10 ** decimals;
  const tails = implied || isKept ? 0 : 1;
  const most =
    format.wholeDigits === 0
      ? largestLength
      : Math.min(largestLength, unit * 10 ** format.wholeDigits - grid);
  return { format, unit, grid, factors, tails, looks: format.plus || !format.leadingZero, most, key, name };
}

/** The quantities of a dialect. */
export interface Quantities {
  readonly length: Readonly<Record<UnitSystem, Quantity>>;
  readonly centre: Readonly<Record<UnitSystem, Quantity>>;
  readonly peck: Readonly<Record<UnitSystem, Quantity>>;
  readonly perMinute: Readonly<Record<UnitSystem, Quantity>>;
  readonly perRevolution: Readonly<Record<UnitSystem, Quantity>> | undefined;
  readonly inverseTime: Quantity | undefined;
  readonly angle: Quantity;
  readonly speed: Quantity;
  readonly dwell: Quantity;
  readonly cycleDwell: Quantity;
  readonly timeout: Quantity | undefined;
}

/** Microseconds, or millionths of a revolution. */
const partsIn = { s: 1_000_000, ms: 1000, rev: 1_000_000 } as const;

function byUnits(formats: UnitFormats, key: string, suffix: string): Record<UnitSystem, Quantity> {
  const of = (units: UnitSystem): Quantity =>
    quantity(formats[units], atomsPerUnit[units], `${key}.${units}`, units + suffix);
  return { mm: of("mm"), inch: of("inch") };
}

function time(format: NumberFormat, unit: keyof typeof partsIn, key: string): Quantity {
  return quantity(format, partsIn[unit], key, unit);
}

/** Unit, key and name of inverse time. */
function inverseTimeOf({ motion }: Format): [number, string, string] {
  const seconds = motion.inverseTimeUnit === "per-second";
  return [
    seconds ? 60 * inverseTimeUnit : inverseTimeUnit,
    "numbers.inverse-time",
    seconds ? "1/s" : "1/min",
  ];
}

/** Makes the quantities of a dialect. */
export function createQuantities(format: Format): Quantities {
  const { numbers } = format;
  return {
    length: byUnits(numbers.length, "numbers.length", ""),
    centre: byUnits(numbers.arcCentre, "numbers.arc-centre", ""),
    peck: byUnits(numbers.peck, "numbers.peck", ""),
    perMinute: byUnits(numbers.feedPerMinute, "numbers.feed-per-minute", " a minute"),
    perRevolution:
      numbers.feedPerRevolution &&
      byUnits(numbers.feedPerRevolution, "numbers.feed-per-revolution", " a revolution"),
    inverseTime: numbers.inverseTime && quantity(numbers.inverseTime, ...inverseTimeOf(format)),
    angle: quantity(numbers.angle, 1_000_000, "numbers.angle", "degrees"),
    speed: quantity(
      numbers.speed,
      format.speedUnit,
      "numbers.speed",
      format.speedUnit === milliPerRpm ? "rpm" : "percent",
    ),
    dwell: time(numbers.dwell, format.dwell?.unit ?? "s", "numbers.dwell"),
    cycleDwell: time(numbers.cycleDwell, format.cycles?.dwellUnit ?? "s", "numbers.cycle-dwell"),
    timeout:
      numbers.timeout && time(numbers.timeout, format.waitValues?.timeoutUnit ?? "s", "numbers.timeout"),
  };
}
