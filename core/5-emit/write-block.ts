import type { Format } from "#dialect";
import {
  add,
  and,
  atLeast,
  atMost,
  back,
  call,
  choose,
  constant,
  decrease,
  differs,
  each,
  func,
  get,
  increase,
  list,
  more,
  not,
  or,
  put,
  record,
  run,
  same,
  send,
  set,
  str,
  variable,
  when,
} from "./builders.ts";
import type { Expression, FunctionDeclaration, Statement } from "./builders.ts";
import { character } from "./characters.ts";
import type { Context } from "./context.ts";
import type { Name } from "./names.ts";
import { numbersSections } from "./write-section.ts";
import { beginning, blockOf, separating, settled, tracing, tracingIndex } from "./words.ts";

/** How blocks begin and end, and how consecutive modes share one. */
export function defineBlocks(context: Context): FunctionDeclaration[] {
  return [
    ...defineBeginBlock(context),
    defineEndBlock(context),
    ...(sharesModes(context.format) ? [defineModes(context)] : []),
    defineMode(context),
  ];
}

/** Whether consecutive modes share a block. */
export function sharesModes({ modes, gWords }: Format): boolean {
  return modes === "together" && gWords === "any";
}

/** The block number; under "sections" only where a section begins, and there with the mark of a section. */
function defineBeginBlock(context: Context): FunctionDeclaration[] {
  const { blockNumber, sections } = context.format;
  if (blockNumber === null) return [];
  const { on, start, step, to, width } = blockNumber;
  const opens = numbersSections(blockNumber, sections.mark);
  const opening = get("state", "opening");
  const address = sections.mark === ":" ? choose(opening, character(":"), character("N")) : character("N");
  const number = get("state", "number");
  const digits =
    width > 1 ? call("writePadded", "bytes", "at", number, width) : call("writeLarge", "bytes", "at", number);
  return [
    func(
      "beginBlock",
      ["state"],
      [
        when(not(on === "sections" ? opening : get("state", "numbered")), [back(get("state", "at"))]),
        constant("bytes", get("state", "bytes")),
        variable("at", get("state", "at")),
        ...tracing(context, "blocks.number"),
        put(address),
        ...(opens ? [set(opening, false)] : []),
        set("at", digits),
        set(number, choose(more(add(number, step), to), start, add(number, step))),
        ...separating(context),
        back("at"),
      ],
    ),
  ];
}

/** Takes back the separator behind the last word, and ends the line. */
function defineEndBlock({ format }: Context): FunctionDeclaration {
  return func(
    "endBlock",
    ["state", "at"],
    [
      constant("bytes", get("state", "bytes")),
      ...(format.separator === "" ? [] : [decrease("at", format.separator.length)]),
      ...Array.from(format.blockEnd + format.lineEnd, (one) => put(character(one))),
      set(get("state", "at"), "at"),
    ],
  );
}

/** Whether M words stand before G words in a block. */
function miscellaneousFirst({ order }: Format): boolean {
  return order.indexOf("M") < order.indexOf("G");
}

/** Writes the block of the modes that wait. */
function defineModes(context: Context): FunctionDeclaration {
  const words = (name: "early" | "late"): Statement[] => [
    each("word", get("state", name), [
      ...tracingIndex(context, get("word", "key")),
      set("at", call("write", "state", "at", get("word", "text"))),
    ]),
    set(get("state", name), list([])),
  ];
  return func(
    "writeModes",
    ["state"],
    [
      variable("at", beginning(context)),
      ...words("early"),
      ...words("late"),
      run(call("endBlock", "state", "at")),
      set(get("state", "group"), 0),
      set(get("state", "width"), 0),
      set(get("state", "miscellaneous"), 0),
    ],
  );
}

/**
 * Writes the word of a mode. Where modes share a block it waits for the next one, as long as the order of execution is
 * kept (`group` rises), and the block gets neither too long nor too many M words.
 */
function defineMode(context: Context): FunctionDeclaration {
  const parameters: Name[] = ["state", "group", "text", ...(context.traced ? ["key" as const] : [])];
  return func("writeMode", parameters, sharesModes(context.format) ? waitForMore(context) : atOnce(context));
}

function atOnce(context: Context): Statement[] {
  return [
    settled(),
    ...blockOf(context, [...tracingIndex(context, "key"), set("at", call("write", "state", "at", "text"))]),
  ];
}

function waitForMore({ format, traced }: Context): Statement[] {
  const isM = same(send("text", "charAt", 0), str("M"));
  const [ifM, otherwise] = miscellaneousFirst(format)
    ? (["early", "late"] as const)
    : (["late", "early"] as const);
  const word = record(
    traced
      ? [
          ["text", "text"],
          ["key", "key"],
        ]
      : [["text", "text"]],
    false,
  );
  return [
    when(or(differs(get("state", "held"), str("")), ...isFull(format)), [run(call("settle", "state"))]),
    run(send(choose(isM, get("state", ifM), get("state", otherwise)), "push", word)),
    when(isM, [increase(get("state", "miscellaneous"), 1)]),
    set(get("state", "group"), "group"),
    increase(get("state", "width"), get("text", "length")),
    set(get("state", "waiting"), true),
  ];
}

/** Tests of whether a mode needs a block behind the one that waits. */
function isFull(format: Format): Expression[] {
  const { longest, mWords, mostWords, separator, blockEnd, executes } = format;
  const isM = same(send("text", "charAt", 0), str("M"));
  const count = (name: "early" | "late"): Expression => get(get("state", name), "length");
  const tests = [
    atMost("group", get("state", "group")),
    and(isM, atLeast(get("state", "miscellaneous"), mWords)),
    // Where each word acts where it stands, none may be put before one that was said sooner.
    ...(executes === "by-kind"
      ? []
      : [and(atLeast(count("late"), 1), miscellaneousFirst(format) ? isM : not(isM))]),
    ...(mostWords === 0 ? [] : [atLeast(add(count("early"), count("late")), mostWords)]),
  ];
  if (longest === 0) return tests;
  const room = longest - numberLength(format) - blockEnd.length + separator.length;
  return [...tests, more(add(get("state", "width"), get("text", "length")), Math.max(0, room))];
}

/** Characters that a block number and its separator may take. */
function numberLength({ blockNumber, separator }: Format): number {
  if (blockNumber === null) return 0;
  return 1 + Math.max(String(blockNumber.to).length, blockNumber.width) + separator.length;
}
