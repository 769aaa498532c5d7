import { axisBit, axes as axisNames, rotaryAxes } from "#base";
import type { Axis } from "#base";
import {
  and,
  both,
  call,
  choose,
  constant,
  differs,
  get,
  not,
  or,
  pick,
  run,
  same,
  set,
  str,
  sub,
} from "./builders.ts";
import type { Expression, Statement, Value } from "./builders.ts";
import type { Code } from "#dialect";
import { hasWord } from "./code-text.ts";
import type { Context } from "./context.ts";
import { canBeIncremental } from "./context.ts";
import type { Word } from "./words.ts";
import { codeWithSeparator, given, missing, numberWord, tracing, tracingWhere, writing } from "./words.ts";

/** A column of the batch at the row that is being written. */
export function column(
  name: "kind" | "frame" | "known" | "stated" | "x" | "y" | "z" | "feed" | "c1" | "c2" | "turns" | "aside",
): Expression {
  return pick(get("batch", name), "row");
}

function place(axis: Axis): Expression {
  if (axis === "x" || axis === "y" || axis === "z") return column(axis);
  return pick(pick(get("batch", "abc"), axisNames.indexOf(axis) - 3), "row");
}

/** `const axes = ...`: which axis words the row has. A row that states no axis says all that it knows, rather than nothing. */
export function axesOfRow({ format }: Context): Statement {
  return constant(
    "axes",
    format.modal.axes === "all" ? column("known") : or(column("stated"), column("known")),
  );
}

/**
 * The words of the axes in `axes`; in work coordinates they may be differences from the place before.
 *
 * @param policy key by which the row has axes that it does not state
 */
export function axisWords(
  context: Context,
  of: readonly Axis[],
  frame: "work" | "machine",
  policy = policyOfAxes(context),
): Word[] {
  return of
    .filter(
      (axis) =>
        axisBit[axis] < axisBit.a || context.format.order.includes(context.format.motion.letters[axis]),
    )
    .map((axis) =>
      given(both("axes", axisBit[axis]), {
        address: context.format.motion.letters[axis],
        statements: [...ofPolicy(context, axis, policy), ...axisWord(context, axis, frame).statements],
      }),
    );
}

/** A row that states some axes has the others by the policy alone. */
function ofPolicy(context: Context, axis: Axis, policy: string | undefined): Statement[] {
  const stated = column("stated");
  return policy === undefined
    ? []
    : tracingWhere(context, and(differs(stated, 0), not(both(stated, axisBit[axis]))), policy);
}

/** The policy by which a row has axes that it does not state. */
function policyOfAxes({ format }: Context): string | undefined {
  return format.modal.axes === "all" ? "modal.axes" : undefined;
}

function axisWord(context: Context, axis: Axis, frame: "work" | "machine"): Word {
  const value =
    frame === "work" && canBeIncremental(context.format) ? fromLast(place(axis), axis) : place(axis);
  return numberWord(
    context.format.motion.letters[axis],
    axis === "x" || axis === "y" || axis === "z" ? "writeLength" : "writeAngle",
    value,
  );
}

/** A place, or in an incremental program its difference from the last; both lie on the grid, so that nothing adds up. */
export function fromLast(value: Value, axis: Axis): Expression {
  return sub(value, choose(get("state", "incremental"), get("state", axis), 0));
}

/** Rotary axes that the dialect's blocks have no address for. */
export function rotaryWithoutWord(context: Context): number {
  const missingAxes = (["a", "b", "c"] as const).filter(
    (axis) => !context.format.order.includes(context.format.motion.letters[axis]),
  );
  return missingAxes.reduce((mask, axis) => mask | axisBit[axis], 0) & rotaryAxes;
}

/** The motion word; under a modal policy only where another one is in force, or none. */
export function motionWord(context: Context, key: string, code: Code | null | undefined): Word {
  if (!hasWord(code)) return missing("G", key);
  const text = codeWithSeparator(context, code);
  return inMotionGroup(context, code.letter, str(text), tracing(context, key), [writing(text)]);
}

/**
 * A word of the group of motions. It is the work of the modal policy only where it repeats what is in force, which the
 * traced emitter therefore keeps under every policy.
 *
 * @param reports what reports its own keys
 * @param isFirst where it stands in any case
 */
export function inMotionGroup(
  context: Context,
  address: string,
  text: Value,
  reports: readonly Statement[],
  write: readonly Statement[],
  isFirst: Value = false,
): Word {
  const motion = get("state", "motion");
  const written = [...write, ...keepMotion(context, text)];
  if (context.format.modal.motion === "modal") {
    const statements = [...reports, ...written];
    if (isFirst === true) return { address, statements };
    const changes = differs(motion, text);
    return given(isFirst === false ? changes : or(isFirst, changes), { address, statements });
  }
  const isRepeat = isFirst === false ? same(motion, text) : and(not(isFirst), same(motion, text));
  const traced = isFirst === true ? [] : tracingWhere(context, isRepeat, "modal.motion");
  return { address, statements: [...reports, ...traced, ...written] };
}

/** `state.motion = ...`: which motion word is in force, where the policy asks, or a trace of it. */
export function keepMotion({ format, traced }: Context, text: Value): Statement[] {
  return format.modal.motion === "modal" || traced ? [set(get("state", "motion"), text)] : [];
}

/** What an incremental row needs before its words; nothing where no program is incremental. */
export function placesNeeded(context: Context): Statement[] {
  return canBeIncremental(context.format) ? [run(call("requireKnown", "state", "axes"))] : [];
}
