import { evaluate } from "#base";
import type { ConfirmationName, Expression, ExpressionValues, MachineFacts, SignalName, Step } from "#base";
import { findings } from "./findings.ts";
import { nowhere } from "./state.ts";
import { isPlace, tell, tellOnce } from "./watch.ts";
import type { Watch } from "./watch.ts";
import { timeText } from "./words.ts";

/** Values for an expression; what is undeclared is not a number, so that a time that needs it is never reached. */
function valuesOf(facts: MachineFacts, rpm: number, fromRpm: number): ExpressionValues {
  const { minRpm, maxRpm, spinUp, spinDown, coastDown } = facts.spindle;
  return {
    rpm,
    from_rpm: fromRpm,
    min_rpm: minRpm ?? Number.NaN,
    max_rpm: maxRpm ?? Number.NaN,
    spin_up: spinUp ?? Number.NaN,
    spin_down: spinDown ?? Number.NaN,
    coast_down: coastDown ?? Number.NaN,
  };
}

/** The time that confirms a state of the spindle, from the worst speed that it may have had; microseconds. */
function spindleTime(watch: Watch, time: Expression): number {
  const { fromLow, fromHigh, rpm, turning } = watch.state.spindle;
  const target = turning === "stopped" ? 0 : rpm;
  const from = (speed: number): number => evaluate(time, valuesOf(watch.facts, target, speed));
  return Math.max(from(fromLow), from(fromHigh));
}

/** The time that confirms a state of the drawbar; microseconds. */
function drawbarTime(watch: Watch, time: Expression): number {
  return evaluate(time, valuesOf(watch.facts, 0, 0));
}

/** Whether a wait is one for this signal, and can be relied on. */
function hears(
  facts: MachineFacts,
  wait: Extract<Step, { kind: "wait" }>,
  name: SignalName,
  dwelt: number,
): boolean {
  const signal = facts.signals[name];
  if (!signal || signal.input !== wait.input || signal.level !== wait.level) return false;
  // A wait that goes on when its time is up has confirmed nothing; one without a time limit cannot.
  return dwelt >= signal.settle && (wait.timeout === 0 || facts.onTimeout === "alarm");
}

/** The confirmation that the spindle's command asks for; nothing before the first command. */
function spindleConfirmation(watch: Watch): ConfirmationName | undefined {
  const { turning, rpm } = watch.state.spindle;
  if (turning === "stopped") return "stopped";
  return turning === "unknown" || rpm === 0 ? undefined : "at-speed";
}

/** Takes the commanded speed or stop as reached. */
export function confirmSpindle(watch: Watch, byTime: boolean): void {
  const { spindle, program, approach } = watch.state;
  const speed = spindle.turning === "stopped" ? 0 : spindle.rpm;
  spindle.fromLow = spindle.fromHigh = spindle.nowLow = spindle.nowHigh = speed;
  spindle.confirmed = true;
  spindle.byTime = byTime;
  if (speed === 0 && !program.moved) program.stopSeen = true;
  if (speed > 0 && isPlace(approach.unconfirmedAt)) {
    const { after } = approach;
    tell(
      watch,
      findings["motion/approach"]({ fault: "speed", after, height: "swap height" }),
      approach.unconfirmedAt,
    );
    approach.unconfirmedAt = nowhere;
  }
}

function confirmDrawbar(watch: Watch, byTime: boolean): void {
  watch.state.drawbar.confirmed = true;
  const what = watch.state.drawbar.open ? "Release: released" : "Clamp: clamped";
  if (byTime) tellOnce(watch, `swap/timed ${what}`, findings["swap/timed"]({ what }));
}

/** Notes a command to the spindle: from now on its speed is somewhere between the old one and the new one. */
export function commandSpindle(watch: Watch, target: number): void {
  const { spindle } = watch.state;
  if (spindle.timePassed) {
    spindle.fromLow = spindle.nowLow;
    spindle.fromHigh = spindle.nowHigh;
  }
  spindle.timePassed = false;
  spindle.nowLow = Math.min(spindle.fromLow, target);
  spindle.nowHigh = Math.max(spindle.fromHigh, target);
  spindle.dwelt = 0;
  spindle.confirmed = false;
  spindle.excused = false;
  const name = spindleConfirmation(watch);
  if (name && watch.facts.confirm[name]?.by === "intrinsic") confirmSpindle(watch, false);
}

/** Notes a command to the drawbar. */
export function commandDrawbar(watch: Watch, open: boolean, needed: boolean): void {
  const { drawbar } = watch.state;
  drawbar.open = open;
  drawbar.excused = false;
  drawbar.dwelt = 0;
  drawbar.airConfirmed = false;
  drawbar.confirmed = !needed || watch.facts.confirm[open ? "released" : "clamped"]?.by === "intrinsic";
}

/** Dwell: time counts from the last command of each, and confirms where the dialect says that time does. */
export function hearDwell(watch: Watch, time: number): void {
  const { spindle, drawbar } = watch.state;
  spindle.timePassed = true;
  spindle.dwelt += time;
  drawbar.dwelt += time;
  watch.state.workHeld.dwelt += time;
  const name = spindleConfirmation(watch);
  const way = name && watch.facts.confirm[name];
  if (way?.by === "dwell" && !spindle.confirmed && spindle.dwelt >= spindleTime(watch, way.time))
    confirmSpindle(watch, true);
  const hold = watch.facts.confirm[drawbar.open ? "released" : "clamped"];
  if (hold?.by === "dwell" && !drawbar.confirmed && drawbar.dwelt >= drawbarTime(watch, hold.time))
    confirmDrawbar(watch, true);
  const air = watch.facts.confirm.air;
  if (air?.by === "dwell" && drawbar.dwelt >= drawbarTime(watch, air.time)) {
    drawbar.airConfirmed = true;
    drawbar.airByTime = true;
  }
}

/** Wait on a signal: confirms the state that the signal stands for, if that state was commanded. */
export function hearWait(watch: Watch, wait: Extract<Step, { kind: "wait" }>): void {
  const { facts } = watch;
  const { spindle, drawbar } = watch.state;
  const name = spindleConfirmation(watch);
  const way = name && facts.confirm[name];
  if (way?.by === "wait" && hears(facts, wait, way.signal, spindle.dwelt)) confirmSpindle(watch, false);
  const hold = facts.confirm[drawbar.open ? "released" : "clamped"];
  if (hold?.by === "wait" && hears(facts, wait, hold.signal, drawbar.dwelt)) confirmDrawbar(watch, false);
  const air = facts.confirm.air;
  if (hears(facts, wait, air?.by === "wait" ? air.signal : "air", drawbar.dwelt)) {
    drawbar.airConfirmed = true;
    drawbar.airByTime = false;
  }
  const { workHeld } = watch.state;
  const clamps = facts.confirm["hold-down"];
  if (clamps?.by === "wait" && hears(facts, wait, clamps.signal, workHeld.dwelt)) workHeld.confirmed = true;
  if (!drawbar.open && hears(facts, wait, "tool-present", drawbar.dwelt)) drawbar.toolSensed = true;
  spindle.timePassed = true;
}

/**
 * Stop of the program: the operator sees that the spindle stands, where the dialect leaves that to them. Nothing else can be
 * left to a stop, since the spindle has to stand at each one, and nobody knows afterwards where the machine is.
 */
export function hearOperator(watch: Watch): void {
  const { spindle } = watch.state;
  const asks = watch.facts.confirm.stopped?.by === "operator";
  if (asks && spindle.turning === "stopped" && !spindle.confirmed) confirmSpindle(watch, false);
}

/** Work and a start of the spindle take time, in which the air may go: what was heard of it before no longer counts. */
export function forgetAir(watch: Watch): void {
  const { drawbar } = watch.state;
  drawbar.airConfirmed = false;
  drawbar.dwelt = 0;
}

/** Whether the air is confirmed since the last action of the drawbar, work motion or start of the spindle; true where it cannot be sensed. */
export function airConfirmed(watch: Watch): boolean {
  const way = watch.facts.confirm.air;
  if (way === undefined && watch.facts.signals.air === undefined) return true;
  if (way?.by === "intrinsic") return true;
  const { airConfirmed: confirmed, airByTime } = watch.state.drawbar;
  if (confirmed && airByTime)
    tellOnce(watch, "swap/timed air", findings["swap/timed"]({ what: "Air pressure: air" }));
  return confirmed;
}

/** motion/held: before a feed motion in the work. */
export function checkWorkHeld(watch: Watch): void {
  const { workHeld } = watch.state;
  if (workHeld.confirmed || watch.facts.confirm["hold-down"] === undefined) return;
  tell(watch, findings["motion/held"]({ how: howToConfirm(watch, "hold-down") }));
  workHeld.confirmed = true;
}

/** What would confirm a state, for the way out of a finding: a dwell of 0.3 s and a wait for input 4 on. */
export function howToConfirm(watch: Watch, name: ConfirmationName): string {
  const { facts } = watch;
  const way = facts.confirm[name];
  if (way === undefined) return `its confirmation (the dialect does not say how: confirm.${name})`;
  if (way.by === "operator") return "a stop with a message that asks the operator to confirm it";
  if (way.by === "intrinsic") return "nothing more: the controller holds by itself";
  if (way.by === "wait") {
    const signal = facts.signals[way.signal];
    if (!signal) return `a wait on the signal ${way.signal}, which the dialect does not declare`;
    const settle = signal.settle > 0 ? `a dwell of ${timeText(signal.settle)} and ` : "";
    return `${settle}a wait for input ${signal.input} ${signal.level}`;
  }
  const spindle = name === "at-speed" || name === "stopped";
  const time = spindle ? spindleTime(watch, way.time) : drawbarTime(watch, way.time);
  return Number.isFinite(time)
    ? `a dwell of at least ${timeText(Math.ceil(time))}`
    : "a dwell, for which a fact of the spindle is missing";
}
