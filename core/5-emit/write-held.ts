import type { Format } from "#dialect";
import {
  add,
  atLeast,
  call,
  cases,
  choose,
  func,
  get,
  less,
  more,
  mul,
  not,
  or,
  run,
  same,
  set,
  str,
  when,
} from "./builders.ts";
import type { Case, Expression, FunctionDeclaration, Statement, Value } from "./builders.ts";
import type { Context } from "./context.ts";
import { faultOn } from "./fault.ts";
import type { Word } from "./words.ts";
import { blockOf, codeWord, inOrder, keyed, numberWord, wholeWord } from "./words.ts";
import { sharesModes } from "./write-block.ts";
import { idiomBlocks } from "./write-idiom.ts";

/** What may wait for the step that follows, so as to share its block. */
export type Held = "speed" | "tool" | "length" | "message" | "start";

/** `state.held = "..."; state.value = ...;` The two senses of coolant are told apart when the program is written. */
export function hold(held: Held | Expression, value: Value): Statement[] {
  return [
    set(get("state", "held"), typeof held === "string" ? str(held) : held),
    set(get("state", "value"), value),
    set(get("state", "waiting"), true),
  ];
}

/** Nothing waits any more. */
export function release(): Statement[] {
  return [set(get("state", "held"), str("")), set(get("state", "waiting"), false)];
}

/** Writes what waits in a block of its own: modes that share one, or a word that found nothing to join. */
export function defineSettle(context: Context): FunctionDeclaration {
  const { spindle, tools, lengthOffset, dwell } = context.format;
  const branches: Case[] = [
    ...(spindle?.blocks === "together"
      ? [{ of: str("speed"), statements: blockOf(context, speedWord().statements) }]
      : []),
    ...(dwell?.blocks === "with-start"
      ? [{ of: str("start"), statements: blockOf(context, startWords(context).statements) }]
      : []),
    ...(tools?.blocks === "together"
      ? [
          {
            of: str("tool"),
            statements: blockOf(context, toolWord(context, get("state", "value")).statements),
          },
        ]
      : []),
    ...(lengthOffset?.form === "with-first-z"
      ? [
          {
            of: str("length"),
            statements: blockOf(context, inOrder(context, lengthWords(context, get("state", "value")))),
          },
        ]
      : []),
    ...(messageWaits(context.format)
      ? [{ of: str("message"), statements: idiomBlocks(context, "message", get("state", "value")) }]
      : []),
    ...(context.format.coolantBlocks === "together"
      ? (["on", "off"] as const).map((sense) => ({ of: str(sense), statements: endCoolant(context) }))
      : []),
  ];
  return func(
    "settle",
    ["state"],
    [
      ...(branches.length === 0 ? [] : [cases(get("state", "held"), branches, [])]),
      ...(sharesModes(context.format)
        ? [when(more(get("state", "width"), 0), [run(call("writeModes", "state"))])]
        : []),
      ...release(),
    ],
  );
}

/** Whether a message waits for the stop behind it, so as to stand in its block. */
export function messageWaits({ stops, idioms }: Format): boolean {
  return stops.comment === "with-stop" && idioms.message !== undefined;
}

/** The start of the spindle that waits, with its speed if that waited, too; the dialect says which comes first. */
export function startWords(context: Context): Word {
  const { spindle, codes } = context.format;
  const code = (key: string, of: Parameters<typeof codeWord>[2]): Statement[] =>
    codeWord(context, key, of).statements as Statement[];
  const start = cases(
    get("state", "direction"),
    [
      { of: str("cw"), statements: code("spindle.cw", codes.spindleCw) },
      { of: str("ccw"), statements: code("spindle.ccw", codes.spindleCcw) },
    ],
    [faultOn("spindle")],
  );
  const speed = when(
    atLeast(get("state", "value"), 0),
    keyed(context, "spindle.order", speedWord()).statements,
  );
  const first = spindle?.order === "speed-first";
  // Beside a start the speed has no place of its own among the words of the block.
  return { address: "M", statements: first ? [speed, start] : [start, speed] };
}

/** The speed that waits. */
export function speedWord(): Word {
  return numberWord("S", "writeSpeed", get("state", "value"));
}

/** Whether the tool word states the length offset behind the tool, in as many digits: T0105. */
function statesOffset({ numbers, lengthOffset }: Format): boolean {
  return lengthOffset?.form === "in-tool-word" && numbers.width.T > 1;
}

/**
 * The number of the tool word: the tool, and behind it its length offset where the word states that. With one digit at
 * least (T1) the controller takes the offset of the tool's number by itself.
 */
export function toolNumber({ format }: Context): { readonly checks: Statement[]; readonly value: Value } {
  const empty = format.tools?.empty ?? 0;
  const said = get("step", "tool");
  const tool = empty === 0 ? said : choose(same(said, 0), empty, said);
  const offset = get("step", "offset");
  if (!statesOffset(format)) return { checks: [], value: tool };
  const limit = 10 ** format.numbers.width.T;
  const tooLarge = or(not(less(tool, limit)), not(less(offset, limit)));
  return {
    checks: [when(tooLarge, [faultOn("numbers.code-width.T")])],
    value: add(mul(tool, limit), offset),
  };
}

/** The tool word, of a number as `toolNumber` makes it. */
export function toolWord(context: Context, number: Value): Word {
  const width = context.format.numbers.width.T;
  return statesOffset(context.format)
    ? wholeWord(context, "machine.length-offset.form", "T", number, 2 * width)
    : wholeWord(context, "tools", "T", number, width);
}

/** The words of a length offset: its code, and its number. */
export function lengthWords(context: Context, offset: Value): [Word, Word] {
  const { codes, numbers, lengthOffset } = context.format;
  return [
    codeWord(context, "length-offset.on", codes.lengthOn),
    wholeWord(
      context,
      "length-offset.word",
      lengthOffset?.word ?? "",
      writtenOffset(context, offset),
      numbers.width.H,
    ),
  ];
}

/** Ends the block of the media that have waited; the end of a block takes back a separator that is not there. */
function endCoolant({ format }: Context): Statement[] {
  return [
    run(call("endBlock", "state", add(get("state", "at"), format.separator.length))),
    set(get("state", "miscellaneous"), 0),
  ];
}

/** The number of a length offset as it is written; number 0 stays what it is. */
function writtenOffset({ format }: Context, offset: Value): Value {
  const added = format.lengthOffset?.added ?? 0;
  return added === 0 ? offset : choose(same(offset, 0), 0, add(offset, added));
}
