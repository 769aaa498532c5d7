import { get, orElse, same, str, when } from "../builders.ts";
import type { Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { faultOn } from "../fault.ts";
import { release, startWords } from "../write-held.ts";
import { forgetFeed } from "../write-state.ts";
import { blockOf, codeWord, inOrder, keyed, numberWord, settled } from "../words.ts";

/** A dwell, in the dialect's word and unit. */
export function writeDwell(context: Context): Statement[] {
  const { dwell, codes } = context.format;
  if (dwell === undefined) return [faultOn("dwell.word")];
  // A dwell of the other kind comes out as 0, which the reader does not take for it.
  const amount = dwell.unit === "rev" ? orElse(get("step", "revolutions"), 0) : get("step", "time");
  const time = keyed(context, "dwell.word", numberWord(dwell.word, "writeDwellTime", amount));
  const words = [codeWord(context, "dwell.code", codes.dwell), time];
  // A controller may keep the time as its feed, where both have one letter.
  const after = dwell.word === "F" ? forgetFeed() : [];
  const alone = [settled(), ...blockOf(context, inOrder(context, words)), ...after];
  if (dwell.blocks === "apart") return alone;
  const shared = [...blockOf(context, inOrder(context, [...words, startWords(context)])), ...after];
  return [when(same(get("state", "held"), str("start")), [...shared, ...release()], alone)];
}
