import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { memorySource } from "#base";
import { postText } from "../../core/index.ts";
import { ready } from "../support/ready.ts";
import { readAsJob } from "./reading.ts";

/*
 * Programs written by hand in habits of their own, each with the job that it is read as beside it, and a head file where it needs one: the file was compared with the
 * program by eye. `npx vitest run test/retrace -u` writes them anew.
 */

const folder = join(resolve(import.meta.dirname), "programs");
const names = readdirSync(folder)
  .filter((name) => name.endsWith(".ngc"))
  .map((name) => name.slice(0, -".ngc".length));

/** Dialects that cannot say what a program does, with the rule that says so. */
const refusals: Readonly<Record<string, readonly string[]>> = {
  "machine-moves-between rs274ngc": ["job/program-clearance"],
  "machine-moves-between explicit-words": ["job/program-clearance"],
  "inverse-time rs274ngc": ["lower/rotary"],
  "inverse-time explicit-words": ["lower/feed-mode", "lower/rotary"],
};

const rs274ngc = await ready("rs274ngc");
const others = [rs274ngc, await ready("explicit-words")];

describe.each(names)("%s", (name) => {
  const text = readFileSync(join(folder, `${name}.ngc`), "utf8");
  const headFile = join(folder, `${name}.head.json`);
  const head = existsSync(headFile) ? readFileSync(headFile, "utf8") : undefined;
  const { json, findings } = readAsJob(text, rs274ngc, head);

  it("is read as the job beside it, with what is told of it", async () => {
    const told = findings.map(({ severity, rule, message, place }) => {
      const line = text.slice(0, place?.offset).split("\n").length;
      return `${severity} ${rule} line ${String(line)}: ${message}`;
    });
    await expect(`${json ?? "refused"}${told.join("\n")}\n`).toMatchFileSnapshot(
      join(folder, `${name}.job.txt`),
    );
  });

  it.each(others.map((made) => [made.dialect.name, made] as const))(
    "posted under %s it is proved, as its JSON is",
    (dialect, made) => {
      const { outcome, program } = postText(
        {
          job: text,
          reading: {
            form: "program",
            dialect: rs274ngc.dialect,
            ...(head === undefined ? {} : { head: memorySource(new TextEncoder().encode(head)) }),
          },
        },
        made,
      );
      const rules = outcome.findings.filter(({ severity }) => severity === "error").map(({ rule }) => rule);
      expect(rules).toEqual(refusals[`${name} ${dialect}`] ?? []);
      if (rules.length > 0) return;
      expect(outcome.verdict).toBe("proved");
      const again = postText({ job: json ?? "" }, made);
      expect(again.outcome.findings.filter(({ severity }) => severity === "error")).toEqual([]);
      expect(again.program).toBe(program);
    },
  );
});

it("there are enough of them", () => {
  expect(names.length).toBeGreaterThanOrEqual(12);
});
