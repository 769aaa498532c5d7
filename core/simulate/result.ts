import type { Finding, UnitSystem } from "#base";

/** What was cut in one part of the work, or by one tool. */
export interface CutFigures {
  /** Id of the operation; of a program without a job: "tool 3". */
  readonly id: string;
  readonly tool: number;
  /** Material taken away, mm3. */
  readonly removed: number;
  /** The most that was taken away in a minute, over a way of the tool's diameter or a plunge; mm3/min, 0 where nothing was cut. */
  readonly greatestRate: number;
  /** How far its tool goes below the stock's bottom, mm; 0 where it does not. */
  readonly below: number;
}

/** What is left of the stock, for a picture. Lengths in mm, work coordinates. */
export interface HeightMap {
  readonly columns: number;
  readonly rows: number;
  readonly cellX: number;
  readonly cellY: number;
  /** Least corner in X and Y. */
  readonly x: number;
  readonly y: number;
  /** Z of the stock's bottom; a cell of that height is empty. */
  readonly bottom: number;
  readonly top: number;
  /** Height above the centre of each cell, row by row from the least corner on. */
  readonly heights: Float32Array;
}

/** What a simulation came to. Plain data. */
export interface SimulationResult {
  readonly findings: readonly Finding[];
  /** Absent where nothing was simulated; the findings say why. */
  readonly done?: {
    readonly units: UnitSystem;
    /** Width of the cells, mm. */
    readonly cell: number;
    /** The thinnest wall that a rapid is certain to be seen in, mm. */
    readonly surestWall: number;
    readonly operations: readonly CutFigures[];
    /** The same by tool, in order of first use. */
    readonly tools: readonly CutFigures[];
    readonly stockVolume: number;
    readonly volumeLeft: number;
    readonly map: HeightMap;
  };
}
