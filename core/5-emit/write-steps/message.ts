import { get } from "../builders.ts";
import type { Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { settled } from "../words.ts";
import { hold, messageWaits } from "../write-held.ts";
import { idiomBlocks } from "../write-idiom.ts";

/** A message to the operator; where the message of a stop shares its block, it waits for that. */
export function writeMessage(context: Context): Statement[] {
  if (messageWaits(context.format)) return [settled(), ...hold("message", get("step", "text"))];
  return [settled(), ...idiomBlocks(context, "message")];
}
