import type { CanonicalCall } from "./canonical-calls.ts";
import type { Meaning } from "./meaning.ts";
import { meaning } from "./meaning.ts";

/** What the interpreter says of itself in comments, and we compare. */
const told: Readonly<Record<string, Meaning>> = {
  "feed mode set to units per minute": meaning("FEED_MODE", [], "per-minute"),
  "feed mode set to units per revolution": meaning("FEED_MODE", [], "per-revolution"),
  "feed mode set to inverse time": meaning("FEED_MODE", [], "inverse-time"),
  "cutter radius compensation off": meaning("COMPENSATION", [], "off"),
  "cutter radius compensation on left": meaning("COMPENSATION", [], "left"),
  "cutter radius compensation on right": meaning("COMPENSATION", [], "right"),
  "motion mode set to none": meaning("CYCLE_OFF"),
};

/** Calls without a meaning of their own, each with the reason. */
const silent = new Set([
  "ON_RESET", // the interpreter's own start and end
  "START_CHANGE", // CHANGE_TOOL says it
  "SET_FEED_REFERENCE", // said once, before the program
  "SET_FEED_MODE", // the comment beside it tells inverse time from feed a minute, which this does not
  "SET_NAIVECAM_TOLERANCE", // 0 with each continuous mode
  "SET_SPINDLE_MODE", // constant surface speed is off, which it always is
]);

/** Calls that the interpreter makes before it has read a block: units, offsets, rotation, feed reference, reset. */
const prologue = 6;
const ownComment = "interpreter: ";

/**
 * What the calls of a run mean, in order.
 *
 * A feed rate is put to the motions that it is in force for, since how often it is said has no meaning.
 */
export function meaningsOf(calls: readonly CanonicalCall[]): Meaning[] {
  const meanings: Meaning[] = [];
  let feed = 0;
  let offset = meaning("SET_G5X_OFFSET");
  let units = "CANON_UNITS_MM";
  for (const [index, call] of calls.entries()) {
    const { name, numbers, text } = call;
    if (name === "SET_G5X_OFFSET") offset = meaning(name, numbers);
    if (name === "USE_LENGTH_UNITS") {
      offset = inOtherUnits(offset, units, call.words[0]);
      units = call.words[0];
    }
    if (index < prologue || silent.has(name)) continue;
    if (name === "SET_FEED_RATE") feed = numbers[0];
    else if (name === "COMMENT") meanings.push(...ofComment(text, offset));
    else if (name === "SET_XY_ROTATION") refuseRotation(numbers[0]);
    else if (name === "STRAIGHT_FEED" || name === "ARC_FEED")
      meanings.push(meaning(name, [...numbers, feed]));
    else meanings.push(ofCall(call));
  }
  return meanings;
}

/** The origin is where it was when units change; its numbers are others. */
function inOtherUnits({ name, numbers }: Meaning, from: string, to: string): Meaning {
  const factor = from === to ? 1 : to === "CANON_UNITS_MM" ? 25.4 : 1 / 25.4;
  return meaning(
    name,
    numbers.map((value, index) => (index >= 1 && index <= 3 ? value * factor : value)),
  );
}

function ofComment(text: string, offset: Meaning): Meaning[] {
  if (!text.startsWith(ownComment)) return [];
  const said = text.slice(ownComment.length);
  if (said === "continuing to use same coordinate system") return [offset];
  return Object.hasOwn(told, said) ? [told[said]] : [];
}

/** Drops the number of the spindle, of which there is one, and the tolerance of the continuous mode, which has none. */
function ofCall({ name, numbers, words, text }: CanonicalCall): Meaning {
  if (name === "SET_SPINDLE_SPEED") return meaning(name, numbers.slice(1));
  if (/SPINDLE|SPEED_OVERRIDE/.test(name)) return meaning(name);
  if (name === "SET_MOTION_CONTROL_MODE") return meaning(name, [], words[0]);
  return meaning(name, numbers, text === "" ? words.join(" ") : text.trim());
}

function refuseRotation(angle: number): void {
  if (angle !== 0)
    throw new Error(`The interpreter turns the plane by ${angle} degrees; nothing of ours asks for that.`);
}
