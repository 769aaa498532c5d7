import type { CycleDefinition, CycleKind } from "#base";
import type { HoleKind, Holes, Job } from "#job";
import type { ProgramState } from "./state.ts";

/** The kind of holes that a cycle makes; undefined where a job has none. */
const kinds = {
  drill: "drill",
  dwell: "dwell",
  peck: "peck",
  "chip-break": "chip-break",
  tap: "tap",
  "tap-left": "tap",
  ream: "ream",
  "bore-dwell": "bore",
  "bore-stop": undefined,
  "bore-manual": undefined,
} as const satisfies Record<CycleKind, HoleKind | undefined>;

/** The kind of holes of a cycle; undefined where a job has none. */
export function holeKindOf({ cycle }: CycleDefinition): HoleKind | undefined {
  return kinds[cycle];
}

/**
 * Where the top of a hole is taken to be, since no program says it: that of the stock where it lies between depth and retract
 * level, else Z 0 where that does, else the retract level. Nothing is cut otherwise for it.
 */
export function topOf({ depth, retract }: CycleDefinition, stock: Job["stock"]): { z: number; from: string } {
  const fits = (z: number): boolean => depth < z && z <= retract;
  if (stock !== undefined && fits(stock.max[2])) return { z: stock.max[2], from: "the top of the stock" };
  if (fits(0)) return { z: 0, from: "Z 0" };
  return { z: retract, from: "the retract level" };
}

/** Microseconds of so many millionths of a revolution at a speed, rounded down, so that it comes out as the same dwell again. */
export function timeOfTurns(turns: number, rpm: number): number {
  return rpm === 0 ? 0 : Math.max(1, Math.floor((turns * 60_000) / rpm));
}

/** Lead of a thread in atoms a revolution, from the feed of its cycle; 0 where the spindle has no speed. */
export function leadOf(cycle: CycleDefinition, feed: number, { feedMode, rpm }: ProgramState): number {
  if (cycle.feedIs === "lead" || feedMode === "per-revolution") return feed;
  return rpm === 0 ? 0 : Math.max(1, Math.round((feed * 1000) / rpm));
}

/** The head of a `holes` move. */
export function holesOf(
  cycle: CycleDefinition,
  kind: HoleKind,
  feed: number,
  state: ProgramState,
  stock: Job["stock"],
): Holes {
  const pecks = kind === "peck" || kind === "chip-break";
  const dwells = kind === "dwell" || kind === "bore";
  const dwell = cycle.dwellIs === "revolutions" ? timeOfTurns(cycle.dwell, state.rpm) : cycle.dwell;
  return {
    kind: "holes",
    cycle: kind,
    top: topOf(cycle, stock).z,
    depth: cycle.depth,
    retract: cycle.retract,
    peck: pecks ? cycle.peck : 0,
    backOff: pecks ? (cycle.backOff ?? 0) : 0,
    dwell: dwells ? dwell : 0,
    lead: kind === "tap" ? leadOf(cycle, feed, state) : 0,
    feedOut: 0,
    between: cycle.between,
    feed: kind === "tap" ? 0 : feed,
  };
}
