import { cases, get, same, set, str, when } from "../builders.ts";
import type { Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { faultOn } from "../fault.ts";
import { blockOf, codeWord, keyed, settled } from "../words.ts";
import { hold, release, speedWord } from "../write-held.ts";

/** The start of the spindle, with the speed that waits for it. The dialect says which comes first, whatever the order of other blocks. */
export function writeSpindleStart(context: Context): Statement[] {
  const { spindle, codes, dwell } = context.format;
  if (dwell?.blocks === "with-start") return holdStart();
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

/** The start waits for the dwell that may share its block; a speed that waits goes along. */
function holdStart(): Statement[] {
  const direction = set(get("state", "direction"), get("step", "direction"));
  return [
    when(
      same(get("state", "held"), str("speed")),
      [set(get("state", "held"), str("start"))],
      [settled(), ...hold("start", -1)],
    ),
    direction,
  ];
}
