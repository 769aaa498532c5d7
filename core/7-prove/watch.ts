import { frame } from "#base";
import type {
  Batch,
  Finding,
  JobFacts,
  MachineFacts,
  RackFacts,
  Report,
  Severity,
  SourceName,
  StepKind,
  ToolFacts,
} from "#base";
import { createState, nowhere } from "./state.ts";
import type { State } from "./state.ts";
import type { GuardRule } from "./rules.ts";

/** A finding before it has a place. */
export interface Draft {
  readonly rule: GuardRule;
  readonly severity: Severity;
  readonly message: string;
  readonly fix: string;
  /** Path of the dialect key behind it. */
  readonly key?: string;
}

/** One row, taken out of its columns and filled in again for each row that needs a closer look. */
export interface Row {
  kind: number;
  frame: number;
  known: number;
  stated: number;
  /** Places after the motion: atoms, and micro-degrees for the last three. */
  readonly at: Float64Array;
  feed: number;
  c1: number;
  c2: number;
  turns: number;
  /** Byte offset in the input. */
  offset: number;
  /** Axes that really move, or whose place was not known before. */
  moved: number;
}

/** What follows from the facts and does not change. */
export interface Traits {
  readonly byClearance: boolean;
  /** Machine Z from which on a machine move has reached swap height, atoms. */
  readonly swapZ: number;
  /** Lowest Z of safe travel on the controller's grid, work frame, atoms; minus infinity where the job is unknown. */
  readonly clearance: number;
  /** Whether length offsets are steps of their own, so that they can be missing. */
  readonly lengthWords: boolean;
  /** Whether the tool word brings the length offset along. */
  readonly lengthInTool: boolean;
  readonly workWords: boolean;
  readonly states: ReadonlySet<StepKind>;
  readonly tools: ReadonlyMap<number, ToolFacts>;
  /** The rack, where the program itself swaps at it. */
  readonly rack: RackFacts | undefined;
}

/** The guard at work: facts, state and the row in hand. */
export interface Watch {
  readonly facts: MachineFacts;
  readonly job: JobFacts;
  readonly traits: Traits;
  readonly state: State;
  readonly row: Row;
  /** How many findings of each rule there were, and the last of them. */
  readonly counts: Map<GuardRule, { readonly count: number; readonly last: Finding }>;
  readonly source: SourceName;
  readonly report: Report;
}

/**
 * A job's stock and fixtures are not on the controller's grid, the rows are: half of the coarsest increment in use,
 * 0.001 inch (common practice, no source), is no fault.
 */
export const roundingSlack = 127_000;

/** Findings of one rule that are listed; the rest is counted. */
const mostFindings = 100;

function traitsOf(facts: MachineFacts, job: JobFacts): Traits {
  const states = new Set(facts.statable);
  const form = facts.lengthOffset?.form;
  return {
    byClearance: facts.retract?.by === "clearance",
    swapZ: facts.retract?.by === "machine-move" ? facts.retract.z : Infinity,
    clearance: job.known && job.clearance !== undefined ? job.clearance : -Infinity,
    lengthWords: form === "with-first-z" || form === "own-block",
    lengthInTool: form === "in-tool-word",
    workWords: states.has("work-offset"),
    states,
    tools: new Map(job.tools.map((tool) => [tool.number, tool])),
    rack: facts.swap === "rack" ? facts.rack : undefined,
  };
}

function emptyRow(): Row {
  return {
    kind: 0,
    frame: frame.work,
    known: 0,
    stated: 0,
    at: new Float64Array(6),
    feed: 0,
    c1: 0,
    c2: 0,
    turns: 0,
    offset: 0,
    moved: 0,
  };
}

/** Starts a watch over one program. */
export function createWatch(facts: MachineFacts, job: JobFacts, report: Report, source: SourceName): Watch {
  return {
    facts,
    job,
    traits: traitsOf(facts, job),
    state: createState(facts, job),
    row: emptyRow(),
    counts: new Map(),
    source,
    report,
  };
}

/** Takes a row out of its columns. */
export function loadRow(row: Row, batch: Batch, index: number): void {
  row.kind = batch.kind[index];
  row.frame = batch.frame[index];
  row.known = batch.known[index];
  row.stated = batch.stated[index];
  row.at[0] = batch.x[index];
  row.at[1] = batch.y[index];
  row.at[2] = batch.z[index];
  for (let axis = 0; axis < 3; axis++) row.at[3 + axis] = batch.abc ? batch.abc[axis][index] : 0;
  row.feed = batch.feed[index];
  row.c1 = batch.c1[index];
  row.c2 = batch.c2[index];
  row.turns = batch.turns[index];
  row.offset = batch.source[index];
}

/** Reports a finding at the row in hand, or at an earlier place; past a limit it is only counted. */
export function tell(watch: Watch, draft: Draft, offset: number = watch.row.offset): void {
  const finding: Finding = { ...draft, place: { source: watch.source, offset } };
  const count = (watch.counts.get(draft.rule)?.count ?? 0) + 1;
  watch.counts.set(draft.rule, { count, last: finding });
  if (count <= mostFindings) watch.report(finding);
}

/** Reports a note or warning the first time only. */
export function tellOnce(watch: Watch, name: string, draft: Draft): void {
  if (watch.state.once.told.has(name)) return;
  watch.state.once.told.add(name);
  tell(watch, draft);
}

/** Says how many findings were not listed. */
export function tellUnlisted(watch: Watch): void {
  for (const { count, last } of watch.counts.values()) {
    if (count <= mostFindings) continue;
    const message = `${count - mostFindings} more findings of this rule are not listed; this is where the last stands.`;
    watch.report({ ...last, message, fix: "Correct the ones listed above first." });
  }
}

/** Whether a place is set. */
export function isPlace(offset: number): boolean {
  return offset !== nowhere;
}
