import type { ByteSource, Finding } from "#base";
import { memorySource } from "#base";
import { post, prove } from "#compile";
import { resolveDialect } from "#dialect";
import { generateEmitter } from "#emit";
import type { ClOptions, Reading } from "#job";
import { openJob, writeJob } from "#job";
import type { ReadyDialect } from "../../core/index.ts";
import { createSha256 } from "../../core/index.ts";
import { dialectLoader, quarryRouter } from "../support/dialects.ts";
import { shippedDialects } from "../support/examples.ts";
import { ready } from "../support/ready.ts";
import { seeded } from "../support/seeded.ts";
import { clInput, clOptions } from "./cl-inputs.ts";
import { dialectInput, jobInput, programInput } from "./inputs.ts";
import type { Random } from "./mutate.ts";
import { pick } from "./mutate.ts";

/** What is fuzzed: the flow from a job's bytes, from those of a cutter location source, from a dialect file's bytes, from a program's bytes. */
export const targetNames = ["job", "cl", "dialect", "program"] as const;
export type TargetName = (typeof targetNames)[number];

/** An input, and what it is tried with. */
export interface Trial {
  readonly bytes: Uint8Array;
  /** The dialect that a job or program is read under. */
  readonly dialect: string;
  /** How a cutter location source is read. */
  readonly options: ClOptions;
}

const dialects = [...shippedDialects, quarryRouter];

const makers: Record<TargetName, (random: Random) => Uint8Array> = {
  job: jobInput,
  cl: clInput,
  dialect: dialectInput,
  program: programInput,
};

/** The input with a number; the same for the same seed. */
export function trialOf(target: TargetName, seed: number, index: number): Trial {
  const random = seeded(Math.imul(seed, 1_000_003) + index);
  return { bytes: makers[target](random), dialect: pick(random, dialects), options: clOptions(random) };
}

/** Tries an input; what is wrong with how it was taken, or undefined. */
export type Attempt = (target: TargetName, trial: Trial) => Promise<string | undefined>;

/** Readies the dialects. */
export async function createAttempt(): Promise<Attempt> {
  const made = new Map<string, ReadyDialect>();
  for (const name of dialects) made.set(name, await ready(name));
  return async (target, trial) => {
    try {
      const { findings, refused } = await findingsOf(target, trial, made.get(trial.dialect) as ReadyDialect);
      return wrong(findings, refused);
    } catch (error) {
      return `throws ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`;
    }
  };
}

const sink = { write: () => undefined };

/** A source that is posted gives a job in JSON that gives itself again, and the same program. */
function requireSame(source: ByteSource, reading: Reading, program: string, made: ReadyDialect): void {
  const written = jobText(source, reading);
  const again = memorySource(new TextEncoder().encode(written));
  if (jobText(again, { form: "json" }) !== written)
    throw new Error("the job of the source, written anew, is another one");
  const { proof } = post({ ...made, createDigest: createSha256, source: again, options: {}, sink });
  if (proof?.sha256 !== program) throw new Error("the job of the source gives another program");
}

function jobText(source: ByteSource, reading: Reading): string {
  const report = (finding: Finding): void => {
    if (finding.severity === "error") throw new Error(`${finding.rule}: ${finding.message}`);
  };
  const opened = openJob(source, reading, report);
  if (opened === undefined) throw new Error("a job that was posted is refused");
  return [...writeJob(opened, report)].join("");
}

interface Taken {
  readonly findings: readonly Finding[];
  /** Nothing came of it. */
  readonly refused: boolean;
}

async function findingsOf(target: TargetName, { bytes, options }: Trial, made: ReadyDialect): Promise<Taken> {
  const source = memorySource(bytes);
  const common = { ...made, createDigest: createSha256 };
  if (target === "job" || target === "cl") {
    const reading: Reading = target === "job" ? { form: "json" } : { form: "cl", options };
    const { findings, verdict, proof } = post({ ...common, source, reading, options: {}, sink });
    if (target === "cl" && proof) requireSame(source, reading, proof.sha256, made);
    return { findings, refused: verdict !== "proved" };
  }
  if (target === "program")
    return { findings: prove({ ...common, program: source }).findings, refused: false };
  const findings: Finding[] = [];
  const base = dialectLoader();
  const loader = {
    ...base,
    readFile: (path: string) => (path === "fuzz.dialect.yaml" ? { file: path, bytes } : undefined),
  };
  const dialect = await resolveDialect("fuzz.dialect.yaml", loader, (finding) => findings.push(finding));
  // What resolves must give an emitter. It is not loaded: a module that was loaded is never let go.
  if (dialect !== undefined) generateEmitter(dialect.format, { traced: false });
  return { findings, refused: dialect === undefined };
}

/** Findings that help nobody: without a rule, a text, or a place in the input or the dialect; and a refusal without an error. */
function wrong(findings: readonly Finding[], refused: boolean): string | undefined {
  if (refused && !findings.some(({ severity }) => severity === "error")) return "refused without an error";
  const poor = findings.find(
    ({ rule, message, place, key }) =>
      !/^[a-z-]+\/[a-z-]+$/.test(rule) || message === "" || (place === undefined && key === undefined),
  );
  return poor && `a finding without rule, text or place: ${JSON.stringify(poor)}`;
}
