import type { Job, Holes, Operation, Tool } from "../job.ts";
import type { Causes } from "./causes.ts";
import { gatherCauses } from "./causes.ts";
import type { HolePlaces } from "./hole-places.ts";
import { createHolePlaces } from "./hole-places.ts";
import type { Material } from "./materials.ts";
import { materialOf } from "./materials.ts";
import type { KindChecks } from "./tool-kinds.ts";
import { kindChecks } from "./tool-kinds.ts";

/** A greatest value, and where it was met; 0 where nothing was. */
export interface Peak {
  value: number;
  offset: number;
}

/** How often something was met, where first, and how far it went. */
export interface Tally {
  times: number;
  offset: number;
  extreme: number;
}

/** What an operation has shown so far. Lengths are atoms, feeds in the unit of the operation's feed mode. */
export interface OperationWatch {
  readonly operation: Operation;
  readonly tool: Tool;
  readonly kind: KindChecks;
  /** Milli-rpm; 0 where the tool does not turn. */
  rpm: number;
  /** Where the tool is; X and Y are no number before the first rapid. */
  x: number;
  y: number;
  z: number;
  /** The holes that are being made. */
  holes: Holes | undefined;
  /** Whether it has cut at the present speed. */
  cuts: boolean;
  /** Fastest motion in the stock that is not straight down, at the present speed and in all. */
  lateral: Peak;
  fastest: Peak;
  /** Greatest chip load, atoms a tooth, and the feed and the speed of it. */
  load: Peak & { feed: number; rpm: number };
  /** Greatest cutting speed, m/min, and the speed of it. */
  speed: Peak & { rpm: number };
  /** Fastest motion straight down into the stock. */
  plunge: Peak;
  /** Deepest cut below the top of the stock. */
  depth: Peak;
}

/** What the feeds of the last operation with another tool were. */
export interface LastFeed {
  readonly operation: Operation;
  readonly feed: number;
}

/** The state of the checks over a job. */
export interface TradeWatch {
  readonly job: Job;
  /** Whether all operations of the job are looked at. */
  readonly whole: boolean;
  readonly material: Material | undefined;
  readonly causes: Causes;
  readonly places: HolePlaces;
  readonly lowRapids: Tally;
  readonly tinyArcs: Tally;
  /** Tapped places without a hole, and with one. */
  readonly bareTaps: Tally;
  readonly drilledTaps: Tally;
  readonly feeds: { last: LastFeed | undefined; before: LastFeed | undefined };
}

const nothingYet = (): Tally => ({ times: 0, offset: 0, extreme: Infinity });

/** Begins watching a job. */
export function createWatch(job: Job, whole: boolean): TradeWatch {
  const stated = job.stock?.material;
  return {
    job,
    whole,
    material: stated === undefined ? undefined : materialOf(stated),
    causes: gatherCauses(),
    places: createHolePlaces(),
    lowRapids: nothingYet(),
    tinyArcs: nothingYet(),
    bareTaps: nothingYet(),
    drilledTaps: nothingYet(),
    feeds: { last: undefined, before: undefined },
  };
}

/** Begins watching an operation; Z stands at clearance. */
export function watchOperation(operation: Operation, tool: Tool): OperationWatch {
  const none = (): Peak => ({ value: 0, offset: operation.source });
  return {
    operation,
    tool,
    kind: kindChecks[tool.kind],
    rpm: operation.spindle?.rpm ?? 0,
    x: NaN,
    y: NaN,
    z: operation.clearance,
    holes: undefined,
    cuts: false,
    lateral: none(),
    fastest: none(),
    load: { ...none(), feed: 0, rpm: 0 },
    speed: { ...none(), rpm: 0 },
    plunge: none(),
    depth: none(),
  };
}

/** Counts something that was met. @param value how far it goes; the least is kept */
export function count(tally: Tally, offset: number, value: number): void {
  if (tally.times === 0) tally.offset = offset;
  tally.times++;
  if (value < tally.extreme) tally.extreme = value;
}

/** Keeps the greater value. */
export function raise(peak: Peak, value: number, offset: number): boolean {
  if (value <= peak.value) return false;
  peak.value = value;
  peak.offset = offset;
  return true;
}
