import { letterName } from "./letters.ts";
import * as findings from "./findings-meaning.ts";
import type { Reader } from "./reader.ts";
import { modeBit } from "./state.ts";

/** How a mode is called, the key of its words, and how the value that is taken instead is called. */
interface ModeWords {
  readonly bit: number;
  readonly name: string;
  readonly key: string;
  assumed(reader: Reader): string;
}

const modes: readonly ModeWords[] = [
  { bit: modeBit.units, name: "its units", key: "units", assumed: ({ state }) => state.units },
  {
    bit: modeBit.distance,
    name: "absolute or incremental",
    key: "distance",
    assumed: ({ state }) => (state.incremental ? "incremental" : "absolute"),
  },
  { bit: modeBit.plane, name: "its plane", key: "plane", assumed: ({ state }) => state.plane.name },
  { bit: modeBit.feedMode, name: "its feed mode", key: "feed", assumed: ({ state }) => state.feedMode },
  {
    bit: modeBit.arcCentre,
    name: "how it counts arc centres",
    key: "arc.centre-words",
    assumed: ({ state }) => (state.arcAbsolute ? "absolute" : "incremental"),
  },
  {
    bit: modeBit.cycleReturn,
    name: "the level between holes",
    key: "cycles.return",
    assumed: ({ state }) => state.cycle.between,
  },
];

/** Modes that are unknown count as stated from here on with the value that the state holds, and are told once each. */
export function needModes(reader: Reader, bits: number, at: number): void {
  const { state, tables, block } = reader;
  const missing = bits & ~state.modes;
  if (missing === 0) return;
  state.modes |= missing;
  for (const mode of modes) {
    if ((missing & mode.bit) === 0) continue;
    const stated = (tables.statable & mode.bit) !== 0;
    const unitsOpen = mode.bit === modeBit.units && !reader.unitsGiven;
    if (stated || unitsOpen)
      reader.report(findings.modeUnknown(block.start + at, mode.name, mode.assumed(reader), mode.key));
  }
}

/** Place of the first word of some letters in the block, bytes from the start of the line; 0 where there is none. */
export function firstOf(reader: Reader, letters: number): number {
  const { block } = reader;
  let first = Infinity;
  for (let letter = 0; letter < 26; letter++)
    if (block.mask & letters & (1 << letter)) first = Math.min(first, block.at[letter]);
  return first === Infinity ? 0 : first;
}

/** The letters of a mask, for messages: "X, Y and Z". */
export function lettersText(letters: number): string {
  const names: string[] = [];
  for (let letter = 0; letter < 26; letter++) if (letters & (1 << letter)) names.push(letterName(letter));
  names.sort((a, b) => rank(a) - rank(b));
  const last = names.pop() ?? "";
  return names.length === 0 ? last : `${names.join(", ")} and ${last}`;
}

/** X Y Z come before A B C. */
function rank(name: string): number {
  return (name.charCodeAt(0) + 3) % 26;
}
