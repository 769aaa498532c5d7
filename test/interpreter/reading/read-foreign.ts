import { proveText } from "../../../core/index.ts";
import type { ReadyDialect } from "../../../core/index.ts";
import { memorySource } from "#base";
import { read } from "#read";
import type { CanonicalCall } from "../canonical-calls.ts";
import { meaningsOf } from "../calls-to-meanings.ts";
import type { Meaning } from "../meaning.ts";
import { firstDifference } from "../meaning.ts";
import { stepMeanings } from "../steps-to-calls.ts";
import { withoutStandingMotions } from "./standstill.ts";

/** What comes of a program that we did not write. */
export interface ForeignReading {
  /** Rules of the errors that are about the language: all of the reader's, and what the guard says about arcs, feed and compensation. */
  readonly rules: readonly string[];
  /** What its steps mean; undefined where it is refused for more than its form. */
  readonly meanings: readonly Meaning[] | undefined;
}

const ofLanguage = /^(read|block|dialect|arc)\/|^motion\/(feed|comp)$/;

/** Reads a program, and says what it means. */
export function readForeign(text: string, ready: ReadyDialect): ForeignReading {
  const { findings } = proveText(text, ready);
  const rules = findings.filter(({ rule, severity }) => severity === "error" && ofLanguage.test(rule));
  const names = [...new Set(rules.map(({ rule }) => rule))].sort();
  const isKnown = names.every((rule) => rule.startsWith("block/"));
  return { rules: names, meanings: isKnown ? meaningOf(text, ready) : undefined };
}

function meaningOf(text: string, { dialect }: ReadyDialect): Meaning[] {
  const bytes = new TextEncoder().encode(text);
  const options = { units: "mm", source: memorySource(bytes) } as const;
  const batches = read([bytes], dialect.format, dialect.machine, options, () => undefined);
  return stepMeanings(batches, "mm", "program");
}

/** The first difference between what we read and what the interpreter does; "" where there is none. */
export function differenceOf(
  meanings: readonly Meaning[],
  calls: readonly CanonicalCall[],
  slack = 0,
): string {
  return firstDifference(withoutStandingMotions(meanings), withoutStandingMotions(meaningsOf(calls)), slack);
}
