import type { Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { faultOn } from "../fault.ts";
import { blockOf, settled } from "../words.ts";
import { hold, messageWaits, toolNumber, toolWord } from "../write-held.ts";

/** The tool word; where it shares its block with the change code, it waits for that. */
export function writeSelectTool(context: Context): Statement[] {
  const { tools } = context.format;
  const { checks, value } = toolNumber(context);
  if (tools === undefined) return [faultOn("tools.blocks")];
  // The message before the operator's stop has named the tool, and may still wait for that stop.
  if (!tools.named) return messageWaits(context.format) ? [] : [settled()];
  if (tools.blocks === "together" && tools.changedBy === "code")
    return [settled(), ...checks, ...hold("tool", value)];
  const word = toolWord(context, value).statements;
  return [settled(), ...checks, ...blockOf(context, word)];
}
