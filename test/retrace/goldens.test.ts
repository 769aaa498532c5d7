import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { dialectName, examples } from "../support/examples.ts";
import { ready } from "../support/ready.ts";
import { postText } from "../../core/index.ts";
import { memorySource } from "#base";
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
  return memorySource(new TextEncoder().encode(JSON.stringify({ ...head, clearance: 0 })));
}

describe("a golden read as a job and posted again", () => {
  for (const file of readdirSync(folder)
    .filter((name) => name.endsWith(ending))
    .sort()) {
    const [, name = ""] = file.slice(0, -ending.length).split(".");
    const dialect = dialects.find((one) => dialectName(one) === name) ?? name;
    it(file.slice(0, -ending.length), async () => {
      const made = await ready(dialect);
      const text = readFileSync(join(folder, file), "utf8");
      const { rack } = made.dialect.machine;
      // A rack takes tools up to a width, which a program does not say; a head file does.
      const head = rack === undefined ? {} : { head: headOf(file) };
      const reading = { form: "program", dialect: made.dialect, ...head } as const;
      const { outcome, program } = postText({ job: text, reading }, made);
      const errors = outcome.findings.filter(({ severity }) => severity === "error");
      expect(errors).toEqual([]);
      expect(program).toBeDefined();
      expect(stepDifferences(text, program ?? "", made, outcome.summary.units ?? "mm")).toEqual([]);
    });
  }
});
