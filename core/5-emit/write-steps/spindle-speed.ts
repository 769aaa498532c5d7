import { and, atLeast, atMost, differs, get, set, when } from "../builders.ts";
import type { Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { faultOn } from "../fault.ts";
import { blockOf, codeWord, keyed, numberWord, settled } from "../words.ts";
import { hold } from "../write-held.ts";

/** The speed word; where it shares its block with the start, it waits for that. */
export function writeSpindleSpeed(context: Context): Statement[] {
  const { spindle } = context.format;
  const rpm = get("step", "rpm");
  if (spindle === undefined) return [faultOn("spindle.blocks")];
  const before = [settled(), ...selectGear(context)];
  if (spindle.blocks === "together") return [...before, ...whereSaid(context, hold("speed", rpm))];
  return [
    ...before,
    ...whereSaid(context, [
      ...blockOf(context, keyed(context, "spindle.blocks", numberWord("S", "writeSpeed", rpm)).statements),
    ]),
  ];
}

/** What says the speed; under `changed` only where it is not the one said last. */
function whereSaid({ format }: Context, say: readonly Statement[]): readonly Statement[] {
  if (format.modal.speed === "each-start") return say;
  const said = get("state", "speed");
  return [when(differs(said, get("step", "rpm")), [...say, set(said, get("step", "rpm"))])];
}

/** The gear range that the speed lies in, in a block of its own, unless it has been selected since the spindle last stood. */
function selectGear(context: Context): Statement[] {
  const { gears } = context.format;
  const rpm = get("step", "rpm");
  return gears.reduceRight<Statement[]>(
    (otherwise, { code, from, to }, index) => {
      const number = index + 1;
      const block = blockOf(context, codeWord(context, `spindle.gears.${number}.code`, code).statements);
      const select = when(differs(get("state", "gear"), number), [
        ...block,
        set(get("state", "gear"), number),
      ]);
      return [when(and(atLeast(rpm, from), atMost(rpm, to)), [select], otherwise)];
    },
    gears.length === 0 ? [] : [faultOn("spindle.gears")],
  );
}
