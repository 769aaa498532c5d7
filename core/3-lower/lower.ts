import type { Batch, Capabilities, MachineFacts, Report, UnitSystem } from "#base";
import { isArc, rotaryAxes, rowKind } from "#base";
import type { Job, JobStep, Operation } from "#job";
import { lowerArc } from "./arc.ts";
import { checkFeedMode, lowerAside } from "./asides.ts";
import { forgetFeed, writtenFeedMode } from "./feed.ts";
import { coarseGrid, coarseNumbers } from "./findings.ts";
import type { HolesPlan } from "./holes-plan.ts";
import { lowerHole } from "./holes.ts";
import type { LoweredStep } from "./lowered.ts";
import { lowerLine, lowerLines, lowerRapid, rapidZ, takeTarget } from "./motion.ts";
import { createOutput, drain, finish, writeAside } from "./output.ts";
import { writtenSpeed } from "./speed.ts";
import type { Lowering, LoweringSummary } from "./state.ts";
import { axisLimits, gridsOf, rounded } from "./state.ts";

/** What lowering works on. */
export interface LowerRequest {
  readonly job: Job;
  /** The operations to lower, in order. */
  readonly operations: readonly Operation[];
  /** The moves of an operation, streamed. */
  readonly moves: (operation: Operation) => Iterable<Batch<JobStep>>;
  readonly capabilities: Capabilities;
  readonly machine: MachineFacts;
  /** Units of the program, from `programUnits`. */
  readonly units: UnitSystem;
  readonly report: Report;
  /** Counted up while the batches are pulled. */
  readonly summary: LoweringSummary;
}

/**
 * Lowers a job to what the tool does under one dialect: places, feeds and centres rounded onto its grids, holes as fixed
 * cycles or single moves, arcs as it can say them. The only stage that rounds motion.
 *
 * @returns rows in work coordinates with rare steps between them; what cannot be said goes to `report` with the rules
 *   `lower/...`, `limit/tapping` and `dialect/undeclared`
 */
export function* lower(request: LowerRequest): Generator<Batch<LoweredStep>> {
  const [firstOperation] = request.operations;
  if (!firstOperation) return;
  const state = createLowering(request, firstOperation);
  if (state.grids.length > coarseGrid) request.report(coarseNumbers(state.grids.length, request.units));
  for (const operation of request.operations) {
    startOperation(state, operation);
    let plan: HolesPlan | undefined;
    let source = operation.source;
    for (const moves of request.moves(operation)) {
      if (moves.abc && !state.output.rotary) yield* becomeRotary(state);
      for (let row = 0; row < moves.count; row++) {
        source = moves.source[row];
        if (moves.kind[row] === rowKind.aside)
          plan = lowerAside(state, moves.asides[moves.aside[row]], plan, source);
        else row = lowerMotion(state, moves, row, plan);
        if (state.output.full.length > 0) yield* drain(state.output);
      }
    }
    endOperation(state, source);
    yield* drain(state.output);
  }
  yield* finish(state.output);
}

/** Lowers the motion at a row, and the lines that follow it; gives the last row that it took. */
function lowerMotion(
  state: Lowering,
  moves: Batch<JobStep>,
  row: number,
  plan: HolesPlan | undefined,
): number {
  const kind = moves.kind[row];
  if (kind === rowKind.line && (moves.stated[row] & rotaryAxes) === 0) {
    const next = lowerLines(state, moves, row);
    state.summary.moves += next - row;
    return next - 1;
  }
  if (kind === rowKind.hole && plan) {
    takeTarget(state, moves, row);
    lowerHole(state, plan, moves.source[row]);
    return row;
  }
  state.summary.moves++;
  if (kind === rowKind.rapid) lowerRapid(state, moves, row);
  else if (kind === rowKind.line) lowerLine(state, moves, row);
  else if (isArc(kind)) lowerArc(state, moves, row);
  else throw new Error(`a job has no rows of kind ${String(kind)}`);
  return row;
}

function createLowering(request: LowerRequest, operation: Operation): Lowering {
  const { job, capabilities, machine, units, report, summary } = request;
  const told = new Set<string>();
  return {
    job,
    capabilities,
    machine,
    units,
    report,
    summary,
    told,
    operation,
    ...axisLimits(capabilities, told, report),
    grids: gridsOf(capabilities, units, told, report),
    output: createOutput(false),
    rotary: 0,
    unstated: 0,
    exact: new Float64Array(6),
    at: new Float64Array(6),
    atStart: true,
    plane: "xy",
    feedMode: "per-minute",
    rpm: 0,
    rawFeed: -1,
    feed: 0,
  };
}

/** From the first batch with rotary words on, rows have columns for a, b and c. */
function* becomeRotary(state: Lowering): Generator<Batch<LoweredStep>> {
  yield* finish(state.output);
  state.output = createOutput(true);
}

/** Nothing carries over from one operation to the next: Z stands at clearance, plane and feed mode are restated. */
function startOperation(state: Lowering, operation: Operation): void {
  state.operation = operation;
  state.atStart = true;
  state.plane = "xy";
  state.feedMode = writtenFeedMode(operation.feedMode, state.capabilities.words);
  state.rpm = operation.spindle ? writtenSpeed(state, operation.spindle.rpm, operation.source) : 0;
  forgetFeed(state);
  state.rotary = 0;
  state.unstated = 0;
  state.exact[2] = operation.clearance;
  state.at[2] = rounded(state, 2);
  writeAside(
    state.output,
    { kind: "operation-start", index: state.job.operations.indexOf(operation) },
    operation.source,
  );
  checkFeedMode(state, operation.source);
}

/** Each operation ends with Z alone to clearance. */
function endOperation(state: Lowering, source: number): void {
  if (!state.atStart) rapidZ(state, state.operation.clearance, source);
  writeAside(
    state.output,
    { kind: "operation-end", index: state.job.operations.indexOf(state.operation) },
    source,
  );
}
