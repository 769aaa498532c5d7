import type { Format, Idiom, IdiomName, IdiomPart, IdiomValue } from "#dialect";
import { back, call, choose, func, get, run, same, set, str, variable } from "./builders.ts";
import type { Case, FunctionDeclaration, Statement, Value } from "./builders.ts";
import type { Context } from "./context.ts";
import { faultOn } from "./fault.ts";
import { beginning, tracing, writing } from "./words.ts";

/** The blocks of an idiom with the values of the step in hand; the fault that names it where the dialect has none. */
export function idiomBlocks(
  context: Context,
  name: IdiomName,
  text: Value = get("step", "text"),
): Statement[] {
  const idiom = context.format.idioms[name];
  if (idiom === undefined) return [faultOn(`idioms.${name}`)];
  return idiom.blocks.flatMap((parts, index) => idiomBlock(context, name, parts, index, text));
}

/** A message behind the words of a block, with the separator that the end of the block takes back. */
export function messageWord(context: Context, text: Value): Statement[] {
  const { idioms, separator } = context.format;
  const parts = idioms.message?.blocks[0] ?? [];
  return [
    ...tracing(context, "stops.comment"),
    ...parts.flatMap((part) =>
      "literal" in part ? literal(part.literal) : valueOf(context, part.value, parts, text),
    ),
    ...(separator === "" ? [] : [writing(separator)]),
  ];
}

function idiomBlock(
  context: Context,
  name: IdiomName,
  parts: Idiom["blocks"][number],
  index: number,
  text: Value,
): Statement[] {
  const begin = isComment(context.format, parts) ? get("state", "at") : beginning(context);
  const at = index === 0 ? variable("at", begin) : set("at", begin);
  const { separator } = context.format;
  return [
    at,
    ...tracing(context, `idioms.${name}`),
    ...parts.flatMap((part) =>
      "literal" in part ? literal(part.literal) : valueOf(context, part.value, parts, text),
    ),
    // The end of a block takes back one separator.
    ...(separator === "" ? [] : [writing(separator)]),
    run(call("endBlock", "state", "at")),
  ];
}

/** Text of the dialect itself; only ASCII can go byte by byte. */
function literal(text: string): Statement[] {
  const isAscii = Array.from(text).every((one) => one.charCodeAt(0) < 128);
  return [isAscii ? writing(text) : set("at", call("writeText", "state", "at", str(text)))];
}

function valueOf(
  context: Context,
  value: IdiomValue,
  parts: readonly IdiomPart[],
  shown: Value,
): Statement[] {
  const { waitValues } = context.format;
  const whole = (name: "input" | "number"): Statement[] => [
    set("at", call("writeLarge", get("state", "bytes"), "at", get("step", name))),
  ];
  const statements: Record<IdiomValue, () => Statement[]> = {
    signal: () => whole("input"),
    output: () => whole("number"),
    level: () => {
      if (waitValues === undefined) return [faultOn("wait")];
      const text = choose(
        same(get("step", "level"), str("on")),
        str(String(waitValues.on)),
        str(String(waitValues.off)),
      );
      return [set("at", call("write", "state", "at", text))];
    },
    timeout: () => [set("at", call("writeTimeout", "state", "at", 0, get("step", "timeout")))],
    text: () => [
      set(
        "at",
        call("writeText", "state", "at", call("cleanCharacters", shown, roomForText(context.format, parts))),
      ),
    ],
  };
  return Object.hasOwn(statements, value) ? statements[value]() : [faultOn("idioms")];
}

/** The exported cleaning: a text as a message to the operator has it, so that whoever compares it with what was read can clean it, too. */
export function defineCleanText({ format }: Context): FunctionDeclaration {
  const parts = format.idioms.message?.blocks.find((block) =>
    block.some((part) => "value" in part && part.value === "text"),
  );
  const clean = call("cleanCharacters", "text", roomForText(format, parts ?? []));
  return func("cleanText", ["text"], [back(clean)], { isExported: true });
}

/** Characters left for the text in its comment, whose own words count, too: "(MSG, {{text}})" takes five. */
function roomForText({ comments }: Format, parts: readonly IdiomPart[]): number {
  const own = parts.map((part) => ("literal" in part ? part.literal : "")).join("");
  const inside = own.slice(own.search(/[(;]/u) + 1).replace(/\)[^)]*$/u, "");
  return Math.max(0, comments.longest - Array.from(inside).length);
}

/** Whether a block is nothing but a comment, so that it has no block number. */
function isComment({ comments }: Format, parts: readonly IdiomPart[]): boolean {
  const text = parts
    .map((part) => ("literal" in part ? part.literal : "x"))
    .join("")
    .trim();
  if (comments.style === "semicolon") return text.startsWith(";");
  return text.startsWith("(") && text.indexOf(")") === text.length - 1;
}

/** A branch of a switch on an action of an auxiliary step, which has an idiom of the same name. */
export function idiomCase(context: Context, name: IdiomName): Case {
  return { of: str(name), statements: idiomBlocks(context, name) };
}
