export { answerText } from "./draft.ts";
export { inferDialect } from "./infer.ts";
export type { Candidate, InferInput, Inference } from "./infer.ts";
export type { Asked } from "./questions.ts";
export type { StatedKey } from "./stated.ts";
export type { Measured } from "./measure.ts";
export type { SampleText } from "./program.ts";
