import { get, same, str, when } from "../builders.ts";
import type { Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { blockOf, codeWord, settled } from "../words.ts";
import { messageWaits, release } from "../write-held.ts";
import { messageWord } from "../write-idiom.ts";
import { forgetFeed, forgetMotion, forgetPlaces, forgetSpeed } from "../write-state.ts";

/** A stop for the operator, who may move the machine. */
export function writePause(context: Context): Statement[] {
  const { codes } = context.format;
  const optional = codeWord(context, "stops.optional", codes.optionalStop).statements;
  const stop = codeWord(context, "stops.stop", codes.stop).statements;
  const code = when(get("step", "optional"), optional, stop);
  const alone = [settled(), ...blockOf(context, [code])];
  const withMessage = [
    ...blockOf(context, [code, ...messageWord(context, get("state", "value"))]),
    ...release(),
  ];
  return [
    ...(messageWaits(context.format)
      ? [when(same(get("state", "held"), str("message")), withMessage, alone)]
      : alone),
    ...forgetMotion(),
    ...forgetFeed(),
    ...forgetSpeed(context.format),
    forgetPlaces(),
  ];
}
