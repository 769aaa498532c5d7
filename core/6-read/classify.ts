import type { ExtraCode } from "#dialect";
import { noCode } from "./block.ts";
import * as findings from "./findings-meaning.ts";
import { subprogramCodes } from "./keywords.ts";
import { letterBit, letterG, letterM, letterName, letterNumber } from "./letters.ts";
import type { Meaning } from "./meanings.ts";
import { isBlend } from "./meanings.ts";
import type { Slot } from "./modal-groups.ts";
import { groupOf } from "./modal-groups.ts";
import { plainValue, textAt, wordText } from "./read-number.ts";
import type { Reader } from "./reader.ts";
import type { WordedMeaning } from "./tables.ts";
import { codeIndex } from "./tables.ts";
import { wayOutOf } from "./unknown-codes.ts";

/**
 * Sorts the codes of the block by modal group (NISTIR 6556 Table 4), and sets the words aside that a dwell, a blended path
 * or an extra code of the block takes for itself.
 */
export function classify(reader: Reader): void {
  const { block, slots, extras } = reader;
  for (const group of reader.filled) slots[group] = undefined;
  reader.filled.length = reader.coolants.length = extras.length = 0;
  for (let index = 0; index < block.gCount; index++)
    classifyCode(reader, letterG, block.gCode[index], block.gAt[index]);
  for (let index = 0; index < block.mCount; index++)
    classifyCode(reader, letterM, block.mCode[index], block.mAt[index]);
  if (slots["non-modal"]?.meaning.kind === "dwell")
    reserve(reader, letterBit(reader.format.dwell?.word), slots["non-modal"].at);
  if (slots.path !== undefined && isBlend(slots.path.meaning))
    reserve(reader, letterBit(reader.format.toleranceWord), slots.path.at);
  for (const { code, at } of extras) reserve(reader, lettersOf(code), at);
}

function classifyCode(reader: Reader, letter: number, tenths: number, at: number): void {
  const { slots, tables, block } = reader;
  const index = tenths === noCode ? -1 : codeIndex(letter, tenths);
  const plain = index < 0 ? undefined : tables.meaningOf.get(index);
  const worded = tables.worded.get(index);
  const meaning = worded === undefined ? plain : (wordedMeaning(reader, worded, at) ?? plain);
  if (meaning === undefined) {
    if (worded === undefined) reportUnknown(reader, letter, tenths, at);
    else reportWordless(reader, worded, at);
    return;
  }
  if (meaning.kind === "extra") {
    addExtra(reader, index, at);
    return;
  }
  const group = groupOf(meaning);
  const taken = group === "coolant" ? takenCoolant(reader, meaning) : slots[group];
  if (group === "coolant") reader.coolants.push({ meaning, at });
  if (taken === undefined) {
    slots[group] = { meaning, at };
    reader.filled.push(group);
  } else {
    const reason = `is of the same modal group as ${textAt(reader, taken.at)}, which stands in the same block`;
    reader.report(findings.modalConflict(block.start + at, textAt(reader, at), reason));
  }
}

/** The meaning of a code with the word beside it that the block has; that word belongs to the code from here on. */
function wordedMeaning(reader: Reader, worded: readonly WordedMeaning[], at: number): Meaning | undefined {
  const { block } = reader;
  const found = worded.find(
    ({ letter, value }) => (block.mask & (1 << letter)) !== 0 && plainValue(reader, letter) === value,
  );
  if (found === undefined) return undefined;
  reserve(reader, 1 << found.letter, at);
  block.used |= 1 << found.letter;
  return found.meaning;
}

/** A code that means nothing without one of its words. */
function reportWordless(reader: Reader, worded: readonly WordedMeaning[], at: number): void {
  const { block } = reader;
  const words = worded.map(({ letter, value }) => letterName(letter) + String(value)).join(" or ");
  block.unclear = true;
  block.used = block.mask;
  reader.report(
    findings.wordMissing(block.start + at, `${textAt(reader, at)} needs ${words}.`, `Add ${words}.`),
  );
}

/** The coolant word that another one cannot stand beside: any, or where media share a block one of the same medium. */
function takenCoolant({ coolants, format }: Reader, meaning: Meaning): Slot | undefined {
  if (format.coolantBlocks === "apart") return coolants[0];
  const medium = mediumOf(meaning);
  return coolants.find((one) => [medium, "all"].includes(mediumOf(one.meaning)) || medium === "all");
}

function mediumOf(meaning: Meaning): string {
  return "medium" in meaning ? meaning.medium : "all";
}

/**
 * Codes without a meaning are told, those of subprograms by their own rule. The words of the block may belong to them, so
 * they are not told as unused; beside an unknown G code or a call even axis words are no motion.
 */
function reportUnknown(reader: Reader, letter: number, tenths: number, at: number): void {
  const { block } = reader;
  const name = letterName(letter);
  const calls = subprogramCodes.some((code) => code.letter === name && code.value === tenths);
  const text = textAt(reader, at);
  const place = block.start + at;
  const { fix, key } = wayOutOf(name, tenths);
  reader.report(calls ? findings.subprogram(place, text) : findings.unknownCode(place, text, fix, key));
  block.unclear = true;
  if (calls || letter === letterG) block.used = block.mask;
}

/** Several codes may be the same but for the fixed values of their words: the one with most of them that fits is meant. */
function addExtra(reader: Reader, index: number, at: number): void {
  const candidates = reader.tables.extras.get(index) ?? [];
  let best: ExtraCode | undefined;
  for (const candidate of candidates) {
    if (!fits(reader, candidate)) continue;
    if (best === undefined || fixedCount(candidate) > fixedCount(best)) best = candidate;
  }
  if (best !== undefined) reader.extras.push({ code: best, at });
  else reportMisfit(reader, candidates[0], at);
}

function fixedCount(code: ExtraCode): number {
  return Object.values(code.words).filter((value) => typeof value === "number").length;
}

/** Whether all words with a fixed value stand in the block with it. */
function fits(reader: Reader, code: ExtraCode): boolean {
  return Object.entries(code.words).every(
    ([name, value]) => typeof value !== "number" || hasValue(reader, name, value),
  );
}

function hasValue(reader: Reader, name: string, value: number): boolean {
  const letter = letterNumber(name);
  return (reader.block.mask & (1 << letter)) !== 0 && plainValue(reader, letter) === value;
}

/** No code of the dialect has the words of this block. */
function reportMisfit(reader: Reader, code: ExtraCode, at: number): void {
  const { block } = reader;
  block.unclear = true;
  for (const [name, value] of Object.entries(code.words)) {
    if (typeof value !== "number" || hasValue(reader, name, value)) continue;
    const letter = letterNumber(name);
    const text = textAt(reader, at);
    if (block.mask & (1 << letter))
      reader.report(
        findings.unusedWord(
          block.start + block.at[letter],
          wordText(reader, letter),
          `has no meaning with ${text}`,
        ),
      );
    else
      reader.report(
        findings.wordMissing(
          block.start + at,
          `${text} needs ${name}${value}.`,
          `Add ${name}${value}.`,
          code.key,
        ),
      );
  }
}

function lettersOf(code: ExtraCode): number {
  return Object.keys(code.words).reduce((letters, name) => letters | letterBit(name), 0);
}

/** Sets letters aside for one code; two codes that want the same word cannot share a block. */
function reserve(reader: Reader, letters: number, at: number): void {
  const { block } = reader;
  const present = letters & block.mask;
  if (present & block.reserved)
    reader.report(
      findings.modalConflict(
        block.start + at,
        textAt(reader, at),
        "wants a word that another code of the block wants, too",
      ),
    );
  block.reserved |= letters;
}
