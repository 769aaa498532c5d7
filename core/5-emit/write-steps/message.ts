import type { Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { settled } from "../words.ts";
import { idiomBlocks } from "../write-idiom.ts";

/** A message to the operator. */
export function writeMessage(context: Context): Statement[] {
  return [settled(), ...idiomBlocks(context, "message")];
}
