import { rowKind } from "#base";
import * as formFindings from "./findings-form.ts";
import { letterN, letterO, letterS, letterT } from "./letters.ts";
import type { Group, Slot } from "./modal-groups.ts";
import { checkWidths } from "./code-width.ts";
import { readWhole, textAt } from "./read-number.ts";
import type { Reader } from "./reader.ts";

/** Whether the block has words beside a block number and a program number. */
export function hasWords({ block }: Reader): boolean {
  const rest = (block.mask | block.unknown) & ~((1 << letterN) | (1 << letterO));
  return rest !== 0 || block.gCount > 0 || block.mCount > 0;
}

/** How the block is written: what the careful scanner noted. */
export function checkWriting(reader: Reader): void {
  const { block, format, extras } = reader;
  const most = reader.tables.longest;
  if (block.length > most)
    reader.report(formFindings.tooLong(block.start, "block", block.length, most, "blocks.longest"));
  if (block.lowerAt >= 0 && format.characters === "upper")
    reader.report(formFindings.characters(block.start + block.lowerAt, "lower-case letters"));
  checkNumber(reader);
  checkWordCount(reader);
  if (block.commentAt >= 0 && format.comments.place === "own-block" && hasWords(reader))
    reader.report(formFindings.commentPlace(block.start + block.commentAt));
  // An idiom states the order and the blanks of its block itself.
  if (extras.length > 0 || block.unclear) return;
  if (block.separatorAt >= 0)
    reader.report(formFindings.separator(block.start + block.separatorAt, separatorNames[format.separator]));
  checkOrder(reader);
  checkWidths(reader);
}

/** The words of a block, its number not counted. */
function checkWordCount(reader: Reader): void {
  const { block, format } = reader;
  if (format.mostWords === 0) return;
  const count = block.words.subarray(0, block.wordCount).filter((letter) => letter !== letterN).length;
  if (count > format.mostWords) reader.report(formFindings.mostWords(block.start, count, format.mostWords));
}

const separatorNames = { "": "nothing", " ": "one blank", "\t": "one tab" } as const;

function checkNumber(reader: Reader): void {
  const { block, format, tables } = reader;
  const has = (block.mask & (1 << letterN)) !== 0;
  if (has) readWhole(reader, letterN);
  if (has && format.blockNumber === null)
    reader.report(formFindings.blockNumber(block.start + block.at[letterN], false));
  if (!has && tables.required && hasWords(reader)) reader.report(formFindings.blockNumber(block.start, true));
}

/** The first word that stands behind one that belongs behind it. */
function checkOrder(reader: Reader): void {
  const { block } = reader;
  let highest = -1;
  let last = -1;
  for (let index = 0; index < block.wordCount; index++) {
    const rank = rankOf(reader, block.words[index]);
    if (rank === 0) continue;
    if (rank < highest) {
      const word = textAt(reader, block.wordsAt[index]);
      const before = textAt(reader, block.wordsAt[last]);
      reader.report(formFindings.wordOrder(block.start + block.wordsAt[index], word, before));
      return;
    }
    highest = rank;
    last = index;
  }
}

/**
 * Place of a letter in a block, 0 for one that may stand anywhere. Beside a start or a change the speed and the tool have an
 * order of their own, which those who read them see to: `M03 S9000` under start-first.
 */
function rankOf({ tables, slots }: Reader, letter: number): number {
  if (letter === letterS && slots.spindle?.meaning.kind === "spindle-start") return 0;
  if (letter === letterT && slots["tool-change"]) return 0;
  return tables.ranks[letter];
}

/** Groups whose words act on the machine and stand apart from motion. */
const actions = ["stop", "tool-change", "spindle", "coolant", "gear"] as const satisfies readonly Group[];

/** Which words share the block. */
export function checkSharing(reader: Reader, rowsBefore: number): void {
  const { block, format, slots } = reader;
  const moves = hasMotion(reader, rowsBefore);
  if (moves)
    for (const group of actions) {
      const slot = slots[group];
      if (slot) reader.report(formFindings.ownBlock(block.start + slot.at, textAt(reader, slot.at)));
    }
  if (block.mCount > format.mWords)
    reader.report(formFindings.mWords(block.start + block.mAt[format.mWords], block.mCount, format.mWords));
  if (block.gCount > 1) checkGWords(reader, moves);
}

function hasMotion({ batch }: Reader, rowsBefore: number): boolean {
  for (let row = rowsBefore; row < batch.count; row++) if (batch.kind[row] !== rowKind.aside) return true;
  return false;
}

/** Modes as the dialect's `blocks.modes` has them: each a code that stays in force and moves nothing. */
const modeGroups = [
  "plane",
  "distance",
  "feed-mode",
  "units",
  "compensation",
  "work-offset",
  "path",
  "look-ahead",
  "corner-feed",
  "arc-centre",
  "rotation",
  "scale",
] as const satisfies readonly Group[];

function checkGWords(reader: Reader, moves: boolean): void {
  const { block, format, slots } = reader;
  const stated = modeGroups.filter((group) => slots[group] !== undefined);
  const second = block.start + block.gAt[1];
  if (format.gWords === "one" && block.gCount - companions(reader) > 1)
    reader.report(formFindings.gWords(second, "This dialect takes one G word a block.", "blocks.g-words"));
  else if (format.modes === "apart" && (stated.length > 1 || (stated.length === 1 && moves)))
    reader.report(
      formFindings.gWords(second, "This dialect states each mode in a block of its own.", "blocks.modes"),
    );
}

/** G words that only say how another one of the block is meant. */
function companions({ slots }: Reader): number {
  const motionKind = slots.motion?.meaning.kind;
  const isKind = (slot: Slot | undefined, kind: Slot["meaning"]["kind"]): number =>
    slot?.meaning.kind === kind ? 1 : 0;
  return (
    isKind(slots["non-modal"], "machine-move") +
    (motionKind === "cycle" ? isKind(slots["cycle-return"], "cycle-return") : 0) +
    (motionKind === "motion" ? isKind(slots["length-offset"], "length-on") : 0)
  );
}
