export { openJob } from "./open-job.ts";
export type { OpenJob, Reading } from "./open-job.ts";
export { clChoices, clDefaults, parseClOptions } from "./cl/options.ts";
export type { ClOptions } from "./cl/options.ts";
export { readJob } from "./read-job.ts";
export { readMoves } from "./read-moves.ts";
export type { HoleKind, Holes, Job, JobStep, Operation, Tool } from "./job.ts";
export { chooseOperations } from "./choose-operations.ts";
export type { Choice } from "./choose-operations.ts";
