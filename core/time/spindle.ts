import type { MachineFacts, SignalName } from "#base";
import { milliPerRpm } from "#base";
import type { Ledger } from "./ledger.ts";

/** Seconds that a wait on another signal than those of the spindle is taken to last: a drawbar, air (no source). */
export const otherWait = 0.5;

/** The spindle and when it will have reached what it was told. */
export interface Spindle {
  /** Speed commanded, milli-rpm; 0 where it is to stand. */
  speed: number;
  /** Speed of the last speed word. */
  asked: number;
  turning: boolean;
  /** Second at which it has got there. */
  due: number;
  /** Whether nothing has moved in the work since. */
  fresh: boolean;
}

export function createSpindle(): Spindle {
  return { speed: 0, asked: 0, turning: false, due: 0, fresh: false };
}

/** What a spindle step may leave open. */
export type Unknown = "spin-up" | "spin-down";

/**
 * A command of speed, start or stop.
 *
 * @returns what is not known of the time that it takes
 */
export function command(spindle: Spindle, facts: MachineFacts, ledger: Ledger): Unknown | undefined {
  const to = spindle.turning ? spindle.asked : 0;
  const { maxRpm, spinUp, spinDown, coastDown } = facts.spindle;
  const faster = to > spindle.speed;
  const whole = faster ? spinUp : (spinDown ?? coastDown);
  const change = Math.abs(to - spindle.speed);
  spindle.speed = to;
  spindle.fresh = true;
  if (change === 0) return undefined;
  const known = whole !== undefined && maxRpm !== undefined && maxRpm > 0;
  // The time is that from standstill to the highest speed.
  if (known) spindle.due = ledger.elapsed + ((whole / 1e6) * change) / maxRpm;
  const how = facts.confirm[to === 0 ? "stopped" : "at-speed"];
  if (how?.by === "intrinsic") reach(spindle, ledger);
  return known ? undefined : faster ? "spin-up" : "spin-down";
}

/** The program stands until the spindle has got there. */
export function reach(spindle: Spindle, ledger: Ledger): void {
  ledger.between("spindle", Math.max(spindle.due - ledger.elapsed, 0));
}

/** A wait on a signal. */
export function waitOn(input: number, spindle: Spindle, facts: MachineFacts, ledger: Ledger): boolean {
  const isOf = (name: SignalName): boolean => facts.signals[name]?.input === input;
  const ofSpindle = spindle.fresh && (isOf("at-speed") || isOf("stopped"));
  if (ofSpindle) reach(spindle, ledger);
  else ledger.between("dwell", otherWait);
  return ofSpindle;
}

/** Seconds of a dwell that counts time or revolutions. */
export function dwellSeconds(time: number, microRevolutions: number, spindle: Spindle): number {
  if (microRevolutions === 0) return time / 1e6;
  const perSecond = spindle.speed / milliPerRpm / 60;
  return perSecond > 0 ? microRevolutions / 1e6 / perSecond : 0;
}
