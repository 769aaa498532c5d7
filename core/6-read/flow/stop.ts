import type { Reader } from "../reader.ts";
import { flowLineAt } from "./flow-line.ts";

/** Whether the line at hand decides which is next. An O with a number alone at the head is the number of the program. */
export function decidesNext({ flow, bytes, state }: Reader, start: number, end: number): boolean {
  const line = flow && flowLineAt(bytes, start, end, flow.words);
  if (line === undefined) return false;
  return line.keyword !== "O" || state.phase !== "head";
}

/** Whether the plain block at hand calls or leaves a subprogram. */
export function callsByCode({ block, flow }: Reader): boolean {
  if (flow === undefined) return false;
  for (let index = 0; index < block.mCount; index++)
    if (flow.words.codes.includes(block.mCode[index] / 10)) return true;
  return false;
}

/** Stops the reading of blocks: the line at hand decides which is next. */
export function stopHere({ flow, block }: Reader): void {
  if (flow === undefined) return;
  flow.stopped = true;
  flow.at = block.start;
}

/** Stops behind the end of the program, where it branches: what follows in the text may belong to other branches. */
export function stopAtEnd({ flow }: Reader): void {
  if (flow?.structures === undefined || flow.ended) return;
  flow.stopped = true;
  flow.at = -1;
}
