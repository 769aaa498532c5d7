import type { Sourced } from "./row.ts";

/** When a miscellaneous function acts in a block with motion. */
export interface Timing extends Sourced {
  readonly code: string;
  readonly meaning: string;
  /** "with": as the motion begins. "after": once it is complete. */
  readonly when: "with" | "after";
  /** Words that a block with it needs. */
  readonly words: string;
  /** The step that it gives. */
  readonly step: string;
}

const iso = {
  source: "ISO 6983-1 / ISO 1056 type of table of miscellaneous functions",
  confidence: "memory",
} as const;

/** Codes that the root of the ISO family has. M06 is left to the machine, and M02 and M30 end the program. */
// prettier-ignore
export const isoTiming: readonly Timing[] = [
  { code: "M00", meaning: "program stop", when: "after", words: "", step: "pause optional=false", ...iso },
  { code: "M01", meaning: "optional stop", when: "after", words: "", step: "pause optional=true", ...iso },
  { code: "M03", meaning: "spindle clockwise", when: "with", words: "S100 ", step: "spindle-start direction=cw", ...iso },
  { code: "M04", meaning: "spindle counter-clockwise", when: "with", words: "S100 ", step: "spindle-start direction=ccw", ...iso },
  { code: "M05", meaning: "spindle stop", when: "after", words: "", step: "spindle-stop", ...iso },
  { code: "M07", meaning: "coolant 2 on", when: "with", words: "", step: "coolant medium=mist on=true", ...iso },
  { code: "M08", meaning: "coolant 1 on", when: "with", words: "", step: "coolant medium=flood on=true", ...iso },
  { code: "M09", meaning: "coolant off", when: "after", words: "", step: "coolant medium=all on=false", ...iso },
  { code: "M19", meaning: "oriented spindle stop", when: "after", words: "", step: "spindle-orient", ...iso },
  { code: "M50", meaning: "coolant 3 on", when: "with", words: "", step: "coolant medium=through-tool on=true", ...iso },
  { code: "M51", meaning: "coolant 4 on", when: "with", words: "", step: "coolant medium=air on=true", ...iso },
];

/** What RS274/NGC does before the motion of its block, stops of spindle and coolant among it: NISTIR 6556 Table 8 (read; seen). */
export const ngcAfterMotion: readonly string[] = ["M00", "M01"];
