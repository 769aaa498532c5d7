export { createGuard } from "./guard.ts";
export type { Guard } from "./guard.ts";
export { prove } from "./prove.ts";
export type { ProveInput, ProvedText } from "./prove.ts";
export type { Proof } from "./proof.ts";
export { createQueue } from "./queue.ts";
export type { Queue } from "./queue.ts";
export { describeRules } from "./describe-rules.ts";
export type { RuleDescription } from "./describe-rules.ts";
