/** From base units to numbers that are read at a machine, in the units of the program. */
import type { UnitSystem } from "#base";
import { atomsPerUnit, milliPerRpm } from "#base";
import type { Extents, Range, SheetBox, Triple } from "#report";
import type { Reach, Span } from "./span.ts";
import { isSeen } from "./span.ts";

/** Decimals of a length: what a controller of the family shows. */
const lengthDecimals = { mm: 3, inch: 4 } as const satisfies Record<UnitSystem, number>;

/** Decimals of a feed a minute, and of one a revolution or a tooth. */
const feedDecimals = { mm: 1, inch: 2 } as const satisfies Record<UnitSystem, number>;
const fineDecimals = { mm: 4, inch: 5 } as const satisfies Record<UnitSystem, number>;

/** Makes numbers of one unit system. */
export interface Measure {
  readonly units: UnitSystem;
  readonly length: (atoms: number) => number;
  /** Atoms a minute. */
  readonly feed: (atoms: number) => number;
  /** Atoms a revolution or a tooth. */
  readonly fine: (atoms: number) => number;
}

/** Measures in one unit system: 12.7 mm are 127,000,000 atoms -> 12.7, or 0.5 in inches. */
export function createMeasure(units: UnitSystem): Measure {
  const by = (decimals: number) => (atoms: number) => rounded(atoms / atomsPerUnit[units], decimals);
  return {
    units,
    length: by(lengthDecimals[units]),
    feed: by(feedDecimals[units]),
    fine: by(fineDecimals[units]),
  };
}

/** A number with so many decimals at most; never negative zero. */
export function rounded(value: number, decimals: number): number {
  return Number(value.toFixed(decimals)) + 0;
}

/** Milli-rpm as 1/min. */
export function rpmOf(milli: number): number {
  return rounded(milli / milliPerRpm, 1);
}

/** A span as a range; undefined where nothing was seen. */
export function rangeOf(span: Span, measure: (value: number) => number): Range | undefined {
  return isSeen(span) ? { least: measure(span.least), most: measure(span.most) } : undefined;
}

/** A reach as extents of the axes that were seen. */
export function extentsOf(reach: Reach, { length }: Measure): Extents {
  const [x, y, z] = reach.map((span) => rangeOf(span, length));
  return { ...(x && { x }), ...(y && { y }), ...(z && { z }) };
}

/** Three lengths. */
export function tripleOf(atoms: readonly [number, number, number], { length }: Measure): Triple {
  return [length(atoms[0]), length(atoms[1]), length(atoms[2])];
}

/** A box with its size. */
export function boxOf(
  name: string,
  min: readonly [number, number, number],
  max: readonly [number, number, number],
  measure: Measure,
): SheetBox {
  const size = [max[0] - min[0], max[1] - min[1], max[2] - min[2]] as const;
  return {
    name,
    min: tripleOf(min, measure),
    max: tripleOf(max, measure),
    size: tripleOf(size, measure),
  };
}
