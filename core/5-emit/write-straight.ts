import { axes as axisNames, axisBit } from "#base";
import { and, both, call, differs, func, get, run, same, set, str, variable, when } from "./builders.ts";
import type { FunctionDeclaration, Statement } from "./builders.ts";
import { hasWord } from "./code-text.ts";
import type { Context } from "./context.ts";
import { faultOn } from "./fault.ts";
import type { Word } from "./words.ts";
import { blockOf, codeWithSeparator, codeWord, codeWords, given, inOrder, settled } from "./words.ts";
import { feedWord, rapidFeedWord } from "./write-feed.ts";
import { lengthWords, release } from "./write-held.ts";
import {
  axesOfRow,
  axisWords,
  column,
  keepMotion,
  motionWord,
  placesNeeded,
  rotaryWithoutWord,
} from "./write-motion.ts";
import { forgetPlaces } from "./write-state.ts";

/** Rapids and lines, in work and in machine coordinates. */
export function defineStraights(context: Context): FunctionDeclaration[] {
  return [defineRapid(context), defineLine(context), defineMachineRapid(context), defineMachineLine(context)];
}

function defineRapid(context: Context): FunctionDeclaration {
  const takesOffset = context.format.lengthOffset?.form === "with-first-z";
  const words = [...rapidWords(context), ...axisWords(context, axisNames, "work")];
  return func(
    "writeRapid",
    ["state", "batch", "row"],
    [
      ...(takesOffset ? [variable("offset", 0), takeLengthOffset()] : [settled()]),
      ...axesNeeded(context),
      ...placesNeeded(context),
      ...blockOf(context, inOrder(context, takesOffset ? withLengthOffset(context, words) : words)),
      ...afterRapid(context),
      run(call("keepPlace", "state", "batch", "row")),
    ],
  );
}

/** The word of a rapid; where the controller has none, those of a line at the feed of rapids. */
function rapidWords(context: Context): Word[] {
  const { codes, motion } = context.format;
  if (motion.rapidFeed === null) return [motionWord(context, "motion.rapid", codes.rapid)];
  return [motionWord(context, "motion.line", codes.line), rapidFeedWord(context, motion.rapidFeed)];
}

/** A length offset that waits joins the rapid that follows it, if that one states Z. */
function takeLengthOffset(): Statement {
  return when(
    and(same(get("state", "held"), str("length")), both(column("stated"), axisBit.z)),
    [set("offset", get("state", "value")), ...release()],
    [settled()],
  );
}

function withLengthOffset(context: Context, words: readonly Word[]): Word[] {
  const isHeld = differs("offset", 0);
  const [code, number] = lengthWords(context, "offset");
  return [given(isHeld, code), ...words, given(isHeld, number)];
}

function defineLine(context: Context): FunctionDeclaration {
  const words = [
    motionWord(context, "motion.line", context.format.codes.line),
    ...axisWords(context, axisNames, "work"),
    feedWord(context),
  ];
  return func(
    "writeLine",
    ["state", "batch", "row"],
    [
      settled(),
      ...axesNeeded(context),
      ...placesNeeded(context),
      ...blockOf(context, inOrder(context, words)),
      run(call("keepPlace", "state", "batch", "row")),
    ],
  );
}

/** `G53 G0 Z0`: both words always, and absolute (NISTIR 6556 3.5.12). */
function defineMachineRapid(context: Context): FunctionDeclaration {
  return func(
    "writeMachineRapid",
    ["state", "batch", "row"],
    [...machineRow(context, "motion.rapid"), ...afterRapid(context)],
  );
}

function defineMachineLine(context: Context): FunctionDeclaration {
  return func("writeMachineLine", ["state", "batch", "row"], machineRow(context, "motion.line"));
}

function machineRow(context: Context, key: "motion.rapid" | "motion.line"): Statement[] {
  const { codes, motion: form } = context.format;
  const code = key === "motion.rapid" && form.rapidFeed === null ? codes.rapid : codes.line;
  const motion = codeWord(context, key, code);
  const words = [
    ...codeWords(context, "machine-move", codes.machineMove),
    motion,
    ...axisWords(context, axisNames, "machine"),
    ...(key === "motion.line" ? [feedWord(context)] : []),
    ...(key === "motion.rapid" && form.rapidFeed !== null ? [rapidFeedWord(context, form.rapidFeed)] : []),
  ];
  return [
    settled(),
    ...axesNeeded(context),
    ...blockOf(context, inOrder(context, words)),
    ...(hasWord(code) ? keepMotion(context, str(codeWithSeparator(context, code))) : []),
    forgetPlaces(column("stated")),
  ];
}

/** The axes of the row; a rotary one without an address is a fault. */
function axesNeeded(context: Context): Statement[] {
  const refused = rotaryWithoutWord(context);
  return [
    axesOfRow(context),
    ...(refused === 0 ? [] : [when(both("axes", refused), [faultOn("blocks.order")])]),
  ];
}

function afterRapid(context: Context): Statement[] {
  return context.format.modal.feed === "after-rapid" ? [set(get("state", "afterRapid"), true)] : [];
}
