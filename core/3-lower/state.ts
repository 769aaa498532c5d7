import type { Capabilities, FeedMode, MachineFacts, Plane, Report, UnitSystem } from "#base";
import { atomsPerUnit, axes, roundToGrid } from "#base";
import type { Job, Operation } from "#job";
import type { Output } from "./output.ts";
import { undeclared } from "./findings.ts";

/** Counts of what lowering changed, for the report. */
export interface LoweringSummary {
  /** Motions of the job, holes included. */
  moves: number;
  /** Motions that round to nothing on the dialect's grid and were left out. */
  dropped: number;
}

/** Least increments of one program, see `Capabilities`. */
export interface Grids {
  readonly length: number;
  readonly centre: number;
  readonly angle: number;
}

/** What lowering knows while it walks through a job. */
export interface Lowering {
  readonly job: Job;
  readonly capabilities: Capabilities;
  readonly machine: MachineFacts;
  readonly units: UnitSystem;
  readonly grids: Grids;
  /** The most axes of a rapid, and of any other motion, in one row. */
  readonly axesOfRapid: number;
  readonly axesAtOnce: number;
  output: Output;
  readonly report: Report;
  readonly summary: LoweringSummary;
  operation: Operation;
  /** Place of the tool tip in the job's own numbers: x y z in atoms, a b c in micro-degrees. */
  readonly exact: Float64Array;
  /** The same on the dialect's grid. */
  readonly at: Float64Array;
  /** Whether the first rapid of the operation is still to come. */
  atStart: boolean;
  /** Mask of the rotary axes that the operation has named, so that their places are known. */
  rotary: number;
  /** Those of them that no row has stated yet. */
  unstated: number;
  plane: Plane;
  /** The feed mode that the program is in, which may differ from the operation's. */
  feedMode: FeedMode;
  /** Milli-rpm. */
  rpm: number;
  /** The last feed as the job states it and as it is written, so that a run of one feed is rounded once. */
  rawFeed: number;
  feed: number;
  /** Subjects that were reported, so that each is told once. */
  readonly told: Set<string>;
}

/** Reports a finding once for each subject. */
export function tellOnce(state: Lowering, subject: string, tell: () => void): void {
  if (state.told.has(subject)) return;
  state.told.add(subject);
  tell();
}

/** The value of a key, or a refusal and a stand-in that lets lowering gather more findings. */
export function need<Value>(
  state: Pick<Lowering, "told" | "report">,
  value: Value | undefined,
  key: { readonly path: string; readonly why: string; readonly example: string; readonly offset: number },
  standIn: Value,
): Value {
  if (value !== undefined) return value;
  if (!state.told.has(key.path)) {
    state.told.add(key.path);
    state.report(undeclared(key.path, key.why, key.example, key.offset));
  }
  return standIn;
}

/** Rounds the exact place of one axis onto the grid. */
export function rounded(state: Lowering, axis: number): number {
  return roundToGrid(state.exact[axis], axis < 3 ? state.grids.length : state.grids.angle);
}

/** How many axes may move at once; what is undeclared is reported and stands in as all. */
export function axisLimits(
  capabilities: Capabilities,
  told: Set<string>,
  report: Report,
): Pick<Lowering, "axesOfRapid" | "axesAtOnce"> {
  const key = (path: string, example: string) => ({ path, why: "to move its axes", example, offset: 0 });
  const state = { told, report };
  return {
    axesOfRapid: need(
      state,
      capabilities.axesOfRapid,
      key("motion.rapid-axes", "motion: { rapid-axes: ? } # together or one-at-a-time"),
      6,
    ),
    axesAtOnce: need(
      state,
      capabilities.axesAtOnce,
      key("motion.axes-at-once", "motion: { axes-at-once: ? }"),
      6,
    ),
  };
}

/** Least increments for a program in these units; what is undeclared is reported and stands in as 0.001. */
export function gridsOf(
  capabilities: Capabilities,
  units: UnitSystem,
  told: Set<string>,
  report: Report,
): Grids {
  const finest = atomsPerUnit[units] / 1000;
  const key = (path: string, example: string) => ({ path, why: "to write coordinates", example, offset: 0 });
  return {
    length: need(
      { told, report },
      capabilities.lengthGrid?.[units],
      key("numbers.length", "numbers: { length: { mm: ?, inch: ? } } # digits behind the point"),
      finest,
    ),
    centre: need(
      { told, report },
      capabilities.centreGrid?.[units],
      key("numbers.arc-centre", "numbers: { arc-centre: { mm: ?, inch: ? } } # digits behind the point"),
      finest,
    ),
    angle: capabilities.angleGrid ?? 1,
  };
}

/** The bits of the axes whose rounded place differs from where the tool stands, or that are named for the first time. */
export function movedAxes(state: Lowering, target: Float64Array): number {
  let moved = state.unstated;
  state.unstated = 0;
  for (let axis = 0; axis < axes.length; axis++) if (target[axis] !== state.at[axis]) moved |= 1 << axis;
  return moved;
}
