import { axisBit, rowKind } from "#base";
import { lowerDwell } from "./dwell.ts";
import type { HolesPlan } from "./holes-plan.ts";
import { knownAxes, rapidAxes } from "./motion.ts";
import { writeRow } from "./output.ts";
import type { Lowering } from "./state.ts";

/** Where one hole is, on the grid. */
interface Hole {
  readonly x: number;
  readonly y: number;
  readonly source: number;
}

/** Writes one hole as single moves, all rapids between levels along Z alone (the steps of NISTIR 6556 3.5.16). */
export function drillLonghand(state: Lowering, plan: HolesPlan, hole: Hole): void {
  const { source } = hole;
  across(state, hole);
  toHeight(state, plan.retract, source, 0);
  if (plan.holes.cycle === "peck" || plan.holes.cycle === "chip-break") drillPecks(state, plan, source);
  else toHeight(state, plan.depth, source, plan.feed);
  if (plan.holes.dwell > 0) lowerDwell(state, plan.holes.dwell, source);
  const feedsOut = plan.holes.cycle === "bore" || plan.holes.cycle === "ream";
  if (feedsOut) toHeight(state, plan.retract, source, plan.feedOut);
  toHeight(state, plan.level, source, 0);
}

/** Pecks, the first counted from the retract level: R2 Z-18 Q4 -> -2 -6 -10 -14 -18. */
function drillPecks(state: Lowering, plan: HolesPlan, source: number): void {
  const full = plan.holes.cycle === "peck";
  let reached = plan.retract;
  while (reached > plan.depth && plan.peck > 0) {
    const next = Math.max(plan.depth, reached - plan.peck);
    if (reached < plan.retract) {
      const above = Math.min(reached + plan.backOff, plan.retract);
      if (full) toHeight(state, plan.retract, source, 0);
      toHeight(state, above, source, 0);
    }
    toHeight(state, next, source, plan.feed);
    reached = next;
  }
}

/** X and Y at rapid, at the height where the tool stands. */
function across(state: Lowering, hole: Hole): void {
  const stated = (hole.x !== state.at[0] ? axisBit.x : 0) | (hole.y !== state.at[1] ? axisBit.y : 0);
  if (stated === 0) return;
  const target = Float64Array.from(state.at);
  target[0] = hole.x;
  target[1] = hole.y;
  rapidAxes(state, target, stated, hole.source);
}

/** Z alone to a height on the grid, at feed, or at rapid where the feed is 0. */
function toHeight(state: Lowering, z: number, source: number, feed: number): void {
  if (z === state.at[2]) return;
  state.at[2] = z;
  const kind = feed === 0 ? rowKind.rapid : rowKind.line;
  writeRow(
    state.output,
    { kind, known: knownAxes(state), stated: axisBit.z, feed, c1: 0, c2: 0, turns: 0 },
    state.at,
    source,
  );
}
