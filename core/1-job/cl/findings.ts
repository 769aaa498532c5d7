/* Findings of cutter location source. The rules of a job hold for it, too; their findings stand in ../findings.ts. */
export { clRules } from "./findings/finding.ts";
export * from "./findings/cycles.ts";
export * from "./findings/motion.ts";
export * from "./findings/places.ts";
export * from "./findings/statements.ts";
export * from "./findings/tools.ts";
