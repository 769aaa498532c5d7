import { and, cases, get, not, same, str, when } from "../builders.ts";
import type { Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { faultOn } from "../fault.ts";
import { blockOf, codeWord, settled } from "../words.ts";

/** One medium on, or all off: no dialect has a word that turns off one alone. */
export function writeCoolant(context: Context): Statement[] {
  const { codes } = context.format;
  const media = (["mist", "flood", "air", "through-tool"] as const).map((medium) => ({
    of: str(medium),
    statements: codeWord(context, `coolant.${medium}`, codes.coolant[medium]).statements,
  }));
  const allOff = and(not(get("step", "on")), same(get("step", "medium"), str("all")));
  const oneOff = when(not(get("step", "on")), [faultOn("coolant.off")]);
  const on = cases(get("step", "medium"), media, [faultOn("coolant")]);
  return [
    settled(),
    ...blockOf(context, [
      when(allOff, codeWord(context, "coolant.off", codes.coolantOff).statements, [oneOff, on]),
    ]),
  ];
}
