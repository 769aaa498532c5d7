import { get, set } from "../builders.ts";
import type { Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { blockOf, codeWords, inOrder, settled } from "../words.ts";

/** A step that is one code in a block of its own. */
export function oneCode(context: Context, key: string, code: Parameters<typeof codeWords>[2]): Statement[] {
  return [settled(), ...blockOf(context, inOrder(context, codeWords(context, key, code)))];
}

/** The spindle stops. */
export function writeSpindleStop(context: Context): Statement[] {
  const { codes, gears } = context.format;
  const stop = oneCode(context, "spindle.stop", codes.spindleStop);
  return gears.length === 0 ? stop : [...stop, set(get("state", "gear"), 0)];
}

/** The spindle turns to its angle for a swap. */
export function writeSpindleOrient(context: Context): Statement[] {
  return oneCode(context, "spindle.orient", context.format.codes.spindleOrient);
}

/** The program ends. */
export function writeProgramEnd(context: Context): Statement[] {
  return oneCode(context, "stops.end", context.format.codes.end);
}
