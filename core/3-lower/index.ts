export { lower } from "./lower.ts";
export type { LowerRequest } from "./lower.ts";
export type { LoweredStep } from "./lowered.ts";
export type { LoweringSummary } from "./state.ts";
export { writtenFeedMode } from "./feed.ts";
export { raiseJob, raiseMoves } from "./air-cut.ts";
export type { AirCut } from "./air-cut.ts";
export { programUnits } from "./units.ts";
export { onProgramGrid } from "./program-grid.ts";
