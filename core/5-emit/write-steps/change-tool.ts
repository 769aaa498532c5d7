import { get, same, str, when } from "../builders.ts";
import type { Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { blockOf, codeWord, settled } from "../words.ts";
import { release, toolWord } from "../write-held.ts";
import { forgetFeed, forgetMotion } from "../write-state.ts";

/** The change code, with the tool word that waits for it. The dialect says which comes first, whatever the order of other blocks. */
export function writeChangeTool(context: Context): Statement[] {
  const { tools, codes } = context.format;
  const forget = [...forgetMotion(), ...forgetFeed()];
  // The tool word has changed the tool already.
  if (tools?.changedBy === "tool-word") return [settled(), ...forget];
  const change = codeWord(context, "tools.change", codes.toolChange).statements;
  const alone = [settled(), ...blockOf(context, change)];
  if (tools?.blocks !== "together") return [...alone, ...forget];
  const tool = toolWord(context, get("state", "value")).statements;
  const pair = tools.order === "select-first" ? [...tool, ...change] : [...change, ...tool];
  return [
    when(same(get("state", "held"), str("tool")), [...blockOf(context, pair), ...release()], alone),
    ...forget,
  ];
}
