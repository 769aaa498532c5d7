import type { Reader } from "./reader.ts";
import * as formFindings from "./findings-form.ts";
import * as findings from "./findings-meaning.ts";
import { isUtf8, skipBlanks, textBetween } from "./scan-bytes.ts";

const open = 40;
const close = 41;
const percent = 37;

/** A leaf says how its comments look, and its messages with them: one form of the two. */
function fixFor(style: "parentheses" | "semicolon"): string {
  const message = style === "semicolon" ? ";MSG, {{text}}" : "(MSG, {{text}})";
  return `Write it as the dialect has comments; or, where all comments of the program are like it, state \`comments: { style: ${style} }\` and \`idioms: { message: "${message}" }\` in a leaf of the dialect.`;
}

/** Reads a comment in parentheses that begins at `index`; gives the index behind it. */
export function scanParentheses(reader: Reader, index: number, end: number): number {
  const { bytes, block, from, format, tables } = reader;
  const at = block.start + index - from;
  if (format.comments.style !== "parentheses" && tables.message?.mark !== "(")
    reader.report(
      findings.badComment(at, "is in parentheses, which this dialect does not use", fixFor("parentheses")),
    );
  let stop = index + 1;
  while (stop < end && bytes[stop] !== close) {
    if (bytes[stop] === open)
      reader.report(findings.badComment(block.start + stop - from, "has another inside"));
    stop++;
  }
  if (stop === end) reader.report(findings.badComment(at, "does not end in its block"));
  readComment(reader, index + 1, stop, "(");
  return Math.min(stop + 1, end);
}

/** Reads a comment that a semicolon begins and the end of the line ends. */
export function scanSemicolon(reader: Reader, index: number, end: number): number {
  const { block, from, format, tables } = reader;
  if (format.comments.style !== "semicolon" && tables.message?.mark !== ";")
    reader.report(
      findings.badComment(
        block.start + index - from,
        "is begun by a semicolon, which this dialect does not use",
        fixFor("semicolon"),
      ),
    );
  readComment(reader, index + 1, end, ";");
  return end;
}

/** A comment says nothing to the controller, but a message to the operator is one; the last of a block counts. */
function readComment(reader: Reader, from: number, to: number, mark: "(" | ";"): void {
  const { block, format } = reader;
  const at = block.start + from - reader.from - 1;
  if (block.commentAt < 0) block.commentAt = at - block.start;
  checkCharacters(reader, from, to);
  const most = format.comments.longest;
  if (to - from > most) {
    const length = textBetween(reader.bytes, from, to).length;
    if (length > most) reader.report(formFindings.tooLong(at, "comment", length, most, "comments.longest"));
  }
  if (block.message !== undefined)
    reader.report(findings.badComment(block.messageAt, "is not shown: another follows in its block"));
  block.message = messageText(reader, from, to, mark);
  block.messageAt = at;
}

/** The operator's text of a message comment: "MSG, LOAD TOOL 2" -> "LOAD TOOL 2"; undefined for other comments. */
function messageText(reader: Reader, from: number, to: number, mark: "(" | ";"): string | undefined {
  const { bytes, tables } = reader;
  if (tables.message?.mark !== mark) return undefined;
  let index = from;
  for (const character of tables.message.prefix) {
    index = skipBlanks(bytes, index, to);
    if (index === to || String.fromCharCode(bytes[index]).toUpperCase() !== character) return undefined;
    index++;
  }
  return textBetween(bytes, index, to).trim();
}

/** Comments, too, are written in the characters of the dialect. */
function checkCharacters(reader: Reader, from: number, to: number): void {
  const { bytes, block, format } = reader;
  const at = (index: number): number => block.start + index - reader.from;
  let lower = -1;
  let high = -1;
  for (let index = from; index < to; index++) {
    const byte = bytes[index];
    if (byte >= 128 && high < 0) high = index;
    else if (byte >= 97 && byte <= 122 && lower < 0) lower = index;
    else if ((byte < 32 && byte !== 9) || byte === 127)
      reader.report(findings.badBytes(at(index), "a control character in a comment"));
    else if (byte === percent && format.delimiter === "percent")
      reader.report(formFindings.characters(at(index), "a % in a comment, which may end the transfer"));
  }
  if (lower >= 0 && format.characters === "upper")
    reader.report(formFindings.characters(at(lower), "lower-case letters in a comment"));
  if (high < 0) return;
  if (!isUtf8(bytes.subarray(from, to)))
    reader.report(findings.badBytes(at(high), "bytes that are no UTF-8"));
  else if (format.characters !== "utf-8")
    reader.report(formFindings.characters(at(high), "characters that are not ASCII in a comment"));
}
