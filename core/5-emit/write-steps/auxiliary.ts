import { axisBit } from "#base";
import type { AuxiliaryAction } from "#base";
import type { ExtraCode, IdiomName } from "#dialect";
import { add, cases, get, numberOf, send, str } from "../builders.ts";
import type { Case, Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { faultOn } from "../fault.ts";
import { blockOf, codeWord, settled, writing } from "../words.ts";
import { idiomCase } from "../write-idiom.ts";
import { forgetPlaces } from "../write-state.ts";

/** Actions that have an idiom of their own name. */
const idioms = [
  "release",
  "clamp",
  "taper-air-on",
  "taper-air-off",
  "cover-open",
  "cover-close",
  "hood-up",
  "hood-down",
] as const satisfies readonly (AuxiliaryAction & IdiomName)[];

/** An auxiliary action by its idiom; a code of the builder by its own name. */
export function writeAuxiliary(context: Context): Statement[] {
  const measure = idiomCase(context, "measure");
  const branches: Case[] = [
    ...idioms.map((name) => idiomCase(context, name)),
    // The measured length is another offset, so that Z is unknown.
    {
      of: measure.of,
      statements: context.format.idioms.measure
        ? [...measure.statements, forgetPlaces(axisBit.z)]
        : measure.statements,
    },
    { of: str("opaque"), statements: [opaqueCodes(context)] },
  ];
  return [settled(), cases(get("step", "action"), branches, [faultOn("idioms")])];
}

/** `M08` and `M8` are one code, so that the number decides. */
function opaqueCodes(context: Context): Statement {
  const codes = context.format.extraCodes.filter(
    ({ meaning }) => meaning.kind === "auxiliary" && meaning.action === "opaque",
  );
  const branches = codes.map((code) => ({
    of: str(`${code.letter}${code.value / 10}`),
    statements: blockOf(context, opaqueWords(context, code)),
  }));
  const name = add(send(get("step", "code"), "charAt", 0), numberOf(send(get("step", "code"), "slice", 1)));
  return cases(name, branches, [faultOn("codes")]);
}

/** The code and the fixed words beside it, in the order in which the dialect declares them. */
function opaqueWords(context: Context, { letter, value, words, key }: ExtraCode): Statement[] {
  const fixed = Object.entries(words).map(([address, number]) =>
    typeof number === "number" ? writing(address + String(number) + context.format.separator) : faultOn(key),
  );
  return [...codeWord(context, key, { letter, value }).statements, ...fixed];
}
