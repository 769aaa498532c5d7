import type { ChildProcess } from "node:child_process";
import { fork } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { parseArgs } from "node:util";
import type { Answer, Question } from "./child.ts";
import type { TargetName } from "./targets.ts";
import { targetNames, trialOf } from "./targets.ts";

/*
 * `npm run fuzz -- [--seconds N] [--seed S] [--only job|cl|dialect|program] [--input I]`: N seconds for each target, 60 unless set.
 *
 * Each input is tried in a child process, which is asked for one at a time and killed when it takes longer than 20 s; more than
 * 2 s of processor time (10 s for a program, whose loops may have no end) is a fault. The child has a heap of 512 MB; after a collection its heap may not be more than 64 MB above what it was after the first 200 inputs.
 * A faulty input is written to the folder `fuzz-faults` of the working directory; the exit code is 1 then. `--input` tries one again.
 */

/** Longest processor time of an input, milliseconds. A program with a loop without an end is read to the limit of such, and once more. */
const longestOf: Readonly<Record<TargetName, number>> = {
  job: 2000,
  cl: 2000,
  dialect: 2000,
  program: 10_000,
};
/** Longest time by the clock, after which nobody waits any more: a busy computer takes longer than its processor. */
const patience = 20_000;
/** Most that the heap may grow, bytes. */
const mostGrowth = 64 * 2 ** 20;
/** Inputs after which the heap is taken for warm. */
const warm = 200;
/** Faults of one target at which it is enough. */
const enoughFaults = 20;

interface Run {
  readonly target: TargetName;
  readonly seed: number;
  readonly folder: string;
  faults: number;
  slowest: number;
  heapThen: number | undefined;
  heapNow: number | undefined;
}

/** Starts a child that has readied the dialects. */
async function startChild(): Promise<ChildProcess> {
  const execArgv = [...process.execArgv, "--expose-gc", "--max-old-space-size=512"];
  const child = fork(join(import.meta.dirname, "child.ts"), { execArgv });
  await new Promise<void>((done, fail) => {
    child.once("message", () => done());
    child.once("exit", (code) => fail(new Error(`the child ended with ${code} before it began`)));
  });
  child.removeAllListeners("exit");
  return child;
}

/** Asks for one input; what went wrong in place of an answer is a text, and the child is dead then. */
async function ask(child: ChildProcess, question: Question): Promise<Answer | string> {
  return await new Promise((done) => {
    const watchdog = setTimeout(() => end(`takes longer than ${patience} ms`), patience);
    const end = (said: Answer | string): void => {
      clearTimeout(watchdog);
      child.removeAllListeners("message").removeAllListeners("exit");
      if (typeof said === "string") child.kill("SIGKILL");
      done(said);
    };
    child.once("message", (said: Answer) => end(said));
    child.once("exit", (code, signal) => end(`ends the process with ${code ?? signal}`));
    child.send(question);
  });
}

function reportFault(run: Run, index: number, fault: string): void {
  run.faults++;
  mkdirSync(run.folder, { recursive: true });
  const { bytes, dialect } = trialOf(run.target, run.seed, index);
  const file = join(run.folder, `${run.target}-${run.seed}-${index}`);
  writeFileSync(file, bytes);
  const again = `npm run fuzz -- --only ${run.target} --seed ${run.seed} --input ${index}`;
  console.error(
    `${run.target} ${index} (${bytes.length} bytes, under ${dialect}): ${fault}\n  ${file}\n  ${again}`,
  );
}

/** Tries inputs from a number on, for a time or for one. */
async function tryInputs(run: Run, from: number, until: (index: number) => boolean): Promise<number> {
  let child = await startChild();
  let index = from;
  for (; until(index) && run.faults < enoughFaults; index++) {
    const said = await ask(child, { target: run.target, seed: run.seed, index });
    if (typeof said === "string") {
      reportFault(run, index, said);
      run.heapThen = undefined;
      child = await startChild();
      continue;
    }
    run.slowest = Math.max(run.slowest, said.milliseconds);
    if (said.milliseconds > longestOf[run.target])
      reportFault(run, index, `takes ${said.milliseconds.toFixed(0)} ms`);
    if (said.fault !== undefined) reportFault(run, index, said.fault);
    if (said.heap === undefined || index - from < warm - 1) continue;
    run.heapThen ??= said.heap;
    run.heapNow = said.heap;
    if (said.heap - run.heapThen <= mostGrowth) continue;
    reportFault(run, index, `the heap grew by ${megabytes(said.heap - run.heapThen)} since input ${warm}`);
    run.heapThen = said.heap;
  }
  child.kill();
  return index - from;
}

const megabytes = (bytes: number): string => `${(bytes / 2 ** 20).toFixed(1)} MB`;

async function fuzz(): Promise<number> {
  const { values } = parseArgs({
    options: {
      seconds: { type: "string", default: "60" },
      seed: { type: "string", default: "1" },
      only: { type: "string" },
      input: { type: "string" },
    },
  });
  const targets = targetNames.filter((target) => values.only === undefined || values.only === target);
  const [seconds, seed, input] = [values.seconds, values.seed, values.input ?? "0"].map(Number);
  if (targets.length === 0 || ![seconds, seed, input].every(Number.isFinite)) {
    console.error(
      "usage: npm run fuzz -- [--seconds N] [--seed S] [--only job|cl|dialect|program] [--input I]",
    );
    return 2;
  }
  let faults = 0;
  for (const target of targets) {
    const folder = resolve("fuzz-faults");
    const run: Run = { target, seed, folder, faults: 0, slowest: 0, heapThen: undefined, heapNow: undefined };
    const end = Date.now() + seconds * 1000;
    const until = values.input === undefined ? () => Date.now() < end : (index: number) => index === input;
    const count = await tryInputs(run, input, until);
    const heap = `heap ${megabytes(run.heapThen ?? 0)} then, ${megabytes(run.heapNow ?? 0)} now`;
    console.info(
      `${target}: ${count} inputs of seed ${seed}, ${run.faults} faults, slowest ${run.slowest.toFixed(0)} ms, ${heap}`,
    );
    faults += run.faults;
  }
  return faults > 0 ? 1 : 0;
}

process.exitCode = await fuzz();
