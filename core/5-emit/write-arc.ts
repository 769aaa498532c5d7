import { axisBit, frame, linearAxes } from "#base";
import type { Plane, RowKindName } from "#base";
import type { Code } from "#dialect";
import {
  both,
  call,
  choose,
  constant,
  differs,
  either,
  func,
  get,
  less,
  math,
  more,
  not,
  or,
  run,
  set,
  str,
  sub,
  when,
} from "./builders.ts";
import type { Expression, FunctionDeclaration, Statement, Value } from "./builders.ts";
import type { EmitterFunction } from "./calls.ts";
import { hasWord } from "./code-text.ts";
import type { Context } from "./context.ts";
import { faultOn } from "./fault.ts";
import type { Name } from "./names.ts";
import type { Word } from "./words.ts";
import {
  blockOf,
  codeWithSeparator,
  given,
  inOrder,
  keyed,
  keyOf,
  numberWord,
  settled,
  tracingIndex,
  tracingWhere,
  wholeWord,
} from "./words.ts";
import { feedWord } from "./write-feed.ts";
import { axisWords, column, inMotionGroup, placesNeeded } from "./write-motion.ts";

/** The arcs of a plane: its first and second axis in that order (NISTIR 6556 Table 9), its centre words, its row kinds. */
interface ArcPlane {
  readonly name: EmitterFunction;
  readonly axes: readonly ["x" | "y" | "z", "x" | "y" | "z"];
  readonly words: readonly [string, string];
}

const planes = {
  xy: { name: "writeArcXy", axes: ["x", "y"], words: ["I", "J"] },
  zx: { name: "writeArcZx", axes: ["z", "x"], words: ["K", "I"] },
  yz: { name: "writeArcYz", axes: ["y", "z"], words: ["J", "K"] },
} as const satisfies Record<Plane, ArcPlane>;

/** The arc writers of the three planes. */
export function defineArcs(context: Context): FunctionDeclaration[] {
  return [planes.xy, planes.zx, planes.yz].map((plane) => defineArc(context, plane));
}

/** The arc writer of each row kind of an arc; undefined for those of the form that the dialect doesn't use. */
export function arcWriters({ format }: Context): Record<ArcRow, EmitterFunction | undefined> {
  const isRadius = format.arc.form === "radius";
  const centre = (plane: Plane): EmitterFunction | undefined => (isRadius ? undefined : planes[plane].name);
  const radius = (plane: Plane): EmitterFunction | undefined => (isRadius ? planes[plane].name : undefined);
  return {
    arcXy: centre("xy"),
    arcZx: centre("zx"),
    arcYz: centre("yz"),
    radiusXy: radius("xy"),
    radiusZx: radius("zx"),
    radiusYz: radius("yz"),
  };
}

/** Row kinds of arcs. */
type ArcRow = Extract<RowKindName, `arc${string}` | `radius${string}`>;

function defineArc(context: Context, plane: ArcPlane): FunctionDeclaration {
  const { form } = context.format.arc;
  if (form === undefined || form === "none")
    return func(plane.name, ["state", "batch", "row"], [faultOn("arc.form")]);
  const words = [
    directionWord(context),
    ...axisWords(context, ["x", "y", "z"], "work", policyOfEnds(context)),
    ...shapeWords(context, plane),
    ...turnsWords(context),
    feedWord(context),
  ];
  return func(
    plane.name,
    ["state", "batch", "row"],
    [
      settled(),
      when(or(differs(column("frame"), frame.work), more(column("stated"), linearAxes)), [faultOn("arc")]),
      ...arcAxes(context, plane),
      ...placesNeeded(context),
      ...(form === "radius" ? [] : centre(context, plane)),
      ...turnsNeeded(context),
      ...direction(context),
      ...blockOf(context, inOrder(context, words)),
      run(call("keepPlace", "state", "batch", "row")),
    ],
  );
}

/** `const code = ...`: the word of the direction; a direction without a word is a fault. */
function direction(context: Context): Statement[] {
  const { arcCw, arcCcw } = context.format.codes;
  const text = (code: Code | null | undefined): Expression =>
    str(hasWord(code) ? codeWithSeparator(context, code) : "");
  const isClockwise = less(column("turns"), 0);
  return [
    ...(hasWord(arcCw) ? [] : [when(isClockwise, [faultOn("arc.cw")])]),
    ...(hasWord(arcCcw) ? [] : [when(more(column("turns"), 0), [faultOn("arc.ccw")])]),
    constant("code", choose(isClockwise, text(arcCw), text(arcCcw))),
  ];
}

function directionWord(context: Context): Word {
  const { codes } = context.format;
  const index = choose(less(column("turns"), 0), keyOf(context, "arc.cw"), keyOf(context, "arc.ccw"));
  const write = set("at", call("write", "state", "at", "code"));
  const address = (codes.arcCw ?? codes.arcCcw)?.letter ?? "G";
  return inMotionGroup(context, address, "code", tracingIndex(context, index), [write]);
}

/** The key by which an arc has end words that it does not state. */
function policyOfEnds({ format: { modal } }: Context): string | undefined {
  if (modal.axes === "all") return "modal.axes";
  return modal.arcEnd === "both" ? "modal.arc-end" : undefined;
}

/**
 * The end words. An arc that ends where it starts states both words of its plane whatever the policy: at least one end
 * word is needed (NISTIR 6556 3.5.3.2), and both make plain that a full circle is meant.
 */
function arcAxes({ format }: Context, plane: ArcPlane): Statement[] {
  if (format.modal.axes === "all") return [constant("axes", both(column("known"), linearAxes))];
  const mask = axisBit[plane.axes[0]] | axisBit[plane.axes[1]];
  const withPlane = either(column("stated"), mask);
  if (format.modal.arcEnd === "both") return [constant("axes", withPlane)];
  return [constant("axes", choose(both(column("stated"), mask), column("stated"), withPlane))];
}

/** The centre: its place, or where it lies from the start of the arc, which must be known. */
function centre(context: Context, plane: ArcPlane): Statement[] {
  const mask = axisBit[plane.axes[0]] | axisBit[plane.axes[1]];
  const isUnknown = differs(both(get("state", "known"), mask), mask);
  const place = (value: Value, axis: Name): Expression => {
    const start = get("state", axis);
    const mode = centreMode(context);
    if (mode === "absolute") return value as Expression;
    return sub(value, mode === "incremental" ? start : choose(get("state", "centreAbsolute"), 0, start));
  };
  return [
    ...(centreMode(context) === "absolute" ? [] : [when(isUnknown, [faultOn("arc.form")])]),
    constant("first", place(column("c1"), plane.axes[0])),
    constant("second", place(column("c2"), plane.axes[1])),
  ];
}

/** Whether centre words are absolute, incremental, or as the last arc-centre mode said. */
function centreMode({ format }: Context): "absolute" | "incremental" | "stated" {
  const words = format.codes.modes["arc-centre"];
  if (hasWord(words.absolute) && hasWord(words.incremental)) return "stated";
  return format.arc.form === "absolute-centre" ? "absolute" : "incremental";
}

/** The words for the shape: centre or radius. Zero may be left out only where it is an increment. */
function shapeWords(context: Context, plane: ArcPlane): Word[] {
  const { arc, modal } = context.format;
  if (arc.form === "radius")
    return [keyed(context, "arc.form", numberWord(arc.radiusWord, "writeArcCentre", column("c1")))];
  const word = (letter: string, value: "first" | "second"): Word => {
    const always = numberWord(letter, "writeArcCentre", value);
    if (centreMode(context) === "absolute") return always;
    const differsFromStart = differs(value, 0);
    const isNeeded =
      centreMode(context) === "stated"
        ? or(differsFromStart, get("state", "centreAbsolute"))
        : differsFromStart;
    if (modal.arcCentre !== "both") return given(isNeeded, always);
    const policy = tracingWhere(context, not(isNeeded), "modal.arc-centre");
    return { ...always, statements: [...policy, ...always.statements] };
  };
  return [word(plane.words[0], "first"), word(plane.words[1], "second")];
}

/** More than one turn in a block needs a word for it. */
function turnsNeeded({ format }: Context): Statement[] {
  const turns = constant("turns", math("abs", column("turns")));
  return format.arc.turnsWord === null
    ? [turns, when(more("turns", 1), [faultOn("arc.turns-word")])]
    : [turns];
}

function turnsWords(context: Context): Word[] {
  const { turnsWord } = context.format.arc;
  return turnsWord === null
    ? []
    : [given(more("turns", 1), wholeWord(context, "arc.turns-word", turnsWord, "turns", 1))];
}
