import { beforeAll, expect, it } from "vitest";
import { ready } from "../support/ready.ts";
import { meaningsOf } from "./calls-to-meanings.ts";
import { knownDifferences } from "./known-differences.ts";
import { inParallel } from "./in-parallel.ts";
import { interpreterSetup } from "./machine-state.ts";
import { firstDifference, withoutStandstill, words } from "./meaning.ts";
import type { MeantProgram } from "./programs.ts";
import { dialect, meantProgram, namedJobs, recordedFrom } from "./programs.ts";
import { chooseRecorded, writeRecords } from "./record.ts";
import { howToInstall, interpreterInstalled, runInterpreter } from "./run-interpreter.ts";

/*
 * Programs of the examples and of 2,000 random jobs, run by somebody else's interpreter: each canonical call is what our steps
 * mean. TAPEWRIGHT_INTERPRETER_JOBS sets another number of random jobs; TAPEWRIGHT_RECORD=1 records 200 of the runs anew.
 */
const count = Number(process.env["TAPEWRIGHT_INTERPRETER_JOBS"] ?? 2000);
const recording = process.env["TAPEWRIGHT_RECORD"] === "1";

beforeAll(() => {
  if (!interpreterInstalled()) throw new Error(howToInstall);
});

it(`runs the examples and ${count} random programs as they are meant`, async () => {
  const made = await ready(dialect);
  const seen = new Map<string, number>();
  const different: string[] = [];
  const jobs = namedJobs(count);
  await inParallel(jobs, async (job) => {
    const meant = meantProgram(job, made);
    for (const { name } of meant.meanings) seen.set(name, (seen.get(name) ?? 0) + 1);
    const { difference } = await runMeant(meant);
    if (difference !== "") different.push(`${meant.name} ${difference}`);
  });
  const calls = [...seen.values()].reduce((sum, one) => sum + one, 0);
  console.info(`${jobs.length} programs, ${calls} calls compared, ${different.length} programs differ`);
  console.info(
    [...seen]
      .sort()
      .map(([name, times]) => `${name} ${times}`)
      .join(", "),
  );
  expect(different.slice(0, 10), `${different.length} programs differ`).toEqual([]);
});

it.each(knownDifferences)("still knows of: $name", async ({ program, does }) => {
  const { tools } = interpreterSetup;
  const run = await runInterpreter(program, { tools });
  const all = withoutStandstill(meaningsOf(run.calls));
  // What the end of a program does stands behind it: origin, spindle, end.
  const before = all.slice(
    0,
    all.findLastIndex(({ name }) => name === "SET_G5X_OFFSET"),
  );
  expect(before.slice(-does.length).map(words)).toEqual(does.map(words));
});

it.runIf(recording)("records 200 of the runs", async () => {
  const made = await ready(dialect);
  const programs = chooseRecorded(namedJobs(recordedFrom).map((job) => meantProgram(job, made)));
  const outputs = new Map<string, string>();
  await inParallel(programs, async (meant) => {
    const { output, difference } = await runMeant(meant);
    expect(difference, meant.name).toBe("");
    outputs.set(meant.name, output);
  });
  writeRecords(programs.map((meant) => ({ ...meant, output: outputs.get(meant.name) ?? "" })));
});

/** Runs a program; the difference is "" where the interpreter does what we mean. */
async function runMeant({
  program,
  meanings,
}: MeantProgram): Promise<{ output: string; difference: string }> {
  const { exitCode, stderr, output, calls } = await runInterpreter(program, interpreterSetup);
  if (exitCode !== 0)
    return { output, difference: `the interpreter ends with ${exitCode ?? "no answer"}: ${stderr}` };
  return { output, difference: firstDifference(meanings, meaningsOf(calls)) };
}
