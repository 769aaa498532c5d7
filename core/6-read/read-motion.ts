import { axisCount, frame, rowKind } from "#base";
import { freeLetters } from "./block.ts";
import { endSeries, leaveSeries, readCycle } from "./read-cycle.ts";
import * as formFindings from "./findings-form.ts";
import * as findings from "./findings-meaning.ts";
import { axesOfLetters, axisLetters, centreLetters, lettersOfAxes } from "./letters.ts";
import { motion } from "./meanings.ts";
import type { Slot } from "./modal-groups.ts";
import { firstOf, lettersText } from "./need-mode.ts";
import { arcLetters, readArc } from "./read-arc.ts";
import { moveAxes } from "./read-axes.ts";
import { feedOfRow } from "./read-feed.ts";
import { textAt } from "./read-number.ts";
import { checkLengthAlone } from "./read-offsets.ts";
import type { Reader } from "./reader.ts";
import { pushRow, pushStep } from "./rows.ts";
import { losePlace } from "./state.ts";

/** The motion of a block: modal group 1 with its axis words, in the work frame or the machine's. */
export function readMotion(reader: Reader): void {
  const { slots, block, state } = reader;
  const slot = slots.motion;
  const end = slots["cycle-end"];
  if (end !== undefined) {
    endCycles(reader);
    if (slot === undefined) {
      noMotion(reader, end.at);
      return;
    }
    if (!sharesEnd(reader, slot, end.at)) return;
  }
  if (slot?.meaning.kind === "motion") {
    if (state.cycle.kind !== undefined) endSeries(reader, block.start + slot.at);
    state.motion = slot.meaning.motion;
  }
  if (slot?.meaning.kind === "cycle") state.motion = motion.cycle;
  const inFrame = frameOfBlock(reader);
  if (inFrame === frame.machine && !mayUseMachineFrame(reader)) return;
  if (state.motion === motion.cycle)
    readCycle(reader, slot?.meaning.kind === "cycle" ? slot.meaning.cycle : undefined);
  else move(reader, slot !== undefined, inFrame);
}

/** The frame that a block moves in. Where a move in machine coordinates suspends the work offset, all that follow do, too. */
function frameOfBlock({ slots, state, format }: Reader): 0 | 1 {
  if (slots["non-modal"]?.meaning.kind !== "machine-move") return state.standingFrame;
  if (format.motion.machineMoveLasts === "until-work-offset") state.standingFrame = frame.machine;
  return frame.machine;
}

/** The cancel code of cycles leaves no motion word in force. */
function endCycles(reader: Reader): void {
  const { state } = reader;
  pushStep(reader, { kind: "cycle", value: "off" });
  state.cancelledAnew.add("cycle");
  leaveSeries(reader);
  state.motion = motion.none;
}

/**
 * Whether a motion code may share its block with the end of cycles: one that is no cycle itself. RS274/NGC has both in one group (NISTIR 6556
 * Table 4) and ISO 6983-1 in two; wherever the block is taken, cycles end and then the motion is made.
 */
function sharesEnd(reader: Reader, { meaning, at }: Slot, end: number): boolean {
  const { start } = reader.block;
  const [code, other] = [textAt(reader, at), textAt(reader, end)];
  if (meaning.kind === "motion") {
    reader.report(formFindings.endBesideMotion(start + end, other, code));
    return true;
  }
  const reason = `starts a cycle in the block in which ${other} ends them`;
  reader.report(findings.modalConflict(start + at, code, reason));
  dropWords(reader);
  return false;
}

/** A block that ends cycles and names no motion has no axis words. */
function noMotion(reader: Reader, at: number): void {
  const { block } = reader;
  const words = freeLetters(block) & axisLetters;
  if (words === 0) return;
  dropWords(reader);
  reader.report(
    findings.badCycle(
      block.start + at,
      `${textAt(reader, at)} ends motion, and the block has the axis words ${lettersText(words)}.`,
      "Put the motion into a block of its own, with its motion word.",
    ),
  );
}

/** Motion in machine coordinates is a rapid or a line with axis words in absolute mode (NISTIR 6556 3.5.12). */
function mayUseMachineFrame(reader: Reader): boolean {
  const { slots, block, state } = reader;
  const words = (freeLetters(block) | block.unknown) & (axisLetters | centreLetters);
  // Where machine coordinates stand, the code may stand alone, and blocks without axes are nobody's motion.
  if (words === 0 && state.standingFrame === frame.machine) return false;
  const stated = slots["non-modal"]?.meaning.kind === "machine-move" ? slots["non-modal"].at : undefined;
  const at = stated ?? firstOf(reader, words);
  const place = block.start + at;
  const text = stated === undefined ? "Motion in machine coordinates" : textAt(reader, at);
  if (state.motion !== motion.rapid && state.motion !== motion.line)
    reader.report(
      findings.wordMissing(
        place,
        `${text} needs a rapid or a line to go with it.`,
        "Add the motion word.",
        "machine-move",
      ),
    );
  else if (((block.mask | block.unknown) & axisLetters) === 0)
    reader.report(findings.wordMissing(place, `${text} has no axis words.`, "Add them.", "machine-move"));
  else if (state.incremental)
    reader.report(
      findings.modalConflict(place, text, "needs absolute words, and incremental ones are in force"),
    );
  else return true;
  dropWords(reader);
  return false;
}

/** Axis words whose motion is not known: the axes may be anywhere afterwards. */
function dropWords(reader: Reader): void {
  const { block, state } = reader;
  losePlace(state, axesOfLetters((block.mask & ~block.reserved) | block.unknown));
  block.used |= block.mask;
}

/** Motion by the mode in force: a rapid, a line or an arc. */
export function move(reader: Reader, explicit: boolean, inFrame: number): void {
  const { block, state } = reader;
  const words = freeLetters(block) & (axisLetters | (state.motion >= motion.arcCw ? arcLetters(reader) : 0));
  if (words === 0 && (block.unknown & axisLetters) === 0) {
    if (explicit && state.motion >= motion.arcCw) reportBareArc(reader);
    return;
  }
  if (state.motion === motion.none) {
    reportNoMotion(reader);
    return;
  }
  // The motion word goes with the one for machine coordinates, whatever is in force: G53 alone moves as the last block did.
  const due =
    state.motionForgotten || inFrame === frame.machine || reader.format.modal.motion === "each-block";
  if (!explicit && due)
    reader.report(formFindings.motionWord(block.start, reader.format.modal.motion === "each-block"));
  state.motionForgotten = false;
  if (block.unknown & (axisLetters | centreLetters)) {
    dropWords(reader);
    return;
  }
  if (state.motion >= motion.arcCw) readArc(reader, state.motion === motion.arcCw);
  else readStraight(reader, axesOfLetters(words), inFrame);
}

/** An arc word without any of its words moves nothing, and is not known to be taken: NISTIR 6556 3.5.3 has it as an error. */
function reportBareArc(reader: Reader): void {
  const { block } = reader;
  if (block.unclear || (block.unknown & centreLetters) !== 0) return;
  const message = "The arc has neither an end, a centre nor a radius.";
  reader.report(findings.badArc(block.start, message, "State the arc in the block of its motion word."));
}

function reportNoMotion(reader: Reader): void {
  const { block } = reader;
  const at = firstOf(reader, axisLetters);
  const words = lettersText((block.mask | block.unknown) & axisLetters);
  dropWords(reader);
  reader.report(
    findings.wordMissing(
      block.start + at,
      `The axis words ${words} have no motion word, and none is in force.`,
      "State the motion word in the block.",
      "modal.motion",
    ),
  );
}

/** A rapid or a line. */
function readStraight(reader: Reader, named: number, inFrame: number): void {
  const { block, state, format } = reader;
  block.used |= lettersOfAxes(named);
  const moved = moveAxes(reader, inFrame, named);
  const feed = state.motion === motion.line ? feedOfRow(reader) : 0;
  const isRapid = state.motion === motion.rapid || isRapidFeed(reader, feed);
  if (reader.tables.mostAxes < 6 || isRapid) checkCount(reader, axisCount(moved), isRapid);
  if (format.modal.axes === "all") checkAllAxes(reader, named, inFrame);
  if (!isRapid) {
    pushRow(reader, rowKind.line, inFrame, named, feed, 0, 0, 0);
    return;
  }
  if (format.modal.feed === "after-rapid" && state.motion === motion.rapid) state.feedDue = true;
  if (state.lengthAlone !== undefined) checkLengthAlone(reader, inFrame === frame.work ? moved : 0);
  pushRow(reader, rowKind.rapid, inFrame, named, 0, 0, 0, 0);
}

/** Whether a line is a rapid of a controller without a word for one: it has just the feed that the dialect names. */
function isRapidFeed({ state, format }: Reader, feed: number): boolean {
  const { rapidFeed } = format.motion;
  return rapidFeed !== null && state.feedMode === "per-minute" && feed === rapidFeed[state.units];
}

/** How many axes a block moves: no more than the dialect says, a rapid of one that takes them singly only one. */
export function checkCount(reader: Reader, count: number, isRapid: boolean): void {
  const { block, tables } = reader;
  const most = isRapid ? tables.mostAxesOfRapid : tables.mostAxes;
  if (count <= most) return;
  const key = isRapid && most === 1 ? "motion.rapid-axes" : "motion.axes-at-once";
  reader.report(formFindings.axesAtOnce(block.start, isRapid ? "rapid" : "motion", count, most, key));
}

/** Under a dialect that states all axes, those that are known must be named. */
function checkAllAxes(reader: Reader, named: number, inFrame: number): void {
  const { state, block } = reader;
  const known = inFrame === frame.work ? state.workKnown : state.machineKnown;
  const missing = known & ~named;
  if (missing !== 0) reader.report(formFindings.axisWords(block.start, lettersText(lettersOfAxes(missing))));
}
