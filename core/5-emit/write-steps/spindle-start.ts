import { cases, get, same, str, when } from "../builders.ts";
import type { Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { faultOn } from "../fault.ts";
import { blockOf, codeWord, keyed, settled } from "../words.ts";
import { release, speedWord } from "../write-held.ts";

/** The start of the spindle, with the speed that waits for it. The dialect says which comes first, whatever the order of other blocks. */
export function writeSpindleStart(context: Context): Statement[] {
  const { spindle, codes } = context.format;
  const start = [
    cases(
      get("step", "direction"),
      [
        { of: str("cw"), statements: codeWord(context, "spindle.cw", codes.spindleCw).statements },
        { of: str("ccw"), statements: codeWord(context, "spindle.ccw", codes.spindleCcw).statements },
      ],
      [faultOn("spindle")],
    ),
  ];
  const alone = [settled(), ...blockOf(context, start)];
  if (spindle?.blocks !== "together") return alone;
  const speed = keyed(context, "spindle.order", speedWord()).statements;
  const pair = spindle.order === "speed-first" ? [...speed, ...start] : [...start, ...speed];
  return [when(same(get("state", "held"), str("speed")), [...blockOf(context, pair), ...release()], alone)];
}
