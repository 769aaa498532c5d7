import { atLeast, call, cases, func, get, more, mul, not, run, set, str, when } from "./builders.ts";
import type { Case, FunctionDeclaration, Statement, Value } from "./builders.ts";
import type { Context } from "./context.ts";
import { faultOn } from "./fault.ts";
import type { Word } from "./words.ts";
import { blockOf, codeWord, inOrder, keyed, numberWord, wholeWord } from "./words.ts";
import { sharesModes } from "./write-block.ts";

/** What may wait for the step that follows, so as to share its block: a speed, a tool, a length offset, or a start of the spindle. */
export type Held = "speed" | "tool" | "length" | "start";

/** `state.held = "..."; state.value = ...;` */
export function hold(held: Held, value: Value): Statement[] {
  return [
    set(get("state", "held"), str(held)),
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
            statements: [
              ...sectionBegins(context),
              ...blockOf(context, toolWord(context, get("state", "value")).statements),
            ],
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

/**
 * The tool word. Where the length offset stands in it, its digits follow those of the tool (T0101): it is the offset of the
 * tool's own number, since a tool with another one can't be said so and is refused before. With one digit at least (T1) the
 * controller takes the offset of the tool's number by itself.
 */
export function toolWord(context: Context, tool: Value): Word {
  const { numbers, lengthOffset } = context.format;
  const width = numbers.width.T;
  if (lengthOffset?.form !== "in-tool-word" || width === 1)
    return wholeWord(context, "tools", "T", tool, width);
  const doubled = mul(tool, 10 ** width + 1);
  const word = wholeWord(context, "machine.length-offset.form", "T", doubled, 2 * width);
  const tooLarge = when(atLeast(tool, 10 ** width), [faultOn("numbers.code-width.T")]);
  return { ...word, statements: [tooLarge, ...word.statements] };
}

/** The words of a length offset: its code, and its number. */
export function lengthWords(context: Context, offset: Value): [Word, Word] {
  const { codes, numbers, lengthOffset } = context.format;
  return [
    codeWord(context, "length-offset.on", codes.lengthOn),
    wholeWord(context, "length-offset.word", lengthOffset?.word ?? "", offset, numbers.width.H),
  ];
}

/** A block with the tool word begins a section, which is numbered where only sections are. */
export function sectionBegins({ format }: Context): Statement[] {
  return format.blockNumber?.on === "sections"
    ? [set(get("state", "numbered"), not(get("state", "fragment")))]
    : [];
}
