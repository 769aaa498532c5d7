import { describe, expect, it } from "vitest";
import type { Batch, Finding } from "#base";
import { generateEmitter, loadEmitter } from "#emit";
import { read } from "#read";
import { postText, proveText } from "../../core/index.ts";
import { dialectName, examples } from "../support/examples.ts";
import { withoutComments } from "../support/without-comments.ts";
import { ready } from "../support/ready.ts";

/*
 * Each example under each dialect: the program, or the refusal, as a file of its own beside this test.
 * `npx vitest run test/goldens -u` writes them anew; then read the difference by eye.
 */

/** A refusal as a golden has it: rule, key and message, and the way out below it. */
function refusalText(findings: readonly Finding[]): string {
  const lines = findings.filter(({ severity }) => severity === "error").map(({ rule, key, message, fix }) => `${rule}  ${key ?? "-"}  ${message}\n  ${fix ?? "-"}`);
  return `${lines.join("\n")}\n`;
}

for (const example of examples) {
  describe(example.name, () => {
    for (const dialect of example.dialects) {
      const name = dialectName(dialect);
      it(`under ${name}`, async () => {
        const made = await ready(dialect);
        const job = example.job;
        const { outcome, program } = postText({ job }, made);
        expect(job).toBe(example.job);
        if (program === undefined) {
          expect(outcome.verdict).toBe("refused");
          await expect(refusalText(outcome.findings)).toMatchFileSnapshot(`./${example.name}.${name}.refusal.txt`);
          return;
        }
        await expect(program).toMatchFileSnapshot(`./${example.name}.${name}.program.txt`);
        expect(outcome.verdict).toBe("proved");
        expect(proveText(program, made, { job }).verdict).toBe("proved");
        const { format, machine } = made.dialect;
        const units = outcome.summary.units ?? "mm";
        const bytes = new TextEncoder().encode(program);
        const reading = (): Iterable<Batch> => read([bytes], format, machine, { units }, () => undefined);
        const written = (batches: Iterable<Batch>, emitter: typeof made.emitter): string =>
          [...mapped(emitter.emitUnproved(batches, { units, header: [] }))].join("");
        expect(written(reading(), made.emitter)).toBe(withoutComments(program, format));
        const traced = await loadEmitter(generateEmitter(format, { traced: true }));
        expect(written(reading(), traced)).toBe(withoutComments(program, format));
      });
    }
  });
}

/** Chunks as text; each is valid until the next is pulled. */
function* mapped(chunks: Iterable<Uint8Array>): Generator<string> {
  for (const chunk of chunks) yield new TextDecoder().decode(chunk);
}
