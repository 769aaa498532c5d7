/**
 * Units of measure used between the stages. Every quantity is a whole number held in a Float64, so that a sum, a
 * difference and a comparison are exact; only lowering rounds.
 *
 * - length: atoms, 1 atom = 0.1 nm = 1e-7 mm; 1 mm = 10,000,000 and 1 inch = 254,000,000 atoms
 * - angle: micro-degrees
 * - time: microseconds
 * - spindle speed: milli-rpm (0.001 revolution a minute)
 * - feed: atoms a minute, atoms a revolution, or 1e-6 a minute (inverse time)
 */

/** Atoms in one millimetre. */
export const atomsPerMillimetre = 10_000_000;

/** Atoms in one inch (25.4 mm exactly). */
export const atomsPerInch = 254_000_000;

/** The largest length that is accepted, in atoms (1 km): sums of a few such lengths stay exact in a Float64. */
export const largestLength = 1e13;

/** Micro-degrees in one turn. */
export const microDegreesPerTurn = 360_000_000;

/** Microseconds in one second. */
export const microsecondsPerSecond = 1_000_000;

/** Base units in a revolution of the spindle, as a dwell counts them. */
export const microRevolutions = 1_000_000;

/** Milli-rpm in one revolution a minute. */
export const milliPerRpm = 1000;

/** Inverse-time units (1e-6 a minute) in one reciprocal minute. */
export const inverseTimeUnit = 1_000_000;

/** The two unit systems a program may be written in. */
export type UnitSystem = "mm" | "inch";

/** Atoms in one unit of a system. */
export const atomsPerUnit = { mm: atomsPerMillimetre, inch: atomsPerInch } as const satisfies Record<
  UnitSystem,
  number
>;

/**
 * Rounds to the nearest multiple of a grid, half away from zero: 15 on 10 -> 20, -15 on 10 -> -20.
 * Never gives negative zero.
 *
 * @param value any finite number
 * @param grid a whole number above 0
 */
export function roundToGrid(value: number, grid: number): number {
  const cells = value < 0 ? -Math.floor(-value / grid + 0.5) : Math.floor(value / grid + 0.5);
  return cells * grid + 0;
}
