import { createHash } from "node:crypto";
import fc from "fast-check";
import { memorySource } from "#base";
import { gather } from "#report";
import type { ReadyDialect } from "../../core/index.ts";
import { postText } from "../../core/index.ts";
import { undertake } from "../../core/undertaking.ts";
import { predictedRefusals } from "../random/predicate.ts";
import { randomJob } from "../random/random-job.ts";
import { examples } from "../support/examples.ts";
import type { Meaning } from "./meaning.ts";
import { stepMeanings } from "./steps-to-calls.ts";

/** The dialect whose programs the interpreter runs. */
export const dialect = "rs274ngc";

/** A job and what to call it: the name of an example, or "random" and its place in the list of random jobs. */
export interface NamedJob {
  readonly name: string;
  readonly job: string;
}

/** A program, and what our steps mean by it. */
export interface MeantProgram extends NamedJob {
  readonly program: string;
  readonly meanings: readonly Meaning[];
}

const seed = 6556;

/** From how many random jobs the records are chosen. */
export const recordedFrom = 500;

/** The examples, then as many random jobs as are asked for that the dialect can say, by the predicate of `test/random`. */
export function namedJobs(count: number): NamedJob[] {
  const shown = examples.map(({ name, job }) => ({ name, job }));
  // About a third of the random jobs ask for what the dialect has no word for.
  const drawn = fc.sample(randomJob, { seed, numRuns: count * 2 });
  const sayable = drawn.filter((job) => predictedRefusals(job, dialect).size === 0).slice(0, count);
  if (sayable.length < count)
    throw new Error(`Only ${sayable.length} of ${drawn.length} random jobs can be said.`);
  return [...shown, ...sayable.map((job, index) => ({ name: `random ${index}`, job: JSON.stringify(job) }))];
}

/**
 * Posts a job, and tells what its sequence means. The sequence is made a second time from the job; the text is not looked at.
 *
 * @throws Error with the findings where the job is refused
 */
export function meantProgram(named: NamedJob, ready: ReadyDialect): MeantProgram {
  const { program, outcome } = postText({ job: named.job }, ready);
  const listed = outcome.findings.map(({ rule, message }) => `${rule}: ${message}`);
  if (program === undefined) throw new Error(`${named.name} is refused:\n${listed.join("\n")}`);
  const source = memorySource(new TextEncoder().encode(named.job));
  const createDigest = () => {
    throw new Error("Nothing is hashed here.");
  };
  const work = undertake({ source, options: {} }, { ...ready, createDigest }, gather());
  if (!work) throw new Error(`${named.name} is refused.`);
  return { ...named, program, meanings: stepMeanings(work.batches(), work.units) };
}

/** SHA-256 of a program's text. */
export function hashOf(program: string): string {
  return createHash("sha256").update(program).digest("hex");
}
