import { createHash } from "node:crypto";
import type { Finding } from "#base";
import type { Digest, JobInput, Outcome } from "#compile";
import { post, prove } from "#compile";
import type { Emitter } from "#emit";
import type { Proof } from "#prove";
import type { Reportable, Sources } from "#report";
import { locate } from "#report";
import { byteSource, refuseChanged } from "../files/input.ts";
import type { Input } from "../files/input.ts";
import { sinkOf } from "../files/staged.ts";
import { isCarried } from "../files/world.ts";
import { readingOf } from "../reading.ts";
import type { Plan, PlannedJob, Progress } from "./plan.ts";
import { createSources, headOf } from "./sources.ts";

/** What the work came to. Plain data, so that another thread can hand it over. */
export interface Computed {
  readonly result: Reportable;
  /** Present where the text was proved; `commit` asks for it. */
  readonly proof?: Proof;
}

/**
 * Does the work of a plan: reads the inputs, and writes the program to the staged file. Everything happens in one go on
 * this thread. Findings come back with lines and columns.
 */
export async function compute(plan: Plan, progress: Progress): Promise<Computed> {
  const sources = createSources(plan);
  try {
    const emitter = (await import(plan.dialect.emitter)) as Emitter;
    const outcome = run(plan, emitter, progress);
    inputsOf(plan).forEach(refuseChanged);
    return describe(outcome, plan, sources);
  } catch (error) {
    if (!isCarried(error)) throw error;
    const result: Reportable = {
      verdict: "refused",
      findings: locate([error.finding], sources),
      summary: { assumptions: [] },
    };
    return { result };
  }
}

function run(plan: Plan, emitter: Emitter, progress: Progress): Outcome {
  const { dialect } = plan.dialect;
  const simulate = plan.simulate === undefined ? {} : { simulate: plan.simulate };
  const common = { dialect, emitter, createDigest, progress, ...simulate };
  if (plan.kind === "post") return post({ ...common, ...jobInput(plan.job), sink: sinkOf(plan.staged) });
  const program = byteSource(plan.program);
  if (plan.against === undefined) return prove({ ...common, program });
  return prove({ ...common, program, against: jobInput(plan.against) });
}

/** The job as compile.ts takes it; what is not stated is absent. */
export function jobInput({ input, reading, setup, options }: PlannedJob): JobInput {
  const { only, from, spindleHolds, rackNow } = options;
  return {
    source: byteSource(input),
    reading: readingOf(reading),
    ...(setup === undefined ? {} : { setup: setup.content }),
    options: {
      ...(only === undefined ? {} : { only }),
      ...(from === undefined ? {} : { from }),
      ...(spindleHolds === undefined ? {} : { spindleHolds }),
      ...(rackNow === undefined ? {} : { rackNow }),
    },
  };
}

function describe({ verdict, findings, proof, ...outcome }: Outcome, plan: Plan, sources: Sources): Computed {
  const summary = { ...outcome.summary, dialect: plan.dialect.dialect.name };
  const all: readonly Finding[] = [...plan.dialect.findings, ...findings];
  const located = locate(all, sources, plan.dialect.dialect);
  const result: Reportable = {
    verdict,
    findings: located,
    summary,
    ...(proof === undefined ? {} : { proof }),
  };
  return proof === undefined ? { result } : { result, proof };
}

function inputsOf(plan: Plan): Input[] {
  const job = plan.kind === "post" ? plan.job : plan.against;
  return [job?.input, headOf(job?.reading), plan.kind === "prove" ? plan.program : undefined].filter(
    (input) => input !== undefined,
  );
}

/** SHA-256 of what passes. */
export function createDigest(): Digest {
  const hash = createHash("sha256");
  return { update: (chunk) => void hash.update(chunk), hex: () => hash.digest("hex") };
}
