import { placeOf } from "./block.ts";
import { dwellBlock } from "./findings-form.ts";
import * as findings from "./findings-meaning.ts";
import { letterNumber } from "./letters.ts";
import { forgetFeed } from "./read-feed.ts";
import { readNumber, textAt, wordText } from "./read-number.ts";
import type { Reader } from "./reader.ts";
import { pushStep } from "./rows.ts";

/** A dwell: its time stands in the word that the dialect names, whatever that letter means elsewhere. */
export function readDwell(reader: Reader): void {
  const { slots, block, format } = reader;
  const slot = slots["non-modal"];
  if (slot?.meaning.kind !== "dwell") return;
  const place = block.start + slot.at;
  const text = textAt(reader, slot.at);
  if (format.dwell === undefined) {
    reader.report(findings.undeclared(place, text, "dwell.word"));
    return;
  }
  if (format.dwell.blocks === "apart" && slots.spindle?.meaning.kind === "spindle-start")
    reader.report(dwellBlock(place, text));
  const letter = letterNumber(format.dwell.word);
  const bit = 1 << letter;
  if (block.unknown & bit) return;
  if ((block.mask & bit) === 0) {
    const { word } = format.dwell;
    reader.report(
      findings.wordMissing(
        place,
        `${text} does not say how long.`,
        `Add ${word} and the time.`,
        "dwell.word",
      ),
    );
    return;
  }
  block.used |= bit;
  if (format.dwell.word === "F") forgetFeed(reader);
  const time = readNumber(reader, letter, reader.quantities.dwell);
  const byTurns = format.dwell.unit === "rev";
  if (time >= 0)
    pushStep(reader, byTurns ? { kind: "dwell", time: 0, revolutions: time } : { kind: "dwell", time });
  else reader.report(findings.badNumber(placeOf(block, letter), wordText(reader, letter), "is below 0"));
}
