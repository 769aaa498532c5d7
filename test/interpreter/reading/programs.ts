import type { ForeignProgram } from "./foreign.ts";
import { whole } from "./foreign.ts";
import { camProgram } from "./written/cam-program.ts";
import { styles } from "./written/cam-style.ts";
import { randomProgram } from "./written/random-program.ts";
import { arcPrograms } from "./small/arcs.ts";
import { cyclePrograms } from "./small/cycles.ts";
import { habitPrograms } from "./small/habits.ts";
import { machinePrograms } from "./small/machine.ts";
import { modePrograms } from "./small/modes.ts";
import { motionPrograms } from "./small/motion.ts";
import { textPrograms } from "./small/text.ts";

const named = (topic: string, programs: readonly ForeignProgram[]): ForeignProgram[] =>
  programs.map((program) => ({ ...program, name: `${topic}: ${program.name}` }));

/** Small programs by hand, each for one construct. */
export const smallPrograms: readonly ForeignProgram[] = [
  ...named("motion", motionPrograms),
  ...named("arc", arcPrograms),
  ...named("cycle", cyclePrograms),
  ...named("mode", modePrograms),
  ...named("machine", machinePrograms),
  ...named("text", textPrograms),
  ...named("habit", habitPrograms),
];

/** Blocks of a long program, at least. */
export const longBlocks = 3000;

/** Long programs in five styles of CAM output. */
export function longPrograms(): ForeignProgram[] {
  return styles.map((style) => whole(`long: ${style.name}`, camProgram(style, longBlocks)));
}

/** Random programs, the first of an endless list. */
export function randomPrograms(count: number): ForeignProgram[] {
  return Array.from({ length: count }, (_, seed) => whole(`random ${seed}`, randomProgram(seed)));
}

/** The programs whose runs are recorded: all by hand, all long ones, and some random ones. */
export function recordedForeign(): ForeignProgram[] {
  return [...smallPrograms, ...longPrograms(), ...randomPrograms(60)];
}
