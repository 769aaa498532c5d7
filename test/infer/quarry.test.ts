import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import type { Inference } from "#infer";
import type { ReadyDialect } from "../../core/index.ts";
import { postText, proveText } from "../../core/index.ts";
import { quarryRouter } from "../support/dialects.ts";
import { errorRules, ready } from "../support/ready.ts";
import { mustInfer } from "./support.ts";

/*
 * From the demo's program alone: a file under which a held-out job gives a program that the router's own dialect reads, and
 * has nothing against but for what was asked.
 */

const root = resolve(import.meta.dirname, "../..");
const example = (name: string): string =>
  readFileSync(join(root, "examples", name, `${name}.job.json`), "utf8");

/** Rules of the guard, each with the questions that it goes back to: what no program shows of a machine. */
const askedBy: Readonly<Record<string, readonly string[]>> = {
  "program/start": ["confirm.stopped"],
  "spindle/at-speed": ["confirm.at-speed"],
  "spindle/stopped-for-swap": ["confirm.stopped"],
  "spindle/ends-stopped": ["confirm.stopped"],
  "limit/speed": ["machine.spindle"],
  "limit/tapping": ["machine.tapping"],
  "program/end": ["machine.swap", "machine.rack", "machine.hood"],
};

const router: ReadyDialect = await ready(quarryRouter);
const found: Inference = await mustInfer([postText({ job: example("weather-plate") }, router).program ?? ""]);

describe("the demo's program alone", () => {
  it("gives a short file on the router's own archetype", () => {
    const lines = found.text.trimEnd().split("\n");
    const own = lines.filter((line) => !line.startsWith("#"));
    console.info(`file: ${String(lines.length)} lines, ${String(own.length)} without comment lines; ${String(found.asked.length)} questions about ${String(found.asked.flatMap(({ keys }) => keys).length)} keys; ${String(found.dialect.unanswered.length)} unanswered`); // prettier-ignore
    expect(found.archetype.name).toBe("explicit-words");
    expect(own.length).toBeLessThanOrEqual(20);
    expect(found.measured).toMatchObject([{ identical: 1875, blocks: 1875, added: 0 }]);
  });

  it.each(["sensor-bracket-inch", "rain-gauge-foot"])(
    "posts %s to a program whose form the router accepts",
    (name) => {
      const { program, outcome } = postText({ job: example(name) }, found);
      expect(outcome.verdict).toBe("proved");
      const rules = errorRules(proveText(program ?? "", router).findings);
      console.info(`${name} under quarry-router: ${rules.join(", ")}`);
      const questions = new Set(found.asked.flatMap(({ keys }) => keys));
      expect(rules.filter((rule) => !(rule in askedBy))).toEqual([]);
      for (const rule of rules) for (const key of askedBy[rule]) expect(questions).toContain(key);
      // No word of it is read otherwise than it was meant: what is left is facts of the machine.
      const all = proveText(program ?? "", router).findings;
      expect(all.filter(({ rule, severity }) => severity !== "note" && /^(read|block)\//.test(rule))).toEqual(
        [],
      );
    },
  );

  it("is proved under the router once the questions are answered", async () => {
    // The answers are the machine's facts, as the router's own file states them.
    const file = readFileSync(quarryRouter, "utf8");
    const answers = file.slice(file.indexOf("machine:"));
    const own = "dialect: answered\nextends: inferred.dialect.yaml\nunanswered: []\n" + answers;
    const texts = { "answered.dialect.yaml": own, "inferred.dialect.yaml": withoutOpaque(found.text) };
    const answered = await ready("answered.dialect.yaml", texts);
    const job = example("rain-gauge-foot");
    const { program, outcome } = postText({ job }, answered);
    expect(outcome.findings.map(({ rule }) => rule)).not.toContain("dialect/unanswered");
    expect(errorRules(proveText(program ?? "", router, { job }).findings)).toEqual([]);
    expect(proveText(program ?? "", router, { job }).verdict).toBe("proved");
  });

  it("says on every post what nobody has answered", () => {
    const { outcome } = postText({ job: example("rain-gauge-foot") }, found);
    const told = outcome.findings.filter(({ rule }) => rule === "dialect/unanswered").map(({ key }) => key);
    expect(told).toEqual(found.dialect.unanswered);
    expect(told).toEqual(expect.arrayContaining(["confirm.at-speed", "confirm.stopped"]));
  });
});

/** The file without the codes that nobody knew: the answer makes idioms of them. */
function withoutOpaque(text: string): string {
  return text.replace(/^codes:\n(?: {2}.*\n)*/m, "");
}
