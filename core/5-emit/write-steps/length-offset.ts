import { axisBit } from "#base";
import { differs, get, same, set, when } from "../builders.ts";
import type { Statement } from "../builders.ts";
import type { Context } from "../context.ts";
import { faultOn } from "../fault.ts";
import { blockOf, inOrder, settled } from "../words.ts";
import { hold, lengthWords } from "../write-held.ts";
import { forgetPlaces } from "../write-state.ts";
import { modeWord } from "./mode.ts";

/** A tool length offset: 0 cancels it, as a mode among others; another one waits for its rapid, or has a block of its own. */
export function writeLengthOffset(context: Context): Statement[] {
  const number = get("step", "number");
  return [
    when(same(number, 0), turnOff(context), turnOn(context)),
    when(differs(number, get("state", "lengthOffset")), [forgetPlaces(axisBit.z)]),
    set(get("state", "lengthOffset"), number),
  ];
}

/** `G49`, or `G43 H0` in a block of its own. */
function turnOff(context: Context): Statement[] {
  const { lengthOffset, codes } = context.format;
  if (lengthOffset?.cancelledBy === "number")
    return [settled(), ...blockOf(context, inOrder(context, lengthWords(context, 0)))];
  return [modeWord(context, "length-offset", "length-offset.off", codes.lengthOff)];
}

function turnOn(context: Context): Statement[] {
  const number = get("step", "number");
  switch (context.format.lengthOffset?.form) {
    case "with-first-z":
      return [settled(), ...hold("length", number)];
    case "own-block":
      return [settled(), ...blockOf(context, inOrder(context, lengthWords(context, number)))];
    case "in-tool-word":
    case "none":
    case undefined:
      return [faultOn("length-offset.on")];
  }
}
