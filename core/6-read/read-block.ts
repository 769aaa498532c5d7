import type { Finding } from "#base";
import { frame } from "#base";
import { placeOf } from "./block.ts";
import { classify } from "./classify.ts";
import * as findings from "./findings-meaning.ts";
import { axisLetters, centreLetters, letterF, letterN, letterName, letterR } from "./letters.ts";
import { executeAsWritten } from "./execute-as-written.ts";
import { isBlend, motion } from "./meanings.ts";
import { readCompensation } from "./read-compensation.ts";
import { readCoolantOn, readEarlyCoolantOff, readLateCoolantOff } from "./read-coolant.ts";
import { readDwell } from "./read-dwell.ts";
import { readExtras } from "./read-extra.ts";
import { readFeed, readFeedOfBlock } from "./read-feed.ts";
import { checkSharing, checkWriting, hasWords } from "./read-form.ts";
import { readMessage } from "./read-message.ts";
import { readCycleReturn, readMode, readSynchronising } from "./read-modes.ts";
import { move, readMotion } from "./read-motion.ts";
import { wordText } from "./read-number.ts";
import { readPath } from "./read-path.ts";
import { readLengthOffset, readWorkOffset } from "./read-offsets.ts";
import { readProgramNumber, startProgram } from "./read-framing.ts";
import { readReference } from "./read-reference.ts";
import { checkSections, markSection } from "./read-section.ts";
import { readEarlyStop, readGear, readLateStop, readSpeed, readSpindleStart } from "./read-spindle.ts";
import { readStop } from "./read-stop.ts";
import { readToolChange, readToolSelection } from "./read-tool.ts";
import type { Reader } from "./reader.ts";

/** What a block does, in the order in which it does it (NISTIR 6556 Table 8); what the table lacks stands beside its like. */
export const orderOfExecution = [
  readMessage, // 1
  readMode("feed-mode"), // 2
  readFeedOfBlock, // 3
  readGear, // 4
  readSpeed, // 4
  readToolSelection, // 5
  readToolChange, // 6
  readSpindleStart, // 7
  readEarlyStop, // 7
  readCoolantOn, // 8
  readEarlyCoolantOff, // 8
  readMode("overrides"), // 9
  readExtras, // waits and outputs: before the block pauses or moves
  readDwell, // 10
  readMode("plane"), // 11
  readMode("units"), // 12
  readCompensation, // 13
  readLengthOffset, // 14
  readWorkOffset, // 15
  readPath, // 16
  readMode("look-ahead"), // 16
  readMode("corner-feed"), // 16
  readMode("distance"), // 17
  readMode("arc-centre"), // 17
  readCycleReturn, // 18
  readSynchronising, // for the cycle that follows in a block of its own
  readReference, // 19
  readMode("non-modal"), // 19: local shift
  readMode("rotation"), // 19
  readMode("scale"), // 19
  readMotion, // 20
  readLateStop, // the ISO order
  readLateCoolantOff, // the ISO order
  readStop, // 21
] as const satisfies readonly ((reader: Reader) => void)[];

/** Letters of a block that is motion and nothing else. */
const motionLetters = axisLetters | centreLetters | (1 << letterR) | (1 << letterF) | (1 << letterN);

/** Reads the words of a block. Nearly all blocks of a program are motion alone and take the short way. */
export function readBlock(reader: Reader): void {
  const { block, state, tables } = reader;
  const isPlain =
    state.phase === "body" &&
    !state.section.opens &&
    !state.section.due &&
    state.standingFrame === 0 &&
    !block.careful &&
    block.mCount === 0 &&
    (block.mask & ~motionLetters) === 0;
  if (isPlain && block.gCount === 0) {
    if (state.motion >= 0 && state.motion !== motion.cycle) return readPlainMotion(reader, false);
  } else if (isPlain && block.gCount === 1 && state.cycle.kind === undefined) {
    const code = tables.motionOf[block.gCode[0]];
    if (code >= 0) {
      state.motion = code;
      return readPlainMotion(reader, true);
    }
  }
  readAnyBlock(reader);
}

function readPlainMotion(reader: Reader, explicit: boolean): void {
  const { block } = reader;
  block.used = 1 << letterN;
  if (block.mask & (1 << letterF)) readFeed(reader);
  move(reader, explicit, frame.work);
  if (block.mask & ~block.used) reportUnused(reader);
}

function readAnyBlock(reader: Reader): void {
  const { block, batch } = reader;
  const rowsBefore = batch.count;
  block.used |= 1 << letterN;
  readProgramNumber(reader);
  if (!hasWords(reader) && block.message === undefined) return;
  startProgram(reader);
  markSection(reader);
  classify(reader);
  if (reader.format.executes === "left-to-right") executeAsWritten(reader);
  else for (const act of orderOfExecution) act(reader);
  if (block.careful) checkWriting(reader);
  checkSharing(reader, rowsBefore);
  if (!reader.fragment) checkSections(reader, rowsBefore);
  if (block.mask & ~block.used) reportUnused(reader);
}

/** Words that are left over are of no letter that the dialect knows, or nothing in their block asks for them. */
function reportUnused(reader: Reader): void {
  const { block, tables } = reader;
  const left = block.mask & ~block.used;
  for (let letter = 0; letter < 26; letter++) {
    if ((left & (1 << letter)) === 0) continue;
    const text = wordText(reader, letter);
    if (tables.ranks[letter] === 0) reader.report(findings.unknownWord(placeOf(block, letter), text));
    else if (!block.unclear) reader.report(unusedWord(reader, letter, text));
  }
}

/** Beside the code of a blended path a word may be its tolerance, in another dialect. */
function unusedWord({ block, slots, format }: Reader, letter: number, text: string): Finding {
  const place = placeOf(block, letter);
  const name = letterName(letter);
  if (
    slots.path === undefined ||
    !isBlend(slots.path.meaning) ||
    format.toleranceWord ||
    !"EPQR".includes(name)
  )
    return findings.unusedWord(place, text);
  const fix = `Take it out; or, where it says how far the path may leave its corners, state \`path: { tolerance-word: ${name} }\` in a leaf of the dialect.`;
  return findings.unusedWord(place, text, undefined, fix, "path.tolerance-word");
}
