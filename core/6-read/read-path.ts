import { placeOf } from "./block.ts";
import * as findings from "./findings-meaning.ts";
import { letterNumber } from "./letters.ts";
import { needModes } from "./need-mode.ts";
import { readNumber, wordText } from "./read-number.ts";
import type { Reader } from "./reader.ts";
import { pushStep } from "./rows.ts";
import { modeBit } from "./state.ts";

/** The path mode. A blended one may say how far it leaves its corners; without that word nothing bounds it. */
export function readPath(reader: Reader): void {
  const { slots, block, format, state, quantities } = reader;
  const slot = slots.path;
  if (slot?.meaning.kind !== "mode" || slot.meaning.step.kind !== "path") return;
  const { step } = slot.meaning;
  const word = step.value === "blend" ? format.toleranceWord : undefined;
  const letter = word ? letterNumber(word) : -1;
  const bit = word ? 1 << letter : 0;
  // A number that is a variable has been told; what it bounds is not known.
  if (block.unknown & bit) return;
  if ((block.mask & bit) === 0) {
    pushStep(reader, step);
    return;
  }
  block.used |= bit;
  needModes(reader, modeBit.units, slot.at);
  const tolerance = readNumber(reader, letter, quantities.length[state.units]);
  if (tolerance > 0) pushStep(reader, { ...step, tolerance });
  else
    reader.report(
      findings.badNumber(placeOf(block, letter), wordText(reader, letter), "is no tolerance above 0"),
    );
}
