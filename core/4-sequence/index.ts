export { sequence } from "./sequence.ts";
export { planJobFacts } from "./job-facts.ts";
export type { PlannedFacts, PlanRequest, SequenceRequest } from "./request.ts";
export type { Setup } from "#dialect";
