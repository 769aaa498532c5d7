import type { CoolantMedium, CycleKind, FeedMode, Plane, SpindleDirection } from "#base";
import type { SequenceRequest } from "./request.ts";

/** Where the tool stands in one frame, as far as it is known: atoms, rotary axes in micro-degrees. */
export interface Place {
  /** Mask of the axes that are known. */
  known: number;
  /** x y z a b c; the value of an unknown axis has no meaning. */
  readonly at: Float64Array;
}

/** What the spindle does. */
export interface SpindleState {
  /** Speed that was confirmed last, milli-rpm: 0 after a confirmed stop, undefined where it may be anything. */
  speed: number | undefined;
  /** Speed that the job asks for, milli-rpm; it is written on the grid of the speed word. */
  asked: number;
  /** Which way it turns; undefined where it has been stopped or the program has not started it. */
  direction: SpindleDirection | undefined;
}

/** Modes in force; undefined where the program has not stated them yet. */
export interface ModesInForce {
  plane: Plane | undefined;
  distance: "absolute" | "incremental" | undefined;
  feedMode: FeedMode | undefined;
  path: "exact" | "stop" | "blend" | undefined;
}

/** How the next row of an operation is reached. */
export type Awaiting =
  | "nothing" // the tool is on its way: rows pass as they are
  | "approach" // the tool stands at swap height: X Y, length offset, Z
  | "next"; // the tool stands at the clearance of the operation before, with the same tool

/** What sequencing knows while it writes a program. */
export interface State {
  readonly work: Place;
  readonly machine: Place;
  /** Whether Z stands at swap height (by machine move or reference return). */
  atSwapHeight: boolean;
  workOffset: number | undefined;
  /** Whether a move in machine coordinates has suspended the work offset. */
  workSuspended: boolean;
  /** Number of the length offset in force, 0 for cancelled, undefined for unknown. */
  lengthOffset: number | undefined;
  /** Tool in the spindle, 0 for none, undefined for unknown. */
  held: number | undefined;
  /** Whether the drawbar is open. */
  released: boolean;
  /** Pocket of each tool, counted from 0. */
  readonly homes: Map<number, number>;
  readonly spindle: SpindleState;
  /** Media that are on; undefined where the program has not said so yet. */
  coolant: readonly CoolantMedium[] | undefined;
  hood: "up" | "down" | undefined;
  /** Numbers of the outputs that are on. */
  readonly outputs: Set<number>;
  readonly modes: ModesInForce;
  /** Index of the operation in hand; -1 before the first. */
  operation: number;
  /** Clearance of the operation in hand, work Z on the grid, atoms. */
  clearance: number;
  awaiting: Awaiting;
  /** Whether nothing but the start of the program has been written, which leaves all safe for a first tool. */
  fresh: boolean;
  /** The fixed cycle in force. */
  cycle: CycleKind | undefined;
  /** Whether a tapping cycle has reversed the spindle since it was confirmed. */
  tapped: boolean;
  /** Whether the hold-down of the work has been confirmed since the start and the last stop. */
  workHeld: boolean;
  /** Byte offset in the job that what is written now comes from. */
  source: number;
}

/** Knowledge at the start of a program: none, but for what the spindle holds and where the tools are. */
export function createState(request: SequenceRequest, clearance: number): State {
  const { facts } = request;
  const homes = new Map<number, number>();
  facts.rack.forEach((tool, pocket) => {
    if (tool !== 0) homes.set(tool, pocket);
  });
  if (facts.spindleHolds && facts.heldPocket !== undefined) homes.set(facts.spindleHolds, facts.heldPocket);
  return {
    work: { known: 0, at: new Float64Array(6) },
    machine: { known: 0, at: new Float64Array(6) },
    atSwapHeight: false,
    workOffset: undefined,
    workSuspended: false,
    lengthOffset: undefined,
    held: facts.spindleHolds,
    released: false,
    homes,
    spindle: { speed: undefined, asked: 0, direction: undefined },
    coolant: undefined,
    hood: undefined,
    outputs: new Set(),
    modes: { plane: undefined, distance: undefined, feedMode: undefined, path: undefined },
    operation: -1,
    clearance,
    awaiting: "nothing",
    fresh: false,
    cycle: undefined,
    tapped: false,
    workHeld: false,
    source: 0,
  };
}

/** Nothing is known of the place: after a stop by the operator, or a code that goes where it likes. */
export function losePlace(state: State): void {
  state.work.known = 0;
  state.machine.known = 0;
  state.atSwapHeight = false;
}
