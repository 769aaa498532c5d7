import { clearBlock } from "./block.ts";
import * as formFindings from "./findings-form.ts";
import * as findings from "./findings-meaning.ts";
import { letterO } from "./letters.ts";
import type { Reader } from "./reader.ts";
import { isBlank, isLetter, isLineEnd, skipBlanks, textBetween } from "./scan-bytes.ts";
import { scanParentheses, scanSemicolon } from "./scan-comment.ts";
import { checkDelete, deletesHere, scanDelete } from "./scan-delete.ts";
import { marksSection, scanAlignment } from "./scan-alignment.ts";
import { isNumberByte, scanNumber, skipValue } from "./scan-number.ts";
import { noteBlank, scanWord, skipLooseNumber } from "./scan-word.ts";
import { longestLine } from "./tables.ts";
import { settle } from "./variables/parameters.ts";
import { scanAssignment } from "./variables/scan-computed.ts";
import { decidesNext } from "./flow/stop.ts";

const percent = 37;
const open = 40;
const slash = 47;
const colon = 58;
const semicolon = 59;
const hash = 35;

/**
 * Scans a line of any form into the block and says what is odd about it: words in any order, blanks anywhere, lower case,
 * comments between words, block delete, delimiters, program numbers (NISTIR 6556 3.3).
 *
 * @param to end of the bytes at hand; the line has its line end before it
 * @returns the index of the line end; -1 where the line is too long to be one
 */
export function scanCareful(reader: Reader, start: number, to: number): number {
  const { bytes, block } = reader;
  reader.from = start;
  clearBlock(block);
  let end = start;
  const last = Math.min(to, start + longestLine + 1);
  while (end < last && !isLineEnd(bytes[end])) end++;
  if (end === last && (end === to ? end - start > longestLine : true)) return refuse(reader);
  block.length = characterCount(bytes, start, end);
  let index = skipBlanks(bytes, scanByteOrderMark(reader, start, end), end);
  if (index === end) block.line = "blank";
  if (index === end) return end;
  if (bytes[index] === percent) return scanDelimiter(reader, index, end);
  if (bytes[index] === slash) index = scanDelete(reader, index, end);
  if (reader.flow !== undefined && decidesNext(reader, start, end)) block.line = "flow";
  else scanWords(reader, index, end);
  if (reader.computes) settle(reader.parameters);
  if (block.deleted !== "") checkDelete(reader);
  if (
    block.line === "nothing" &&
    (block.mask || block.unknown || block.gCount || block.mCount || block.message !== undefined)
  )
    block.line = "words";
  return end;
}

/** The three bytes that mark UTF-8 at the head of the file, where this dialect has them. */
function scanByteOrderMark({ bytes, block, format, state }: Reader, start: number, end: number): number {
  const isMark = block.start === 0 && end - start >= 3 && isByteOrderMark(bytes, start);
  if (!isMark || !format.byteOrderMark) return start;
  state.byteOrderMark = true;
  return start + 3;
}

function isByteOrderMark(bytes: Uint8Array, index: number): boolean {
  return bytes[index] === 0xef && bytes[index + 1] === 0xbb && bytes[index + 2] === 0xbf;
}

/** A line that would have to be held in memory whole, however long it is, is no block. */
function refuse(reader: Reader): number {
  reader.refused = true;
  reader.report(findings.badBytes(reader.block.start, `a line of more than ${longestLine} bytes`));
  return -1;
}

/** Characters of a line: bytes but for those that continue one of UTF-8. */
function characterCount(bytes: Uint8Array, start: number, end: number): number {
  let count = 0;
  for (let index = start; index < end; index++) if ((bytes[index] & 0xc0) !== 0x80) count++;
  return count;
}

/** `%` alone, or with the program number behind it. */
function scanDelimiter(reader: Reader, index: number, end: number): number {
  const { bytes, block, format, from } = reader;
  block.line = "delimiter";
  const next = skipBlanks(bytes, index + 1, end);
  if (next === end) return end;
  const number = scanNumber(bytes, next, end);
  if (format.programNumber?.letter === "%" && number.state === "number" && number.end === end) {
    setProgramNumber(reader, "%", index, number.mantissa);
    return end;
  }
  reader.report(
    formFindings.framing(
      block.start + index - from,
      `The delimiter shares its line with ${textBetween(bytes, next, end).trim()}.`,
      "Leave % alone on its line.",
      "file.delimiter",
    ),
  );
  return end;
}

/** Everything behind the `/` of a line. */
function scanWords(reader: Reader, start: number, end: number): void {
  const { bytes, block } = reader;
  let index = start;
  let behind = -1;
  while ((index = skipBlanks(bytes, index, end)) < end) {
    if (isLetter(bytes[index])) {
      if (behind >= 0) checkSeparator(reader, behind, index);
      index = scanWord(reader, index, end);
      behind = index;
    } else {
      index = scanOther(reader, index, end);
      behind = -1;
    }
  }
  if (block.ended || reader.tables.blockEnd === -1 || block.line !== "nothing") return;
  if (block.mask || block.gCount || block.mCount)
    reader.report(
      formFindings.framing(
        block.start + end - reader.from,
        "The block does not end with the sign for the end of a block.",
        `End it with ${reader.format.blockEnd}`,
        "file.end-of-block",
      ),
    );
}

/** Between two words stands the dialect's separator, once. */
function checkSeparator(reader: Reader, behind: number, index: number): void {
  const { separator } = reader.tables;
  const length = separator === -1 ? 0 : 1;
  if (index - behind !== length || (length === 1 && reader.bytes[behind] !== separator))
    noteBlank(reader, behind);
}

/** Whatever begins with no letter: a comment, the end of the block, a program number, or something odd. */
function scanOther(reader: Reader, index: number, end: number): number {
  const { bytes, block, from, format, tables } = reader;
  const byte = bytes[index];
  const at = block.start + index - from;
  if (byte === open) return scanParentheses(reader, index, end);
  if (byte === tables.blockEnd && !block.ended) {
    block.ended = true;
    return index + 1;
  }
  if (byte === semicolon) return scanSemicolon(reader, index, end);
  if (byte === slash && deletesHere(reader)) return scanDelete(reader, index, end);
  if (byte === colon && format.programNumber?.letter === ":") return scanColon(reader, index, end);
  if (byte === colon && marksSection(reader)) return scanAlignment(reader, index, end);
  if (isNumberByte(byte)) return scanLoose(reader, index, end);
  if (byte === hash && reader.computes) return scanAssignment(reader, index, end);
  if (byte === hash || byte === 91 || byte === 60 || byte === 61) {
    reader.report(findings.variable(at, textBetween(bytes, index, end).trim()));
    return byte === hash ? skipAssignment(bytes, index, end) : skipValue(bytes, index, end);
  }
  if (byte >= 128 || byte < 32 || byte === 127) return scanOddBytes(reader, index, end);
  reader.report(findings.unknownWord(at, String.fromCharCode(byte)));
  return index + 1;
}

/** `#12 = value`: the value may hold words of its own, so the rest of the line belongs to it. */
function skipAssignment(bytes: Uint8Array, index: number, end: number): number {
  const next = skipValue(bytes, index, end);
  const comment = bytes.subarray(0, end).indexOf(open, next);
  return comment < 0 ? end : comment;
}

/** `:1234` as program number. */
function scanColon(reader: Reader, index: number, end: number): number {
  const number = scanNumber(reader.bytes, index + 1, end);
  if (number.state === "number") setProgramNumber(reader, ":", index, number.mantissa);
  else reader.report(findings.badNumber(reader.block.start + index - reader.from, ":", "is none"));
  return Math.max(number.end, index + 1);
}

/** A program number is kept as an O word, whatever sign stands before it. */
function setProgramNumber(reader: Reader, mark: ":" | "%", index: number, value: number): void {
  const { block, from } = reader;
  block.programMark = mark;
  block.mask |= 1 << letterO;
  block.mantissa[letterO] = value;
  block.point[letterO] = 0;
  block.at[letterO] = index - from;
}

/** A number without an address. */
function scanLoose(reader: Reader, index: number, end: number): number {
  const { bytes, block, from } = reader;
  const next = skipLooseNumber(bytes, index, end);
  reader.report(findings.unknownWord(block.start + index - from, textBetween(bytes, index, next)));
  return next;
}

/** Bytes that no program text has; a run of them is told once. */
function scanOddBytes(reader: Reader, index: number, end: number): number {
  const { bytes, block, from } = reader;
  const at = block.start + index - from;
  const odd = (byte: number): boolean => byte >= 128 || (byte < 32 && !isBlank(byte)) || byte === 127;
  let next = index;
  while (next < end && odd(bytes[next])) next++;
  const isMark = at === 0 && isByteOrderMark(bytes, index);
  reader.report(
    findings.badBytes(at, isMark ? "a byte order mark" : "bytes that are no characters of a block"),
  );
  return next;
}
