import type { CoolantMedium } from "#base";
import type { Code } from "#dialect";
import { and, cases, choose, get, increase, less, same, set, str, variable, when } from "../builders.ts";
import type { Statement } from "../builders.ts";
import { codeText, hasWord } from "../code-text.ts";
import type { Context } from "../context.ts";
import { faultOn } from "../fault.ts";
import { beginning, blockOf, codeWord, settled, tracing, writing } from "../words.ts";
import { hold } from "../write-held.ts";

const media = ["mist", "flood", "air", "through-tool"] as const satisfies readonly CoolantMedium[];

/** What writes one code: with the separator behind it, or bare. */
type Write = (key: string, code: Code | null | undefined) => readonly Statement[];

/** One medium on or off, or all off; where media share a block, each joins the one before. */
export function writeCoolant(context: Context): Statement[] {
  if (context.format.coolantBlocks === "together") return writeTogether(context);
  return [
    settled(),
    ...blockOf(context, [oneWord(context, (key, code) => codeWord(context, key, code).statements)]),
  ];
}

function oneWord({ format: { codes } }: Context, write: Write): Statement {
  const on = media.map((medium) => ({
    of: str(medium),
    statements: write(`coolant.${medium}`, codes.coolant[medium]),
  }));
  const off = media.map((medium) => ({
    of: str(medium),
    statements: write(`coolant.off.${medium}`, codes.coolantOffOne[medium]),
  }));
  const all = { of: str("all"), statements: write("coolant.off", codes.coolantOff) };
  const medium = get("step", "medium");
  return when(
    get("step", "on"),
    [cases(medium, on, [faultOn("coolant")])],
    [cases(medium, [all, ...off], [faultOn("coolant.off")])],
  );
}

/** The block stays open for the next medium that is switched the same way, while it has room for another M word. */
function writeTogether(context: Context): Statement[] {
  const { separator, mWords } = context.format;
  const sense = choose(get("step", "on"), str("on"), str("off"));
  const word = oneWord(context, (key, code) => bareCode(context, key, code));
  const room = less(get("state", "miscellaneous"), mWords);
  const joins = [
    variable("at", get("state", "at")),
    ...(separator === "" ? [] : [writing(separator)]),
    word,
    set(get("state", "at"), "at"),
    increase(get("state", "miscellaneous"), 1),
  ];
  const begins = [
    settled(),
    variable("at", beginning(context)),
    word,
    set(get("state", "at"), "at"),
    ...hold(sense, 0),
    set(get("state", "miscellaneous"), 1),
  ];
  return [when(and(same(get("state", "held"), sense), room), joins, begins)];
}

/** A code without a separator behind it: whether another word follows is not known yet. */
function bareCode(context: Context, key: string, code: Code | null | undefined): readonly Statement[] {
  if (!hasWord(code)) return [faultOn(key)];
  return [...tracing(context, key), writing(codeText(context.format, code))];
}
