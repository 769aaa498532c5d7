import { batchRows, fillLines, largestLength } from "#base";
import { letterF, letterX, letterY, letterZ } from "./letters.ts";
import { motion } from "./meanings.ts";
import type { Quantity } from "./quantities.ts";
import type { Reader } from "./reader.ts";
import { rowsOfBlock } from "./rows.ts";
import { bitF, bitX, bitY, bitZ, scanLine } from "./scan-run.ts";
import { modeBit } from "./state.ts";

/*
 * Nearly all blocks of a program are lines in X, Y and Z under the modes in force. A run of them is read here on bytes and
 * columns alone. What is read here is what `readBlock` would read without a finding, and nothing else: a block that has
 * anything else to it, or might be told off, is left to that.
 */

/** Whether the state is one in which a line has nothing to it but its words. */
function isRunning({ state, batch, runs, format }: Reader): boolean {
  const { section, cycle } = state;
  const modes = modeBit.units | modeBit.distance | modeBit.feedMode;
  return (
    runs.possible &&
    state.motion === motion.line &&
    !state.motionForgotten &&
    state.phase === "body" &&
    state.leader === undefined &&
    !section.opens &&
    !section.due &&
    state.standingFrame === 0 &&
    state.residues === 0 &&
    cycle.kind === undefined &&
    (state.modes & modes) === modes &&
    state.feedMode === "per-minute" &&
    (!state.feedDue || format.modal.feed === "each-block") &&
    !state.length.format.plus &&
    !batch.abc
  );
}

/** What F counts in; undefined where the careful way has to see it, as the lead of a thread is no feed. */
function feedQuantity({ format, quantities, state }: Reader): Quantity | undefined {
  const quantity = quantities.perMinute[state.units];
  return format.cycles?.tapLead === true || quantity.format.plus ? undefined : quantity;
}

/**
 * Reads the lines of a run into the batch, as far as there are any and it has room.
 *
 * @param base byte offset in the program of index 0 of the bytes
 * @returns index of the first block that is not of the run
 */
export function readRun(reader: Reader, from: number, to: number, base: number): number {
  if (!isRunning(reader)) return from;
  const { state, batch, runs, bytes, tables } = reader;
  const { known, stated, x, y, z, feed, source, count: first } = batch;
  const { work, incremental } = state;
  runs.length = state.length;
  runs.feed = feedQuantity(reader);
  let at = from;
  let row = first;
  while (at < to && row <= batchRows - rowsOfBlock) {
    const end = scanLine(runs, tables, bytes, at, to);
    if (end < 0 || !takePlaces(reader, incremental)) break;
    const { mask, numbers } = runs;
    if (mask & bitF) state.feed = numbers[letterF];
    known[row] = state.workKnown;
    stated[row] = (mask & bitX ? 1 : 0) | (mask & bitY ? 2 : 0) | (mask & bitZ ? 4 : 0);
    x[row] = work[0];
    y[row] = work[1];
    z[row] = work[2];
    feed[row] = state.feed;
    source[row] = base + at;
    row++;
    at = end;
  }
  if (row === first) return at;
  fillLines(batch, first, row);
  batch.count = row;
  state.feedDue = reader.format.modal.feed === "each-block";
  return at;
}

/** Takes the axes that the line at hand names to their places; false, and nothing taken, where a line is not that simple. */
function takePlaces({ state, runs }: Reader, incremental: boolean): boolean {
  const { mask, numbers } = runs;
  const { work } = state;
  const named = (mask & bitX ? 1 : 0) | (mask & bitY ? 2 : 0) | (mask & bitZ ? 4 : 0);
  // A place in machine coordinates is lost by a motion in the work, which is the careful way's to see to.
  if (named === 0 || (state.machineKnown & named) !== 0) return false;
  if (!incremental) {
    if (mask & bitX) work[0] = numbers[letterX];
    if (mask & bitY) work[1] = numbers[letterY];
    if (mask & bitZ) work[2] = numbers[letterZ];
    state.workKnown |= named;
    return true;
  }
  const x = work[0] + (mask & bitX ? numbers[letterX] : 0);
  const y = work[1] + (mask & bitY ? numbers[letterY] : 0);
  const z = work[2] + (mask & bitZ ? numbers[letterZ] : 0);
  const isNear = Math.max(Math.abs(x), Math.abs(y), Math.abs(z)) <= largestLength;
  if (!isNear || (named & ~state.workKnown) !== 0) return false;
  work[0] = x;
  work[1] = y;
  work[2] = z;
  return true;
}
