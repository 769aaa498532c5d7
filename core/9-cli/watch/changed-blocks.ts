import { diffArrays } from "diff";
import type { ChangedBlocks, ChangedRun } from "#report";
import type { LineTable } from "./line-table.ts";
import { lineTable, linesOf } from "./line-table.ts";

/** Lines of each side that are listed of one run, and runs of one change. */
const mostLines = 12;
const mostRuns = 20;
/** Insertions and deletions up to which the shortest way from one text to the other is looked for. */
const mostEdits = 2000;

/** Lines `from` up to `to` of either text, in place of one another. */
interface Run {
  readonly was: readonly [from: number, to: number];
  readonly is: readonly [from: number, to: number];
}

/**
 * The blocks in which two programs differ; numbers of blocks do not count. Where they differ in more places than it is
 * worth to sort out, everything between the first difference and the last counts as changed.
 *
 * @param before an open file, as `after`
 */
export function changedBlocks(before: number, after: number): ChangedBlocks {
  const [old, fresh] = [lineTable(before), lineTable(after)];
  const runs = differences(old, fresh);
  return {
    gone: sum(runs, ({ was }) => was[1] - was[0]),
    added: sum(runs, ({ is }) => is[1] - is[0]),
    runs: runs.slice(0, mostRuns).map((run) => listed(run, old, fresh)),
    moreRuns: Math.max(0, runs.length - mostRuns),
  };
}

function differences(old: LineTable, fresh: LineTable): Run[] {
  const shorter = Math.min(old.count, fresh.count);
  let head = 0;
  while (head < shorter && old.marks[head] === fresh.marks[head]) head++;
  let tail = 0;
  while (tail < shorter - head && old.marks[old.count - 1 - tail] === fresh.marks[fresh.count - 1 - tail])
    tail++;
  const whole: Run = { was: [head, old.count - tail], is: [head, fresh.count - tail] };
  const parts = diffArrays(middle(old, whole.was), middle(fresh, whole.is), { maxEditLength: mostEdits });
  return parts === undefined ? [whole] : toRuns(parts, head);
}

function middle({ marks }: LineTable, [from, to]: Run["was"]): number[] {
  return Array.from(marks.subarray(from, to));
}

function toRuns(
  parts: readonly { readonly added: boolean; readonly removed: boolean; readonly count: number }[],
  head: number,
): Run[] {
  const runs: Run[] = [];
  let [was, is] = [head, head];
  let begun: readonly [number, number] | undefined;
  const end = (): void => {
    if (begun !== undefined) runs.push({ was: [begun[0], was], is: [begun[1], is] });
    begun = undefined;
  };
  for (const { added, removed, count } of parts) {
    if (!added && !removed) end();
    else begun ??= [was, is];
    if (!added) was += count;
    if (!removed) is += count;
  }
  end();
  return runs;
}

function listed({ was, is }: Run, old: LineTable, fresh: LineTable): ChangedRun {
  const first = ([from, to]: Run["was"]): number => Math.min(to, from + mostLines);
  return {
    line: is[0] + 1,
    was: linesOf(old, was[0], first(was)),
    is: linesOf(fresh, is[0], first(is)),
    more: was[1] - first(was) + is[1] - first(is),
  };
}

function sum(runs: readonly Run[], size: (run: Run) => number): number {
  return runs.reduce((total, run) => total + size(run), 0);
}
