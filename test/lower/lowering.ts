import type { Batch, Capabilities, Finding, MachineFacts, Step } from "#base";
import { axisBit, createBatch, pushAside, rowKind } from "#base";
import type { Job, JobStep, Operation, Tool } from "#job";
import type { LoweredStep } from "#lower";
import { lower } from "#lower";

/** One millimetre in atoms. */
export const mm = 10_000_000;

/** A move of a job in millimetres, as short as a test can say it. */
export type Move =
  | { readonly rapid: Place }
  | { readonly line: Place; readonly feed?: number }
  | {
      readonly arc: Place;
      readonly centre: readonly [number, number];
      readonly turns: number;
      readonly plane?: "xy" | "zx" | "yz";
      readonly feed?: number;
    }
  | { readonly hole: readonly [number, number]; readonly feed?: number }
  | { readonly step: JobStep };

export interface Place {
  readonly x?: number;
  readonly y?: number;
  readonly z?: number;
}

/** A control that takes every arc by its centre, in all planes. */
export function arcsLike(changes: Partial<Capabilities["arcs"]> = {}): Capabilities["arcs"] {
  return {
    form: "incremental-centre",
    largestSweep: 360_000_000,
    quadrants: "any",
    fullCircle: true,
    planes: ["xy", "zx", "yz"],
    helix: true,
    turns: false,
    feedAlong: "path",
    smallestRadius: 0,
    largestRadius: Infinity,
    chordTolerance: mm / 100,
    ...changes,
  };
}

/** Capabilities of a controller that can say everything in millimetres with three decimals. */
export function capabilities(changes: Partial<Capabilities> = {}): Capabilities {
  const words = Object.fromEntries(
    [
      "plane.xy",
      "plane.zx",
      "plane.yz",
      "units.mm",
      "units.inch",
      "feed.per-minute",
      "feed.per-revolution",
      "feed.inverse-time",
      "dwell.code",
      "compensation.off",
      "compensation.left",
      "compensation.right",
      "cycles.drill",
      "cycles.dwell",
      "cycles.peck",
      "cycles.chip-break",
      "cycles.tap",
      "cycles.tap-left",
      "cycles.ream",
      "cycles.bore-dwell",
    ].map((key) => [key, true]),
  );
  return {
    words,
    programsIn: "job",
    distance: "absolute",
    lengthGrid: { mm: mm / 1000, inch: 25_400 },
    centreGrid: { mm: mm / 1000, inch: 25_400 },
    angleGrid: 1000,
    feedPerMinuteGrid: { mm: mm / 10, inch: 2_540_000 },
    feedPerRevolutionGrid: { mm: mm / 10_000, inch: 2540 },
    inverseTimeGrid: 100,
    speedGrid: 1000,
    dwellGrid: 1000,
    rapids: "straight",
    rapidFeed: null,
    unitsStated: "with-modes",
    axesOfRapid: 6,
    axesAtOnce: 6,
    arcs: arcsLike(),
    cycles: {
      backOff: { peck: 2_500_000, "chip-break": 2_500_000 },
      levels: "both",
      dwellGrid: 1000,
      peckGrid: undefined,
      saysBackOff: false,
      alongZ: false,
      tapLead: false,
    },
    spindleOrder: "speed-first",
    spindleBlocks: "together",
    gears: [],
    stopComment: "own-block",
    toolDigits: 0,
    toolsNamed: true,
    emptyTool: 0,
    freeOffsets: true,
    cancelsBeforeChange: false,
    preselect: false,
    ...changes,
  };
}

/** A machine of which lowering asks little. */
export const machine = {
  travel: {},
  tapping: { kind: "floating", reversal: 0, longhand: false },
} as unknown as MachineFacts;

/** An operation with usual values; lengths in atoms. */
export function operation(changes: Partial<Operation> = {}): Operation {
  return {
    id: "op10",
    name: "op10",
    tool: 1,
    spindle: { rpm: 500_000, direction: "cw" },
    coolant: [],
    feedMode: "per-minute",
    workOffset: 1,
    clearance: 15 * mm,
    hood: undefined,
    tolerance: undefined,
    path: undefined,
    moves: { start: 0, end: 0 },
    source: 0,
    ...changes,
  };
}

function jobOf(one: Operation, units: "mm" | "inch"): Job {
  return {
    name: "test",
    units,
    program: { number: undefined, name: undefined },
    stock: undefined,
    fixtures: [],
    workOffset: 1,
    clearance: 15 * mm,
    tools: [{ number: 1, radiusOffset: 1, lengthOffset: 1, diameter: 6 * mm, kind: "end-mill" } as Tool],
    operations: [one],
  };
}

/** Puts moves into one batch of a job. */
export function batchOf(moves: readonly Move[], feed = 300): Batch<JobStep> {
  const batch = createBatch<JobStep>(Math.max(16, moves.length));
  for (const move of moves) {
    if ("step" in move) {
      pushAside(batch, move.step, 0);
      continue;
    }
    const row = batch.count++;
    batch.aside[row] = -1;
    const place: Place =
      "rapid" in move
        ? move.rapid
        : "line" in move
          ? move.line
          : "arc" in move
            ? move.arc
            : { x: move.hole[0], y: move.hole[1] };
    let stated = 0;
    for (const axis of ["x", "y", "z"] as const) {
      const value = place[axis];
      if (value === undefined) continue;
      stated |= axisBit[axis];
      batch[axis][row] = Math.round(value * mm);
    }
    batch.stated[row] = batch.known[row] = stated;
    batch.kind[row] = kindOf(move);
    if (!("rapid" in move)) batch.feed[row] = (move.feed ?? feed) * mm;
    if ("arc" in move) {
      batch.c1[row] = Math.round(move.centre[0] * mm);
      batch.c2[row] = Math.round(move.centre[1] * mm);
      batch.turns[row] = move.turns;
    }
  }
  return batch;
}

function kindOf(move: Exclude<Move, { step: JobStep }>): number {
  if ("rapid" in move) return rowKind.rapid;
  if ("line" in move) return rowKind.line;
  if ("hole" in move) return rowKind.hole;
  return { xy: rowKind.arcXy, zx: rowKind.arcZx, yz: rowKind.arcYz }[move.plane ?? "xy"];
}

/** A lowered row, in atoms. */
export interface Row {
  readonly kind: number;
  readonly x: number;
  readonly y: number;
  readonly z: number;
  /** Micro-degrees. */
  readonly a: number;
  readonly feed: number;
  readonly c1: number;
  readonly c2: number;
  readonly turns: number;
  readonly stated: number;
  readonly known: number;
  readonly step: LoweredStep | undefined;
}

export interface Lowered {
  readonly rows: readonly Row[];
  /** Rows of motion alone. */
  readonly motion: readonly Row[];
  readonly steps: readonly (LoweredStep | Step)[];
  readonly findings: readonly Finding[];
  readonly dropped: number;
}

export interface LowerOptions {
  readonly capabilities?: Partial<Capabilities>;
  readonly operation?: Partial<Operation>;
  readonly machine?: MachineFacts;
  readonly units?: "mm" | "inch";
}

/** Lowers one operation of these moves. */
export function lowerMoves(moves: readonly Move[], options: LowerOptions = {}): Lowered {
  return lowerBatches([batchOf(moves)], options);
}

/** Lowers one operation whose moves come in these batches. */
export function lowerBatches(input: readonly Batch<JobStep>[], options: LowerOptions = {}): Lowered {
  const one = operation(options.operation);
  const findings: Finding[] = [];
  const summary = { moves: 0, dropped: 0 };
  const rows: Row[] = [];
  const batches = lower({
    job: jobOf(one, options.units ?? "mm"),
    operations: [one],
    moves: () => input,
    capabilities: capabilities(options.capabilities),
    machine: options.machine ?? machine,
    units: options.units ?? "mm",
    report: (finding) => findings.push(finding),
    summary,
  });
  for (const batch of batches) for (let row = 0; row < batch.count; row++) rows.push(rowAt(batch, row));
  const motion = rows.filter((row) => row.step === undefined);
  const steps = rows.flatMap((row) => (row.step === undefined ? [] : [row.step]));
  return { rows, motion, steps, findings, dropped: summary.dropped };
}

function rowAt(batch: Batch<LoweredStep>, row: number): Row {
  return {
    kind: batch.kind[row],
    x: batch.x[row],
    y: batch.y[row],
    z: batch.z[row],
    a: batch.abc?.[0][row] ?? 0,
    feed: batch.feed[row],
    c1: batch.c1[row],
    c2: batch.c2[row],
    turns: batch.turns[row],
    stated: batch.stated[row],
    known: batch.known[row],
    step: batch.aside[row] < 0 ? undefined : batch.asides[batch.aside[row]],
  };
}
