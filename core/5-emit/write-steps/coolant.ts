import type { CoolantMedium } from "#base";
import type { Code } from "#dialect";
import {
  add,
  and,
  cases,
  choose,
  get,
  increase,
  less,
  not,
  same,
  send,
  set,
  str,
  variable,
  when,
} from "../builders.ts";
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
  const [medium, isOn] = [get("step", "medium"), get("step", "on")];
  const on = media.map((name) => ({
    of: str(name),
    statements: write(`coolant.${name}`, codes.coolant[name]),
  }));
  const turnOn = cases(medium, on, [faultOn("coolant")]);
  const all = write("coolant.off", codes.coolantOff);
  if (!Object.values(codes.coolantOffOne).some(hasWord)) {
    const oneOff = when(not(isOn), [faultOn("coolant.off")]);
    return when(and(not(isOn), same(medium, str("all"))), all, [oneOff, turnOn]);
  }
  const off = media.map((name) => ({
    of: str(name),
    statements: write(`coolant.off.${name}`, codes.coolantOffOne[name]),
  }));
  return when(isOn, [turnOn], [cases(medium, off, [faultOn("coolant.off")])]);
}

/**
 * The block stays open for the next medium that is switched the same way, while it has room for another M word and not the
 * same one already. The names of its media wait in `value`; none of them is part of another.
 */
function writeTogether(context: Context): Statement[] {
  const { separator, mWords } = context.format;
  const sense = choose(get("step", "on"), str("on"), str("off"));
  const word = oneWord(context, (key, code) => bareCode(context, key, code));
  const [medium, names] = [get("step", "medium"), get("state", "value")];
  const room = and(less(get("state", "miscellaneous"), mWords), not(send(names, "includes", medium)));
  const joins = [
    variable("at", get("state", "at")),
    ...(separator === "" ? [] : [writing(separator)]),
    word,
    set(get("state", "at"), "at"),
    set(names, add(names, medium)),
    increase(get("state", "miscellaneous"), 1),
  ];
  const begins = [
    settled(),
    variable("at", beginning(context)),
    word,
    set(get("state", "at"), "at"),
    ...hold(sense, medium),
    set(get("state", "miscellaneous"), 1),
  ];
  return [when(and(same(get("state", "held"), sense), room), joins, begins)];
}

/** A code without a separator behind it: whether another word follows is not known yet. */
function bareCode(context: Context, key: string, code: Code | null | undefined): readonly Statement[] {
  if (!hasWord(code)) return [faultOn(key)];
  return [...tracing(context, key), writing(codeText(context.format, code))];
}
