import type { CycleDefinition, FeedMode, JobFacts, MachineFacts, UnitSystem } from "#base";
import { atomsPerMillimetre } from "#base";
import { createArcs } from "./arc.ts";
import { createLedger } from "./ledger.ts";
import type { Ledger } from "./ledger.ts";
import { createLookAhead } from "./look-ahead.ts";
import type { Corners, LookAhead } from "./look-ahead.ts";
import { createPlace, reshift } from "./place.ts";
import type { Place } from "./place.ts";
import { ratesOf } from "./rates.ts";
import type { Rates } from "./rates.ts";
import { createSpindle } from "./spindle.ts";
import type { Spindle } from "./spindle.ts";

/** An operation of the program. */
export interface TimedOperation {
  readonly id: string;
  readonly name: string;
  readonly tool: number;
  /** Byte offset in the job. */
  readonly source: number;
}

/** How far a corner is left where nothing says it: 0.05 mm (no source; it is told with the times). */
export const assumedDeviation = 0.05 * atomsPerMillimetre;

/** All that the clock remembers. */
export interface ClockState {
  readonly machine: MachineFacts;
  readonly job: JobFacts;
  readonly operations: readonly TimedOperation[];
  readonly rates: Rates;
  readonly ledger: Ledger;
  readonly lookAhead: LookAhead;
  readonly arcOf: ReturnType<typeof createArcs>;
  readonly place: Place;
  readonly spindle: Spindle;
  /** Index of the operation in hand, and the part of the job in which it lies. */
  operation: number;
  begins: number;
  ends: number;
  units: UnitSystem;
  feedMode: FeedMode;
  /** What a feed is multiplied by to be atoms a second; 0 for inverse time. */
  feedUnit: number;
  cycle: CycleDefinition | undefined;
  /** Tool of the operation before. */
  tool: number;
  stops: number;
  optionalStops: number;
  /** Whether the program has stopped since the last motion in the work. */
  stopped: boolean;
  automatic: number;
  byHand: number;
  /** What was assumed or is not known; a sentence each. */
  readonly told: Set<string>;
}

export function createState(
  machine: MachineFacts,
  job: JobFacts,
  operations: readonly TimedOperation[],
): ClockState {
  const rates = ratesOf(machine);
  const ledger = createLedger(Math.max(operations.length, 1));
  const state: ClockState = {
    machine,
    job,
    operations,
    rates,
    ledger,
    lookAhead: createLookAhead((owner, seconds) => {
      ledger.work(owner, "cutting", seconds);
    }),
    arcOf: createArcs(rates),
    place: createPlace(),
    spindle: createSpindle(),
    operation: 0,
    begins: -Infinity,
    ends: operations.length > 1 ? operations[1].source : Infinity,
    units: machine.countsIn ?? "mm",
    feedMode: "per-minute",
    feedUnit: 1 / 60,
    cycle: undefined,
    tool: job.spindleHolds ?? 0,
    stops: 0,
    optionalStops: 0,
    stopped: false,
    automatic: 0,
    byHand: 0,
    told: new Set(),
  };
  state.lookAhead.corners(cornersOf(state, undefined, undefined));
  reshift(state.place, machine, job, toolInHand(state), 7);
  return state;
}

/** Number of the tool of the operation in hand; 0 where nobody knows. */
export function toolInHand(state: ClockState): number {
  return state.operations[state.operation]?.tool ?? 0;
}

/** Finds the operation that a place in the job belongs to. */
export function enter(state: ClockState, source: number): void {
  if (source >= state.begins && source < state.ends) return;
  const { operations } = state;
  const next = operations.findIndex((operation) => operation.source > source);
  const found = Math.max((next < 0 ? operations.length : next) - 1, 0);
  state.operation = found;
  // Whatever stands before the first one belongs to it, and whatever stands behind the last one to that.
  state.begins = found === 0 ? -Infinity : operations[found].source;
  state.ends = operations[found + 1]?.source ?? Infinity;
}

/** How corners are taken under a path mode; undefined where the program has not stated any. */
export function cornersOf(
  { machine, told }: ClockState,
  mode: "exact" | "stop" | "blend" | undefined,
  tolerance: number | undefined,
): Corners {
  if (mode === "stop") return "stop";
  if (mode === "exact") return 0;
  const { blending } = machine.dynamics;
  if (tolerance !== undefined) return tolerance;
  if (blending === 0) return "stop";
  if (blending === undefined && mode === "blend")
    told.add("Corners are taken to be rounded by 0.05 mm (machine.blending is not stated).");
  if (blending === undefined && mode === undefined)
    told.add(
      "Each motion is taken to end at rest where no path mode is stated (machine.blending is not, either).",
    );
  return blending ?? (mode === "blend" ? assumedDeviation : "stop");
}

/** What is between ends with the first motion in the work: a swap is counted for the operation that it is for. */
export function settle(state: ClockState): void {
  const swapped = state.ledger.settle(state.operation);
  const tool = toolInHand(state);
  // Without a job nobody says which tool it is; what changes it does so for another one.
  const other = tool !== state.tool || state.operations.length === 0;
  if (other && swapped) state.automatic++;
  else if (other && tool > 0 && state.stopped && state.machine.swap === "operator") state.byHand++;
  state.tool = tool;
  state.stopped = false;
  state.spindle.fresh = false;
}
