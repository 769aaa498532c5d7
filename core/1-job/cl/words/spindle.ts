import type { CoolantMedium } from "#base";
import * as findings from "../findings.ts";
import { above0, lengths, onlyNumbers, strayMinor } from "../items.ts";
import { scales } from "../../scan/number.ts";
import type { ClRun } from "../state.ts";
import type { Item, Statement } from "../statement.ts";

const directions = { CLW: "cw", CCLW: "ccw" } as const;
const rangeWords = ["LOW", "MEDIUM", "HIGH"];

/** SPINDL/n,CLW; SPINDL/RPM,n,CLW; SPINDL/ON; SPINDL/OFF. */
export function spindl(run: ClRun, statement: Statement): void {
  const { items, offset } = statement;
  const { state } = run;
  const [first] = items;
  if (items.length === 1 && first.text === "OFF") {
    state.spindle = "off";
    state.spindleFresh = true;
    return;
  }
  for (const { text, offset: at } of items) {
    if (text !== "SFM" && text !== "SMM" && text !== "MAXRPM" && text !== "LOCK" && text !== "ORIENT")
      continue;
    const fix = text === "LOCK" || text === "ORIENT" ? "Leave it out." : "State the speed in rev/min.";
    run.report(findings.withoutCounterpart(at, `SPINDL with ${text}`, fix));
    return;
  }
  const isOn = items.length === 1 && first.text === "ON";
  const said = isOn ? undefined : readSpeed(run, statement);
  if (isOn && state.rpm === 0) run.report(findings.spindleNothing(offset));
  const rpm = said?.rpm ?? state.rpm;
  const direction = said?.direction ?? state.direction;
  if (direction === undefined && rpm > 0) run.report(findings.spindleUnclear(offset));
  if (rpm > 0 && direction !== undefined) turn(run, rpm, direction, offset);
}

function turn(run: ClRun, rpm: number, direction: "cw" | "ccw", offset: number): void {
  const { state, act } = run;
  if (state.moved && state.spindle !== "unsaid" && direction !== state.direction) {
    // One operation turns one way; the next begins with a rapid of its own.
    act.operation(offset);
    state.moved = false;
    state.toolZ = undefined;
  }
  act.spindle(rpm, direction, offset);
  if (state.movedWhileOff !== undefined && state.moved) run.report(findings.spindleKept(state.movedWhileOff));
  state.movedWhileOff = undefined;
  state.rpm = rpm;
  state.direction = direction;
  state.spindle = "on";
  state.spindleFresh = true;
}

function readSpeed(
  run: ClRun,
  statement: Statement,
): { readonly rpm?: number; readonly direction?: "cw" | "ccw" } {
  const { items } = statement;
  const found: { rpm?: number; direction?: "cw" | "ccw" } = {};
  const numbers: Item[] = [];
  for (let at = 0; at < items.length; at++) {
    const item = items[at];
    if (item.kind === "number") numbers.push(item);
    else if (Object.hasOwn(directions, item.text))
      found.direction = directions[item.text as keyof typeof directions];
    else if (item.text === "RANGE") at++;
    else if (item.text !== "RPM" && !rangeWords.includes(item.text))
      strayMinor(run, statement, item, ["RPM", "CLW", "CCLW", "RANGE", "ON", "OFF"]);
  }
  if (numbers.length === 1) {
    const rpm = above0(run, numbers[0], scales.rpm, "The speed");
    if (rpm !== undefined) found.rpm = rpm;
  } else run.report(findings.wrongItems(statement.offset, "SPINDL", "SPINDL/n, CLW or SPINDL/RPM, n, CLW"));
  return found;
}

const media: Readonly<Record<string, CoolantMedium>> = {
  FLOOD: "flood",
  MIST: "mist",
  AIR: "air",
  THRU: "through-tool",
};

/** COOLNT/FLOOD[,AIR...]; COOLNT/ON takes what ran last, flood at first [memory]; COOLNT/OFF ends all. */
export function coolnt(run: ClRun, statement: Statement): void {
  const { items, offset } = statement;
  const { state, act } = run;
  const name = items.length === 1 ? items[0].text : "";
  const known = items.filter(({ text }) => Object.hasOwn(media, text));
  const allowed = ["ON", "OFF", ...Object.keys(media)];
  if (items.length === 0) run.report(findings.wrongItems(offset, "COOLNT", "COOLNT/FLOOD or COOLNT/OFF"));
  if (name !== "ON" && name !== "OFF")
    for (const item of items) if (!known.includes(item)) strayMinor(run, statement, item, allowed);
  if (name !== "ON" && name !== "OFF" && known.length === 0) return;
  const chosen = name === "ON" ? state.lastCoolant : [...new Set(known.map(({ text }) => media[text]))];
  act.coolant(chosen, offset);
  state.coolant = chosen;
  if (chosen.length > 0) state.lastCoolant = chosen;
}

/** DELAY/t in seconds; DELAY/n,REV; DWELL alike [memory]. */
export function delay(run: ClRun, { items, offset, word }: Statement): void {
  const [time, unit] = items;
  const isForm =
    time?.kind === "number" && (items.length === 1 || (items.length === 2 && unit.text === "REV"));
  if (!isForm) {
    run.report(findings.wrongItems(offset, word, `${word}/t or ${word}/n, REV`));
    return;
  }
  const value = above0(run, time, unit ? scales.revolution : scales.second, "The dwell");
  if (value === undefined) return;
  if (unit === undefined) run.act.dwell(value, offset);
  else if (dwellsLong(run, value, offset)) run.act.dwell(turnsToTime(value, run.state.rpm), offset);
}

/** Whether a dwell of so many millionths of a revolution is a time; one at standstill, or without an end, is reported. */
export function dwellsLong(run: ClRun, turns: number, offset: number): boolean {
  const { rpm } = run.state;
  if (rpm === 0) run.report(findings.dwellStandstill(offset));
  else if (turnsToTime(turns, rpm) > scales.second.largest)
    run.report(findings.numberTooLarge(offset, scales.second.most));
  else return true;
  return false;
}

/** Microseconds of so many millionths of a revolution at a speed in milli-rpm: at least one. */
export function turnsToTime(turns: number, rpm: number): number {
  return Math.max(1, Math.round((turns * 60_000) / rpm));
}

/** ORIGIN/x,y,z and TRANS/x,y,z: what they do to the coordinates behind them is for the user to say. */
export function shift(run: ClRun, statement: Statement): void {
  const { items, offset } = statement;
  const { state, options } = run;
  const word = statement.word === "ORIGIN" ? "ORIGIN" : "TRANS";
  if (items.length !== 3 || !onlyNumbers(statement)) {
    run.report(findings.wrongItems(offset, word, `${word}/x, y, z`));
    return;
  }
  const isNothing = items.every(({ text }) => Number(text) === 0);
  const choice = word === "ORIGIN" ? options.origin : options.trans;
  if (choice === "ignore") return;
  if (choice === "refuse" && !isNothing) {
    run.report(findings.shiftUnclear(offset, word));
    return;
  }
  const values = isNothing ? [0, 0, 0] : lengths(run, items);
  if (values === undefined) return;
  const sign = choice === "subtract" ? -1 : 1;
  const [x, y, z] = values.map((value) => sign * value + 0);
  if (word === "ORIGIN") state.origin = [x, y, z];
  else state.trans = [x, y, z];
  const sum = (axis: 0 | 1 | 2): number => state.origin[axis] + state.trans[axis];
  state.shift = [sum(0), sum(1), sum(2)];
}
