import type { ByLinearAxis, MachineFacts } from "#base";
import { timeOf } from "./trapezoid.ts";

/** How fast the axes X, Y and Z are: atoms and seconds. What no file says is infinite. */
export interface Rates {
  readonly acceleration: readonly [number, number, number];
  readonly rapid: readonly [number, number, number];
  /** Whether the accelerations of all three axes are stated. */
  readonly accelerates: boolean;
  /** Whether each axis of a rapid runs by itself. */
  readonly dogLeg: boolean;
}

function threeOf(rates: ByLinearAxis, unit: number): [number, number, number] {
  const { x = Infinity, y = Infinity, z = Infinity } = rates;
  return [x / unit, y / unit, z / unit];
}

/** The rates of a machine. */
export function ratesOf({ dynamics, rapids }: MachineFacts): Rates {
  const { acceleration, rapidRate } = dynamics;
  const said = threeOf(acceleration, 1);
  const accelerates = said.every((value) => value !== Infinity);
  return {
    acceleration: accelerates ? said : [Infinity, Infinity, Infinity],
    rapid: threeOf(rapidRate, 60),
    accelerates,
    dogLeg: rapids === "dog-leg",
  };
}

/** What the axes allow along a straight way: the least of the values of the axes, each by its share of the way. */
export function alongWay(
  values: readonly [number, number, number],
  dx: number,
  dy: number,
  dz: number,
  length: number,
): number {
  let least = Infinity;
  if (dx !== 0) least = (values[0] * length) / Math.abs(dx);
  if (dy !== 0) least = Math.min(least, (values[1] * length) / Math.abs(dy));
  if (dz !== 0) least = Math.min(least, (values[2] * length) / Math.abs(dz));
  return least;
}

/**
 * Seconds of a rapid from rest to rest. An axis without a rapid rate takes no time.
 *
 * @param dx way of X, atoms; likewise the others
 */
export function rapidTime(rates: Rates, dx: number, dy: number, dz: number): number {
  if (!rates.dogLeg) {
    const length = Math.sqrt(dx * dx + dy * dy + dz * dz);
    const speed = alongWay(rates.rapid, dx, dy, dz, length);
    return fromRest(length, speed, alongWay(rates.acceleration, dx, dy, dz, length));
  }
  const axes = [dx, dy, dz].map((way, axis) =>
    fromRest(Math.abs(way), rates.rapid[axis], rates.acceleration[axis]),
  );
  return Math.max(...axes);
}

/** Seconds of a way from rest to rest; none where it is none, or its speed is not known. */
export function fromRest(length: number, speed: number, acceleration: number): number {
  if (length === 0 || speed === Infinity) return 0;
  if (acceleration === Infinity) return length / speed;
  return timeOf(length, 0, 0, speed, acceleration);
}
