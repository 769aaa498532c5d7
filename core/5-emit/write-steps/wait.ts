import type { Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { settled } from "../words.ts";
import { idiomBlocks } from "../write-idiom.ts";

/** The program waits on an input. */
export function writeWait(context: Context): Statement[] {
  return [settled(), ...idiomBlocks(context, "wait-signal")];
}
