import type { UnitSystem } from "#base";
import { freeLetters, placeOf } from "./block.ts";
import * as formFindings from "./findings-form.ts";
import * as findings from "./findings-meaning.ts";
import { letterF } from "./letters.ts";
import { needModes } from "./need-mode.ts";
import type { Quantity } from "./quantities.ts";
import { readNumber, textAt, wordText } from "./read-number.ts";
import type { Reader } from "./reader.ts";
import { modeBit } from "./state.ts";

/** The F word of a block that states no units: the feed from here on, in the unit of the feed mode. It is no step of its own. */
export function readFeed(reader: Reader): void {
  const { block, state } = reader;
  if ((freeLetters(block) & (1 << letterF)) === 0) return;
  needModes(reader, modeBit.units | modeBit.feedMode, block.at[letterF]);
  takeFeed(reader, state.units);
}

/** The F word of any block. Units of the same block hold for it where they are those in force. */
export function readFeedOfBlock(reader: Reader): void {
  const { block, slots } = reader;
  const meaning = slots.units?.meaning;
  if (meaning?.kind !== "mode" || meaning.step.kind !== "units") {
    readFeed(reader);
    return;
  }
  if ((freeLetters(block) & (1 << letterF)) === 0) return;
  needModes(reader, modeBit.feedMode, block.at[letterF]);
  checkUnitsOfFeed(reader, meaning.step.value);
  takeFeed(reader, meaning.step.value);
}

/**
 * NISTIR 6556 Table 8 takes the feed before the units, whoever writes both in one block most likely means the new ones: off by
 * 25.4 where they are others than before. Inverse time has no length in it.
 */
function checkUnitsOfFeed(reader: Reader, units: UnitSystem): void {
  const { block, state, slots } = reader;
  const areInForce = (state.modes & modeBit.units) !== 0 && state.units === units;
  if (areInForce || state.feedMode === "inverse-time") return;
  const code = textAt(reader, slots.units?.at ?? 0);
  const reason = `shares its block with ${code}, and controllers differ about whether it is in the units before or behind`;
  reader.report(findings.modalConflict(placeOf(block, letterF), wordText(reader, letterF), reason));
}

function takeFeed(reader: Reader, units: UnitSystem): void {
  const { block, state } = reader;
  block.used |= 1 << letterF;
  const quantity = feedQuantity(reader, units);
  if (quantity === undefined) return;
  const feed = readNumber(reader, letterF, quantity);
  state.feedDue = false;
  state.feed = Math.max(feed, 0);
  if (feed <= 0)
    reader.report(findings.badNumber(placeOf(block, letterF), wordText(reader, letterF), "is not above 0"));
}

/** What F counts in. The quantity of a mode that the dialect has a code for, but no number format, is undeclared. */
function feedQuantity(reader: Reader, units: UnitSystem): Quantity | undefined {
  const { quantities, state, block } = reader;
  if (isLead(reader)) return quantities.perRevolution?.[units];
  if (state.feedMode === "per-minute") return quantities.perMinute[units];
  const inverse = state.feedMode === "inverse-time";
  const quantity = inverse ? quantities.inverseTime : quantities.perRevolution?.[units];
  if (quantity === undefined) {
    const key = inverse ? "numbers.inverse-time" : "numbers.feed-per-revolution";
    reader.report(findings.undeclared(placeOf(block, letterF), wordText(reader, letterF), key));
    state.feed = 0;
  }
  return quantity;
}

/** Whether the F word of the block is the lead of a thread: the block names a tapping cycle, or goes on with one. */
function isLead({ format, slots, state }: Reader): boolean {
  if (format.cycles?.tapLead !== true || slots["cycle-end"] !== undefined) return false;
  const meaning = slots.motion?.meaning;
  const kind =
    meaning?.kind === "cycle" ? meaning.cycle : meaning === undefined ? state.cycle.kind : undefined;
  return kind === "tap" || kind === "tap-left";
}

/**
 * The feed of the line, arc or first hole at hand. Under inverse time it holds for its own block only: one that was said in a
 * block without such a motion is no feed (NISTIR 6556 3.5.20).
 */
export function feedOfRow(reader: Reader): number {
  const { state, block } = reader;
  if (state.feedMode === "inverse-time" && (block.used & (1 << letterF)) === 0) dropFeed(reader);
  if (state.feedDue) reportFeedDue(reader);
  const { feed } = state;
  if (state.feedMode === "inverse-time") dropFeed(reader);
  else state.feedDue = reader.format.modal.feed === "each-block";
  return feed;
}

/** A feed that was never said is the guard's finding; here it is only told where the block's form asks for the word. */
function reportFeedDue(reader: Reader): void {
  const { state, block, format } = reader;
  if (block.unknown & (1 << letterF)) return;
  const inverse = state.feedMode === "inverse-time";
  if (state.feed === 0 && !inverse) return;
  let reason = "after a tool change or a stop";
  if (inverse) reason = "of its own, which inverse time asks for in each block";
  else if (format.modal.feed === "each-block") reason = "of its own, which this dialect states in each";
  else if (format.modal.feed === "after-rapid") reason = "after a rapid";
  reader.report(formFindings.feedWord(block.start, reason));
}

/** No feed is in force. */
export function dropFeed({ state }: Reader): void {
  state.feed = 0;
  state.feedDue = true;
}

/** The next feed block must state its feed. */
export function forgetFeed(reader: Reader): void {
  reader.state.feedDue = true;
}
