import { readdirSync, readFileSync } from "node:fs";
import { basename, join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import type { Finding, UnitSystem } from "#base";
import { memorySource } from "#base";
import { readJob, readMoves } from "#job";
import { lower, onProgramGrid, programUnits } from "#lower";
import { createGuard } from "#prove";
import { planJobFacts, sequence } from "#sequence";
import { loadDialect, quarryRouter } from "../support/dialects.ts";
import { noSetup } from "./fixtures.ts";

// The stages before and the guard behind, with the dialects and jobs of this repository: what nobody refuses, the guard accepts.

const root = resolve(import.meta.dirname, "../..");
const shipped = readdirSync(join(root, "dialects"))
  .filter((file) => file.endsWith(".dialect.yaml"))
  .map((file) => basename(file, ".dialect.yaml"));
const jobs = ["weather-plate", "sensor-bracket-inch", "rain-gauge-foot"];
const jobFile = (name: string): string => join(root, "examples", name, `${name}.job.json`);

interface Outcome {
  readonly refusals: readonly string[];
  readonly guard: readonly string[];
  readonly steps: number;
}

const errors = (findings: readonly Finding[]): string[] =>
  findings.filter(({ severity }) => severity === "error").map(({ rule, message }) => `${rule}: ${message}`);

/** Sequences some operations of a job under a dialect; the first tool is in the spindle. */
async function post(name: string, dialect: string, choose: (index: number) => boolean): Promise<Outcome> {
  const { capabilities, machine: declared, workZero } = await loadDialect(dialect);
  const refusals: Finding[] = [];
  const report = (finding: Finding): number => refusals.push(finding);
  const source = memorySource(new Uint8Array(readFileSync(jobFile(name))));
  const job = readJob(source, report);
  if (!job) throw new Error(errors(refusals).join("\n"));
  const units: UnitSystem = programUnits(job, capabilities, report);
  const machine = onProgramGrid(declared, capabilities, units);
  const operations = job.operations.map((_, index) => index).filter(choose);
  const common = { job, operations, capabilities, machine, units };
  const setup = { ...noSetup, spindleHolds: job.operations[operations[0]].tool };
  const facts = planJobFacts({ ...common, setup, workZero }, report);
  const guardFindings: Finding[] = [];
  const guard = createGuard(machine, facts, (finding) => guardFindings.push(finding), "job");
  const lowered = lower({
    ...common,
    operations: operations.map((index) => job.operations[index]),
    moves: (operation) => readMoves(source, job, operation, report),
    report,
    summary: { moves: 0, dropped: 0 },
  });
  let steps = 0;
  for (const batch of sequence(
    lowered,
    { ...common, facts, airCut: false, optionalStops: false, cleanText: (text) => text },
    report,
  )) {
    steps += batch.count;
    guard.accept(batch);
  }
  guard.end();
  return { refusals: errors(refusals), guard: errors(guardFindings), steps };
}

describe.each([...shipped, quarryRouter].map((file) => [basename(file), file]))("%s", (_title, dialect) => {
  test.each(jobs)("%s, whole", async (name) => {
    const { refusals, guard, steps } = await post(name, dialect, () => true);
    expect(steps).toBeGreaterThan(80);
    if (refusals.length === 0) expect(guard).toEqual([]);
    else expect(refusals.every((refusal) => /^(dialect|lower|limit|offset)\//.test(refusal))).toBe(true);
  });

  test("each operation of each job by itself", async () => {
    const outcomes: Outcome[] = [];
    for (const name of jobs) {
      const { operations } = JSON.parse(readFileSync(jobFile(name), "utf8")) as { operations: unknown[] };
      for (const index of operations.keys()) outcomes.push(await post(name, dialect, (one) => one === index));
    }
    for (const { refusals, guard } of outcomes) if (refusals.length === 0) expect(guard).toEqual([]);
    expect(outcomes.some(({ refusals }) => refusals.length === 0)).toBe(true);
  });
});
