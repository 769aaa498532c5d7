import { cases, differs, get, str } from "../builders.ts";
import type { Case, Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { faultOn } from "../fault.ts";
import { blockOf, codeWord, given, inOrder, missing, settled, wholeWord } from "../words.ts";
import { modeWord } from "./mode.ts";

/** Cutter compensation: off is a mode among others, on stands in a block of its own with the number of its offset. */
export function writeCompensation(context: Context): Statement[] {
  const { codes } = context.format;
  return [
    cases(
      get("step", "value"),
      [
        {
          of: str("off"),
          statements: [modeWord(context, "compensation", "compensation.off", codes.compensation.off)],
        },
        turnedOn(context, "left"),
        turnedOn(context, "right"),
      ],
      [faultOn("compensation")],
    ),
  ];
}

function turnedOn(context: Context, side: "left" | "right"): Case {
  const { codes, compensationWord, numbers } = context.format;
  const code = codeWord(context, `compensation.${side}`, codes.compensation[side]);
  const key = "compensation.word";
  const offset =
    compensationWord === null || compensationWord === undefined
      ? missing(code.address, key)
      : wholeWord(context, key, compensationWord, get("step", "offset"), numbers.width.D);
  const words = [code, given(differs(get("step", "offset"), 0), offset)];
  return { of: str(side), statements: [settled(), ...blockOf(context, inOrder(context, words))] };
}
