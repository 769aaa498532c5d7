export { createSimulation } from "./simulation.ts";
export type { Simulation } from "./simulation.ts";
export type { SimulationFacts, SimulationSizes, WorkPart } from "./facts.ts";
export type { SimulationTool } from "./shape.ts";
export type { HeightMap, SimulationResult } from "./result.ts";
export { usualSizes } from "./sizes.ts";
