/**
 * Why a block of a program is as it is, by doing the work of `post` again with a traced emitter.
 *
 *     post, proved ──▶ lines, words and their keys          (as the text passes)
 *     sequence ─emit─▶ text ─read─▶ rows, one to one with the sequence ──▶ the steps of those lines, and their place in the job
 *
 * Since the proof holds what was read equal to the sequence, row by row, row i of one is row i of the other; what
 * the comparison forgives changes no number of rows. The second run stops behind the last line that is wanted. Nothing
 * is kept but what is answered. No file access here.
 */
import { rowKind } from "#base";
import { post } from "./compile.ts";
import type { KeyBook } from "#dialect";
import type { Operation, Tool } from "#job";
import type { RowWords } from "#prove";
import { recordRow, rowText } from "#prove";
import type { ExplainedBlock, SaidStep, ShapedLines, WhyAnswer } from "#report";
import type { JobInput, Means, Outcome } from "./inputs.ts";
import type { RowPair, Run } from "./row-pairs.ts";
import { rowPairs, tapped } from "./row-pairs.ts";
import type { BlockTap, WrittenBlock } from "./why-blocks.ts";
import { tapBlocks } from "./why-blocks.ts";

/** What is asked: about lines of the program, a step of the sequence (both counted from 1), or a key of the dialect. */
export type Question =
  { readonly lines: readonly number[] } | { readonly step: number } | { readonly key: string };

/** A job, a dialect with its traced emitter, and the question. */
export interface WhyInput extends JobInput, Means {
  readonly keys: KeyBook;
  readonly question: Question;
}

/** The outcome of posting, and the answer where the program was proved. `undefined` blocks: there is no such line or step. */
export interface WhyOutcome {
  readonly outcome: Outcome;
  readonly answer?: WhyAnswer;
}

/** Blocks that are shown of a key. */
const shownOfKey = 3;
/** Runs of lines that are kept of a key. */
const mostRuns = 200;
/** Steps that are listed of one block, which may repeat a cycle at many places. */
const mostSteps = 20;

/** Answers a question about the program of a job; a job that is refused has no answer. */
export function why(input: WhyInput): WhyOutcome {
  const { question } = input;
  if ("lines" in question) return aboutLines(input, new Set(question.lines));
  return "step" in question ? aboutStep(input, question.step) : aboutKey(input, question.key);
}

function aboutLines(input: WhyInput, wanted: ReadonlySet<number>): WhyOutcome {
  const found: WrittenBlock[] = [];
  const tap = tapBlocks(
    input.dialect.format,
    (line) => wanted.has(line),
    (block) => void found.push(block),
  );
  return answered(input, tap, found);
}

function aboutStep(input: WhyInput, wanted: number): WhyOutcome {
  const found: WrittenBlock[] = [];
  // A step's block is known by its place, which the reading of the text gives; whether that text is proved shows then.
  const offset = offsetOfStep(input, wanted);
  const isIts = (_line: number, start: number): boolean => start === offset;
  return answered(
    input,
    tapBlocks(input.dialect.format, isIts, (block) => void found.push(block)),
    found,
  );
}

function aboutKey(input: WhyInput, key: string): WhyOutcome {
  const found: WrittenBlock[] = [];
  const isIts = (name: string): boolean => name === key || name.startsWith(`${key}.`);
  const named = (input.emitter.traceKeys ?? []).some(isIts);
  const shaped = { key, named, count: 0, runs: [] as [number, number][], moreRuns: 0 };
  let last = -1;
  const tap = tapBlocks(
    input.dialect.format,
    () => true,
    (block) => {
      if (!block.words.some(({ keys }) => keys.some(isIts))) return;
      shaped.count++;
      if (found.length < shownOfKey) found.push(block);
      if (block.line !== last + 1 && shaped.runs.length >= mostRuns) shaped.moreRuns++;
      else if (block.line !== last + 1) shaped.runs.push([block.line, block.line]);
      else if (shaped.moreRuns === 0) shaped.runs.at(-1)![1] = block.line;
      last = block.line;
    },
  );
  return answered(input, tap, found, shaped);
}

/** Posts with a tap on the text, and explains the blocks that it found. */
function answered(
  input: WhyInput,
  tap: BlockTap,
  found: readonly WrittenBlock[],
  shaped?: ShapedLines,
): WhyOutcome {
  const emitter = tapped(input.emitter, tap);
  const outcome = post({ ...input, emitter, sink: { write: tap.write } });
  const lines = tap.end();
  if (outcome.proof === undefined) return { outcome };
  const blocks = explain(input, found);
  return { outcome, answer: { lines, blocks, ...(shaped === undefined ? {} : { shaped }) } };
}

/** The byte offset of the block of a step; undefined where there are fewer steps. */
function offsetOfStep(input: WhyInput, step: number): number | undefined {
  for (const { index, block } of rowPairs(input, () => undefined)) if (index + 1 === step) return block;
  return undefined;
}

/** What was gathered about one block. */
interface Gathered {
  readonly block: WrittenBlock;
  readonly steps: SaidStep[];
  moreSteps: number;
  source: number | undefined;
  part: ExplainedBlock["part"];
}

/** The steps of blocks that stand in the order of the program, and their places in the job. */
function explain(input: WhyInput, blocks: readonly WrittenBlock[]): ExplainedBlock[] {
  const all = blocks.map((block): Gathered => ({
    block,
    steps: [],
    moreSteps: 0,
    source: undefined,
    part: "end",
  }));
  const modes: { run?: Run; feedMode: RowWords["feedMode"] } = { feedMode: "per-minute" };
  let next = 0;
  for (const pair of rowPairs(input, (run) => (modes.run = run))) {
    const { meant, row, block } = pair;
    const step = meant.kind[row] === rowKind.aside ? meant.asides[meant.aside[row]] : undefined;
    if (step?.kind === "feed-mode") modes.feedMode = step.value;
    while (next < all.length && all[next].block.end <= block) settle(all[next++], pair, modes.run!);
    if (next >= all.length) break;
    const current = all[next];
    if (block < current.block.start) continue;
    const words = { units: modes.run!.work.units, feedMode: modes.feedMode };
    if (current.steps.length >= mostSteps) current.moreSteps++;
    else current.steps.push({ step: pair.index + 1, text: rowText(recordRow(meant, row), words) });
    if (current.source === undefined) place(current, pair, modes.run!);
    if (step?.kind === "program-end") current.part = "end";
  }
  return all.map((gathered) => finish(input, gathered, modes.run));
}

/** A block that is passed: where it says no step, it belongs to the step that follows. */
function settle(gathered: Gathered, next: RowPair, run: Run): void {
  if (gathered.source === undefined) place(gathered, next, run);
}

function place(gathered: Gathered, { meant, row, index }: RowPair, { firstSection }: Run): void {
  gathered.source = meant.source[row];
  gathered.part = index < firstSection ? "start" : "operation";
}

function finish(
  input: WhyInput,
  { block, steps, moreSteps, source, part }: Gathered,
  run?: Run,
): ExplainedBlock {
  const operation = run?.work.job.operations
    .filter((one) => source !== undefined && one.source <= source)
    .at(-1);
  const words = block.words.map((word) => ({ ...word, keys: word.keys.map(input.keys.describe) }));
  return {
    line: block.line,
    text: block.text,
    words,
    steps,
    moreSteps,
    part,
    ...(operation === undefined || part !== "operation"
      ? {}
      : { operation: operationWords(operation, run?.work.job.tools ?? []) }),
    ...(source === undefined || part !== "operation" ? {} : { source }),
  };
}

function operationWords(
  { id, name, tool: by }: Operation,
  tools: readonly Tool[],
): NonNullable<ExplainedBlock["operation"]> {
  // No operation of a job names a spare, so that one that has it has taken over.
  const tool = tools.find(({ number }) => number === by)?.spareFor;
  return { id, name, ...(tool === undefined ? {} : { spare: { tool, by } }) };
}
