/**
 * One job under several dialects: each posts it, proved or refused; the programs of those that can are compared with the first
 * of them, step by step, and each difference is laid to the keys that cause it.
 *
 *     job × A ──post──▶ proved ─┐
 *     job × B ──post──▶ proved ─┴─▶ blocks, rows, words and keys of both ──▶ places ──▶ cells ──▶ differences ──▶ groups
 *
 * Both programs are written once more as they are compared; of either no more is held than what stands between two places
 * of the job that both have. No file access here.
 */
import type { KeyDifference } from "#dialect";
import type { ComparedPair } from "#report";
import { post } from "../compile.ts";
import type { JobInput, Outcome } from "../inputs.ts";
import type { Item } from "./item.ts";
import { comparePair } from "./pair.ts";
import type { TracedDialect } from "./traced-dialect.ts";

export type { Item } from "./item.ts";
export type { TracedDialect } from "./traced-dialect.ts";
export { groupOf } from "./groups.ts";

/** A job, and the dialects to try it under: two or more. */
export interface CompareInput {
  readonly job: JobInput;
  readonly dialects: readonly TracedDialect[];
  /** The keys about which two of them differ, by their places in the list. */
  readonly differences: (first: number, second: number) => readonly KeyDifference[];
  /** Called with every difference of a pair; for who looks at them all. */
  readonly seen?: (item: Item) => void;
}

/** What posting under one dialect came to. */
export interface TriedDialect {
  readonly outcome: Outcome;
  /** Lines of the text; undefined where it was refused. */
  readonly lines: number | undefined;
}

/** What came of it: one for each dialect, in their order, and the pairs that could be compared. */
export interface CompareOutcome {
  readonly tried: readonly TriedDialect[];
  readonly pairs: readonly ComparedPair[];
}

/** Posts a job under each dialect and compares the programs with the first that there is. */
export function compare(input: CompareInput): CompareOutcome {
  const tried = input.dialects.map((dialect) => tryDialect(input.job, dialect));
  const proved = tried.flatMap(({ outcome }, index) => (outcome.proof === undefined ? [] : [index]));
  const [first, ...others] = proved;
  const header = (index: number) => ({
    name: input.dialects[index].dialect.name,
    assumptions: tried[index].outcome.summary.assumptions,
  });
  const pairs = others.map((second) =>
    comparePair({
      job: input.job,
      dialects: [input.dialects[first], input.dialects[second]],
      headers: [header(first), header(second)],
      differences: input.differences(first, second),
      of: [first, second],
      ...(input.seen === undefined ? {} : { seen: input.seen }),
    }),
  );
  return { tried, pairs };
}

function tryDialect(job: JobInput, means: TracedDialect): TriedDialect {
  const { lineEnd } = means.dialect.format;
  const lineFeed = lineEnd.charCodeAt(lineEnd.length - 1);
  const counted = { ends: 0, last: lineFeed };
  const write = (chunk: Uint8Array): void => {
    for (const byte of chunk) if (byte === lineFeed) counted.ends++;
    counted.last = chunk.at(-1) ?? counted.last;
  };
  const outcome = post({ ...means, ...job, sink: { write } });
  if (outcome.proof === undefined) return { outcome, lines: undefined };
  return { outcome, lines: counted.ends + (counted.last === lineFeed ? 0 : 1) };
}
