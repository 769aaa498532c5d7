import type { Finding, SimulationFigures } from "#base";

/**
 * What is left of the stock: the height of the material above the centre of each cell. The stock's box is divided evenly, so
 * that a cell may be a little narrower than asked for. Lengths in mm, work coordinates.
 */
export interface HeightMap {
  readonly columns: number;
  readonly rows: number;
  /** Width of a cell along X and along Y. */
  readonly cellX: number;
  readonly cellY: number;
  /** Least corner of the stock. */
  readonly x: number;
  readonly y: number;
  /** Z of the stock's bottom, which is also the height of a cell with nothing left in it, and of its top. */
  readonly bottom: number;
  readonly top: number;
  /** Row by row from the least corner on: index = row * columns + column. */
  readonly heights: Float32Array;
}

/** What a simulation came to. Plain data. */
export interface SimulationResult {
  readonly findings: readonly Finding[];
  /** Absent where nothing was simulated; the findings say why. */
  readonly done?: SimulationFigures & { readonly map: HeightMap };
}
