import * as findings from "./findings-meaning.ts";
import { letterN } from "./letters.ts";
import type { Reader } from "./reader.ts";
import { isDigit, textBetween } from "./scan-bytes.ts";

/** Reads a block delete mark, `/` or `/2`; gives the index behind it. */
export function scanDelete(reader: Reader, index: number, end: number): number {
  const { bytes, block, format, from } = reader;
  const isNumbered = format.blockDelete?.mark === "numbered" && index + 1 < end && isDigit(bytes[index + 1]);
  const next = index + (isNumbered ? 2 : 1);
  block.deleted = textBetween(bytes, index, next);
  block.deletedAt = block.start + index - from;
  return next;
}

/** Whether a mark may stand here: behind the block number, where this dialect has it there. */
export function deletesHere({ block, format }: Reader): boolean {
  const isNumber = block.mask === 1 << letterN && block.gCount === 0 && block.mCount === 0;
  return block.deleted === "" && isNumber && format.blockDelete?.place === "after-number";
}

/**
 * The operator's switch decides whether a block with a mark runs. Under a dialect whose optional stop is a stop with such a
 * mark, that block is the optional stop, and any other would be skipped by the switch that the operator sets for the stops.
 */
export function checkDelete(reader: Reader): void {
  const { block, format } = reader;
  const { deleted, deletedAt } = block;
  const isBehind = (block.mask & (1 << letterN)) !== 0 && deletedAt > block.start + block.at[letterN];
  const place = isBehind ? "after-number" : "before-number";
  const hasNumber = (block.mask & (1 << letterN)) !== 0;
  if (format.blockDelete === null || (hasNumber && place !== format.blockDelete.place))
    reader.report(findings.unknownWord(deletedAt, deleted));
  else if (format.optionalStopMark === "") reader.report(findings.blockDelete(deletedAt, false));
  else if (deleted === format.optionalStopMark && isStopAlone(reader)) block.optionalStop = true;
  else reader.report(findings.blockDelete(deletedAt, true));
}

function isStopAlone({ block, format }: Reader): boolean {
  const { stop } = format.codes;
  const words = block.mask & ~(1 << letterN);
  if (!stop || words !== 0 || block.unknown !== 0 || block.message !== undefined) return false;
  const [own, other, codes] =
    stop.letter === "M"
      ? [block.mCount, block.gCount, block.mCode]
      : [block.gCount, block.mCount, block.gCode];
  return own === 1 && other === 0 && codes[0] === stop.value;
}
