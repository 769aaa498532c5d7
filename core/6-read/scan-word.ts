import { mostCodes, mostWords, noCode } from "./block.ts";
import * as findings from "./findings-meaning.ts";
import { keywordKind } from "./keywords.ts";
import { letterG, letterM, letterName, letterO } from "./letters.ts";
import type { Reader } from "./reader.ts";
import { isDigit, isLetter, letterOf, skipBlanks, textBetween } from "./scan-bytes.ts";
import { isComputed, scanComputed } from "./variables/scan-computed.ts";
import type { ScannedNumber } from "./scan-number.ts";
import { scanNumber, skipValue } from "./scan-number.ts";

/** Reads the word, or the run of letters, that begins at `index`; gives the index behind it. */
export function scanWord(reader: Reader, index: number, end: number): number {
  const { bytes, block, from } = reader;
  if (bytes[index] >= 97 && block.lowerAt < 0) block.lowerAt = index - from;
  let next = index + 1;
  while (next < end && isLetter(bytes[next])) next++;
  if (
    next > index + 1 &&
    isComputed(reader, index + 1, end) &&
    keywordKind(textBetween(bytes, index, next)) === undefined
  )
    next = index + 1;
  if (next > index + 1) return scanRun(reader, index, next, end);
  const letter = reader.tables.letters[letterOf(bytes[index])];
  noteWord(reader, letter, index - from);
  const value = skipBlanks(bytes, next, end);
  if (value > next && value < end) noteBlank(reader, next);
  if (isComputed(reader, value, end)) return scanComputed(reader, letter, index, value, end);
  if (value < end && isVariable(bytes[value])) return scanVariable(reader, letter, index, value, end);
  return takeNumber(reader, letter, index, scanNumber(bytes, value, end));
}

/** Letters without numbers between them are a keyword, or no word at all. */
function scanRun(reader: Reader, index: number, next: number, end: number): number {
  const { bytes, block, from } = reader;
  const run = textBetween(bytes, index, next);
  const at = block.start + index - from;
  const kind = keywordKind(run);
  if (kind === undefined) {
    reader.report(findings.unknownWord(at, run));
    return skipValue(bytes, next, end);
  }
  reader.report(kind === "branch" ? findings.branch(at, run) : findings.subprogram(at, run));
  return end;
}

/** A word whose number only the controller can work out. */
function scanVariable(reader: Reader, letter: number, index: number, value: number, end: number): number {
  const { bytes, block, from } = reader;
  const next = skipValue(bytes, value, end);
  const at = block.start + index - from;
  const text = textBetween(bytes, index, next).trim();
  if (letter === letterO) reader.report(findings.subprogram(at, text));
  else reader.report(findings.variable(at, text));
  block.unknown |= 1 << letter;
  return next;
}

/** `#`, `[`, `<` or `=` in the place of a number. */
function isVariable(byte: number): boolean {
  return byte === 35 || byte === 91 || byte === 60 || byte === 61;
}

/** Keeps the order of words for the checks of form. */
function noteWord(reader: Reader, letter: number, at: number): void {
  const { block } = reader;
  if (block.wordCount === mostWords) return;
  block.words[block.wordCount] = letter;
  block.wordsAt[block.wordCount++] = at;
}

/** Notes the first blank that stands where the dialect has none. */
export function noteBlank(reader: Reader, index: number): void {
  if (reader.block.separatorAt < 0) reader.block.separatorAt = index - reader.from;
}

/** Puts a number that was scanned into the block, or says why it is none. */
function takeNumber(reader: Reader, letter: number, index: number, number: ScannedNumber): number {
  const { bytes, block, from } = reader;
  const at = block.start + index - from;
  if (number.blanks) noteBlank(reader, index);
  if (number.state !== "number") {
    const text = textBetween(bytes, index, Math.max(number.end, index + 1)).trim();
    reader.report(findings.badNumber(at, text, reasons[number.state]));
    block.unknown |= 1 << letter;
    return Math.max(number.end, index + 1);
  }
  if (letter === letterG || letter === letterM) takeCode(reader, letter, index, number);
  else if (block.mask & (1 << letter)) reader.report(findings.repeatedWord(at, letterName(letter)));
  else {
    block.mask |= 1 << letter;
    block.mantissa[letter] = number.mantissa;
    block.point[letter] = number.point;
    block.digits[letter] = Math.min(number.digits, 255);
    block.at[letter] = index - from;
  }
  return number.end;
}

const reasons = {
  missing: "is missing",
  malformed: "is malformed",
  "too-long": "has more than 15 digits",
} as const satisfies Record<Exclude<ScannedNumber["state"], "number">, string>;

/** Puts a G or M code into the block, in tenths. */
function takeCode(reader: Reader, letter: number, index: number, number: ScannedNumber): void {
  const { block, from } = reader;
  const isG = letter === letterG;
  const count = isG ? block.gCount : block.mCount;
  if (count === mostCodes) {
    const at = block.start + index - from;
    reader.report(
      findings.modalConflict(at, letterName(letter), `stands more than ${mostCodes} times in the block`),
    );
    return;
  }
  (isG ? block.gCode : block.mCode)[count] = tenths(number);
  (isG ? block.gAt : block.mAt)[count] = index - from;
  if (isG) block.gCount++;
  else block.mCount++;
}

/** A code in tenths: 59.1 -> 591, 2 -> 20; `noCode` for what is no code. */
function tenths({ mantissa, point }: ScannedNumber): number {
  if (mantissa < 0) return noCode;
  const value = point === 0 ? mantissa * 10 : (mantissa * 10) / 10 ** (point - 1);
  return Number.isInteger(value) && value < 10_000 ? value : noCode;
}

/** Index behind a word without a letter: digits, a sign or a point. */
export function skipLooseNumber(bytes: Uint8Array, index: number, end: number): number {
  let next = index + 1;
  while (next < end && (isDigit(bytes[next]) || bytes[next] === 46)) next++;
  return next;
}
