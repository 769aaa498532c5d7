import * as findings from "./findings-meaning.ts";
import { letterN } from "./letters.ts";
import type { Reader } from "./reader.ts";
import { scanNumber } from "./scan-number.ts";

/** Whether a colon at this place begins a block number: where this dialect marks sections so, before all words. */
export function marksSection({ block, format }: Reader): boolean {
  return (
    format.sections.mark === ":" &&
    format.blockNumber !== null &&
    block.mask === 0 &&
    block.gCount === 0 &&
    block.mCount === 0
  );
}

/** `:120` is the block number of the first block of a section: the alignment function of ISO 6983-1. */
export function scanAlignment(reader: Reader, index: number, end: number): number {
  const { block, bytes, from } = reader;
  const number = scanNumber(bytes, index + 1, end);
  if (number.state === "number") {
    block.aligned = true;
    block.mask |= 1 << letterN;
    block.mantissa[letterN] = number.mantissa;
    block.point[letterN] = number.point;
    block.digits[letterN] = Math.min(number.digits, 255);
    block.at[letterN] = index - from;
  } else reader.report(findings.badNumber(block.start + index - from, ":", "is none"));
  return Math.max(number.end, index + 1);
}
