export * from "./lengths.ts";
export * from "./batch.ts";
export * from "./step.ts";
export * from "./finding.ts";
export * from "./source.ts";
export * from "./expression.ts";
export * from "./machine-facts.ts";
export * from "./capabilities.ts";
