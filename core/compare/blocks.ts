/** The blocks of a program in order, each with its words and their keys, and the rows of the sequence that it says. */
import type { FeedMode, UnitSystem } from "#base";
import { rowKind } from "#base";
import type { RowRecord } from "#prove";
import { recordRow, rowText } from "#prove";
import type { JobInput, Means } from "../inputs.ts";
import type { Run } from "../row-pairs.ts";
import { rowPairs, tapped } from "../row-pairs.ts";
import type { WrittenBlock } from "../why-blocks.ts";
import { tapBlocks } from "../why-blocks.ts";

/** A row of the sequence, as a block says it. */
export interface SaidRow {
  readonly record: RowRecord;
  /** Place in the job: byte offset, or `startPlace` before the first operation. */
  readonly place: number;
  readonly units: UnitSystem;
  readonly feedMode: FeedMode;
}

/** A line of the program with its rows; none: a comment, a mark or a blank line. */
export interface SaidBlock {
  readonly written: WrittenBlock;
  readonly rows: readonly SaidRow[];
}

/** The place of all that stands before the first operation. */
export const startPlace = -1;

/** A row in trade words: "line to X 10 Y 5 Z -2 at 300 mm/min". */
export function saidText({ record, units, feedMode }: SaidRow): string {
  return rowText(record, { units, feedMode });
}

/** Posts once more and gives the blocks in order; holds one chunk of the text, and what the comparison lags behind. */
export function* saidBlocks(input: JobInput & Means): Generator<SaidBlock> {
  const written: WrittenBlock[] = [];
  const tap = tapBlocks(
    input.dialect.format,
    () => true,
    (block) => void written.push(block),
  );
  const source = { ...input, emitter: tapped(input.emitter, tap) };
  const state: { run?: Run; feedMode: FeedMode } = { feedMode: "per-minute" };
  let next = 0;
  let rows: SaidRow[] = [];
  const close = (): SaidBlock => {
    const block = { written: written[next++], rows };
    rows = [];
    return block;
  };
  for (const { meant, row, index, block } of rowPairs(source, (run) => (state.run = run), tap.write)) {
    // The last line of a text without a line end is closed when no chunk follows.
    while (next < written.length && written[next].end <= block) yield close();
    if (next > 4096) next -= written.splice(0, next).length;
    const step = meant.kind[row] === rowKind.aside ? meant.asides[meant.aside[row]] : undefined;
    if (step?.kind === "feed-mode") state.feedMode = step.value;
    const { work, firstSection } = state.run!;
    rows.push({
      record: recordRow(meant, row),
      place: index < firstSection ? startPlace : meant.source[row],
      units: work.units,
      feedMode: state.feedMode,
    });
  }
  tap.end();
  while (next < written.length) yield close();
}
