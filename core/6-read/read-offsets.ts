import { axisBit } from "#base";
import { freeLetters, placeOf } from "./block.ts";
import * as formFindings from "./findings-form.ts";
import * as findings from "./findings-meaning.ts";
import { axisLetters, letterBit, letterNumber } from "./letters.ts";
import { refuseCompensated } from "./read-compensation.ts";
import { readWhole, textAt, wordText } from "./read-number.ts";
import type { Reader } from "./reader.ts";
import { pushStep } from "./rows.ts";
import { forgetLevel, loseMachine, loseWork } from "./state.ts";

/** Length offset on (G43 with its number) or off. */
export function readLengthOffset(reader: Reader): void {
  const kind = reader.slots["length-offset"]?.meaning.kind;
  if (kind !== undefined) refuseCompensated(reader, "length-offset");
  if (kind === "length-off") setLengthOffset(reader, 0);
  if (kind !== "length-on") return;
  const number = lengthNumber(reader);
  if (number !== undefined) setLengthOffset(reader, number);
  checkOwnNumber(reader, number);
  if (number !== 0) noteLengthBlock(reader);
}

/** The offset behind its written number: H103 is offset 3 where 100 is added, H0 is none. */
function meantOffset(reader: Reader, number: number): number | undefined {
  const { format, block } = reader;
  const added = format.lengthOffset?.added ?? 0;
  if (number === 0 || number > added) return number === 0 ? 0 : number - added;
  const letter = letterNumber(format.lengthOffset?.word || "H");
  const reason = `is not above ${added}, where the length offsets of this dialect begin`;
  reader.report(findings.badNumber(placeOf(block, letter), wordText(reader, letter), reason));
  return undefined;
}

/** Where each tool has the length offset of its own number, another one is a slip. */
function checkOwnNumber(reader: Reader, number: number | undefined): void {
  const { state, format, block, slots } = reader;
  if (format.lengthOffset?.free !== false || !number || state.tool === undefined || number === state.tool)
    return;
  const place = block.start + (slots["length-offset"]?.at ?? 0);
  reader.report(formFindings.offsetNumber(place, number, state.tool));
}

/** Whether the length offset shares the block of a motion: what is wrong with that, or may be with the block that follows. */
function noteLengthBlock(reader: Reader): void {
  const { format, block, slots, state } = reader;
  const at = slots["length-offset"]?.at ?? 0;
  const moves = (freeLetters(block) & axisLetters) !== 0;
  if (format.lengthOffset?.form === "own-block" && moves)
    reader.report(formFindings.lengthBlock(block.start + at, textAt(reader, at), true));
  if (format.lengthOffset?.form === "with-first-z" && !moves)
    state.lengthAlone = { rows: reader.rowsBefore + reader.batch.count, word: textAt(reader, at) };
}

/** A rapid that moves Z right behind a length offset, which should have stood in its block. */
export function checkLengthAlone(reader: Reader, moved: number): void {
  const { state, block } = reader;
  const alone = state.lengthAlone;
  state.lengthAlone = undefined;
  if (alone === undefined || (moved & axisBit.z) === 0) return;
  if (alone.rows === reader.rowsBefore + reader.batch.count)
    reader.report(formFindings.lengthBlock(block.start, alone.word, false));
}

function lengthNumber(reader: Reader): number | undefined {
  const { block, slots, format } = reader;
  const word = format.lengthOffset?.word || "H";
  const bit = letterBit(word);
  if (freeLetters(block) & bit) {
    block.used |= bit;
    const number = readWhole(reader, letterNumber(word));
    return number === undefined ? undefined : meantOffset(reader, number);
  }
  const at = slots["length-offset"]?.at ?? 0;
  if ((block.unknown & bit) === 0)
    reader.report(
      findings.wordMissing(
        block.start + at,
        `${textAt(reader, at)} does not say which length offset.`,
        `Add ${word} and its number.`,
        "length-offset.word",
      ),
    );
  return undefined;
}

/** Another length offset puts work Z elsewhere; one that moves the axis, or the point that machine Z speaks of, loses that, too. */
function setLengthOffset(reader: Reader, number: number): void {
  const { state, machine } = reader;
  pushStep(reader, { kind: "length-offset", number });
  if (state.lengthOffset === number) return;
  state.lengthOffset = number;
  loseWork(state, axisBit.z);
  forgetLevel(state);
  const moves = number === 0 ? machine.lengthOffset?.cancelMoves : machine.lengthOffset?.selectMoves;
  if (moves || machine.retract?.actsOn === "tool-tip") loseMachine(state, axisBit.z);
}

/** A work offset: another one puts all work coordinates elsewhere. */
export function readWorkOffset(reader: Reader): void {
  const { slots, state } = reader;
  const meaning = slots["work-offset"]?.meaning;
  if (meaning?.kind !== "work-offset") return;
  refuseCompensated(reader, "work-offset");
  pushStep(reader, { kind: "work-offset", number: meaning.number });
  state.standingFrame = 0;
  if (state.workOffset === meaning.number) return;
  state.workOffset = meaning.number;
  loseWork(state, 63);
  forgetLevel(state);
}
