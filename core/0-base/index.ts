export * from "./lengths.ts";
export * from "./batch.ts";
export type * from "./step.ts";
export type * from "./finding.ts";
export * from "./source.ts";
export * from "./expression.ts";
export * from "./machine-facts.ts";
export type * from "./capabilities.ts";
export * from "./nearest.ts";
