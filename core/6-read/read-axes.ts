import { axes, axisBit, largestLength } from "#base";
import * as findings from "./findings-meaning.ts";
import { letterOfAxis, letterX, letterY, letterZ } from "./letters.ts";
import { placeOf } from "./block.ts";
import { needModes } from "./need-mode.ts";
import { readNumber, wordText } from "./read-number.ts";
import type { Reader } from "./reader.ts";
import { distanceOnGrid, hasResidues, keepResidues } from "./residue.ts";
import { useRotary } from "./rows.ts";
import { loseMachine, loseWork, modeBit } from "./state.ts";

/**
 * Takes the axes that a motion names to where their words say, in the frame of the motion. In the other frame they are lost:
 * the two differ by an offset that the reader does not know.
 *
 * @param inFrame 0 for the work frame, 1 for the machine's
 * @param named axis mask
 * @returns the axes that moved or were unknown before
 */
export function moveAxes(reader: Reader, inFrame: number, named: number): number {
  const { state } = reader;
  const { length } = state;
  const work = inFrame === 0;
  const place = work ? state.work : state.machine;
  const before = work ? state.workKnown : state.machineKnown;
  if ((state.modes & 3) !== 3)
    needModes(reader, modeBit.units | modeBit.distance, reader.block.at[firstLetter(named)]);
  if (state.incremental) return moveBy(reader, place, before, named, work);
  let moved = named & ~before;
  if (named & 1) {
    const x = readNumber(reader, letterX, length);
    if (x !== place[0]) {
      place[0] = x;
      moved |= 1;
    }
  }
  if (named & 2) {
    const y = readNumber(reader, letterY, length);
    if (y !== place[1]) {
      place[1] = y;
      moved |= 2;
    }
  }
  if (named & 4) {
    const z = readNumber(reader, letterZ, length);
    if (z !== place[2]) {
      place[2] = z;
      moved |= 4;
    }
  }
  if (named > 7) moved |= moveRotary(reader, place, named);
  know(reader, work, named);
  if (hasResidues(reader)) keepResidues(reader, place, named);
  return moved;
}

/** Marks axes as known in one frame and as lost in the other. */
function know(reader: Reader, work: boolean, named: number): void {
  const { state } = reader;
  if (work) {
    state.workKnown |= named;
    if (state.machineKnown & named) loseMachine(state, named);
  } else {
    state.machineKnown |= named;
    if (state.workKnown & named) loseWork(state, named);
  }
}

function moveRotary(reader: Reader, place: Float64Array, named: number): number {
  let moved = 0;
  useRotary(reader);
  for (let axis = 3; axis < 6; axis++) {
    if ((named & (1 << axis)) === 0) continue;
    const angle = readNumber(reader, letterOfAxis[axis], reader.quantities.angle);
    if (angle !== place[axis]) moved |= 1 << axis;
    place[axis] = angle;
  }
  return moved;
}

/** Incremental words count from where the axis is; one whose place is unknown stays unknown. */
function moveBy(reader: Reader, place: Float64Array, before: number, named: number, work: boolean): number {
  const { state, block } = reader;
  if (named > 7) useRotary(reader);
  let moved = 0;
  for (let axis = 0; axis < 6; axis++) {
    const bit = 1 << axis;
    if ((named & bit) === 0) continue;
    const letter = letterOfAxis[axis];
    const said = readNumber(reader, letter, axis < 3 ? state.length : reader.quantities.angle);
    if ((before & bit) === 0) {
      reader.report(
        findings.unknownPlace(placeOf(block, letter), wordText(reader, letter), `the place of ${axes[axis]}`),
      );
      loseMachine(state, bit);
      loseWork(state, bit);
      continue;
    }
    const distance = hasResidues(reader) ? distanceOnGrid(reader, place, axis, said) : said;
    if (distance !== 0) moved |= bit;
    place[axis] += distance;
    if (Math.abs(place[axis]) > largestLength)
      reader.report(findings.badNumber(placeOf(block, letter), wordText(reader, letter), "leads too far"));
    know(reader, work, bit);
  }
  return moved;
}

/** The letter of the first axis of a mask. */
function firstLetter(named: number): number {
  for (let axis = 0; axis < 6; axis++) if (named & (1 << axis)) return letterOfAxis[axis];
  return letterOfAxis[0];
}

/** The bit of an axis by its index. */
export function bitOfAxis(axis: 0 | 1 | 2): number {
  return axisBit[axes[axis]];
}
