import { mostCodes } from "../block.ts";
import * as meaning from "../findings-meaning.ts";
import { keywordKind } from "../keywords.ts";
import { letterG, letterM, letterName } from "../letters.ts";
import type { Reader } from "../reader.ts";
import { isBlank, isLetter, skipBlanks, textBetween } from "../scan-bytes.ts";
import { readAssignment } from "./assignment.ts";
import { readValue } from "./expression.ts";
import type { Formula } from "./formula.ts";
import { createFormula } from "./formula.ts";

const hash = 35;
const open = 91;
const plus = 43;
const minus = 45;

/** A code that is worked out may be off by this much, in tenths of its number (tried on an interpreter). */
const codeWithin = 0.001;

/** Whether what stands at an index is worked out: a parameter, a bracket, a function, or one of them behind a sign. */
export function isComputed({ bytes, computes }: Reader, index: number, end: number): boolean {
  if (!computes) return false;
  let at = index;
  while (bytes[at] === plus || bytes[at] === minus) at = skipBlanks(bytes, at + 1, end);
  if (at >= end) return false;
  return bytes[at] === hash || bytes[at] === open || isFunction(bytes, at, end);
}

/** Letters with a bracket behind them, if they are no keyword. */
function isFunction(bytes: Uint8Array, index: number, end: number): boolean {
  let at = index;
  while (at < end && isLetter(bytes[at])) at = skipBlanks(bytes, at + 1, end);
  if (at === index || at >= end || bytes[at] !== open) return false;
  return keywordKind(textBetween(bytes, index, at).replace(/\s/g, "")) === undefined;
}

/** The values from an index on, in the line at hand. */
function formulaAt(reader: Reader, index: number, end: number): Formula {
  const { bytes, block, from } = reader;
  return createFormula(reader, { bytes, base: block.start - from, at: index, end });
}

/** Works the number of a word out that stands at `index`, its value at `value`; gives the index behind it. */
export function scanComputed(
  reader: Reader,
  letter: number,
  index: number,
  value: number,
  end: number,
): number {
  const { block, from } = reader;
  const formula = formulaAt(reader, value, end);
  const number = readValue(formula);
  // Behind a number blanks have been passed over, to see whether it goes on: they belong to no word.
  while (isBlank(reader.bytes[formula.at - 1])) formula.at--;
  const at = block.start + index - from;
  if (Number.isNaN(number)) {
    block.unknown |= 1 << letter;
    if (letter === letterG || letter === letterM) block.unclear = true;
  } else if (letter === letterG || letter === letterM) takeCode(reader, letter, index, number);
  else if (block.mask & (1 << letter)) reader.report(meaning.repeatedWord(at, letterName(letter)));
  else {
    const bit = 1 << letter;
    block.mask |= bit;
    block.computed |= bit;
    block.mantissa[letter] = number;
    block.point[letter] = 0;
    block.digits[letter] = 0;
    block.at[letter] = index - from;
    block.ends[letter] = formula.at - from;
  }
  return formula.at;
}

/** A G or M code that is worked out. */
function takeCode(reader: Reader, letter: number, index: number, value: number): void {
  const { block, from } = reader;
  const isG = letter === letterG;
  const at = block.start + index - from;
  const count = isG ? block.gCount : block.mCount;
  const tenths = Math.round(value * 10);
  const isCode = Math.abs(tenths - value * 10) <= codeWithin && tenths >= 0 && tenths < 10_000;
  if (count === mostCodes) {
    const reason = `stands more than ${String(mostCodes)} times in the block`;
    reader.report(meaning.modalConflict(at, letterName(letter), reason));
    return;
  }
  if (!isCode) {
    block.unclear = true;
    reader.report(meaning.badNumber(at, letterName(letter), `is ${String(value)}, which is no code`));
    return;
  }
  (isG ? block.gCode : block.mCode)[count] = tenths;
  (isG ? block.gAt : block.mAt)[count] = index - from;
  if (isG) block.gCount++;
  else block.mCount++;
}

/** `#12 = value` in the place of a word; gives the index behind it. */
export function scanAssignment(reader: Reader, index: number, end: number): number {
  const formula = formulaAt(reader, index, end);
  readAssignment(formula);
  return formula.at;
}
