import { get } from "../builders.ts";
import type { Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { faultOn } from "../fault.ts";
import { blockOf, settled } from "../words.ts";
import { hold, toolWord } from "../write-held.ts";

/** The tool word; where it shares its block with the change code, it waits for that. */
export function writeSelectTool(context: Context): Statement[] {
  const { tools } = context.format;
  const tool = get("step", "tool");
  if (tools === undefined) return [faultOn("tools.blocks")];
  if (tools.blocks === "together") return [settled(), ...hold("tool", tool)];
  return [settled(), ...blockOf(context, toolWord(context, tool).statements)];
}
