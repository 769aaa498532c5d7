import { get } from "../builders.ts";
import type { Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { faultOn } from "../fault.ts";
import { blockOf, keyed, numberWord, settled } from "../words.ts";
import { hold } from "../write-held.ts";

/** The speed word; where it shares its block with the start, it waits for that. */
export function writeSpindleSpeed(context: Context): Statement[] {
  const { spindle } = context.format;
  const rpm = get("step", "rpm");
  if (spindle === undefined) return [faultOn("spindle.blocks")];
  if (spindle.blocks === "together") return [settled(), ...hold("speed", rpm)];
  return [
    settled(),
    ...blockOf(context, keyed(context, "spindle.blocks", numberWord("S", "writeSpeed", rpm)).statements),
  ];
}
