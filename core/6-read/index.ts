export { read } from "./read.ts";
export type { ReadOptions, ReadStart } from "./reader.ts";
