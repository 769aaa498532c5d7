import type { Batch, CycleDefinition } from "#base";
import { atomsPerUnit, axisBit, frame, inverseTimeUnit, isArc, milliPerRpm, rowKind } from "#base";
import { runHole } from "./cycle.ts";
import { go } from "./place.ts";
import { alongWay, fromRest, rapidTime } from "./rates.ts";
import { dwellSeconds } from "./spindle.ts";
import { enter, settle } from "./state.ts";
import type { ClockState } from "./state.ts";

const linear = ["x", "y", "z"] as const;

/** Takes a motion of any kind. */
export function acceptMotion(state: ClockState, batch: Batch, row: number): void {
  enter(state, batch.source[row]);
  const kind = batch.kind[row];
  const machine = batch.frame[row] === frame.machine;
  if (!machine) settle(state);
  if (kind === rowKind.hole) hole(state, batch, row);
  else if (isArc(kind)) arc(state, batch, row);
  else straight(state, batch, row, machine);
}

function straight(state: ClockState, batch: Batch, row: number, machine: boolean): void {
  const { rates, ledger, lookAhead, operation } = state;
  const [dx, dy, dz] = goTo(state, batch, row, machine);
  const turned = batch.abc && batch.stated[row] & (axisBit.a | axisBit.b | axisBit.c);
  const length = Math.sqrt(dx * dx + dy * dy + dz * dz);
  if (batch.kind[row] === rowKind.rapid) {
    lookAhead.rest();
    tellRapids(state, dx, dy, dz);
    if (turned) state.told.add("Rapids of rotary axes are not counted.");
    const seconds = rapidTime(rates, dx, dy, dz);
    if (machine) ledger.between("rapid", seconds);
    else ledger.work(operation, "rapid", seconds);
    return;
  }
  const inverse = state.feedMode === "inverse-time" && !machine;
  if (inverse || (turned && length === 0)) {
    lookAhead.rest();
    const seconds = inverse ? (60 * inverseTimeUnit) / batch.feed[row] : rotaryTime(state, batch, row);
    if (Number.isFinite(seconds)) ledger.work(operation, "cutting", seconds);
    return;
  }
  if (length === 0) return;
  const speed = batch.feed[row] * (machine ? 1 / 60 : state.feedUnit);
  const acceleration = alongWay(rates.acceleration, dx, dy, dz, length);
  if (machine) {
    lookAhead.rest();
    ledger.between("cutting", fromRest(length, speed, acceleration));
  } else if (rates.accelerates) lookAhead.line(dx, dy, dz, length, speed, acceleration, operation);
  else ledger.work(operation, "cutting", length / speed);
}

/** Goes to the end of a row; gives the ways of X, Y and Z. */
function goTo(state: ClockState, batch: Batch, row: number, machine: boolean): [number, number, number] {
  const ways: [number, number, number] = [0, 0, 0];
  const known = batch.known[row];
  for (let axis = 0; axis < 3; axis++)
    if (known & (1 << axis)) ways[axis] = go(state.place, axis, batch[linear[axis]][row], machine);
  return ways;
}

function tellRapids({ rates, told }: ClockState, ...ways: number[]): void {
  if (ways.some((way, axis) => way !== 0 && rates.rapid[axis] === Infinity))
    told.add("The time of rapids is not counted where machine.rapid-rate is not stated.");
}

/** A rotary axis alone goes at degrees a minute; from where, only the row before in the same batch tells. */
function rotaryTime(state: ClockState, batch: Batch, row: number): number {
  if (!batch.abc || row === 0) return 0;
  const most = Math.max(...batch.abc.map((column) => Math.abs(column[row] - column[row - 1])));
  return (60 * most * atomsPerUnit[state.units]) / (1e6 * batch.feed[row]);
}

function arc(state: ClockState, batch: Batch, row: number): void {
  const { place, rates, ledger, lookAhead, operation } = state;
  const from = Float64Array.from(place.at, (at, axis) => at - place.shift[axis]);
  goTo(state, batch, row, false);
  if (state.feedMode === "inverse-time") {
    lookAhead.rest();
    ledger.work(operation, "cutting", (60 * inverseTimeUnit) / batch.feed[row]);
    return;
  }
  const to = Float64Array.of(batch.x[row], batch.y[row], batch.z[row]);
  const motion = state.arcOf(batch, row, from, to);
  if (!(motion.length > 0)) return;
  const speed = batch.feed[row] * state.feedUnit;
  if (!rates.accelerates) ledger.work(operation, "cutting", motion.length / speed);
  else {
    motion.speed = Math.min(motion.speed, speed);
    lookAhead.motion(motion, operation);
  }
}

/** One hole of a cycle, each of its motions from rest to rest. */
function hole(state: ClockState, batch: Batch, row: number): void {
  const { place, rates, ledger, operation, cycle, spindle } = state;
  if (!cycle) return;
  state.lookAhead.rest();
  const rapid = (dx: number, dy: number, dz: number): void => {
    tellRapids(state, dx, dy, dz);
    ledger.work(operation, "rapid", rapidTime(rates, dx, dy, dz));
  };
  const inWork = place.space[2] === place.workSpace[2];
  const before = inWork ? place.at[2] - place.shift[2] : cycle.level;
  // Up to the retract level first if Z is below it, then X and Y, then down to it (NISTIR 6556 3.5.16.1).
  const across = Math.max(before, cycle.retract);
  rapid(0, 0, across - before);
  rapid(go(place, 0, batch.x[row], false), go(place, 1, batch.y[row], false), 0);
  rapid(0, 0, across - cycle.retract);
  const speed = batch.feed[row] * feedUnitOf(state, cycle);
  runHole(cycle, {
    rapid: (way) => {
      rapid(0, 0, way);
    },
    feed: (way) => {
      ledger.work(operation, "cutting", fromRest(way, speed, rates.acceleration[2]));
    },
    dwell: () => {
      const turns = cycle.dwellIs === "revolutions";
      ledger.work(operation, "dwell", dwellSeconds(cycle.dwell, turns ? cycle.dwell : 0, spindle));
    },
    reverse: () => {
      ledger.work(operation, "spindle", (state.machine.tapping?.reversal ?? 0) / 1e6);
    },
  });
  rapid(0, 0, cycle.level - cycle.retract);
  go(place, 2, cycle.level, false);
  if (cycle.cycle === "bore-manual") state.stops++;
}

function feedUnitOf({ feedUnit, spindle }: ClockState, cycle: CycleDefinition): number {
  return cycle.feedIs === "lead" ? spindle.speed / milliPerRpm / 60 : feedUnit;
}
