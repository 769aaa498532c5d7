import { linearAxes } from "#base";
import { backslash, beginsNumber, comma, minus, nine, plus, point, quote, zero } from "../scan/bytes.ts";
import type { Shape } from "./known-shapes.ts";
import type { MoveReader } from "./reader.ts";
import { keyIndex, slot } from "./reader.ts";

/*
 * The moves of a job are mostly lines that one program wrote, and so they look alike: only the digits differ. What a line
 * looked like that was read with all care is kept, as the bytes between its numbers; a move with just these bytes and
 * plain numbers between them is a line of the same words, and needs no second look.
 */

/** The most bytes of a line whose shape is kept: a line of this shape lies in the window as a whole. */
const longestLine = 300;

const letterX = "x".charCodeAt(0);
const lastOfFeed = "d".charCodeAt(0);

const lineAlone = 1 << keyIndex.line;
const lineAndFeed = lineAlone | (1 << keyIndex.feed);

/**
 * The shape of the line just read, if it is one of x, y and z without fault; otherwise undefined.
 *
 * @param from index in the window behind the comma before it; the window has not moved since
 */
export function shapeOf({ scanner, move }: MoveReader, from: number): Shape | undefined {
  const { bytes, at } = scanner;
  const fed = move.seen === lineAndFeed;
  const isPlain = !move.faulty && (fed || move.seen === lineAlone) && (move.words & ~linearAxes) === 0;
  if (!isPlain || at - from > longestLine || bytes[at - 1] !== comma) return undefined;
  const literals: number[] = [];
  const ends: number[] = [];
  const slots: number[] = [];
  let inText = false;
  for (let index = from; index < at; index++) {
    const byte = bytes[index];
    // A key that is written with an escape may hold digits; such a line stays with the careful reader.
    if (byte === backslash) return undefined;
    if (byte === quote) inText = !inText;
    if (inText || !beginsNumber(byte)) {
      literals.push(byte);
      continue;
    }
    ends.push(literals.length);
    slots.push(slotBefore(literals));
    while (isOfNumber(bytes[index + 1])) index++;
  }
  const lead = move.source - scanner.start - from;
  return {
    literals: Uint8Array.from(literals),
    ends: [...ends, literals.length],
    slots,
    words: move.words,
    lead,
    fed,
  };
}

/** Place of the number that follows: the key before it ends in the letter of an axis, or is `feed`, which ends in a d. */
function slotBefore(literals: readonly number[]): number {
  const letter = literals[literals.lastIndexOf(quote) - 1];
  return letter === lastOfFeed ? slot.feed : letter - letterX;
}

function isOfNumber(byte: number): boolean {
  return (
    (byte >= zero && byte <= nine) || byte === point || byte === minus || byte === plus || (byte | 32) === 101
  );
}
