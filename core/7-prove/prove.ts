import type { Batch, FeedMode, Finding, Place, Report, UnitSystem } from "#base";
import { lookAhead, takeDifferences } from "./align.ts";
import type { Difference } from "./align.ts";
import { countEqual, sameRow } from "./compare.ts";
import { proofFindings } from "./findings-proof.ts";
import { recordRow } from "./row-record.ts";
import type { RowRecord } from "./row-record.ts";
import { makeProof } from "./proof.ts";
import type { Proof } from "./proof.ts";

/** The text that is being proved, as the caller counts and digests it while it is written. */
export interface ProvedText {
  /** Bytes written so far. */
  bytes(): number;
  /** SHA-256 of them, 64 hexadecimal digits; asked for once, at the end. */
  sha256(): string;
}

/** What `prove` compares, and what it needs for a proof. */
export interface ProveInput {
  /** The sequence as it was emitted; a queue that is filled while `actual` is pulled, or the sequence itself. */
  readonly expected: Iterable<Batch>;
  /** What was read back. Pulling it drives everything else. */
  readonly actual: Iterable<Batch>;
  readonly report: Report;
  /** Error findings that any stage has reported so far, those of the guards included; any one prevents a proof. */
  readonly errors: () => number;
  /** Absent where nothing was written: then there is no proof, only findings. */
  readonly text: ProvedText | undefined;
  /** Hash of job, dialect and options; asked for once, and only for a proof. */
  readonly facts: () => string;
  /** Puts a place into words such as "line 12", for the second place of a finding. */
  readonly locate?: (place: Place) => string;
}

/** Differences that are listed; the rest is counted. */
const mostListed = 20;

/** Differences after which no more care is taken to find where both sides agree again. */
const mostAligned = 200;

/** One side of the comparison: its batch in hand, and rows looked at ahead. */
interface Side {
  readonly pull: () => Batch | undefined;
  batch: Batch | undefined;
  row: number;
  readonly ahead: RowRecord[];
}

interface Comparison {
  readonly input: ProveInput;
  readonly expected: Side;
  readonly actual: Side;
  units: UnitSystem;
  feedMode: FeedMode;
  steps: number;
  differences: number;
  /** Place of the last row read. */
  lastRead: number;
}

function sideOf(batches: Iterable<Batch>): Side {
  const iterator = batches[Symbol.iterator]();
  const pull = (): Batch | undefined => {
    const result = iterator.next();
    return result.done ? undefined : result.value;
  };
  return { pull, batch: undefined, row: 0, ahead: [] };
}

/** Whether a side has a row in hand; pulls the next batch where it has not. */
function hasRow(side: Side): boolean {
  while (!side.batch || side.row >= side.batch.count) {
    side.batch = side.pull();
    side.row = 0;
    if (!side.batch) return false;
  }
  return true;
}

/** Looks ahead on a side as far as there are rows. */
function fill(side: Side): void {
  while (side.ahead.length < lookAhead && hasRow(side)) side.ahead.push(recordRow(side.batch!, side.row++));
}

/**
 * Compares what was meant with what was read, row by row and step by step, one to one. Both sides are pulled in step, so
 * that neither is held in memory; what is forgiven stands in forgiven.ts. Differences are reported as proof/differs,
 * proof/missing-step and proof/extra-step.
 *
 * @returns a proof if there is no difference and no error finding, and a text was written; otherwise undefined
 */
export function prove(input: ProveInput): Proof | undefined {
  const comparison: Comparison = {
    input,
    expected: sideOf(input.expected),
    actual: sideOf(input.actual),
    units: "mm",
    feedMode: "per-minute",
    steps: 0,
    differences: 0,
    lastRead: 0,
  };
  compareEqual(comparison);
  compareAligned(comparison);
  reportUnlisted(comparison);
  const { steps, differences } = comparison;
  if (differences > 0 || steps === 0 || !input.text || input.errors() > 0) return undefined;
  return makeProof({ bytes: input.text.bytes(), sha256: input.text.sha256(), steps, facts: input.facts() });
}

/** The way it should go: whole runs of equal rows, on columns. Stops at the first difference or where a side ends. */
function compareEqual(comparison: Comparison): void {
  const { expected, actual } = comparison;
  // What was read is pulled first: pulling it is what fills the queue of what was meant.
  while (hasRow(actual) && hasRow(expected)) {
    const { batch: wanted, row: i } = expected;
    const { batch: got, row: j } = actual;
    const equal = countEqual(wanted!, i, got!, j);
    if (equal === 0) return;
    noteModes(comparison, wanted!, i, i + equal);
    expected.row += equal;
    actual.row += equal;
    comparison.steps += equal;
    comparison.lastRead = got!.source[j + equal - 1];
  }
}

/** Keeps units and feed mode for the words of findings. */
function noteModes(comparison: Comparison, batch: Batch, from: number, to: number): void {
  for (const step of batch.asides) if (step.kind === "units") comparison.units = step.value;
  if (!batch.asides.some((step) => step.kind === "feed-mode")) return;
  for (let row = from; row < to; row++) {
    const step = batch.aside[row] >= 0 ? batch.asides[batch.aside[row]] : undefined;
    if (step?.kind === "feed-mode") comparison.feedMode = step.value;
  }
}

/** From the first difference on: row by row as records, looking ahead for where both sides agree again. */
function compareAligned(comparison: Comparison): void {
  const { expected, actual } = comparison;
  for (;;) {
    fill(actual);
    fill(expected);
    const [wanted] = expected.ahead;
    const [got] = actual.ahead;
    if (!wanted && !got) return;
    if (wanted && got && sameRow(wanted, got)) {
      takeEqual(comparison);
      continue;
    }
    for (const difference of differencesAt(comparison)) reportDifference(comparison, difference);
  }
}

/** The next differences: aligned while they are few; two texts that have nothing in common are only paired off. */
function differencesAt({ expected, actual, differences }: Comparison): Difference[] {
  const [wanted] = expected.ahead;
  const [got] = actual.ahead;
  if (differences <= mostAligned || !wanted || !got) return takeDifferences(expected.ahead, actual.ahead);
  expected.ahead.shift();
  actual.ahead.shift();
  return [{ kind: "differs", expected: wanted, actual: got }];
}

function takeEqual(comparison: Comparison): void {
  const { expected, actual } = comparison;
  const { step } = expected.ahead.shift()!;
  comparison.lastRead = actual.ahead.shift()!.source;
  comparison.steps++;
  if (step?.kind === "units") comparison.units = step.value;
  if (step?.kind === "feed-mode") comparison.feedMode = step.value;
}

/** Reports a difference with the place in the program, and the place in the job in its words. */
function reportDifference(comparison: Comparison, difference: Difference): void {
  const { input } = comparison;
  comparison.differences++;
  if (difference.kind !== "missing") comparison.lastRead = difference.actual.source;
  if (comparison.differences > mostListed) return;
  const offset = nextRead(comparison, difference);
  const words = { units: comparison.units, feedMode: comparison.feedMode };
  const meant = difference.kind === "extra" ? undefined : whereMeant(input, difference.expected.source);
  const draft = proofFindings[difference.kind](difference as never, words, meant);
  const finding: Finding = { ...draft, severity: "error", place: { source: "program", offset } };
  input.report(finding);
}

/** The place in the program: of the row read, or of the row before which one is missing. */
function nextRead(comparison: Comparison, difference: Difference): number {
  if (difference.kind !== "missing") return difference.actual.source;
  return comparison.actual.ahead[0]?.source ?? comparison.lastRead;
}

function whereMeant(input: ProveInput, offset: number): string {
  const place: Place = { source: "job", offset };
  return input.locate ? input.locate(place) : `byte ${offset} of the job`;
}

function reportUnlisted(comparison: Comparison): void {
  const more = comparison.differences - mostListed;
  if (more <= 0) return;
  const { report } = comparison.input;
  report({
    ...proofFindings.more(more),
    severity: "error",
    place: { source: "program", offset: comparison.lastRead },
  });
}
