import type { Format } from "#dialect";
import {
  add,
  back,
  call,
  constant,
  create,
  func,
  get,
  increase,
  less,
  listOf,
  loop,
  more,
  mul,
  pattern,
  pick,
  run,
  same,
  send,
  set,
  str,
  variable,
  when,
} from "./builders.ts";
import type { Expression, FunctionDeclaration } from "./builders.ts";
import type { Context } from "./context.ts";

/** Writers of text: codes and literals, which are ASCII, and comments, which may be any text. */
export function defineTexts(context: Context): FunctionDeclaration[] {
  return [defineWrite(), defineWriteText(context), defineCleanCharacters(context.format)];
}

/** Codes and other literals, all ASCII. */
function defineWrite(): FunctionDeclaration {
  return func(
    "write",
    ["state", "at", "text"],
    [
      constant("bytes", get("state", "bytes")),
      variable("place", 0),
      loop(less("place", get("text", "length")), [
        set(pick("bytes", add("at", "place")), send("text", "charCodeAt", "place")),
        increase("place", 1),
      ]),
      back(add("at", get("text", "length"))),
    ],
  );
}

/** Any text as UTF-8. It may be long, so that the buffer grows where the rest of a block would no longer fit behind it. */
function defineWriteText(context: Context): FunctionDeclaration {
  const room = add(add("at", get("chunk", "length")), blockRoom(context.format));
  return func(
    "writeText",
    ["state", "at", "text"],
    [
      constant("chunk", send(create("TextEncoder"), "encode", "text")),
      when(more(room, get(get("state", "bytes"), "length")), [
        constant("larger", create("Uint8Array", mul(2, room))),
        run(send("larger", "set", send(get("state", "bytes"), "subarray", 0, "at"))),
        set(get("state", "bytes"), "larger"),
      ]),
      run(send(get("state", "bytes"), "set", "chunk", "at")),
      back(add("at", get("chunk", "length"))),
    ],
  );
}

/**
 * Bytes that a block without its free text can't exceed, so that only writeText has to look whether there is room: forty
 * words with as many digits as any number format asks for, and the longest idiom.
 */
export function blockRoom({ numbers, blockNumber, idioms, separator, blockEnd }: Format): number {
  const formats = [
    numbers.length,
    numbers.arcCentre,
    numbers.feedPerMinute,
    numbers.feedPerRevolution,
  ].flatMap((one) => (one ? [one.mm, one.inch] : []));
  const singles = [
    numbers.angle,
    numbers.inverseTime,
    numbers.speed,
    numbers.dwell,
    numbers.cycleDwell,
    numbers.timeout,
  ].flatMap((one) => one ?? []);
  const digits = Math.max(
    ...[...formats, ...singles].map((one) => one.digits),
    ...Object.values(numbers.width),
    blockNumber?.width ?? 0,
  );
  const texts = Object.values(idioms).map((idiom) => JSON.stringify(idiom).length);
  const word = digits + separator.length + 32;
  return Math.ceil((40 * word + blockEnd.length + 4 * Math.max(0, ...texts)) / 1024) * 1024;
}

/**
 * Text from the job in the characters of the dialect's comments. Parentheses become brackets, a semicolon a comma, since
 * both would end or begin a comment; `%` and `:` must not stand in one (ISO 6983-1, from teaching material).
 *
 *     "Tool 3: 1/4\" (long) – öl" -> "TOOL 3 1/4\" [LONG] OL"
 */
function defineCleanCharacters(format: Format): FunctionDeclaration {
  const replaced: readonly [`/${string}/${string}`, string][] = [
    ["/\\(/gu", "["],
    ["/\\)/gu", "]"],
    ["/;/gu", ","],
    [dropped(format), ""],
    ["/\\s+/gu", " "],
  ];
  const spaced = send(plainLetters(format), "replace", pattern("/[\\s\\p{C}]+/gu"), str(" "));
  return func(
    "cleanCharacters",
    ["text", "longest"],
    [
      variable("clean", spaced),
      ...replaced.map(([from, to]) => set("clean", send("clean", "replace", pattern(from), str(to)))),
      back(
        send(send(send(listOf(send("clean", "trim")), "slice", 0, "longest"), "join", str("")), "trimEnd"),
      ),
    ],
  );
}

/** Letters without their accents, and in upper case, where the dialect asks for it. */
function plainLetters({ characters }: Format): Expression {
  const text = send("text", "normalize", str(characters === "utf-8" ? "NFC" : "NFKD"));
  return characters === "upper" ? send(text, "toUpperCase") : text;
}

/** What a comment can't hold: `%`, `:`, the end-of-block mark, and what is outside the dialect's characters. */
function dropped({ characters, blockEnd }: Format): `/${string}/${string}` {
  const marks = blockEnd === "*" ? "%:*" : "%:";
  if (characters === "utf-8") return `/[${marks}]/gu`;
  return characters === "upper" ? `/[${marks}]|[^ -_]/gu` : `/[${marks}]|[^ -~]/gu`;
}

/** Writes a comment line of its own, which has no block number; nothing where the dialect has no comments. */
export function defineComment({ format }: Context): FunctionDeclaration[] {
  const { style, longest } = format.comments;
  if (style === "none") return [];
  const [open, close] = style === "parentheses" ? ["(", ")"] : ["; ", ""];
  return [
    func(
      "writeComment",
      ["state", "text"],
      [
        constant("clean", call("cleanCharacters", "text", Math.max(0, longest - open.length + 1))),
        when(same("clean", str("")), [back()]),
        variable("at", call("write", "state", get("state", "at"), str(open))),
        set("at", call("writeText", "state", "at", "clean")),
        set("at", call("write", "state", "at", str(close + format.separator))),
        run(call("endBlock", "state", "at")),
      ],
    ),
  ];
}
