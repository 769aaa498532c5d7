import { axisBit } from "#base";
import { both, get } from "../builders.ts";
import type { Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { faultOn } from "../fault.ts";
import { blockOf, codeWords, given, inOrder, keyed, numberWord, settled } from "../words.ts";
import { forgetMotion, forgetPlaces } from "../write-state.ts";

/**
 * A return to the reference point: the axes that go are named with a zero, which is the increment to the intermediate
 * point where the controller has one (NISTIR 6556 3.5.8), and otherwise only names the axis.
 */
export function writeReferenceReturn(context: Context): Statement[] {
  const { codes, motion, referenceIntermediate } = context.format;
  if (referenceIntermediate === undefined) return [faultOn("machine.retract.intermediate")];
  const axes = (["x", "y", "z"] as const).map((axis) => {
    const zero = numberWord(motion.letters[axis], "writeLength", 0);
    return given(both(get("step", "axes"), axisBit[axis]), keyed(context, "reference-return", zero));
  });
  const words = inOrder(context, [...codeWords(context, "reference-return", codes.referenceReturn), ...axes]);
  return [settled(), ...blockOf(context, words), ...forgetMotion(), forgetPlaces(get("step", "axes"))];
}
