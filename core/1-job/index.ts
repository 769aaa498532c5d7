export { readJob } from "./read-job.ts";
export { readMoves } from "./read-moves.ts";
export type { HoleKind, Holes, Job, JobStep, Operation, Tool } from "./job.ts";
export { chooseOperations } from "./choose-operations.ts";
export type { Choice } from "./choose-operations.ts";
