import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { dialectName, examples, shippedDialects } from "../support/examples.ts";
import { errorRules, ready } from "../support/ready.ts";
import type { ReadyDialect } from "../../core/index.ts";
import { postText } from "../../core/index.ts";
import { memorySource } from "#base";
import { readAsJob } from "./reading.ts";
import { stepDifferences } from "./step-differences.ts";

/*
 * Every program that is kept as a golden is read as a job under its own dialect, and posted again under the same: the steps of both
 * texts are equal, with nothing forgiven beyond what the proof forgives.
 */

const folder = resolve(import.meta.dirname, "../goldens");
const ending = ".program.txt";
const dialects = [...new Set(examples.flatMap((example) => example.dialects))];

/** The head file of a golden: its example's job without the operations. Its clearance is none, since the program's own count. */
function headOf(file: string) {
  const { job } = examples.find(({ name }) => file.startsWith(`${name}.`))!;
  const { operations: _, ...head } = JSON.parse(job) as Record<string, unknown>;
  return JSON.stringify({ ...head, clearance: 0 });
}

const goldens = readdirSync(folder)
  .filter((name) => name.endsWith(ending))
  .sort()
  .map((file) => {
    const name = file.slice(0, -ending.length);
    const [, short] = name.split(".");
    return {
      name,
      text: readFileSync(join(folder, file), "utf8"),
      dialect: dialects.find((one) => dialectName(one) === short)!,
    };
  });

/** A golden as a job: the reading of its own dialect. A rack takes tools up to a width, which a program does not say; a head file does. */
async function readingOf({ name, dialect }: (typeof goldens)[number]) {
  const made = await known(dialect);
  const head = made.dialect.machine.rack === undefined ? undefined : headOf(name);
  const more = head === undefined ? {} : { head: memorySource(new TextEncoder().encode(head)) };
  return { made, head, reading: { form: "program", dialect: made.dialect, ...more } as const };
}

const dialectsMade = new Map<string, Promise<ReadyDialect>>();

/** A dialect, built once. */
function known(name: string): Promise<ReadyDialect> {
  const made = dialectsMade.get(name) ?? ready(name);
  dialectsMade.set(name, made);
  return made;
}

describe.each(goldens)("$name read as a job", (golden) => {
  it("posted again gives the same steps, and so does the job as JSON", async () => {
    const { made, head, reading } = await readingOf(golden);
    const { outcome, program } = postText({ job: golden.text, reading }, made);
    expect(errorRules(outcome.findings)).toEqual([]);
    expect(program).toBeDefined();
    expect(stepDifferences(golden.text, program ?? "", made, outcome.summary.units ?? "mm")).toEqual([]);
    const { json } = readAsJob(golden.text, made, head);
    const again = postText({ job: json ?? "" }, made);
    expect(errorRules(again.outcome.findings)).toEqual([]);
    expect(again.program).toBe(program);
  });

  it("posted under each other dialect is proved, or refused as the example's own job is", async () => {
    const { reading } = await readingOf(golden);
    const example = examples.find(({ name }) => golden.name.startsWith(`${name}.`))!;
    for (const target of shippedDialects) {
      const made = await known(target);
      const { outcome } = postText({ job: golden.text, reading }, made);
      const rules = errorRules(outcome.findings);
      expect(outcome.verdict).toBe(rules.length === 0 ? "proved" : "refused");
      // What a program does not say: the number of another, which a head file states.
      const own = [
        ...errorRules(postText({ job: example.job }, made).outcome.findings),
        "lower/program-number",
      ];
      expect(own).toEqual(expect.arrayContaining(rules));
    }
  });
});
