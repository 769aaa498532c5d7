import { get } from "../builders.ts";
import type { Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { faultOn } from "../fault.ts";
import { blockOf, codeWord, inOrder, keyed, numberWord, settled } from "../words.ts";

/** A dwell, in the dialect's word and unit. */
export function writeDwell(context: Context): Statement[] {
  const { dwell, codes } = context.format;
  if (dwell === undefined) return [faultOn("dwell.word")];
  const time = keyed(context, "dwell.word", numberWord(dwell.word, "writeDwellTime", get("step", "time")));
  return [
    settled(),
    ...blockOf(context, inOrder(context, [codeWord(context, "dwell.code", codes.dwell), time])),
  ];
}
