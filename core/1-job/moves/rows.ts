import { axisBit, frame } from "#base";
import type { MoveReader } from "./reader.ts";

/**
 * Appends a row; the batch has room. A row names exactly the axes of `words`; the columns of the others are 0.
 *
 * @param words axis mask
 * @param feed in the unit of the feed mode; 0 on rapids
 * @param c1 first coordinate of the centre, atoms; `c2` the second; `turns` signed; 0 on what is no arc
 */
export function pushRow(
  reader: MoveReader,
  kind: number,
  words: number,
  feed: number,
  c1: number,
  c2: number,
  turns: number,
  source: number,
): void {
  const { batch, move } = reader;
  const { values } = move;
  const row = batch.count++;
  batch.kind[row] = kind;
  batch.frame[row] = frame.work;
  batch.known[row] = words;
  batch.stated[row] = words;
  batch.x[row] = (words & axisBit.x) === 0 ? 0 : values[0];
  batch.y[row] = (words & axisBit.y) === 0 ? 0 : values[1];
  batch.z[row] = (words & axisBit.z) === 0 ? 0 : values[2];
  if (batch.abc)
    for (let axis = 0; axis < 3; axis++)
      batch.abc[axis][row] = (words & (axisBit.a << axis)) === 0 ? 0 : values[3 + axis];
  batch.feed[row] = feed;
  batch.c1[row] = c1;
  batch.c2[row] = c2;
  batch.turns[row] = turns;
  batch.aside[row] = -1;
  batch.source[row] = source;
}

/** Moves the place that the reader keeps, in the axes of `words`. */
export function moveTo(reader: MoveReader, words: number): void {
  const { place, move } = reader;
  if ((words & axisBit.x) !== 0) place[0] = move.values[0];
  if ((words & axisBit.y) !== 0) place[1] = move.values[1];
  if ((words & axisBit.z) !== 0) place[2] = move.values[2];
}
