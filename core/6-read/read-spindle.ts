import { freeLetters, placeOf } from "./block.ts";
import * as formFindings from "./findings-form.ts";
import * as findings from "./findings-meaning.ts";
import { letterS } from "./letters.ts";
import { readNumber, wordText } from "./read-number.ts";
import type { Reader } from "./reader.ts";
import { pushStep, rowsSoFar } from "./rows.ts";

/** The S word. */
export function readSpeed(reader: Reader): void {
  const { block } = reader;
  if ((freeLetters(block) & (1 << letterS)) === 0) return;
  block.used |= 1 << letterS;
  const rpm = readNumber(reader, letterS, reader.quantities.speed);
  if (rpm < 0) {
    reader.report(findings.badNumber(placeOf(block, letterS), wordText(reader, letterS), "is below 0"));
    return;
  }
  pushStep(reader, { kind: "spindle-speed", rpm });
  reader.state.rpm = rpm;
  if (reader.state.spindle === "running") checkGear(reader, block.at[letterS]);
  if (reader.slots.spindle?.meaning.kind !== "spindle-start") noteSpeed(reader);
}

/** The start words M03 and M04. */
export function readSpindleStart(reader: Reader): void {
  const meaning = reader.slots.spindle?.meaning;
  if (meaning?.kind !== "spindle-start") return;
  takeSpeed(reader);
  pushStep(reader, { kind: "spindle-start", direction: meaning.direction });
  noteStart(reader);
  checkGear(reader, reader.slots.spindle?.at ?? 0);
}

/** A start that says no speed takes the one said last, where the dialect has it so. */
function takeSpeed(reader: Reader): void {
  const { block, state, format, slots } = reader;
  if (block.mask & (1 << letterS) || state.spindle === "speed-said") return;
  const follows = format.spindle?.order === "start-first" && format.spindle.blocks === "apart";
  if (state.rpm === 0) return;
  if (format.modal.speed === "changed") pushStep(reader, { kind: "spindle-speed", rpm: state.rpm });
  else if (!follows) reader.report(formFindings.speedWord(block.start + (slots.spindle?.at ?? 0)));
}

/** A gear range: it is selected while the spindle stands. */
export function readGear(reader: Reader): void {
  const slot = reader.slots.gear;
  if (slot?.meaning.kind !== "gear") return;
  const { state, block } = reader;
  const stands = state.spindle === "stopped" || state.spindle === "unknown" || state.spindle === "speed-said";
  if (!stands) reader.report(formFindings.gearRange(block.start + slot.at, "turning"));
  state.gear = slot.meaning;
}

/** Whether the range in force has the speed. */
function checkGear({ state, block, format, report }: Reader, at: number): void {
  if (format.gears.length === 0) return;
  if (state.gear === undefined) report(formFindings.gearRange(block.start + at, "none"));
  else if (state.rpm < state.gear.from || state.rpm > state.gear.to)
    report(formFindings.gearRange(block.start + at, "outside"));
}

/** A stop before the motion of its block, under a dialect that stops first (NISTIR 6556 Table 8). */
export function readEarlyStop(reader: Reader): void {
  if (reader.format.stopsAct === "before-motion") readSpindleStop(reader);
}

/** A stop behind the motion of its block (the ISO order, from memory). */
export function readLateStop(reader: Reader): void {
  if (reader.format.stopsAct === "after-motion") readSpindleStop(reader);
}

function readSpindleStop(reader: Reader): void {
  const kind = reader.slots.spindle?.meaning.kind;
  if (kind !== "spindle-stop" && kind !== "spindle-orient") return;
  pushStep(reader, { kind });
  reader.state.spindle = "stopped";
  reader.state.gear = undefined;
}

/** A speed in a block without a start: in its place before the start, or behind a start that said none. */
function noteSpeed(reader: Reader): void {
  const { state, block, format } = reader;
  const follows = state.spindle === "started" && rowsSoFar(reader) - state.startedAt <= 1;
  if (follows && format.spindle?.order === "speed-first")
    reader.report(formFindings.spindleOrder(placeOf(block, letterS), "speed-first"));
  if (state.spindle === "stopped" || state.spindle === "unknown") state.spindle = "speed-said";
  else if (state.spindle === "started") state.spindle = "running";
}

/** A start: with its speed in the same block, or in one before. */
function noteStart(reader: Reader): void {
  const { state, block, format, slots } = reader;
  const order = format.spindle?.order;
  const start = slots.spindle?.at ?? 0;
  const hasSpeed = (block.mask & (1 << letterS)) !== 0;
  const speedFirst = hasSpeed ? block.at[letterS] < start : state.spindle === "speed-said";
  if (order === "speed-first" && hasSpeed && !speedFirst)
    reader.report(formFindings.spindleOrder(block.start + start, order));
  if (order === "start-first" && speedFirst)
    reader.report(formFindings.spindleOrder(block.start + start, order));
  const wasStill = state.spindle === "stopped" || state.spindle === "unknown";
  state.startedAt = rowsSoFar(reader);
  state.spindle = !hasSpeed && wasStill ? "started" : "running";
}
