import { call, get, same, set, str, when } from "../builders.ts";
import type { Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { blockOf, codeWord, settled, tracing } from "../words.ts";
import { messageWaits, release } from "../write-held.ts";
import { messageWord } from "../write-idiom.ts";
import { forgetFeed, forgetMotion, forgetPlaces, forgetSpeed } from "../write-state.ts";

/** A stop for the operator, who may move the machine. */
export function writePause(context: Context): Statement[] {
  const { codes, optionalStopMark } = context.format;
  const optional = codeWord(context, "stops.optional", codes.optionalStop).statements;
  const stop = codeWord(context, "stops.stop", codes.stop).statements;
  const isOptional = get("step", "optional");
  const block = (behind: readonly Statement[]): Statement[] =>
    optionalStopMark === ""
      ? blockOf(context, [when(isOptional, optional, stop), ...behind])
      : [
          when(
            isOptional,
            deletable(context, [...optional, ...behind]),
            blockOf(context, [...stop, ...behind]),
          ),
        ];
  const alone = [settled(), ...block([])];
  const withMessage = [...block(messageWord(context, get("state", "value"))), ...release()];
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

/** A block with the dialect's block delete mark before or behind its number: `/N10 M00`, `N10 /2 M00`. */
function deletable(context: Context, words: readonly Statement[]): Statement[] {
  const { optionalStopMark: mark, separator, blockDelete } = context.format;
  const text = str(mark + (mark.length > 1 ? separator : ""));
  if (blockDelete?.place === "after-number")
    return blockOf(context, [
      ...tracing(context, "blocks.delete"),
      set("at", call("write", "state", "at", text)),
      ...words,
    ]);
  const place = get("state", "at");
  return [set(place, call("write", "state", place, text)), ...blockOf(context, words)];
}
