import { placeOf } from "./block.ts";
import * as formFindings from "./findings-form.ts";
import * as findings from "./findings-meaning.ts";
import { letterO } from "./letters.ts";
import { readWhole, wordText } from "./read-number.ts";
import { checkLastSection } from "./read-section.ts";
import type { Reader } from "./reader.ts";
import { firstTime } from "./reader.ts";
import { pushStep } from "./rows.ts";

/** A line with `%`: the first begins the program, another ends it. */
export function readDelimiter(reader: Reader): void {
  const { block, state, format } = reader;
  if (format.delimiter === "none" && format.programNumber?.letter !== "%" && firstTime(reader, "delimiter"))
    reader.report(
      formFindings.framing(block.start, "This dialect has no % lines.", "Take them out.", "file.delimiter"),
    );
  const opens = state.phase === "head" && !state.opened;
  if (opens && state.programNumber !== 0) forgetEarlyNumber(reader);
  if (opens && state.section.commented) reportEarlyComment(reader);
  readProgramNumber(reader);
  if (opens) {
    state.opened = true;
    return;
  }
  state.closed = true;
  if (state.phase !== "ended") endWithoutCode(reader, block.start);
}

/** What stands before the program's start is leader, which a control does not read (DIN 66025-1; from memory). */
function forgetEarlyNumber({ block, state, report }: Reader): void {
  state.programNumber = 0;
  const message = "The program number stands before the % line, where a controller does not read yet.";
  report(formFindings.framing(block.start, message, "Put it behind that line.", "file.program-number"));
}

/** A control reads nothing before that line, and NISTIR 6556 3.2.2 has it first of all but blank lines. */
function reportEarlyComment({ block, report }: Reader): void {
  const message = "A comment stands before the % line, which is the first of the program to a controller.";
  report(formFindings.framing(block.start, message, "Put it behind that line.", "file.delimiter"));
}

/** The text ends, or its last delimiter stands, and no end code has been read. */
function endWithoutCode(reader: Reader, place: number): void {
  reader.state.phase = "ended";
  if (!reader.fragment) reader.report(findings.noEnd(place));
}

/** The program number at the head; an O word further down is the label of a subprogram. */
export function readProgramNumber(reader: Reader): void {
  const { block, state } = reader;
  const bit = 1 << letterO;
  if ((block.mask & bit) === 0) return;
  block.used |= bit;
  if (state.phase !== "head" || state.programNumber !== 0) {
    reader.report(findings.subprogram(placeOf(block, letterO), wordText(reader, letterO)));
    return;
  }
  state.programNumber = readWhole(reader, letterO) ?? 0;
  checkProgramNumber(reader);
}

function checkProgramNumber(reader: Reader): void {
  const { block, state, format } = reader;
  const place = placeOf(block, letterO);
  const key = "file.program-number";
  const wanted = format.programNumber;
  const number = state.programNumber;
  if (wanted === null) {
    reader.report(formFindings.framing(place, "This dialect has no program numbers.", "Take it out.", key));
    return;
  }
  if (wanted.letter !== block.programMark)
    reader.report(
      formFindings.framing(
        place,
        `The program number begins with ${block.programMark}; this dialect has ${wanted.letter}.`,
        `Write ${wanted.letter}${number}.`,
        key,
      ),
    );
  if (number < wanted.from || number > wanted.to) {
    const fix = `Take a number from ${wanted.from} to ${wanted.to}.`;
    reader.report(formFindings.framing(place, `The program number ${number} is out of range.`, fix, key));
  }
}

/** The first block with words begins the program: what must stand before it has been read by now. */
export function startProgram(reader: Reader): void {
  const { state, format, block, fragment } = reader;
  if (state.phase !== "head") return;
  state.phase = "body";
  if (fragment) return;
  pushStep(reader, { kind: "program-start", number: state.programNumber });
  if (format.byteOrderMark && !state.byteOrderMark)
    reader.report(
      formFindings.framing(
        0,
        "The file has no byte order mark.",
        "Save it with one.",
        "file.byte-order-mark",
      ),
    );
  if (format.delimiter === "percent" && !state.opened)
    reader.report(
      formFindings.framing(
        block.start,
        "The program does not begin with a % line.",
        "Add it.",
        "file.delimiter",
      ),
    );
  if (format.programNumber !== null && state.programNumber === 0)
    reader.report(
      formFindings.framing(
        block.start,
        "The program has no program number.",
        "Add it.",
        "file.program-number",
      ),
    );
}

/** A line behind the end of the program. */
export function readAfterEnd(reader: Reader): void {
  if (firstTime(reader, "after-end")) reader.report(findings.afterEnd(reader.block.start));
}

/** The end of the text, at byte `size`. */
export function finishProgram(reader: Reader, size: number): void {
  const { state, format, fragment } = reader;
  reader.block.start = size;
  startProgram(reader);
  if (!fragment && !reader.refused) checkLastSection(reader, size);
  if (state.phase !== "ended" && !reader.refused) endWithoutCode(reader, size);
  if (!fragment && format.delimiter === "percent" && !state.closed && !reader.refused)
    reader.report(
      formFindings.framing(size, "The program does not end with a % line.", "Add it.", "file.delimiter"),
    );
}
