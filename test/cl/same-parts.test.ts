import { describe, expect, it } from "vitest";
import type { TextJob } from "../../core/index.ts";
import { postText, proveText } from "../../core/index.ts";
import { errorRules, ready } from "../support/ready.ts";
import { shippedDialects } from "../support/examples.ts";
import { withoutComments } from "../support/without-comments.ts";
import { clReading, jobText } from "./reading.ts";
import { headOf, jobKeys, sameParts, sourceText } from "./same-parts.ts";

/*
 * A source and the same part as a job, under every shipped dialect: the program of either is proved for the other, so that
 * their steps are the same one by one; or both are refused, by the same rules.
 */

/** Dialects that post a part; how many at least, so that no part is compared by refusals alone. */
const leastPosted = 2;

describe.each(sameParts.map((part) => [part.habit, part] as const))("%s", (_habit, part) => {
  const source: TextJob = {
    job: sourceText(part.file),
    reading: clReading(part.cl, headOf(part)),
  };
  const byHand: TextJob = { job: JSON.stringify({ ...jobKeys, ...part.job }) };
  const rewritten: TextJob = { job: jobText(source.job, clReading(part.cl, headOf(part))) };

  it("gives the same steps as the job", async () => {
    let posted = 0;
    for (const dialect of shippedDialects) {
      const made = await ready(dialect);
      const [first, second, third] = [source, byHand, rewritten].map((job) => postText(job, made));
      expect(errorRules(first.outcome.findings), dialect).toEqual(errorRules(second.outcome.findings));
      expect(third.program, dialect).toBe(first.program);
      if (first.program === undefined || second.program === undefined) {
        expect([first.program, second.program], dialect).toEqual([undefined, undefined]);
        continue;
      }
      posted++;
      const { format } = made.dialect;
      expect(withoutComments(first.program, format), dialect).toBe(withoutComments(second.program, format));
      expect(proveText(first.program, made, byHand).verdict, dialect).toBe("proved");
      expect(proveText(second.program, made, source).verdict, dialect).toBe("proved");
    }
    expect(posted).toBeGreaterThanOrEqual(leastPosted);
  });

  it("is the same job again when its JSON is written anew", () => {
    expect(jobText(rewritten.job, { form: "json" })).toBe(rewritten.job);
  });
});
