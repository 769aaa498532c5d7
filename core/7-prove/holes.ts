import { linearAxes, milliPerRpm } from "#base";
import type { CycleDefinition } from "#base";
import { checkShares } from "./axis-feed.ts";
import { checkPlane } from "./arcs.ts";
import { isOver, lineEnters, sweepEnters } from "./boxes.ts";
import { compensationOff } from "./compensation.ts";
import { checkFeed, checkLeadFeed, perMinute } from "./feed.ts";
import { findings } from "./findings.ts";
import { tellInStock } from "./stock.ts";
import { checkExtent } from "./travel.ts";
import { tell } from "./watch.ts";
import type { Watch } from "./watch.ts";
import { feedText } from "./words.ts";

/** Share by which the feed of a tap may miss speed times lead (common practice, no source). */
const tapShare = 0.001;

/** Shares of the feed of a cycle that X, Y and Z have. */
const alongZ = [0, 0, 1] as const;

/** Cycles that reverse or stop the spindle (NISTIR 6556 3.5.16.4, 3.5.16.6, 3.5.16.8). */
const spindleCycles: ReadonlySet<CycleDefinition["cycle"]> = new Set([
  "tap",
  "tap-left",
  "bore-stop",
  "bore-manual",
]);

/** Whether a cycle leaves the spindle's speed and direction unconfirmed. */
export function touchesSpindle(cycle: CycleDefinition): boolean {
  return spindleCycles.has(cycle.cycle);
}

/** All rules for one hole of a fixed cycle but those of approach and spindle. */
export function checkHole(watch: Watch): void {
  const { state, row } = watch;
  const { cycle, work } = state;
  if (!cycle) {
    if (!state.cycleFaulty) tell(watch, findings["motion/no-cycle"]());
    state.cycleFaulty = true;
    return;
  }
  compensationOff(watch, "a fixed cycle");
  if (!watch.facts.cyclesAlongZ) checkPlane(watch, "xy");
  if (cycle.feedIs === "lead") {
    checkLeadFeed(watch);
    checkShares(watch, (row.feed * state.spindle.rpm) / milliPerRpm, alongZ);
  } else if (state.modes.feed !== "inverse-time") {
    checkFeed(watch);
    checkShares(watch, perMinute(watch, 0), alongZ);
  } else if (!state.cycleFaulty) {
    tell(watch, findings["motion/feed"]({ fault: "cycle" }));
    state.cycleFaulty = true;
  }
  if (cycle.cycle === "tap" || cycle.cycle === "tap-left") checkTap(watch, cycle);
  const before = (work.known & linearAxes) === linearAxes ? work.at[2] : cycle.level;
  // Preliminary motion (NISTIR 6556 3.5.16.1): up to the retract level first if Z is below it, then X and Y.
  const across = Math.max(before, cycle.retract);
  checkExtent(watch, 0, row.at[0], row.at[0]);
  checkExtent(watch, 1, row.at[1], row.at[1]);
  checkExtent(watch, 2, cycle.depth, Math.max(across, cycle.level));
  checkHoleStock(watch, cycle, across);
  checkHoleKeepOut(watch, cycle, across);
}

/** limit/tapping. */
function checkTap(watch: Watch, cycle: CycleDefinition): void {
  const { state, facts, row } = watch;
  const { spindle, swap, modes } = state;
  const say = (fault: "none" | "direction" | "lead", numbers = ""): void =>
    tell(watch, findings["limit/tapping"]({ fault, numbers }));
  if (state.cycleFaulty) return;
  state.cycleFaulty = true;
  if (!facts.tapping || facts.tapping.kind === "none") {
    say("none");
    return;
  }
  if (spindle.turning !== (cycle.cycle === "tap" ? "cw" : "ccw")) {
    say("direction");
    return;
  }
  const lead = swap.tool?.lead ?? 0;
  const perTurn = modes.feed === "per-revolution" || cycle.feedIs === "lead";
  const wanted = perTurn ? lead : (lead * spindle.rpm) / milliPerRpm;
  state.cycleFaulty = lead > 0 && Math.abs(row.feed - wanted) > tapShare * wanted;
  if (!state.cycleFaulty) return;
  const text = (feed: number): string => feedText(feed, perTurn ? "per-revolution" : modes.feed, modes.units);
  say("lead", `${text(row.feed)} stated, ${text(wanted)} needed`);
}

/** motion/rapid-in-stock for a cycle: across at its level, and down at rapid to the retract level. */
function checkHoleStock(watch: Watch, cycle: CycleDefinition, across: number): void {
  const { row, state, facts } = watch;
  const { work } = state;
  const { stock } = state.windows;
  if (!stock) return;
  if (across < stock.top && (row.moved & 3) !== 0) {
    const from = level(work.at, across);
    const enters = facts.rapids === "straight" ? lineEnters : sweepEnters;
    if ((work.known & 3) !== 3 || enters(stock, from, level(row.at, across)))
      tellInStock(watch, "across", across);
  } else if (cycle.retract < stock.top && cycle.retract < across && isOver(stock, row.at[0], row.at[1])) {
    tellInStock(watch, "retract", cycle.retract);
  }
}

/** limit/keep-out for a cycle: the way to the hole, and the hole itself. */
function checkHoleKeepOut(watch: Watch, cycle: CycleDefinition, across: number): void {
  const { row, state, facts } = watch;
  const { work, windows } = state;
  const enters = facts.rapids === "straight" ? lineEnters : sweepEnters;
  for (const column of windows.columns) {
    const over = isOver(column, row.at[0], row.at[1]) && cycle.depth < column.top;
    const crosses = (work.known & 3) === 3 && enters(column, level(work.at, across), level(row.at, across));
    if (over || crosses) tell(watch, findings["limit/keep-out"]({ box: column.name }));
  }
}

/** The same X and Y at another Z. */
function level(at: Float64Array, z: number): Float64Array {
  return Float64Array.of(at[0], at[1], z);
}
