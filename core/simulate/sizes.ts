import { atomsPerMillimetre } from "#base";
import type { SimulationFacts, SimulationSizes } from "./facts.ts";
import { cellsAlong } from "./field.ts";
import type { Body } from "./shape.ts";

/** The sizes that hold unless others are stated. */
export const usualSizes: SimulationSizes = {
  resolution: undefined,
  // 16 MB, and 256 MB.
  mostCells: 4_000_000,
  mostCellsStated: 64_000_000,
  tolerance: 0.05,
  // A drill goes through by 1 to 1.5 mm besides its point, an end mill by less (common practice, no source).
  throughDepth: 2,
};

/** The smallest tool is at least so many cells wide. */
const cellsAcrossTool = 12;

/** Widest and narrowest cell that is chosen, mm. The widest sees every wall of 0.5 mm: see `surestWall`. */
const widestChosen = 0.35;
const narrowestChosen = 0.05;

/** Width of the cells, mm, and whether it had to be wider than stated. */
export interface Resolution {
  readonly cell: number;
  readonly coarsened: boolean;
}

/** Chooses the width of the cells by the smallest tool that cuts, or takes the stated one, and holds both to the memory. */
export function chooseResolution(
  stock: NonNullable<SimulationFacts["stock"]>,
  bodies: readonly Body[],
  sizes: SimulationSizes,
): Resolution {
  const [width, length] = [0, 1].map((axis) => (stock.max[axis] - stock.min[axis]) / atomsPerMillimetre);
  const diameters = bodies.filter(({ cuts }) => cuts).map(({ shape }) => 2 * shape.radius);
  const byTool = Math.min(...diameters) / cellsAcrossTool;
  const wanted = sizes.resolution ?? Math.min(widestChosen, Math.max(narrowestChosen, byTool));
  const most = sizes.resolution === undefined ? sizes.mostCells : sizes.mostCellsStated;
  let cell = wanted;
  while (cellsAlong(width, cell) * cellsAlong(length, cell) > most) cell *= 1.02;
  return { cell, coarsened: sizes.resolution !== undefined && cell > wanted };
}

/**
 * The thinnest wall that is certain to be seen, whatever its direction and place, mm. A disc whose diameter is the diagonal of a
 * cell holds the centre of some cell wherever it lies, and a wall as thick as that holds such a disc wherever a tool of at
 * least its width goes through. Thinner walls are seen or not, by where they lie.
 */
export function surestWall(cellX: number, cellY: number): number {
  return Math.hypot(cellX, cellY);
}
