import type { CycleDefinition, CycleKind } from "#base";
import { axisBit, roundToGrid, rowKind, usualBackOff } from "#base";
import type { HoleKind, Holes } from "#job";
import { roundsToNothing, tapCycleNotSaid, tapLevelNotSaid } from "./findings.ts";
import { forgetFeed, inWrittenMode, roundFeed } from "./feed.ts";
import type { HolesPlan } from "./holes-plan.ts";
import { drillLonghand } from "./longhand.ts";
import { revolutionsOf } from "./dwell.ts";
import { knownAxes, rapidZ } from "./motion.ts";
import { writeAside, writeRow } from "./output.ts";
import { selectPlane } from "./plane.ts";
import type { Lowering } from "./state.ts";
import { need, rounded } from "./state.ts";
import { tapFeed } from "./tapping.ts";

function backOffOf(holes: Holes): number {
  return holes.backOff === 0 ? usualBackOff : holes.backOff;
}

/** Kinds whose cycle differs by more than the kind: a bore that dwells, a left-hand tap. */
function cycleOf(state: Lowering, holes: Holes): CycleKind {
  const table = {
    drill: "drill",
    dwell: "dwell",
    peck: "peck",
    "chip-break": "chip-break",
    tap: isLeftHand(state) ? "tap-left" : "tap",
    bore: holes.dwell > 0 ? "bore-dwell" : "ream",
    ream: "ream",
  } as const satisfies Record<HoleKind, CycleKind>;
  return table[holes.cycle];
}

function isLeftHand(state: Lowering): boolean {
  return state.operation.spindle?.direction === "ccw";
}

/**
 * Begins a `holes` move: rises to the retract level if the tool stands below it, and decides between the fixed cycle and
 * single moves.
 */
export function startHoles(state: Lowering, holes: Holes, source: number): HolesPlan {
  const grid = state.grids.length;
  const retract = roundToGrid(holes.retract, grid);
  if (state.at[2] < retract) rapidZ(state, holes.retract, source);
  const feed =
    holes.cycle === "tap"
      ? tapFeed(state, holes, source)
      : roundFeed(state, inWrittenMode(state, holes.feed), source);
  const levels = {
    holes,
    depth: roundToGrid(holes.depth, grid),
    retract,
    level: holes.between === "initial" ? Math.max(state.at[2], retract) : retract,
    peck: roundToGrid(holes.peck, grid),
    backOff: roundToGrid(backOffOf(holes), grid),
    feed,
    feedOut: holes.feedOut === 0 ? feed : roundFeed(state, inWrittenMode(state, holes.feedOut), source),
  };
  if (holes.peck > 0 && levels.peck === 0)
    state.report(roundsToNothing("this peck", "numbers.length", source));
  const plan = { ...levels, definition: defineCycle(state, levels, source) };
  forgetFeed(state);
  if (plan.definition) writeDefinition(state, plan.definition, source);
  return plan;
}

/** One hole at the exact place that the state holds. */
export function lowerHole(state: Lowering, plan: HolesPlan, source: number): void {
  state.summary.moves++;
  const x = rounded(state, 0);
  const y = rounded(state, 1);
  if (!plan.definition) {
    drillLonghand(state, plan, { x, y, source });
    return;
  }
  const stated = (x !== state.at[0] ? axisBit.x : 0) | (y !== state.at[1] ? axisBit.y : 0);
  state.at[0] = x;
  state.at[1] = y;
  state.at[2] = plan.level;
  const fields = { kind: rowKind.hole, known: knownAxes(state), feed: plan.feed, c1: 0, c2: 0, turns: 0 };
  writeRow(state.output, { ...fields, stated: stated === 0 ? axisBit.x : stated }, state.at, source);
}

/** Ends a `holes` move: the cycle is cancelled, the tool stands at the level. */
export function endHoles(state: Lowering, plan: HolesPlan, source: number): void {
  if (plan.definition) writeAside(state.output, { kind: "cycle", value: "off" }, source);
  state.exact[2] = state.at[2];
}

function writeDefinition(state: Lowering, definition: CycleDefinition, source: number): void {
  if (!state.capabilities.cycles.alongZ) selectPlane(state, "xy", source);
  writeAside(state.output, definition, source);
}

type Levels = Omit<HolesPlan, "definition">;

/** The fixed cycle for a `holes` move, or nothing where it is to be written out. */
function defineCycle(state: Lowering, levels: Levels, source: number): CycleDefinition | undefined {
  const cycle = cycleOf(state, levels.holes);
  const isTap = levels.holes.cycle === "tap";
  const key = `cycles.${cycle}`;
  const example = `cycles: { ${cycle}: G8x }, or none`;
  const why = `for its ${levels.holes.cycle} holes`;
  const hasCode = need<boolean>(
    state,
    state.capabilities.words[key],
    { path: key, why, example, offset: source },
    false,
  );
  const between = hasCode ? sayableLevel(state, levels, source) : undefined;
  if (!hasCode || between === undefined || !fitsCycle(state, levels, source)) {
    if (isTap) {
      const between = levels.holes.between;
      state.report(hasCode ? tapLevelNotSaid(between, source) : tapCycleNotSaid(key, source));
    }
    return undefined;
  }
  const { depth, retract, level } = levels;
  const { peckGrid, saysBackOff, tapLead } = state.capabilities.cycles;
  const pecks = levels.holes.cycle === "peck" || levels.holes.cycle === "chip-break";
  const onPeckGrid = (length: number): number =>
    roundToGrid(length, peckGrid?.[state.units] ?? state.grids.length);
  if (pecks && levels.peck > 0 && onPeckGrid(levels.holes.peck) === 0)
    state.report(roundsToNothing("this peck", "numbers.peck", source));
  const levelStated = state.capabilities.cycles.levels === "both";
  return {
    kind: "cycle-definition",
    cycle,
    depth,
    retract,
    level,
    between,
    levelStated,
    peck: onPeckGrid(levels.holes.peck),
    ...cycleDwell(state, levels),
    ...(pecks && saysBackOff ? { backOff: onPeckGrid(backOffOf(levels.holes)) } : {}),
    ...(isTap && tapLead ? { feedIs: "lead" } : {}),
  };
}

/** Which level between holes the dialect can say for this move; undefined where it cannot. */
function sayableLevel(state: Lowering, levels: Levels, source: number): "initial" | "retract" | undefined {
  const key = {
    path: "cycles.return",
    why: "for its holes",
    example: "cycles: { return: { initial: G98, retract: G99 } }",
    offset: source,
  };
  const said = need(state, state.capabilities.cycles.levels, key, "both" as const);
  const wanted = levels.holes.between;
  if (said === "both" || said === wanted) return wanted;
  const initial = Math.max(state.at[2], levels.retract);
  return initial === levels.retract ? said : undefined;
}

/** Whether the controller's cycle does just what the job asks for. */
function fitsCycle(state: Lowering, levels: Levels, source: number): boolean {
  const { holes } = levels;
  if (levels.feedOut !== levels.feed) return false;
  if (holes.cycle !== "peck" && holes.cycle !== "chip-break") return true;
  if (holes.backOff === 0 || state.capabilities.cycles.saysBackOff) return true;
  const path = `cycles.back-off.${holes.cycle}`;
  const key = {
    path,
    why: `since the job states the back-off of its ${holes.cycle} holes`,
    example: `cycles: { back-off: { ${holes.cycle}: ? } }`,
    offset: source,
  };
  return need(state, state.capabilities.cycles.backOff[holes.cycle], key, holes.backOff) === holes.backOff;
}

/** The dwell of a cycle on its grid, at least one increment. */
function cycleDwell(state: Lowering, levels: Levels): Pick<CycleDefinition, "dwell" | "dwellIs"> {
  const { dwell, cycle } = levels.holes;
  if (dwell === 0 || (cycle !== "dwell" && cycle !== "bore")) return { dwell: 0 };
  const grid = state.capabilities.cycles.dwellGrid ?? state.capabilities.dwellGrid ?? 1;
  if (state.capabilities.cycles.dwellByTurns)
    return { dwell: revolutionsOf(dwell, state.rpm, grid), dwellIs: "revolutions" };
  return { dwell: Math.max(grid, roundToGrid(dwell, grid)) };
}
