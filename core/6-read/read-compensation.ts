import { freeLetters } from "./block.ts";
import { letterBit, letterNumber } from "./letters.ts";
import * as findings from "./findings-meaning.ts";
import type { Group } from "./modal-groups.ts";
import { readWhole, textAt } from "./read-number.ts";
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

/**
 * What puts the compensated path elsewhere while compensation is on: another plane, other units, an offset. No controller does
 * the same with it (NISTIR 6556 3.5.13 has it as an error for work offsets, its interpreter for all of them).
 */
export function refuseCompensated(reader: Reader, group: Group): void {
  const { state, slots, block } = reader;
  if (!state.compensated) return;
  const at = slots[group]?.at ?? 0;
  const reason = "changes what the cutter compensation in force rests on";
  reader.report(findings.modalConflict(block.start + at, textAt(reader, at), reason));
}
