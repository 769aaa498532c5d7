/** The whole flow with texts in memory: for editors, tests and browsers, where files are somebody else's business. */
import type { Report } from "#base";
import { memorySource } from "#base";
import type { JobInput, Outcome, ProgramOptions } from "#compile";
import { post, prove } from "#compile";
import type { Dialect, DialectLoader, Setup } from "#dialect";
import { resolveDialect } from "#dialect";
import type { Emitter } from "#emit";
import type { InputReading } from "#retrace";
import { createSha256 } from "./sha256.ts";

/** A dialect with its emitter, ready for any number of jobs. */
export interface ReadyDialect {
  readonly dialect: Dialect;
  readonly emitter: Emitter;
}

/** A job as text, with what changes its program. */
export interface TextJob {
  /** The job: JSON, or in the form that `reading` names. */
  readonly job: string;
  readonly reading?: InputReading;
  readonly setup?: Setup;
  readonly options?: ProgramOptions;
}

/**
 * Resolves a dialect and builds its emitter; loads the YAML reader and the TypeScript compiler for it.
 *
 * @param name a shipped name or a path, as `loader` knows them
 * @returns undefined after an error finding, rule dialect/...
 */
export async function prepareDialect(
  name: string,
  loader: DialectLoader,
  report: Report,
): Promise<ReadyDialect | undefined> {
  const dialect = await resolveDialect(name, loader, report);
  if (dialect === undefined) return undefined;
  const { generateEmitter, loadEmitter } = await import("#emit");
  return { dialect, emitter: await loadEmitter(generateEmitter(dialect.format, { traced: false })) };
}

/**
 * Makes the program of a job and proves it.
 *
 * @returns the outcome, and the program if it was proved
 */
export function postText(
  job: TextJob,
  ready: ReadyDialect,
): { outcome: Outcome; program: string | undefined } {
  const chunks: Uint8Array[] = [];
  // A chunk is valid until the next one, so it is copied.
  const sink = { write: (chunk: Uint8Array) => void chunks.push(chunk.slice()) };
  const outcome = post({ ...ready, ...asInput(job), sink, createDigest: createSha256 });
  return { outcome, program: outcome.proof === undefined ? undefined : decode(chunks) };
}

/** Reads a program, and compares it with a job if one is given. */
export function proveText(program: string, ready: ReadyDialect, against?: TextJob): Outcome {
  const input = { ...ready, program: sourceOf(program), createDigest: createSha256 };
  return prove(against === undefined ? input : { ...input, against: asInput(against) });
}

function asInput({ job, reading, setup, options = {} }: TextJob): JobInput {
  const more = { ...(reading === undefined ? {} : { reading }), ...(setup === undefined ? {} : { setup }) };
  return { source: sourceOf(job), options, ...more };
}

function sourceOf(text: string) {
  return memorySource(new TextEncoder().encode(text));
}

function decode(chunks: readonly Uint8Array[]): string {
  const decoder = new TextDecoder("utf-8", { ignoreBOM: true });
  return chunks.map((chunk) => decoder.decode(chunk, { stream: true })).join("") + decoder.decode();
}
