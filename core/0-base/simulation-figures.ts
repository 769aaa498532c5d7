import type { UnitSystem } from "./lengths.ts";

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

/** A simulation of the stock in figures. Plain data. */
export interface SimulationFigures {
  /** Of the job; the figures are in mm all the same. */
  readonly units: UnitSystem;
  /** Width of the cells, mm. */
  readonly cell: number;
  /** The thinnest wall that a rapid is certain to be seen in, mm. */
  readonly surestWall: number;
  readonly operations: readonly CutFigures[];
  /** The same by tool, in order of first use. */
  readonly tools: readonly CutFigures[];
  /** mm3. */
  readonly stockVolume: number;
  readonly volumeLeft: number;
}
