import type { Batch, Finding, JobFacts, MachineFacts, UnitSystem } from "#base";
import { createGuard, prove } from "#prove";
import { read } from "#read";
import { gather } from "#report";
import { memorySource } from "../../../core/index.ts";
import type { ReadyDialect } from "../../../core/index.ts";
import { undertake, unclearIsError, watched } from "../../../core/undertaking.ts";
import type { Row } from "./rows.ts";
import { batchOf, rowsOf } from "./rows.ts";

/** A job under a dialect, as far as its sequence. */
export interface Made extends ReadyDialect {
  readonly units: UnitSystem;
  readonly machine: MachineFacts;
  readonly facts: JobFacts;
  /** The sequence of the job, and the same as one batch. */
  readonly rows: readonly Row[];
  readonly batch: Batch;
}

/** Brings a job as far as its sequence; undefined where it is refused before. */
export function sequenceOf(job: string, ready: ReadyDialect): Made | undefined {
  const findings = gather();
  const means = { ...ready, createDigest: () => ({ update: () => undefined, hex: () => "" }) };
  const source = memorySource(new TextEncoder().encode(job));
  const work = undertake({ source, options: {} }, means, findings);
  if (work === undefined) return undefined;
  const rows = rowsOf(work.batches());
  if (findings.errors() > 0) return undefined;
  const { units, machine, facts } = work;
  return { ...ready, units, machine, facts, rows, batch: batchOf(rows) };
}

/** What stands of a sequence in the text; undefined with the reason where the emitter refuses it. */
export function emit(made: Made, batch: Batch): { text: Uint8Array } | { refused: string } {
  const chunks: Uint8Array[] = [];
  try {
    for (const chunk of made.emitter.emitUnproved([batch], { units: made.units, header: [] }))
      chunks.push(chunk.slice());
  } catch (error) {
    return { refused: error instanceof Error ? error.message : String(error) };
  }
  return { text: Buffer.concat(chunks) };
}

/** Who objects to a text that shall mean the job. */
export interface Verdict {
  readonly proved: boolean;
  /** Rules of the reader's, the guard's and the comparison's errors. */
  readonly read: readonly string[];
  readonly guard: readonly string[];
  readonly compare: readonly string[];
}

/** Reads a text, guards what was read, and compares it with the sequence of the job, as `prove --against` does. */
export function judge(made: Made, text: Uint8Array): Verdict {
  const { dialect, machine, facts, units } = made;
  const errors = { read: [] as string[], guard: [] as string[], compare: [] as string[] };
  const into =
    (list: string[]) =>
    ({ severity, rule }: Finding): void => {
      if (severity === "error") list.push(rule);
    };
  const guard = createGuard(machine, facts, into(errors.guard), "program");
  const readBack = watched(
    read([text], dialect.format, machine, { units }, unclearIsError(into(errors.read))),
    guard,
  );
  const proof = prove({
    expected: [made.batch],
    actual: readBack,
    report: into(errors.compare),
    errors: () => errors.read.length + errors.guard.length + errors.compare.length,
    text: { bytes: () => text.length, sha256: () => "0".repeat(64) },
    facts: () => "",
  });
  return { proved: proof !== undefined, ...errors };
}

/** Rules by which the guard alone objects to a sequence, each once. */
export function guardAlone({ machine, facts }: Made, batch: Batch): string[] {
  const rules = new Set<string>();
  const guard = createGuard(
    machine,
    facts,
    ({ severity, rule }) => {
      if (severity === "error") rules.add(rule);
    },
    "job",
  );
  guard.accept(batch);
  guard.end();
  return [...rules];
}
