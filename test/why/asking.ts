import type { WhyInput, Question } from "../../core/why.ts";
import { why } from "../../core/why.ts";
import { createSha256, memorySource } from "../../core/index.ts";
import type { Finding } from "#base";
import type { DialectLoader } from "#dialect";
import { studyDialect } from "#dialect";
import { generateEmitter, loadEmitter } from "#emit";
import type { WhyOutcome } from "../../core/why.ts";

/** A dialect that can be asked; undefined with its findings where it is refused. */
export async function askable(
  name: string,
  loader: DialectLoader,
  findings: Finding[] = [],
): Promise<Pick<WhyInput, "dialect" | "emitter" | "keys"> | undefined> {
  const studied = await studyDialect(name, loader, (finding) => findings.push(finding));
  if (studied === undefined) return undefined;
  const { dialect, keys } = studied;
  return { dialect, keys, emitter: await loadEmitter(generateEmitter(dialect.format, { traced: true })) };
}

export type Askable = NonNullable<Awaited<ReturnType<typeof askable>>>;

export function ask(made: Askable, job: string, question: Question): WhyOutcome {
  const source = memorySource(new TextEncoder().encode(job));
  return why({ ...made, source, options: {}, createDigest: createSha256, question });
}
