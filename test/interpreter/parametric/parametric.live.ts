import { beforeAll, expect, it } from "vitest";
import { inParallel } from "../in-parallel.ts";
import { foreignSetup } from "../reading/foreign-setup.ts";
import { readForeign } from "../reading/read-foreign.ts";
import { writeForeign } from "../reading/records.ts";
import { verdictOf } from "../reading/verdict.ts";
import { howToInstall, interpreterInstalled, runInterpreter } from "../run-interpreter.ts";
import { byHand, grids, randomPrograms, recordedParametric, recordFile } from "./programs.ts";

/*
 * Programs with parameters, loops and subprograms, read by us and run by somebody else's interpreter.
 * TAPEWRIGHT_PARAMETRIC_PROGRAMS sets another number of random ones; TAPEWRIGHT_RECORD=1 records the runs anew.
 */
const count = Number(process.env["TAPEWRIGHT_PARAMETRIC_PROGRAMS"] ?? 300);
const recording = process.env["TAPEWRIGHT_RECORD"] === "1";

beforeAll(() => {
  if (!interpreterInstalled()) throw new Error(howToInstall);
});

it.each([
  ["by hand", () => byHand],
  [`${String(count)} random ones`, () => randomPrograms(count)],
])("parametric programs are read as they are run: %s", async (what, programs) => {
  const readers = await grids();
  const different: string[] = [];
  let calls = 0;
  const all = programs();
  await inParallel(all, async (program) => {
    const run = await runInterpreter(program.text, foreignSetup);
    calls += run.calls.length;
    const outcome = { runs: run.exitCode === 0, calls: run.calls };
    for (const { name, ready, slack } of readers) {
      const verdict = verdictOf(program, readForeign(program.text, ready), outcome, slack);
      if (verdict !== "") different.push(`${program.name} (${name}) ${verdict} ${run.stderr}`);
    }
  });
  console.info(`parametric, ${what}: ${String(all.length)} programs, ${String(calls)} calls`);
  expect(different.slice(0, 20), `${String(different.length)} differ`).toEqual([]);
});

it.runIf(recording)("records the runs", async () => {
  const programs = recordedParametric();
  const made = new Map<string, { runs: boolean; output: string }>();
  await inParallel(programs, async ({ name, text }) => {
    const { exitCode, output } = await runInterpreter(text, foreignSetup);
    made.set(name, { runs: exitCode === 0, output });
  });
  const runs = programs.map((program) => ({ program, runs: false, output: "", ...made.get(program.name) }));
  writeForeign(runs, recordFile);
});
