/** What a simulation of the stock says of an operation. */
import type { SimulationFigures, UnitSystem } from "#base";
import { atomsPerMillimetre, atomsPerUnit } from "#base";
import type { SheetOperation } from "#report";
import { rounded } from "./units.ts";

/** Cubic millimetres in one cubic centimetre, and in one cubic inch. */
const volumes = { mm: 1000, inch: (atomsPerUnit.inch / atomsPerMillimetre) ** 3 } as const;

/** The material that an operation takes away; nothing where nothing was simulated. */
export function removedBy(
  id: string,
  simulation: SimulationFigures | undefined,
  units: UnitSystem,
): Pick<SheetOperation, "removed"> {
  const figures = simulation?.operations.find((one) => one.id === id);
  return figures === undefined
    ? {}
    : { removed: rounded(figures.removed / volumes[units], units === "mm" ? 2 : 3) };
}
