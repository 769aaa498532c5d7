import type {
  CycleDefinition,
  FeedMode,
  MachineFacts,
  JobFacts,
  Plane,
  SpindleDirection,
  StepKind,
  ToolFacts,
  UnitSystem,
} from "#base";
import { createWindows } from "./window-state.ts";
import type { WindowState } from "./window-state.ts";

/** Held tool or pocket whose content nobody knows. */
export const unknownTool = -1;

/** A tool that is there for certain, while nobody knows its number: picked from a pocket of unknown content. */
export const unnumberedTool = -2;

/** Whether a tool is there for certain, in the spindle or in a pocket. */
export function isTool(content: number): boolean {
  return content > 0 || content === unnumberedTool;
}

/** No place: a pending fault that is not there. */
export const nowhere = -1;

/** Where the machine stands in one frame. */
export interface Position {
  /** Mask of axes whose place is known. */
  known: number;
  /** Places of x, y, z in atoms and a, b, c in micro-degrees. */
  readonly at: Float64Array;
}

/** The spindle as it was commanded, and the speeds it may really have. Speeds in milli-rpm, times in microseconds. */
export interface SpindleState {
  turning: "unknown" | "stopped" | SpindleDirection;
  /** Direction of the last start. */
  direction: SpindleDirection | undefined;
  /** The S word in force; 0: none yet. */
  rpm: number;
  /** Whether that word came since the last swap or stop of the program: it is the speed of the tool in the spindle. */
  rpmIsOfTool: boolean;
  /** Least and most speed that it may have had before the last command. */
  fromLow: number;
  fromHigh: number;
  /** Least and most speed that it may have since. */
  nowLow: number;
  nowHigh: number;
  /** Dwells since the last command. */
  dwelt: number;
  /** Whether anything took time since the last command: speed and start behind one another are one command. */
  timePassed: boolean;
  /** Whether the commanded speed or stop is confirmed. */
  confirmed: boolean;
  /** Whether that was by a dwell alone. */
  byTime: boolean;
  oriented: boolean;
  /** A fault of the spindle was named: not named again until the next command. */
  excused: boolean;
  /** A cycle that reverses or stops the spindle is running. */
  inCycle: boolean;
  /** The tool change has started it again, and nothing has stopped it since. */
  restarted: boolean;
  everStarted: boolean;
  /** First feed motion with a spindle that never started, in a program whose tools are unknown. */
  stillFeedAt: number;
  /** Place of a speed or start that is still to be checked against the tool. */
  checkAt: number;
}

/** The drawbar, its air, and the pockets. */
export interface DrawbarState {
  open: boolean;
  confirmed: boolean;
  /** A wrong motion with the drawbar open was named. */
  excused: boolean;
  /** Dwells since the last release or clamp, microseconds. */
  dwelt: number;
  airConfirmed: boolean;
  airByTime: boolean;
  /** Whether the tool picked last was sensed; true while none was picked. */
  toolSensed: boolean;
  coverOpen: boolean;
}

/** Tools and swaps. */
export interface SwapState {
  /** Number of the tool in the spindle, 0 for none, `unknownTool`, `unnumberedTool`. */
  held: number;
  /** What is known of it. */
  tool: ToolFacts | undefined;
  /** The tool word in force; `unknownTool` before the first. */
  selected: number;
  /** Whether no change has come since that word. */
  awaitsChange: boolean;
  /** Length offset that the tool word in force states; undefined where it states none. */
  selectedOffset: number | undefined;
  /** Tool in each pocket now. */
  readonly pockets: number[];
  /** Planned reload stops that were made, and whether a tool has gone back since the last, or none was swapped yet. */
  readonly reload: { made: number; open: boolean };
  /** Pocket that each tool was taken from, by its number; one without a number is the one in the spindle. */
  readonly homes: Map<number, number>;
  /** Pocket in which the tool on its way back counts as put; -1 where none is. */
  puts: number;
  /** Whether Z has been at swap height since the last work motion. */
  retracted: boolean;
  /** Place of a spindle stop that came before Z was up. */
  stopBelowAt: number;
  /** Whether the tool's length was measured since the swap. */
  measured: boolean;
}

/** Offsets in force; `unknownTool` stands for an unknown length offset, 0 for a cancelled one. */
export interface OffsetState {
  /** 0: none stated yet. */
  work: number;
  /** Whether a motion in machine coordinates has suspended it. */
  suspended: boolean;
  /** The one in force at a stop that has lost it, until something moves; 0 elsewhere. */
  lost: number;
  /** The missing work offset was named. */
  workExcused: boolean;
  length: number;
  /** A code with declared effects made the length active. */
  lengthByEffect: boolean;
  /** Place of a change of work offset before Z was up again. */
  changedBelowAt: number;
  /** Place of a cancellation before Z was first up. */
  cancelledEarlyAt: number;
}

/** The way from swap height back to the work. */
export interface ApproachState {
  /** Whether Z stands at swap height. */
  up: boolean;
  mustRetract: boolean;
  mustXy: boolean;
  /** What made it necessary. */
  after:
    | "the start"
    | "the swap"
    | "the stop"
    | "the measurement"
    | "the change of work offset"
    | "the spindle start"
    | "a code";
  /** Place of an approach in X and Y before the spindle was confirmed. */
  unconfirmedAt: number;
  /** Place of a machine-frame move in X and Y before Z was up. */
  lowAt: number;
}

export interface CompensationState {
  on: boolean;
  /** The next motion in the plane starts it. */
  entry: boolean;
  /** The next motion in the plane ends it. */
  exit: boolean;
}

/** Notes and warnings that are given once. */
export interface OnceState {
  readonly told: Set<string>;
}

/** All that the guard remembers. */
export interface State {
  readonly program: {
    moved: boolean;
    ended: boolean;
    /** Something after the end was named. */
    wentOn: boolean;
    /** The stop was confirmed before the first motion. */
    stopSeen: boolean;
    readonly stated: Set<StepKind>;
    /** Media that were turned off before the first motion, where each has a word of its own. */
    readonly mediaOff: Set<string>;
    /** A stop has lost the modes, and nothing has moved since. */
    resumes: boolean;
  };
  readonly modes: {
    units: UnitSystem;
    plane: Plane | undefined;
    distance: "absolute" | "incremental" | undefined;
    feed: FeedMode;
  };
  readonly spindle: SpindleState;
  readonly drawbar: DrawbarState;
  readonly swap: SwapState;
  readonly offsets: OffsetState;
  readonly approach: ApproachState;
  readonly compensation: CompensationState;
  readonly windows: WindowState;
  readonly once: OnceState;
  readonly work: Position;
  readonly machine: Position;
  /** Axes whose unknown place was named already. */
  excusedAxes: number;
  /** Coolant media that are on. */
  readonly coolant: Set<string>;
  readonly outputs: Set<number>;
  hood: "unknown" | "up" | "down";
  /** Whether the work is known to be held since the start and the last stop, and dwells since then, microseconds. */
  readonly workHeld: { confirmed: boolean; dwelt: number };
  cycle: CycleDefinition | undefined;
  /** A fault of the cycle was named. */
  cycleFaulty: boolean;
  /** A missing feed was named. */
  feedExcused: boolean;
  /** Lowest Z that a feed reached at this X and Y, atoms: a rapid may go back to it. */
  fedTo: number;
  /** Whether rows inside the windows need no closer look. */
  cruising: boolean;
}

/** A place of which nothing is known. */
function nowhereKnown(): Position {
  return { known: 0, at: new Float64Array(6) };
}

function createSpindle(facts: MachineFacts): SpindleState {
  const most = facts.spindle.maxRpm ?? Number.NaN;
  return {
    turning: "unknown",
    direction: undefined,
    rpm: 0,
    rpmIsOfTool: false,
    fromLow: 0,
    fromHigh: most,
    nowLow: 0,
    nowHigh: most,
    dwelt: 0,
    timePassed: true,
    confirmed: false,
    byTime: false,
    oriented: false,
    excused: false,
    inCycle: false,
    restarted: false,
    everStarted: false,
    stillFeedAt: nowhere,
    checkAt: nowhere,
  };
}

/**
 * The tool in the spindle before the program: as the set-up says; a machine that cannot swap holds the job's only tool.
 */
function heldAtStart(facts: MachineFacts, job: JobFacts): number {
  if (job.spindleHolds !== undefined) return job.spindleHolds;
  const cannotSwap = facts.swap === undefined || facts.swap === "none";
  return cannotSwap && job.tools.length === 1 ? job.tools[0].number : unknownTool;
}

function createSwap(facts: MachineFacts, job: JobFacts): SwapState {
  const held = heldAtStart(facts, job);
  const pockets = facts.rack?.pockets.map((_, index) => (job.known ? (job.rack[index] ?? 0) : unknownTool));
  return {
    held,
    tool: job.tools.find((tool) => tool.number === held),
    selected: unknownTool,
    awaitsChange: false,
    selectedOffset: undefined,
    pockets: pockets ?? [],
    reload: { made: 0, open: true },
    homes: new Map(),
    puts: -1,
    retracted: false,
    stopBelowAt: nowhere,
    measured: false,
  };
}

/** The state before the first step: nothing is known but that the machine is homed and the drawbar clamped. */
export function createState(facts: MachineFacts, job: JobFacts): State {
  return {
    program: {
      moved: false,
      ended: false,
      wentOn: false,
      stopSeen: false,
      stated: new Set(),
      mediaOff: new Set(),
      resumes: false,
    },
    modes: { units: facts.countsIn ?? "mm", plane: undefined, distance: undefined, feed: "per-minute" },
    spindle: createSpindle(facts),
    drawbar: {
      open: false,
      confirmed: true,
      excused: false,
      dwelt: 0,
      airConfirmed: false,
      airByTime: false,
      toolSensed: true,
      coverOpen: false,
    },
    swap: createSwap(facts, job),
    offsets: {
      work: 0,
      suspended: false,
      lost: 0,
      workExcused: false,
      length: unknownTool,
      lengthByEffect: false,
      changedBelowAt: nowhere,
      cancelledEarlyAt: nowhere,
    },
    approach: {
      up: false,
      mustRetract: true,
      mustXy: true,
      after: "the start",
      unconfirmedAt: nowhere,
      lowAt: nowhere,
    },
    compensation: { on: false, entry: false, exit: false },
    windows: createWindows(),
    once: { told: new Set() },
    work: nowhereKnown(),
    machine: nowhereKnown(),
    excusedAxes: 0,
    coolant: new Set(),
    outputs: new Set(),
    hood: "unknown",
    workHeld: { confirmed: false, dwelt: 0 },
    cycle: undefined,
    cycleFaulty: false,
    feedExcused: false,
    fedTo: Infinity,
    cruising: false,
  };
}
