import type { Box, MachineFacts, NamedBox, SourceName, UnitSystem } from "#base";
import type { SimulationTool } from "./shape.ts";

/** A part of the work that findings and volumes are told by: an operation. */
export interface WorkPart {
  readonly id: string;
  readonly tool: number;
  /** Byte offset in the job at which it begins; parts stand in this order. */
  readonly from: number;
}

/** What a simulation goes by. Lengths in atoms. */
export interface SimulationFacts {
  /** Units of what is told. */
  readonly units: UnitSystem;
  /** The text that the byte offsets of the rows belong to. */
  readonly source: Extract<SourceName, "job" | "program">;
  readonly tools: readonly SimulationTool[];
  /** Work coordinates; undefined: nothing can be simulated. */
  readonly stock: Box | undefined;
  readonly fixtures: readonly NamedBox[];
  /** Operations of the job; none for a program, which is told by its tools. */
  readonly parts: readonly WorkPart[];
  /** The work offset in which stock and fixtures stand. */
  readonly workOffset: number;
  readonly machine: Pick<MachineFacts, "rapids" | "swap" | "rack">;
  /** For a program: the tool in the spindle at its start, 0 for none, undefined for unknown. */
  readonly spindleHolds: number | undefined;
  /** For a program: the tool in each pocket; index 0 is pocket 1. */
  readonly rack: readonly number[];
}

/** Sizes of a simulation; each has a usual value in sizes.ts. Lengths in mm. */
export interface SimulationSizes {
  /** Width of a cell; undefined: chosen by stock and tools. */
  readonly resolution: number | undefined;
  /** The most cells when the width is chosen, and when it is stated. Each takes four bytes. */
  readonly mostCells: number;
  readonly mostCellsStated: number;
  /** What a rapid, a shank, a holder or a fixture may overlap without being told. */
  readonly tolerance: number;
  /** How far below the stock's bottom a tool may go without a warning; of a drill its full diameter, not its point. */
  readonly throughDepth: number;
}
