import { describe, expect, it } from "vitest";
import { createHash } from "node:crypto";
import type { ReadyDialect } from "../../core/index.ts";
import { memorySource, postText, prove } from "../../core/index.ts";
import { dialectName, examples } from "../support/examples.ts";
import { ready } from "../support/ready.ts";
import type { HarmlessClass, Mutant } from "./mutate.ts";
import { mutants } from "./mutate.ts";

/*
 * Every golden program with one thing wrong at a time. `prove --against` must find each mutant, but those in block numbers,
 * in comment text and in zero or code padding. Each golden gives every mutant of its head, of its end and of a sample of the rest, so
 * that there are at least 20,000; TAPEWRIGHT_ALL_MUTANTS=1 tries all of them.
 */
const all = process.env["TAPEWRIGHT_ALL_MUTANTS"] === "1";

/** Blocks of a program that are mutated: the first and last 75, and one in `step` of the others. */
function isTried(mutant: Mutant, blocks: number, step: number): boolean {
  return all || mutant.block < 75 || mutant.block > blocks - 75 || mutant.block % step === 0;
}

const tried = { mutants: 0, found: 0 };
const harmless = new Map<HarmlessClass, number>();

describe.each(
  examples.flatMap(({ name, job, dialects }) => dialects.map((dialect) => ({ name, job, dialect }))),
)("$name under $dialect", ({ job, dialect }) => {
  it("no mutant is missed", async () => {
    const made = await ready(dialect);
    const { program } = postText({ job }, made);
    if (program === undefined) return;
    const blocks = program.split("\n").length;
    const missed: string[] = [];
    for (const mutant of mutants(program)) {
      if (!isTried(mutant, blocks, blocks > 500 ? 40 : 1)) continue;
      const verdict = verdictOf(mutant.text, job, made);
      tried.mutants++;
      if (verdict !== "proved") tried.found++;
      else if (mutant.harmless) harmless.set(mutant.harmless, (harmless.get(mutant.harmless) ?? 0) + 1);
      else missed.push(`${mutant.kind}: ${mutant.before} -> ${mutant.after}`);
    }
    expect(missed, dialectName(dialect)).toEqual([]);
  }, 3_600_000);
});

/** What `prove --against` says; Node's own hash, since it is asked for so often. */
function verdictOf(program: string, job: string, made: ReadyDialect): string {
  const createDigest = () => {
    const hash = createHash("sha256");
    return { update: (chunk: Uint8Array) => void hash.update(chunk), hex: () => hash.digest("hex") };
  };
  const source = (text: string) => memorySource(new TextEncoder().encode(text));
  return prove({
    ...made,
    program: source(program),
    against: { source: source(job), options: {} },
    createDigest,
  }).verdict;
}

describe("all goldens", () => {
  it("give at least 20,000 mutants", () => {
    console.info(
      `${String(tried.mutants)} mutants, ${String(tried.found)} found, harmless: ${JSON.stringify(Object.fromEntries(harmless))}`,
    );
    expect(tried.mutants).toBeGreaterThanOrEqual(20_000);
  });
});
