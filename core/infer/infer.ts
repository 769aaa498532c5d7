/**
 * A dialect file from programs that are known to run, on one page.
 *
 *     programs ─take apart─▶ lines ─walk─▶ blocks ─rules─▶ settled keys, contradictions
 *                                                              │
 *          each shipped dialect ─▶ keys that a file would state ─▶ the nearest ─▶ file ─▶ read, written again, compared
 */
import type { Finding, Report } from "#base";
import type { DialectLoader } from "#dialect";
import type { Archetype } from "./archetype.ts";
import { loadArchetypes } from "./archetype.ts";
import { findingsOf, isProgram, tellSample } from "./findings.ts";
import type { Draft, SoundDraft } from "./draft.ts";
import { complete, draft } from "./draft.ts";
import type { Measured } from "./measure.ts";
import { measure } from "./measure.ts";
import type { SampleText } from "./program.ts";
import { takeApart } from "./program.ts";
import { observe } from "./rules.ts";
import type { Sample } from "./sample.ts";
import { createSample } from "./sample.ts";
import { unitsOf } from "./units.ts";

/** What to learn from. */
export interface InferInput {
  readonly programs: readonly SampleText[];
  readonly loader: DialectLoader;
  /** Name of the dialect to write. */
  readonly name: string;
  /** The dialect to extend: a shipped one. The nearest is chosen where it is left out. */
  readonly from?: string;
  /** Address of the schema of dialect files, for the first line, by which editors find it; none where it is left out. */
  readonly schema?: string;
}

/** A dialect that a file could extend, and how many keys it would then state. */
export interface Candidate {
  readonly name: string;
  readonly keys: number;
}

/** A dialect file, and how it was found. */
export interface Inference extends SoundDraft {
  readonly measured: readonly Measured[];
  /** All that were tried, the nearest first. */
  readonly candidates: readonly Candidate[];
}

/** How many of the nearest are tried with the real reader and emitter, where they are as near as the first. */
const mostTried = 3;

/**
 * Works out a dialect file from programs.
 *
 * @param report takes findings: contradictions with their lines, what is no program, keys that cannot be stated
 * @returns undefined after an error finding
 */
export async function inferDialect(input: InferInput, report: Report): Promise<Inference | undefined> {
  const programs = input.programs.map(takeApart);
  for (const program of programs) tellSample(program, report);
  if (programs.length === 0) throw new Error("There is no program to infer from.");
  if (!programs.every(isProgram)) return undefined;
  const sample = createSample(programs);
  const observed = observe(sample);
  const all = await loadArchetypes(input.loader.shipped, input.loader, report);
  const tried = input.from === undefined ? all : all.filter(({ name }) => name === input.from);
  const drafts = tried
    .map((archetype) => draft(sample, observed, archetype, all))
    .sort((one, other) => one.stated.length - other.stated.length);
  const best = await nearest(sample, drafts, all, input);
  if (best === undefined) {
    report(notNear(input));
    return undefined;
  }
  for (const finding of findingsOf(observed, best, sample)) report(finding);
  return { ...best, candidates: drafts.map(candidateOf) };
}

function candidateOf({ archetype, stated }: Draft): Candidate {
  return { name: archetype.name, keys: stated.length };
}

/** The draft with the fewest keys; among equals the one with which most blocks come out alike. */
async function nearest(
  sample: Sample,
  drafts: readonly Draft[],
  all: readonly Archetype[],
  input: InferInput,
): Promise<(SoundDraft & { measured: readonly Measured[] }) | undefined> {
  const { name, schema } = input;
  const programs = input.programs.map((program) => program.file);
  const file = { name, programs, ...(schema === undefined ? {} : { schema }) };
  let best: (SoundDraft & { measured: readonly Measured[] }) | undefined;
  let tried = 0;
  for (const one of drafts) {
    if (best && (tried >= mostTried || one.stated.length > best.stated.length + best.findings.length)) break;
    const sound = await complete(one, all, file, input.loader);
    if (sound === undefined) continue;
    tried++;
    const measured = sample.programs.map((program) => measure(program, sound, unitsOf(sample)));
    if (!best || alike(measured) > alike(best.measured)) best = { ...sound, measured };
  }
  return best;
}

function alike(measured: readonly Measured[]): number {
  return measured.reduce((sum, { identical, renumbered }) => sum + identical + renumbered, 0);
}

function notNear({ from }: InferInput): Finding {
  return {
    rule: "dialect/not-inferred",
    severity: "error",
    message: from === undefined ? "No shipped dialect can be made to say what the programs say." : `The dialect ${from} cannot be made to say what the programs say.`, // prettier-ignore
    fix: from === undefined ? "Write a dialect file by hand, from the controller's manual." : "Leave --from out, or name another shipped dialect.", // prettier-ignore
  };
}
