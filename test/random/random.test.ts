import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { postText } from "../../core/index.ts";
import { errorRules, ready } from "../support/ready.ts";
import { shippedDialects } from "../support/examples.ts";
import { knownDialects, predictedRefusals } from "./predicate.ts";
import { randomJob } from "./random-job.ts";

/*
 * Random jobs under every shipped dialect: what the predicate says cannot be said is refused by the predicted rule, all else is
 * proved, and there is never a fault. TAPEWRIGHT_RANDOM_JOBS sets the number (300 a dialect unless set).
 */
const runs = Number(process.env["TAPEWRIGHT_RANDOM_JOBS"] ?? 300);

it("the predicate knows every shipped dialect", () => {
  expect([...knownDialects].sort()).toEqual([...shippedDialects].sort());
});

describe.each(knownDialects)("random jobs under %s", (name) => {
  it(`are proved or refused as predicted, ${String(runs)} of them`, async () => {
    const made = await ready(name);
    const counts = { proved: 0, refused: 0 };
    fc.assert(
      fc.property(randomJob, (job) => {
        const predicted = predictedRefusals(job, name);
        const { outcome } = postText({ job: JSON.stringify(job) }, made);
        const rules = errorRules(outcome.findings);
        if (predicted.size === 0) {
          expect({
            verdict: outcome.verdict,
            rules,
            first: outcome.findings.find((one) => one.severity === "error")?.message,
          }).toEqual({ verdict: "proved", rules: [], first: undefined });
          counts.proved++;
        } else {
          expect(outcome.verdict).toBe("refused");
          expect(rules).toEqual([...predicted].sort());
          counts.refused++;
        }
      }),
      { numRuns: runs, seed: 2026, endOnFailure: false },
    );
    expect(counts.proved).toBeGreaterThan(runs / 5);
    expect(counts.refused).toBeGreaterThan(runs / 40);
    console.info(`${name}: ${String(counts.proved)} proved, ${String(counts.refused)} refused as predicted`);
  }, 3_600_000);
});
