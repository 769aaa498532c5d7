import type { Step } from "#base";
import { axisBit, linearAxes, milliPerRpm } from "#base";
import { go, lose, reshift } from "./place.ts";
import { fromRest } from "./rates.ts";
import { command, dwellSeconds, otherWait, waitOn } from "./spindle.ts";
import { cornersOf, enter, toolInHand } from "./state.ts";
import type { ClockState } from "./state.ts";

/** Seconds that the controller's own tool change takes where no file says it (no source; it is told with the times). */
const assumedChange = 10;

/** Seconds that measuring a tool takes (no source; it is told with the times). */
const assumedMeasurement = 20;

type Takes = { readonly [K in Step["kind"]]?: (state: ClockState, step: Extract<Step, { kind: K }>) => void };

/** Steps that take time, or decide about the time of others. */
const takes: Takes = {
  units: (state, step) => {
    state.units = step.value;
  },
  "feed-mode": (state, step) => {
    state.feedMode = step.value;
    findFeedUnit(state);
  },
  path: (state, step) => {
    state.lookAhead.corners(cornersOf(state, step.value, step.tolerance));
  },
  "work-offset": (state, step) => {
    state.place.workOffset = step.number;
    shift(state, linearAxes);
  },
  "length-offset": (state, step) => {
    state.place.lengthActive = step.number > 0;
    shift(state, axisBit.z);
  },
  "select-tool": (state, step) => {
    if (step.offset === undefined) return;
    state.place.lengthActive = step.offset > 0;
    shift(state, axisBit.z);
  },
  "change-tool": (state) => {
    if (state.machine.swap === "operator" || state.machine.swap === "none") return;
    const { controllerSwap } = state.machine.dynamics;
    if (controllerSwap === undefined)
      state.told.add(
        `The controller's own tool change is taken to last ${String(assumedChange)} s (machine.swap-time.controller is not stated).`,
      );
    state.ledger.swaps();
    state.ledger.between("swap", controllerSwap === undefined ? assumedChange : controllerSwap / 1e6);
    lose(state.place, linearAxes);
  },
  "spindle-speed": (state, step) => {
    state.spindle.asked = step.rpm;
    if (state.spindle.turning) turn(state);
  },
  "spindle-start": (state) => {
    state.spindle.turning = true;
    turn(state);
  },
  "spindle-stop": (state) => {
    state.spindle.turning = false;
    turn(state);
  },
  wait: (state, step) => {
    if (!waitOn(step.input, state.spindle, state.machine, state.ledger))
      state.told.add(
        `Waits on other signals than the spindle's are taken to last ${String(otherWait)} s each.`,
      );
  },
  dwell: (state, step) => {
    const seconds = dwellSeconds(step.time, step.revolutions ?? 0, state.spindle);
    state.ledger.between(state.spindle.fresh ? "spindle" : "dwell", seconds);
  },
  pause: (state, step) => {
    if (step.optional) state.optionalStops++;
    else state.stops++;
    state.stopped ||= !step.optional;
    lose(state.place, linearAxes);
  },
  "cycle-definition": (state, step) => {
    state.cycle = step;
  },
  auxiliary: (state, step) => {
    const { action } = step;
    if (action === "release" || action === "clamp") state.ledger.swaps();
    if (action !== "measure") return;
    state.told.add(`Measuring a tool is taken to last ${String(assumedMeasurement)} s.`);
    state.ledger.between("swap", assumedMeasurement);
  },
  "reference-return": (state, step) => {
    returnTo(state, step.axes);
  },
};

/** Takes a step that is no motion. Before it the tool comes to rest. */
export function acceptStep(state: ClockState, step: Step, source: number): void {
  state.lookAhead.rest();
  enter(state, source);
  const take = takes[step.kind] as ((state: ClockState, step: Step) => void) | undefined;
  take?.(state, step);
}

function shift(state: ClockState, mask: number): void {
  reshift(state.place, state.machine, state.job, toolInHand(state), mask);
}

function turn(state: ClockState): void {
  const unknown = command(state.spindle, state.machine, state.ledger);
  findFeedUnit(state);
  if (unknown !== undefined)
    state.told.add(
      `The time until the spindle ${unknown === "spin-up" ? "is at its speed" : "stands"} is not counted where machine.spindle.${unknown} is not stated.`,
    );
}

function findFeedUnit(state: ClockState): void {
  const { feedMode, spindle } = state;
  const perTurn = feedMode === "per-revolution" ? spindle.speed / milliPerRpm : 1;
  state.feedUnit = feedMode === "inverse-time" ? 0 : perTurn / 60;
}

/** The reference point is taken to lie at the top of Z; where it lies in X and Y nobody says. */
function returnTo(state: ClockState, axes: number): void {
  const top = state.machine.travel.z?.[1];
  if (axes & axisBit.z && top !== undefined) {
    const way = go(state.place, 2, top, true);
    const { rapid, acceleration } = state.rates;
    const known = way !== 0 && rapid[2] !== Infinity;
    if (known) state.ledger.between("rapid", fromRest(Math.abs(way), rapid[2], acceleration[2]));
  } else lose(state.place, axes & axisBit.z);
  lose(state.place, axes & (axisBit.x | axisBit.y));
}
