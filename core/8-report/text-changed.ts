import { clean } from "./clean.ts";
import type { Layout } from "./text-findings.ts";

/** Lines of a program that another one has in the place of some of its own. */
export interface ChangedRun {
  /** Line of the first one in the new program, counted from 1; where lines are only gone, of the one behind them. */
  readonly line: number;
  readonly was: readonly string[];
  readonly is: readonly string[];
  /** Lines of either that are not listed. */
  readonly more: number;
}

/** In what a new program differs from the one before it. */
export interface ChangedBlocks {
  /** Lines of the old program that are gone, and of the new one that are new. */
  readonly gone: number;
  readonly added: number;
  /** The first runs. */
  readonly runs: readonly ChangedRun[];
  /** Runs that are not listed. */
  readonly moreRuns: number;
}

/** The changed blocks, old ones after a minus and new ones after a plus. */
export function changedText({ gone, added, runs, moreRuns }: ChangedBlocks, { paint }: Layout): string[] {
  if (gone + added === 0) return ["no block changed"];
  const listed = runs.flatMap(({ line, was, is, more }) => [
    paint("label", `line ${line}`),
    ...was.map((text) => paint("error", `  - ${clean(text)}`)),
    ...is.map((text) => paint("good", `  + ${clean(text)}`)),
    ...(more === 0 ? [] : [`    and ${lines(more)} more`]),
  ]);
  const rest = moreRuns === 0 ? [] : [`and ${moreRuns} more places`];
  return [...listed, ...rest, `${lines(gone)} gone, ${added} new`];
}

function lines(count: number): string {
  return `${count} line${count === 1 ? "" : "s"}`;
}
