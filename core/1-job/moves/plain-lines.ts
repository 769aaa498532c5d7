import { axisBit, capacity, fillLines } from "#base";
import { minus, point, zero } from "../scan/bytes.ts";
import { shortDigits } from "../scan/number.ts";
import type { Shape } from "./known-shapes.ts";
import { mostPatience, mostShapes } from "./known-shapes.ts";
import type { MoveReader } from "./reader.ts";
import { slot } from "./reader.ts";
import { shapeOf } from "./shape.ts";

/** Keeps the shape of the line just read. @param from offset in the source behind the comma before it */
export function learnShape(reader: MoveReader, from: number): void {
  const { scanner, known } = reader;
  if (known.patience === 0 || from < scanner.start) return;
  const shape = shapeOf(reader, from - scanner.start);
  if (shape === undefined) return;
  known.patience--;
  known.shapes.push(shape);
  if (known.shapes.length > mostShapes) known.shapes.shift();
}

/**
 * The hot path: reads lines that have the shape of one before, whose numbers are all short, and writes their rows. It
 * takes nothing that the careful reader would refuse or read otherwise; whatever else comes is left to it.
 *
 * @param margin bytes that a line does not exceed: nearer to the end of the window it stops
 */
export function readPlainLines(reader: MoveReader, margin: number): void {
  const { scanner, batch, place, numbers } = reader;
  const { shapes } = reader.known;
  // What makes a line a finding, or gives its row more columns, is looked at by the careful reader.
  const isPlain = reader.moved && !reader.lost && reader.feed > 0 && !batch.abc;
  if (!isPlain || reader.operation.feedMode === "inverse-time") return;
  const { known, stated, x, y, z, feed, source, count: first } = batch;
  const rows = capacity(batch);
  const end = scanner.end - margin;
  let row = first;
  let tried = 0;
  let shape = shapes.length - 1;
  while (row < rows && scanner.at < end && tried < shapes.length) {
    const { words, fed, lead } = shapes[shape];
    const behind = takeLine(reader, shapes[shape], scanner.at);
    if (behind < 0) {
      tried++;
      shape = shape === 0 ? shapes.length - 1 : shape - 1;
      continue;
    }
    tried = 0;
    source[row] = scanner.start + scanner.at + lead;
    scanner.at = behind;
    known[row] = stated[row] = words;
    if ((words & axisBit.x) !== 0) place[0] = numbers[0];
    if ((words & axisBit.y) !== 0) place[1] = numbers[1];
    if ((words & axisBit.z) !== 0) place[2] = numbers[2];
    x[row] = (words & axisBit.x) === 0 ? 0 : place[0];
    y[row] = (words & axisBit.y) === 0 ? 0 : place[1];
    z[row] = (words & axisBit.z) === 0 ? 0 : place[2];
    if (fed) reader.feed = numbers[slot.feed];
    feed[row] = reader.feed;
    row++;
  }
  if (row === first) return;
  fillLines(batch, first, row);
  batch.count = row;
  reader.known.patience = mostPatience;
}

/**
 * Compares the bytes from `at` on with a shape, and reads the numbers between them into `reader.numbers`.
 *
 * A 0 stands behind the window, and no shape has one, so nothing is read past the window's end.
 *
 * @returns the index behind the line; -1 if it is of another shape, or a number needs a closer look
 */
function takeLine({ scanner, numbers, length, feedScale }: MoveReader, shape: Shape, from: number): number {
  const { bytes } = scanner;
  const { literals, ends, slots } = shape;
  const pieces = ends.length;
  let at = from;
  let next = 0;
  for (let piece = 0; piece < pieces; piece++) {
    for (const end = ends[piece]; next < end; next++) if (bytes[at++] !== literals[next]) return -1;
    if (piece === pieces - 1) break;
    const negative = bytes[at] === minus;
    if (negative) at++;
    const begin = at;
    // The digits 0 to 9 are the bytes 48 to 57, and 48 has no bit in common with 0 to 9.
    let digit = bytes[at] ^ zero;
    let digits = 0;
    if (digit === 0) digit = bytes[++at] ^ zero;
    else
      while (digit < 10) {
        digits = (digits * 10 + digit) | 0;
        digit = bytes[++at] ^ zero;
      }
    let count = at - begin;
    let fraction = 0;
    if (digit === (point ^ zero)) {
      if (count === 0) return -1;
      const pointAt = at;
      while ((digit = bytes[++at] ^ zero) < 10) digits = (digits * 10 + digit) | 0;
      fraction = at - pointAt - 1;
      if (fraction === 0) return -1;
      count += fraction;
    }
    // What goes on like a number (an exponent, a digit behind a first 0) is not what stands in the shape behind it.
    if (count === 0 || count > shortDigits) return -1;
    const place = slots[piece];
    const scale = place === slot.feed ? feedScale : length;
    if (fraction > scale.power) return -1;
    const size = digits * scale.multipliers[fraction];
    if (size > scale.largest || (place === slot.feed && (negative || size === 0))) return -1;
    // Taken from 0, no size gives a negative zero.
    numbers[place] = negative ? 0 - size : size;
  }
  return at;
}
