export type { Case, PlacedText } from "./case.ts";
export type { BlockPair, Piece } from "./difference.ts";
export { firstWords } from "./notation.ts";
export { casesOf, readCases } from "./read-cases.ts";
export type { CaseResult, Means } from "./run-case.ts";
export { runCase } from "./run-case.ts";
export type { NewBlocks } from "./update.ts";
export { withNewBlocks } from "./update.ts";
