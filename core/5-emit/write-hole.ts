import { axisBit, frame } from "#base";
import type { Format } from "#dialect";
import {
  and,
  both,
  call,
  choose,
  constant,
  differs,
  func,
  get,
  id,
  or,
  run,
  same,
  set,
  str,
  sub,
  when,
} from "./builders.ts";
import type { Expression, FunctionDeclaration, Statement } from "./builders.ts";
import { hasWord } from "./code-text.ts";
import type { Context } from "./context.ts";
import { canBeIncremental } from "./context.ts";
import { faultOn } from "./fault.ts";
import type { Word } from "./words.ts";
import { blockOf, given, inOrder, keyed, numberWord, settled, tracing, tracingIndex } from "./words.ts";
import { alwaysFeedWord } from "./write-feed.ts";
import { axisWords, column, placesNeeded } from "./write-motion.ts";

/** Holes of the fixed cycle in force: the first states all of it, the later ones what the dialect's policy asks for. */
export function defineHole(context: Context): FunctionDeclaration {
  const { format } = context;
  if (format.cycles === undefined) return func("writeHole", ["state", "batch", "row"], [faultOn("cycles")]);
  const isUndefined = or(differs(column("frame"), frame.work), same(get("state", "code"), str("")));
  return func(
    "writeHole",
    ["state", "batch", "row"],
    [
      settled(),
      when(isUndefined, [faultOn("cycles")]),
      constant(
        "axes",
        both(format.modal.axes === "all" ? column("known") : column("stated"), axisBit.x | axisBit.y),
      ),
      ...placesNeeded(context),
      constant("first", get("state", "fresh")),
      ...(format.gWords === "one" ? [returnBlock(context)] : []),
      ...blockOf(context, inOrder(context, holeWords(context, format.cycles))),
      set(get("state", "fresh"), false),
      run(call("keepPlace", "state", "batch", "row")),
    ],
  );
}

function holeWords(context: Context, cycles: NonNullable<Format["cycles"]>): Word[] {
  const once = (word: Word): Word => (cycles.repeat === "all" ? word : given("first", word));
  return [
    ...(context.format.gWords === "one" ? [] : [once(returnWord(context))]),
    cycleWord(context),
    once(depthWord(context)),
    retractWord(context, cycles),
    ...timesAndPecks(context, cycles).map(once),
    ...axisWords(context, ["x", "y"], "work"),
    feedOfHole(context),
  ];
}

/** G98 or G99, where the dialect has a word for the level. */
function returnWord(context: Context): Word {
  const { initial, retract } = context.format.codes.cycleReturn;
  const write = [
    ...tracingIndex(context, get("state", "returnKey")),
    set("at", call("write", "state", "at", get("state", "returnCode"))),
  ];
  return given(differs(get("state", "returnCode"), str("")), {
    address: (initial ?? retract)?.letter ?? "G",
    statements: write,
  });
}

/** One G word a block: the level is said in a block before the cycle's. */
function returnBlock(context: Context): Statement {
  return when(
    and("first", differs(get("state", "returnCode"), str(""))),
    blockOf(context, returnWord(context).statements),
  );
}

/** The cycle's own code, which is a motion word. */
function cycleWord(context: Context): Word {
  const { modal, codes } = context.format;
  const [motion, code] = [get("state", "motion"), get("state", "code")];
  const address = Object.values(codes.cycles).find(hasWord)?.letter ?? "G";
  const write = [
    ...tracingIndex(context, get("state", "key")),
    ...tracing(context, "modal.motion"),
    set("at", call("write", "state", "at", code)),
  ];
  if (modal.motion === "each-block") return { address, statements: write };
  return given(or("first", differs(motion, code)), { address, statements: [...write, set(motion, code)] });
}

/** The bottom; in an incremental program it counts from the retract level, as it does where the dialect's levels are relative. */
function depthWord(context: Context): Word {
  const [depth, retract] = [get("state", "depth"), get("state", "retract")];
  return keyed(
    context,
    "cycles.levels",
    numberWord(
      context.format.motion.letters.z,
      "writeLength",
      relativeLevel(context.format, depth, retract, retract),
    ),
  );
}

/**
 * The retract level: relative to the level before the series, or in an incremental program to where the tool is
 * (NISTIR 6556 3.5.16), which is another place behind the first hole, so that each hole states it.
 */
function retractWord(context: Context, cycles: NonNullable<Format["cycles"]>): Word {
  const value = relativeLevel(
    context.format,
    get("state", "retract"),
    get("state", "initial"),
    get("state", "z"),
  );
  const word = keyed(context, "cycles.levels", numberWord(cycles.retractWord, "writeLength", value));
  if (cycles.repeat === "all") return word;
  const moves = cycles.levels === "absolute" && canBeIncremental(context.format);
  return given(moves ? or("first", get("state", "incremental")) : id("first"), word);
}

function relativeLevel(
  format: Format,
  level: Expression,
  ifRelative: Expression,
  ifIncremental: Expression,
): Expression {
  if (format.cycles?.levels === "relative") return sub(level, ifRelative);
  return canBeIncremental(format) ? sub(level, choose(get("state", "incremental"), ifIncremental, 0)) : level;
}

function timesAndPecks(context: Context, cycles: NonNullable<Format["cycles"]>): Word[] {
  const [peck, dwell] = [get("state", "peck"), get("state", "dwell")];
  return [
    given(
      get("state", "pecks"),
      keyed(context, "cycles.words.peck", numberWord(cycles.peckWord, "writeLength", peck)),
    ),
    given(
      get("state", "dwells"),
      keyed(context, "cycles.words.dwell", numberWord(cycles.dwellWord, "writeCycleDwell", dwell)),
    ),
  ];
}

/** Holes state their feed where it changes, and the first of a series where the dialect wants it behind a rapid. */
function feedOfHole(context: Context): Word {
  const word = alwaysFeedWord(context);
  if (context.format.modal.feed === "each-block") return word;
  const changes = differs(column("feed"), get("state", "feed"));
  return given(context.format.modal.feed === "modal" ? changes : or("first", changes), word);
}
