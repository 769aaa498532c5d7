export { sequence } from "./sequence.ts";
export { planJobFacts } from "./job-facts.ts";
export type { PlannedFacts, PlanRequest, SequenceRequest, Setup } from "./request.ts";
