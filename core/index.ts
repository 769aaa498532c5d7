/**
 * The library: the command's work without its files. `post` and `prove` work on byte sources of any size, `postText` and
 * `proveText` on texts, `inferDialect` on whole programs. Nothing here reads a file or prints.
 */
export type { ByteSource, Finding, Place, Report, Severity, SourceName } from "#base";
export { memorySource } from "#base";
export type {
  Digest,
  JobInput,
  Outcome,
  PostInput,
  ProgramOptions,
  ProveInput,
  SimulationChoice,
} from "#compile";
export { post, prove } from "#compile";
export type { Dialect, DialectFile, DialectLoader, Setup } from "#dialect";
export { readSetup, resolveDialect, unpackDialect } from "#dialect";
export type { Emitter } from "#emit";
export type { ClOptions, OpenJob, Reading } from "#job";
export { openJob, parseClOptions, writeJob } from "#job";
export type { InferInput, Inference, SampleText } from "#infer";
export { inferDialect } from "#infer";
export type { Proof } from "#prove";
export type { Simulation, SimulationFacts, SimulationResult, SimulationSizes, HeightMap } from "#simulate";
export { createSimulation } from "#simulate";
export type { Located, Reportable, Sources, SourceText } from "#report";
export { cautions, jsonReport, locate } from "#report";
export type { ReadyDialect, TextJob } from "./in-memory.ts";
export { postText, prepareDialect, proveText } from "./in-memory.ts";
export { createSha256 } from "./sha256.ts";
