import type { Format } from "#dialect";
import {
  add,
  and,
  back,
  constant,
  create,
  func,
  get,
  ignoring,
  increase,
  list,
  not,
  orElse,
  pick,
  record,
  same,
  send,
  set,
  str,
  when,
  without,
} from "./builders.ts";
import type { Expression, FunctionDeclaration, Statement, Value } from "./builders.ts";
import type { Context } from "./context.ts";
import { canBeIncremental, marksTaps } from "./context.ts";
import { faultOn } from "./fault.ts";
import type { Name } from "./names.ts";
import { hasFooter } from "./write-frame.ts";
import { marksSections } from "./write-section.ts";
import { blockRoom } from "./write-text.ts";

/** Size of a chunk in bytes; it is handed on as soon as it is passed. */
const chunkSize = 65536;

/** The constant of that name in the generated module. */
export function defineChunkSize(): Statement {
  return constant("chunkSize", chunkSize);
}

/** The state of the emitter, what clears parts of it, and the hand-over of a chunk. */
export function defineState(context: Context): FunctionDeclaration[] {
  const { format } = context;
  return [
    defineCreateState(context),
    defineTake(),
    func(
      "restate",
      ["state"],
      [...forgetMotion(), ...forgetFeed(), ...forgetSpeed(format), set(get("state", "fresh"), true)],
    ),
    defineKeepPlace(),
    ...(canBeIncremental(format) ? [defineRequireKnown()] : []),
  ];
}

/** The motion word in force no longer counts. */
export function forgetMotion(): Statement[] {
  return [set(get("state", "motion"), str(""))];
}

/** The feed in force no longer counts; no feed is below 0. */
export function forgetFeed(): Statement[] {
  return [set(get("state", "feed"), -1)];
}

/** The speed said last no longer counts. */
export function forgetSpeed({ modal }: Format): Statement[] {
  return modal.speed === "changed" ? [set(get("state", "speed"), -1)] : [];
}

/** Places that the step makes unknown: all, or those of an axis mask. */
export function forgetPlaces(axes?: Value): Statement {
  return set(get("state", "known"), axes === undefined ? 0 : without(get("state", "known"), axes));
}

function defineCreateState(context: Context): FunctionDeclaration {
  const { format } = context;
  const trace: [Name, Value][] = context.traced
    ? [["trace", orElse(get("options", "trace"), ignoring())]]
    : [];
  return func(
    "createState",
    ["options"],
    [
      ...refuseUnits(format),
      constant("fragment", same(get("options", "fragment"), true)),
      constant("start", orElse(get("options", "start"), nowhere(format))),
      constant(
        "state",
        record([
          ...textFields(format),
          ...trace,
          ...modeFields(format),
          ...placeFields(),
          ...cycleFields(context),
        ]),
      ),
      back("state"),
    ],
  );
}

/** A dialect that writes in one unit system alone has no numbers for the other. */
function refuseUnits({ unitsIn }: Format): Statement[] {
  const other = unitsIn === "mm" ? "inch" : "mm";
  return unitsIn === "job"
    ? []
    : [when(same(get("options", "units"), str(other)), [faultOn("units.programs-in")])];
}

/** Where a program starts: nothing is known, and the modes are those that the dialect's programs use. */
function nowhere(format: Format): Expression {
  const places = (["known", "x", "y", "z", "a", "b", "c"] as const).map((name): [Name, Value] => [name, 0]);
  return record([...places, ["distance", str(format.distance)], ["feedMode", str("per-minute")]]);
}

/** Buffer, block numbers, and words that wait for the step that follows. */
function textFields(format: Format): [Name, Value][] {
  return [
    ["bytes", create("Uint8Array", add("chunkSize", blockRoom(format)))],
    ["at", 0],
    ["base", 0],
    ["header", get("options", "header")],
    ...(hasFooter(format)
      ? ([["footer", orElse(get("options", "footer"), list([]))]] as [Name, Value][])
      : []),
    ["fragment", "fragment"],
    ["numbered", not("fragment")],
    ...sectionFields(format),
    ["number", format.blockNumber?.start ?? 0],
    ["waiting", false],
    ["held", str("")],
    ["value", 0],
    ...(format.dwell?.blocks === "with-start" ? ([["direction", str("")]] as [Name, Value][]) : []),
    ["group", 0],
    ["width", 0],
    ["miscellaneous", 0],
    ["early", list([])],
    ["late", list([])],
  ];
}

/** The next section of the batch, and whether the next block begins one. */
function sectionFields(format: Format): [Name, Value][] {
  return marksSections(format)
    ? [
        ["section", 0],
        ["opening", false],
      ]
    : [];
}

function modeFields(format: Format): [Name, Value][] {
  return [
    ["inch", same(get("options", "units"), str("inch"))],
    ["incremental", same(get("start", "distance"), str("incremental"))],
    ["centreAbsolute", format.arc.form === "absolute-centre"],
    ["feedMode", get("start", "feedMode")],
    ["motion", str("")],
    ["feed", -1],
    ["afterRapid", false],
    ...(format.modal.speed === "changed" ? [["speed", -1] as [Name, Value]] : []),
    ...(format.gears.length > 0 ? [["gear", 0] as [Name, Value]] : []),
    ["workOffset", -1],
    ["lengthOffset", -1],
  ];
}

/** Places in work coordinates, and which of them are known. */
function placeFields(): [Name, Value][] {
  return (["known", "x", "y", "z", "a", "b", "c"] as const).map((name) => [name, get("start", name)]);
}

/** The fixed cycle in force. */
function cycleFields(context: Context): [Name, Value][] {
  const { traced, format } = context;
  const names = ["initial", "depth", "retract", "peck", "dwell"] as const;
  const levels = names.map((level): [Name, Value] => [level, 0]);
  const saysBackOff = (format.cycles?.backOffWord ?? null) !== null;
  return [
    ["code", str("")],
    ["returnCode", str("")],
    ...(traced
      ? ([
          ["key", 0],
          ["returnKey", 0],
        ] as [Name, Value][])
      : []),
    ["fresh", false],
    ["pecks", false],
    ...(marksTaps(context) ? ([["taps", false]] as [Name, Value][]) : []),
    ["dwells", false],
    ...levels,
    ...(saysBackOff ? ([["backOff", 0]] as [Name, Value][]) : []),
  ];
}

/** Hands on the bytes written so far. */
function defineTake(): FunctionDeclaration {
  return func(
    "take",
    ["state"],
    [
      constant("chunk", send(get("state", "bytes"), "subarray", 0, get("state", "at"))),
      increase(get("state", "base"), get("state", "at")),
      set(get("state", "at"), 0),
      back("chunk"),
    ],
  );
}

/** Remembers where a row in work coordinates ends. */
function defineKeepPlace(): FunctionDeclaration {
  const keep = (axis: Name, column: Value): Statement => set(get("state", axis), pick(column, "row"));
  const rotary = (["a", "b", "c"] as const).map((axis, index) =>
    keep(axis, pick(get("batch", "abc"), index)),
  );
  return func(
    "keepPlace",
    ["state", "batch", "row"],
    [
      keep("known", get("batch", "known")),
      keep("x", get("batch", "x")),
      keep("y", get("batch", "y")),
      keep("z", get("batch", "z")),
      when(get("batch", "abc"), rotary),
    ],
  );
}

/** An incremental word needs the place that it starts from. */
function defineRequireKnown(): FunctionDeclaration {
  const unknown = without("axes", get("state", "known"));
  return func(
    "requireKnown",
    ["state", "axes"],
    [when(and(get("state", "incremental"), unknown), [faultOn("distance.absolute")])],
  );
}
