export { read } from "./read.ts";
export type { ReadOptions } from "./reader.ts";
