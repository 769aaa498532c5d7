import type { Finding } from "#base";
import { memorySource } from "#base";
import { post, prove } from "#compile";
import { resolveDialect } from "#dialect";
import { generateEmitter } from "#emit";
import type { ReadyDialect } from "../../core/index.ts";
import { createSha256 } from "../../core/index.ts";
import { dialectLoader, quarryRouter } from "../support/dialects.ts";
import { shippedDialects } from "../support/examples.ts";
import { ready } from "../support/ready.ts";
import { seeded } from "../support/seeded.ts";
import { dialectInput, jobInput, programInput } from "./inputs.ts";
import type { Random } from "./mutate.ts";
import { pick } from "./mutate.ts";

/** What is fuzzed: the flow from a job's bytes, from a dialect file's bytes, from a program's bytes. */
export const targetNames = ["job", "dialect", "program"] as const;
export type TargetName = (typeof targetNames)[number];

/** An input, and what it is tried with. */
export interface Trial {
  readonly bytes: Uint8Array;
  /** The dialect that a job or program is read under. */
  readonly dialect: string;
}

const dialects = [...shippedDialects, quarryRouter];

const makers: Record<TargetName, (random: Random) => Uint8Array> = {
  job: jobInput,
  dialect: dialectInput,
  program: programInput,
};

/** The input with a number; the same for the same seed. */
export function trialOf(target: TargetName, seed: number, index: number): Trial {
  const random = seeded(Math.imul(seed, 1_000_003) + index);
  return { bytes: makers[target](random), dialect: pick(random, dialects) };
}

/** Tries an input; what is wrong with how it was taken, or undefined. */
export type Attempt = (target: TargetName, trial: Trial) => Promise<string | undefined>;

/** Readies the dialects. */
export async function createAttempt(): Promise<Attempt> {
  const made = new Map<string, ReadyDialect>();
  for (const name of dialects) made.set(name, await ready(name));
  return async (target, { bytes, dialect }) => {
    try {
      const { findings, refused } = await findingsOf(target, bytes, made.get(dialect) as ReadyDialect);
      return wrong(findings, refused);
    } catch (error) {
      return `throws ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`;
    }
  };
}

interface Taken {
  readonly findings: readonly Finding[];
  /** Nothing came of it. */
  readonly refused: boolean;
}

async function findingsOf(target: TargetName, bytes: Uint8Array, made: ReadyDialect): Promise<Taken> {
  const source = memorySource(bytes);
  const common = { ...made, createDigest: createSha256 };
  if (target === "job") {
    const sink = { write: () => undefined };
    const { findings, verdict } = post({ ...common, source, options: {}, sink });
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
