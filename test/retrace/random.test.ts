import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { UnitSystem } from "#base";
import { memorySource, rowKind } from "#base";
import { recordRow } from "#prove";
import { read } from "#read";
import type { ReadyDialect } from "../../core/index.ts";
import { postText } from "../../core/index.ts";
import { randomJob } from "../random/random-job.ts";
import { errorRules, ready } from "../support/ready.ts";
import { shippedDialects } from "../support/examples.ts";
import { stepDifferences } from "./step-differences.ts";

/*
 * Random jobs posted, read back as jobs and posted again: the same cuts each time, and in nearly all of them the same steps. What differs
 * is what does nothing: a speed or coolant that no motion follows, an operation without work. TAPEWRIGHT_RETRACED_JOBS sets the number.
 */
const runs = Number(process.env["TAPEWRIGHT_RETRACED_JOBS"] ?? 40);

/** All that cuts: kind, place, feed, centre and turns of each row that is neither a rapid nor a step. */
function cuts(text: string, { dialect }: ReadyDialect, units: UnitSystem): string[] {
  const found: string[] = [];
  for (const batch of read(
    [new TextEncoder().encode(text)],
    dialect.format,
    dialect.machine,
    { units },
    () => undefined,
  ))
    for (let row = 0; row < batch.count; row++) {
      const { kind, at, feed, c1, c2, turns } = recordRow(batch, row);
      if (kind !== rowKind.rapid && kind !== rowKind.aside)
        found.push([kind, ...at, feed, c1, c2, turns].join(" "));
    }
  return found;
}

/** Arcs by radius are split anew where rounding carries their pieces too far, which happens once in a hundred jobs. */
const splitsAnew = new Set(["staged-tools"]);

describe.each(shippedDialects)("random jobs under %s", (name) => {
  it(`cut the same when they are read and posted again, ${String(runs)} of them`, async () => {
    const made = await ready(name);
    const counts = { all: 0, equal: 0, sameCuts: 0 };
    for (const job of fc.sample(randomJob, { numRuns: runs, seed: 2026 })) {
      const { program, outcome } = postText({ job: JSON.stringify(job) }, made);
      if (program === undefined) continue;
      counts.all++;
      const { operations: _, ...head } = job;
      const source = memorySource(new TextEncoder().encode(JSON.stringify({ ...head, clearance: -1000 })));
      const again = postText(
        { job: program, reading: { form: "program", dialect: made.dialect, head: source } },
        made,
      );
      const rules = errorRules(again.outcome.findings);
      const units = outcome.summary.units ?? "mm";
      // A job whose operations have no work at all leaves nothing to read.
      if (rules.includes("job/program-empty")) counts.all--;
      else expect(rules).toEqual([]);
      if (again.program === undefined) continue;
      const [first, second] = [cuts(program, made, units), cuts(again.program, made, units)];
      if (!splitsAnew.has(name)) expect(second).toEqual(first);
      if (second.join() === first.join()) counts.sameCuts++;
      if (stepDifferences(program, again.program, made, units).length === 0) counts.equal++;
    }
    expect(counts.all).toBeGreaterThan(runs / 3);
    expect(counts.sameCuts).toBeGreaterThanOrEqual(0.9 * counts.all);
    expect(counts.equal).toBeGreaterThanOrEqual(0.8 * counts.all);
    console.info(`${name}: ${String(counts.equal)} of ${String(counts.all)} with the same steps`);
  });
});
