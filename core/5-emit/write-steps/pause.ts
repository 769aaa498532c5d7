import { get, when } from "../builders.ts";
import type { Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { blockOf, codeWord, settled } from "../words.ts";
import { forgetFeed, forgetMotion, forgetPlaces } from "../write-state.ts";

/** A stop for the operator, who may move the machine. */
export function writePause(context: Context): Statement[] {
  const { codes } = context.format;
  const optional = codeWord(context, "stops.optional", codes.optionalStop).statements;
  const stop = codeWord(context, "stops.stop", codes.stop).statements;
  return [
    settled(),
    ...blockOf(context, [when(get("step", "optional"), optional, stop)]),
    ...forgetMotion(),
    ...forgetFeed(),
    forgetPlaces(),
  ];
}
