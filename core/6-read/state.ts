import type { CycleDefinition, CycleKind, FeedMode, UnitSystem } from "#base";
import type { Format } from "#dialect";
import { motion } from "./meanings.ts";
import type { PlaneFacts } from "./planes.ts";
import { planes } from "./planes.ts";
import type { Quantities, Quantity } from "./quantities.ts";

/** Bits of the modes that a program must state before they are used. */
export const modeBit = {
  units: 1,
  distance: 2,
  plane: 4,
  feedMode: 8,
  arcCentre: 16,
  cycleReturn: 32,
} as const;

/** A series of holes; numbers are kept while the same cycle repeats (NISTIR 6556 3.5.16). */
export interface CycleState {
  /** The cycle in force; undefined outside a series. */
  kind: CycleKind | undefined;
  /** Z before the first hole of the series, atoms; undefined while its place is unknown. */
  initial: number | undefined;
  /** Sticky numbers as they were said, base units; undefined until said. */
  retract: number | undefined;
  depth: number | undefined;
  peck: number | undefined;
  dwell: number | undefined;
  backOff: number | undefined;
  between: "initial" | "retract";
  /** Whether the level was said in the block of the hole at hand, or since the hole before. */
  levelSaid: boolean;
  /** The definition that was handed on last in this series. */
  definition: CycleDefinition | undefined;
}

/** Holes that are still to be handed on, from one block that repeats its cycle (the L word). */
export interface Repeat {
  count: number;
  dx: number;
  dy: number;
  source: number;
}

/** What the controller has in force. */
export interface State {
  phase: "head" | "body" | "ended";
  /** Program number; 0 until one is said. */
  programNumber: number;
  /** Whether the mark of UTF-8 stands at the head. */
  byteOrderMark: boolean;
  /** Lines before the first that is not blank; undefined once that has been read. */
  leader: number | undefined;
  /** What has stood since the last tool change: a block number, one that a colon begins, a blank line; whether there was one. */
  readonly section: {
    numbered: boolean;
    aligned: boolean;
    blank: boolean;
    commented: boolean;
    changed: boolean;
    opens: boolean;
    /** Whether it has still to state its modes, and those stated so far. */
    due: boolean;
    readonly stated: Set<string>;
  };
  /** Rows when the last block ended that had a block number, and the last that had a colon; -1 for none. */
  numberedRows: number;
  alignedRows: number;
  /** Whether the delimiter at the head, and the one at the end, have been read. */
  opened: boolean;
  closed: boolean;
  /** Value of `motion` in meanings.ts. */
  motion: number;
  /** Whether the next motion block must state its motion word, though the mode itself is known. */
  motionForgotten: boolean;
  /** Feed in force, in the unit of the feed mode; 0 while none is. */
  feed: number;
  /** Whether the next feed block must state its feed. */
  feedDue: boolean;
  feedMode: FeedMode;
  /** Bits of the modes that are known, see `modeBit`. */
  modes: number;
  units: UnitSystem;
  /** Quantities of X Y Z and of I J K R in these units. */
  length: Quantity;
  centre: Quantity;
  incremental: boolean;
  arcAbsolute: boolean;
  plane: PlaneFacts;
  compensated: boolean;
  /** Axes whose place in the work frame and in the machine's is known. */
  workKnown: number;
  machineKnown: number;
  /** Places by axis, atoms and micro-degrees; 0 while unknown. */
  readonly work: Float64Array;
  /** What the controller's place exceeds the place on the grid by, where it was worked out; mask of the axes with any. */
  readonly residue: Float64Array;
  residues: number;
  readonly machine: Float64Array;
  /** Number of the length offset in force, 0 for none; undefined while unknown. */
  lengthOffset: number | undefined;
  workOffset: number | undefined;
  /** Frame of motion blocks that do not say theirs: the machine's (1) while the work offset is suspended, else the work's (0). */
  standingFrame: 0 | 1;
  /** Tool words since the last tool change, and how many changes there were. */
  selections: number;
  /** Tool of the last tool word, and the one in the spindle; undefined while unknown. */
  selected: number | undefined;
  tool: number | undefined;
  /** What was cancelled since the last swap. */
  readonly cancelledAnew: Set<"compensation" | "cycle">;
  /** Messages to the operator that follow one another, joined, and the rows handed on with the last of them. */
  messages: { readonly text: string; readonly rows: number };
  changes: number;
  /** A length offset that stood in a block without motion, and the rows handed on until then: the next one may be its Z. */
  lengthAlone: { readonly rows: number; readonly word: string } | undefined;
  /** Whether a local shift, rotation and scale are known to be off. */
  readonly cancelled: Set<"local-shift" | "rotation" | "scale">;
  /** Whether the spindle was started, and a speed said, since it last stopped: for the order of the two. */
  spindle: "unknown" | "stopped" | "speed-said" | "started" | "running";
  /** Rows handed on when the spindle was started without a speed. */
  startedAt: number;
  /** Gear range in force, milli-rpm; undefined where none was selected since the spindle last stood. */
  gear: { readonly from: number; readonly to: number } | undefined;
  /** Speed said last, milli-rpm. */
  rpm: number;
  /** Rows handed on when the last message to the operator was; -1 for none. */
  messageAt: number;
  /** Whether the synchronising code of taps was said, and no series has ended since. */
  synchronised: boolean;
  readonly cycle: CycleState;
  readonly repeat: Repeat;
}

/** State at the start of a program: nothing is known. */
export function createState(format: Format, quantities: Quantities, units: UnitSystem): State {
  return {
    phase: "head",
    programNumber: 0,
    byteOrderMark: false,
    leader: 0,
    section: {
      numbered: false,
      aligned: false,
      blank: false,
      commented: false,
      changed: false,
      opens: false,
      due: false,
      stated: new Set(),
    },
    numberedRows: -1,
    alignedRows: -1,
    opened: false,
    closed: false,
    motion: motion.none,
    motionForgotten: true,
    feed: 0,
    feedDue: true,
    feedMode: "per-minute",
    modes: 0,
    units,
    length: quantities.length[units],
    centre: quantities.centre[units],
    incremental: format.distance === "incremental",
    arcAbsolute: format.arc.form === "absolute-centre",
    plane: planes.xy,
    compensated: false,
    workKnown: 0,
    machineKnown: 0,
    work: new Float64Array(6),
    residue: new Float64Array(6),
    residues: 0,
    machine: new Float64Array(6),
    lengthOffset: undefined,
    workOffset: undefined,
    standingFrame: 0,
    selections: 0,
    selected: undefined,
    tool: undefined,
    cancelledAnew: new Set(),
    messages: { text: "", rows: -1 },
    changes: 0,
    lengthAlone: undefined,
    cancelled: new Set(),
    spindle: "unknown",
    startedAt: 0,
    gear: undefined,
    rpm: 0,
    messageAt: -1,
    synchronised: false,
    cycle: createCycle(format),
    repeat: { count: 0, dx: 0, dy: 0, source: 0 },
  };
}

function createCycle(format: Format): CycleState {
  return {
    kind: undefined,
    initial: undefined,
    retract: undefined,
    depth: undefined,
    peck: undefined,
    dwell: undefined,
    backOff: undefined,
    between: format.cycles?.levelWithout ?? "initial",
    levelSaid: false,
    definition: undefined,
  };
}

/** Forgets where axes are in the work frame. */
export function loseWork(state: State, axisMask: number): void {
  state.workKnown &= ~axisMask;
  clearPlaces(state.work, axisMask);
}

/** Forgets where axes are in the machine frame. */
export function loseMachine(state: State, axisMask: number): void {
  state.machineKnown &= ~axisMask;
  clearPlaces(state.machine, axisMask);
}

/** Forgets where axes are in both frames. */
export function losePlace(state: State, axisMask: number): void {
  loseWork(state, axisMask);
  loseMachine(state, axisMask);
}

/** An offset changes while a series goes on: where the level before it lies now is not known. */
export function forgetLevel({ cycle }: State): void {
  cycle.initial = undefined;
}

/** Units change while a series goes on: controllers differ about what its numbers and levels are in the new ones. */
export function forgetSeries(state: State): void {
  const { cycle } = state;
  cycle.retract = cycle.depth = cycle.peck = cycle.backOff = undefined;
  forgetLevel(state);
}

/** Unknown places are 0, so that rows need not look at the mask. */
function clearPlaces(places: Float64Array, axisMask: number): void {
  for (let axis = 0; axis < 6; axis++) if (axisMask & (1 << axis)) places[axis] = 0;
}
