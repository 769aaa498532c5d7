/** What is counted of a program's rows: for each operation, tool and work offset, and the stops. Base units. */
import type { CoolantMedium, CycleDefinition, FeedMode, MachineFacts, SpindleDirection } from "#base";
import type { Operation, Tool } from "#job";
import type { FeedUse } from "#report";
import type { Reach, Span } from "./span.ts";
import { createReach, createSpan } from "./span.ts";

/** Feeds for one use. */
export interface FeedTally {
  /** In the unit of the feed mode; of taps the lead, atoms a revolution. */
  readonly feed: Span;
  /** Atoms a tooth. */
  readonly perTooth: Span;
}

/** What is counted of an operation. */
export interface OperationTally {
  readonly operation: Operation;
  readonly tool: Tool | undefined;
  /** Line of the program of its first row, from 1; undefined where no lines are known. */
  line: number | undefined;
  /** Milli-rpm, while the tool moved at feed. */
  readonly rpm: Span;
  direction: SpindleDirection | undefined;
  feedMode: FeedMode | undefined;
  readonly feeds: ReadonlyMap<FeedUse, FeedTally>;
  /** Work Z of all its motion, atoms. */
  readonly z: Span;
  readonly media: Set<CoolantMedium>;
}

/** Where a tool goes in a work offset, atoms. */
export interface ReachTally {
  readonly tool: number;
  readonly workOffset: number;
  readonly cutting: Reach;
  readonly motion: Reach;
}

/** A stop in the program. */
export interface StopTally {
  readonly optional: boolean;
  /** Index of the operation, -1 before the first. */
  readonly operation: number;
  /** The tool that the operator is to put in; undefined for other stops. */
  readonly tool: number | undefined;
  /** Whether the rack's spindle may hold anything yet. */
  readonly isBeforeFirstTool: boolean;
  /** Messages right before it, as the controller shows them. */
  readonly messages: readonly string[];
  /** Byte offset in the job. */
  readonly source: number;
  readonly line: number | undefined;
}

/** Counting at work. */
export interface Tally {
  readonly swap: MachineFacts["swap"];
  readonly operations: readonly OperationTally[];
  readonly reaches: Map<string, ReachTally>;
  readonly stops: StopTally[];
  /** Index of the operation in hand, -1 before the first. */
  index: number;
  /** Tool that the operation in hand has got, undefined before the first one. */
  active: number | undefined;
  /** Whether the tool has come to the work since the operation began or the last stop. */
  underWay: boolean;
  /** Last place in work coordinates, and the axes of it that are known. */
  readonly at: Float64Array;
  known: number;
  rpm: number;
  direction: SpindleDirection | undefined;
  feedMode: FeedMode;
  readonly media: Set<CoolantMedium>;
  cycle: CycleDefinition | undefined;
  /** Messages and a selected tool since the last row of another kind. */
  messages: string[];
  selected: number | undefined;
}

const uses = ["cut", "plunge", "tap"] as const satisfies readonly FeedUse[];

/** Begins to count. */
export function createTally(
  operations: readonly Operation[],
  tools: readonly Tool[],
  swap: MachineFacts["swap"],
  holds: number | undefined,
): Tally {
  return {
    swap,
    operations: operations.map((operation) => operationTally(operation, tools)),
    reaches: new Map(),
    stops: [],
    index: -1,
    active: holds === 0 ? undefined : holds,
    underWay: false,
    at: new Float64Array(3),
    known: 0,
    rpm: 0,
    direction: undefined,
    feedMode: "per-minute",
    media: new Set(),
    cycle: undefined,
    messages: [],
    selected: undefined,
  };
}

function operationTally(operation: Operation, tools: readonly Tool[]): OperationTally {
  return {
    operation,
    tool: tools.find(({ number }) => number === operation.tool),
    line: undefined,
    rpm: createSpan(),
    direction: undefined,
    feedMode: undefined,
    feeds: new Map(uses.map((use) => [use, { feed: createSpan(), perTooth: createSpan() }])),
    z: createSpan(),
    media: new Set(),
  };
}

/** The reach of the operation's tool in its work offset. */
export function reachOf(tally: Tally, { tool, workOffset }: Operation): ReachTally {
  const key = `${tool} ${workOffset}`;
  const known = tally.reaches.get(key);
  if (known !== undefined) return known;
  const made = { tool, workOffset, cutting: createReach(), motion: createReach() };
  tally.reaches.set(key, made);
  return made;
}
