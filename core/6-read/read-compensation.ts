import { freeLetters } from "./block.ts";
import { letterBit, letterNumber } from "./letters.ts";
import { readWhole } from "./read-number.ts";
import type { Reader } from "./reader.ts";
import { pushStep } from "./rows.ts";

/** Cutter compensation; a side may name its radius offset, otherwise the controller takes that of the tool (NISTIR 6556 3.5.10). */
export function readCompensation(reader: Reader): void {
  const { slots, block, format, state } = reader;
  const meaning = slots.compensation?.meaning;
  if (meaning?.kind !== "compensation") return;
  const word = format.compensationWord;
  const bit = meaning.value === "off" ? 0 : freeLetters(block) & letterBit(word);
  block.used |= bit;
  const offset = bit && word ? readWhole(reader, letterNumber(word)) : 0;
  if (offset === undefined) return;
  pushStep(reader, { kind: "compensation", value: meaning.value, offset });
  state.compensated = meaning.value !== "off";
  if (state.compensated) state.cancelledAnew.delete("compensation");
  else state.cancelledAnew.add("compensation");
}
