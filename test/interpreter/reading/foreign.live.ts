import { beforeAll, expect, it } from "vitest";
import { ready } from "../../support/ready.ts";
import { inParallel } from "../in-parallel.ts";
import { howToInstall, interpreterInstalled, runInterpreter } from "../run-interpreter.ts";
import { dialect } from "../programs.ts";
import { foreignSetup } from "./foreign-setup.ts";
import { longPrograms, randomPrograms, recordedForeign, smallPrograms } from "./programs.ts";
import { readForeign } from "./read-foreign.ts";
import { writeForeign } from "./records.ts";
import { verdictOf } from "./verdict.ts";

/*
 * Programs that our emitter did not write, read by us and run by somebody else's interpreter. TAPEWRIGHT_FOREIGN_PROGRAMS sets
 * another number of random ones; TAPEWRIGHT_RECORD=1 records the runs anew.
 */
const count = Number(process.env["TAPEWRIGHT_FOREIGN_PROGRAMS"] ?? 300);
const recording = process.env["TAPEWRIGHT_RECORD"] === "1";

beforeAll(() => {
  if (!interpreterInstalled()) throw new Error(howToInstall);
});

it.each([
  ["small programs by hand", () => smallPrograms],
  ["long programs in styles of CAM output", longPrograms],
  [`${count} random programs`, () => randomPrograms(count)],
])("are read as they are run: %s", async (what, programs) => {
  const made = await ready(dialect);
  const different: string[] = [];
  let calls = 0;
  const all = programs();
  await inParallel(all, async (program) => {
    const run = await runInterpreter(program.text, foreignSetup);
    calls += run.calls.length;
    const outcome = { runs: run.exitCode === 0, calls: run.calls };
    const verdict = verdictOf(program, readForeign(program.text, made), outcome);
    if (verdict !== "") different.push(`${program.name} ${verdict} ${run.stderr}`);
  });
  console.info(`${what}: ${all.length} programs, ${calls} calls`);
  expect(different.slice(0, 10), `${different.length} programs differ`).toEqual([]);
});

it.runIf(recording)("records the runs", async () => {
  const programs = recordedForeign();
  const made = new Map<string, { runs: boolean; output: string }>();
  await inParallel(programs, async ({ name, text }) => {
    const { exitCode, output } = await runInterpreter(text, foreignSetup);
    made.set(name, { runs: exitCode === 0, output });
  });
  writeForeign(programs.map((program) => ({ program, runs: false, output: "", ...made.get(program.name) })));
});
