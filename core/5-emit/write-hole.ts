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
import type { Expression, FunctionDeclaration, Statement, Value } from "./builders.ts";
import { character } from "./characters.ts";
import { hasWord } from "./code-text.ts";
import type { Context } from "./context.ts";
import { canBeIncremental } from "./context.ts";
import { faultOn } from "./fault.ts";
import type { Word } from "./words.ts";
import {
  blockOf,
  codeWord,
  given,
  inOrder,
  keyed,
  numberWord,
  settled,
  tracing,
  tracingIndex,
  wholeWord,
} from "./words.ts";
import { alwaysFeedWord, feedRepeats } from "./write-feed.ts";
import { axisWords, column, inMotionGroup, placesNeeded } from "./write-motion.ts";

/** Holes of the fixed cycle in force: the first states all of it, the later ones what the dialect's policy asks for. */
export function defineHole(context: Context): FunctionDeclaration {
  const { format } = context;
  if (format.cycles === undefined) return func("writeHole", ["state", "batch", "row"], [faultOn("cycles")]);
  const isUndefined = or(differs(column("frame"), frame.work), same(get("state", "code"), str("")));
  const statesBoth = format.modal.axes === "all" || format.cycles.positions === "both";
  return func(
    "writeHole",
    ["state", "batch", "row"],
    [
      settled(),
      when(isUndefined, [faultOn("cycles")]),
      constant("axes", both(statesBoth ? column("known") : column("stated"), axisBit.x | axisBit.y)),
      ...placesNeeded(context),
      constant("first", get("state", "fresh")),
      ...synchronising(context),
      ...(format.gWords === "one" ? [returnBlock(context)] : []),
      ...(format.cycles.definition === "apart"
        ? blocksApart(context, format.cycles)
        : blockOf(context, inOrder(context, holeWords(context, format.cycles)))),
      set(get("state", "fresh"), false),
      run(call("keepPlace", "state", "batch", "row")),
    ],
  );
}

/** The key by which a hole has words of a place that it does not state. */
function policyOfPlaces({ format: { modal, cycles } }: Context): string | undefined {
  if (modal.axes === "all") return "modal.axes";
  return cycles?.positions === "both" ? "cycles.positions" : undefined;
}

/** The code that locks spindle and feed, in a block of its own before the first hole of a tap. */
function synchronising(context: Context): Statement[] {
  const code = context.format.codes.tapSynchronised;
  if (!hasWord(code)) return [];
  const word = codeWord(context, "cycles.tap-synchronised", code);
  return [when(and("first", get("state", "taps")), blockOf(context, word.statements))];
}

/** The cycle in a block without a place, and then each hole in one of its own. */
function blocksApart(context: Context, cycles: NonNullable<Format["cycles"]>): Statement[] {
  const { format } = context;
  const none =
    cycles.repeatWord === null ? [] : [wholeWord(context, "cycles.words.repeat", cycles.repeatWord, 0, 1)];
  const definition = [
    ...(format.gWords === "one" ? [] : [returnWord(context)]),
    cycleWord(context, true),
    depthWord(context),
    ...retractWords(context, cycles),
    ...timesAndPecks(context, cycles),
    feedOfHole(context),
    ...none,
  ];
  const hole = [
    ...(format.modal.motion === "each-block" ? [cycleWord(context, false)] : []),
    ...axisWords(context, ["x", "y"], "work", policyOfPlaces(context)),
    ...(format.modal.feed === "each-block" ? [feedOfHole(context)] : []),
  ];
  return [
    when("first", blockOf(context, inOrder(context, definition))),
    ...blockOf(context, inOrder(context, hole)),
  ];
}

function holeWords(context: Context, cycles: NonNullable<Format["cycles"]>): Word[] {
  const once = (word: Word): Word => (cycles.repeat === "all" ? word : given("first", word));
  return [
    ...(context.format.gWords === "one" ? [] : [once(returnWord(context))]),
    cycleWord(context, id("first")),
    once(depthWord(context)),
    ...retractWords(context, cycles),
    ...timesAndPecks(context, cycles).map(once),
    ...axisWords(context, ["x", "y"], "work", policyOfPlaces(context)),
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
function cycleWord(context: Context, isFirst: Value): Word {
  const { codes } = context.format;
  const code = get("state", "code");
  const address = Object.values(codes.cycles).find(hasWord)?.letter ?? "G";
  const write = set("at", call("write", "state", "at", code));
  return inMotionGroup(context, address, code, tracingIndex(context, get("state", "key")), [write], isFirst);
}

/** The bottom: a coordinate, or from the retract level (in an incremental program always so), or from the initial level. */
function depthWord(context: Context): Word {
  const [depth, retract] = [get("state", "depth"), get("state", "retract")];
  const ifRelative = context.format.cycles?.levels === "from-initial" ? get("state", "initial") : retract;
  return keyed(
    context,
    "cycles.levels",
    numberWord(
      context.format.motion.letters.z,
      "writeLength",
      relativeLevel(context.format, depth, ifRelative, retract),
    ),
  );
}

/**
 * The retract level: relative to the level before the series, or in an incremental program to where the tool is
 * (NISTIR 6556 3.5.16), which is another place behind the first hole, so that each hole states it.
 */
function retractWords(context: Context, cycles: NonNullable<Format["cycles"]>): Word[] {
  const value = relativeLevel(
    context.format,
    get("state", "retract"),
    get("state", "initial"),
    get("state", "z"),
  );
  const word = keyed(context, "cycles.levels", numberWord(cycles.retractWord, "writeLength", value));
  if (cycles.repeat === "all" || cycles.definition === "apart") return [word];
  const moves = cycles.levels === "absolute" && canBeIncremental(context.format);
  return [given(moves ? or("first", get("state", "incremental")) : id("first"), word)];
}

function relativeLevel(
  format: Format,
  level: Expression,
  ifRelative: Expression,
  ifIncremental: Expression,
): Expression {
  if (format.cycles?.levels !== "absolute") return sub(level, ifRelative);
  return canBeIncremental(format) ? sub(level, choose(get("state", "incremental"), ifIncremental, 0)) : level;
}

function timesAndPecks(context: Context, cycles: NonNullable<Format["cycles"]>): Word[] {
  const [peck, dwell] = [get("state", "peck"), get("state", "dwell")];
  return [
    given(
      get("state", "pecks"),
      keyed(context, "cycles.words.peck", numberWord(cycles.peckWord, "writePeck", peck)),
    ),
    ...backOffWord(context, cycles),
    given(
      get("state", "dwells"),
      keyed(context, "cycles.words.dwell", numberWord(cycles.dwellWord, "writeCycleDwell", dwell)),
    ),
  ];
}

/** The back-off of a cycle with pecks, where the dialect has a word for it. */
function backOffWord(context: Context, { backOffWord: letter }: NonNullable<Format["cycles"]>): Word[] {
  if (letter === null) return [];
  const word = numberWord(letter, "writePeck", get("state", "backOff"));
  return [given(get("state", "pecks"), keyed(context, "cycles.words.back-off", word))];
}

/** Holes state their feed where it changes, and the first of a series where the dialect wants it behind a rapid. */
function feedOfHole(context: Context): Word {
  const word = context.format.cycles?.tapLead === true ? feedOrLead(context) : alwaysFeedWord();
  const repeats = { ...word, statements: [...feedRepeats(context), ...word.statements] };
  if (context.format.modal.feed === "each-block") return repeats;
  const changes = differs(column("feed"), get("state", "feed"));
  return context.format.modal.feed === "modal" ? given(changes, word) : given(or("first", changes), repeats);
}

/** The feed, or the lead of a tap in the numbers of a feed per revolution. */
function feedOrLead(context: Context): Word {
  const lead = [
    ...tracing(context, "cycles.tap-feed"),
    set("at", call("writeFeedPerRevolution", "state", "at", character("F"), column("feed"))),
    set(get("state", "feed"), column("feed")),
  ];
  return {
    address: "F",
    statements: [when(get("state", "taps"), lead, alwaysFeedWord().statements)],
  };
}
