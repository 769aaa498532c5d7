import type { Code } from "#dialect";
import { add, call, get, keyNumber, put, run, send, set, str, variable, when } from "./builders.ts";
import type { Expression, Statement, Value } from "./builders.ts";
import type { EmitterFunction } from "./calls.ts";
import { character, isLetter } from "./characters.ts";
import { codeText, hasWord } from "./code-text.ts";
import type { Context } from "./context.ts";
import { keyIndex } from "./context.ts";
import { faultOn, isFault } from "./fault.ts";

/** What writes one word: statements that move `at` behind the word and its separator. */
export interface Word {
  /** Its address, which decides its place in the block. */
  readonly address: string;
  readonly statements: readonly Statement[];
}

/** Reports the keys behind the word that begins at `at`; nothing in the plain emitter. */
export function tracing(context: Context, ...keys: readonly string[]): Statement[] {
  return context.traced ? keys.map((key) => report(keyOf(context, key))) : [];
}

/** Reports a key that decided about the word only where a test holds at run time; nothing in the plain emitter. */
export function tracingWhere(context: Context, test: Value, key: string): Statement[] {
  return context.traced ? [when(test, tracing(context, key))] : [];
}

/** Reports a key whose index is worked out at run time; nothing in the plain emitter. */
export function tracingIndex(context: Context, index: Value): Statement[] {
  return context.traced ? [report(index)] : [];
}

/** The index under which a word reports a dialect key, as an expression. */
export function keyOf(context: Context, key: string): Expression {
  return keyNumber(keyIndex(context, key), key);
}

function report(index: Value): Statement {
  return run(send("state", "trace", add(get("state", "base"), "at"), index));
}

/** `at = write(state, at, "text");` */
export function writing(text: string): Statement {
  return set("at", call("write", "state", "at", str(text)));
}

/** Writes the separator that follows each word, where the dialect has one; the last one of a block is taken back. */
export function separating(context: Context): Statement[] {
  const { separator } = context.format;
  if (separator === "") return [];
  return separator.length === 1 ? [put(character(separator))] : [writing(separator)];
}

/** A code as it is written, with its separator. */
export function codeWithSeparator(context: Context, code: Code): string {
  return codeText(context.format, code) + context.format.separator;
}

/** The word of a code; where the dialect has none, the fault that names its key. */
export function codeWord(context: Context, key: string, code: Code | null | undefined): Word {
  if (!hasWord(code)) return { address: "G", statements: [faultOn(key)] };
  return {
    address: code.letter,
    statements: [...tracing(context, key), writing(codeWithSeparator(context, code))],
  };
}

/** The words of a code that may have one with a fixed number beside it, such as G54.1 P2. */
export function codeWords(context: Context, key: string, code: Code | null | undefined): Word[] {
  const word = codeWord(context, key, code);
  if (!code?.word) return [word];
  const { letter, digits } = code.word;
  const beside = writing(letter + digits + context.format.separator);
  return [word, { address: letter, statements: [...tracing(context, key), beside] }];
}

/** A word whose value one of the number writers prints; they report the key of the number themselves. */
export function numberWord(address: string, writer: EmitterFunction, value: Value): Word {
  return { address, statements: [set("at", call(writer, "state", "at", character(address), value))] };
}

/** A word whose value is a whole number with at least `width` digits, such as T01. */
export function wholeWord(context: Context, key: string, address: string, value: Value, width: number): Word {
  const statements = [
    ...tracing(context, key),
    set("at", call("writeWholeWord", "state", "at", character(address), value, width)),
  ];
  return { address, statements };
}

/** A word that reports further keys. */
export function keyed(context: Context, key: string, word: Word): Word {
  return { ...word, statements: [...tracing(context, key), ...word.statements] };
}

/** A word that stands only where a test holds. */
export function given(test: Value, word: Word): Word {
  return { ...word, statements: [when(test, word.statements)] };
}

/** A word that is wanted, and cannot be said. */
export function missing(address: string, key: string): Word {
  return { address, statements: [faultOn(key)] };
}

/** Words in the dialect's order; words of one address keep theirs. One whose address the dialect does not list is a fault. */
export function inOrder(context: Context, words: readonly Word[]): Statement[] {
  const { order } = context.format;
  const placed = words.map((word) => ({ word, place: order.indexOf(word.address) }));
  placed.sort((one, other) => one.place - other.place);
  return placed.flatMap(({ word, place }) =>
    place < 0 || !isLetter(word.address) ? missing(word.address, "blocks.order").statements : word.statements,
  );
}

/** A block of its own with these statements; where the first word can't be said, the fault alone. */
export function blockOf(context: Context, statements: readonly Statement[]): Statement[] {
  if (isFault(statements[0])) return [statements[0]];
  return [variable("at", beginning(context)), ...statements, run(call("endBlock", "state", "at"))];
}

/** Where a block begins, behind its number. */
export function beginning(context: Context): Expression {
  return context.format.blockNumber === null ? get("state", "at") : call("beginBlock", "state");
}

/** Writes out what waits for the step or row that follows. */
export function settled(): Statement {
  return when(get("state", "waiting"), [run(call("settle", "state"))]);
}
