/**
 * Codes of the ISO 6983 family as its national editions print them (JB 3208-83, GOST 20999-83, and a published conformity
 * table of DIN 66025); each row says how sure it is. "read": read in a reproduction of the table. "memory": from memory.
 */
export interface IsoCode {
  readonly code: string;
  readonly meaning: string;
  /** Key of the root dialect that holds the code. */
  readonly key: string;
  readonly confidence: "read" | "memory";
}

export const isoCodes: readonly IsoCode[] = [
  { code: "G00", meaning: "rapid positioning", key: "motion.rapid", confidence: "read" },
  { code: "G01", meaning: "linear interpolation at feed", key: "motion.line", confidence: "read" },
  { code: "G02", meaning: "circular interpolation, clockwise", key: "arc.cw", confidence: "read" },
  { code: "G03", meaning: "circular interpolation, counter-clockwise", key: "arc.ccw", confidence: "read" },
  { code: "G04", meaning: "dwell", key: "dwell.code", confidence: "read" },
  { code: "G17", meaning: "plane XY", key: "plane.xy", confidence: "read" },
  { code: "G18", meaning: "plane ZX", key: "plane.zx", confidence: "read" },
  { code: "G19", meaning: "plane YZ", key: "plane.yz", confidence: "read" },
  { code: "G40", meaning: "cancel cutter compensation", key: "compensation.off", confidence: "read" },
  { code: "G41", meaning: "cutter compensation left", key: "compensation.left", confidence: "read" },
  { code: "G42", meaning: "cutter compensation right", key: "compensation.right", confidence: "read" },
  { code: "G80", meaning: "cancel fixed cycle", key: "cancel.cycles", confidence: "read" },
  { code: "G81", meaning: "fixed cycle 1, drilling", key: "cycles.drill", confidence: "memory" },
  { code: "G82", meaning: "fixed cycle 2, drilling with dwell", key: "cycles.dwell", confidence: "memory" },
  { code: "G83", meaning: "fixed cycle 3, deep hole", key: "cycles.peck", confidence: "memory" },
  { code: "G84", meaning: "fixed cycle 4, tapping", key: "cycles.tap", confidence: "memory" },
  { code: "G85", meaning: "fixed cycle 5, boring", key: "cycles.ream", confidence: "memory" },
  {
    code: "G89",
    meaning: "fixed cycle 9, boring with dwell",
    key: "cycles.bore-dwell",
    confidence: "memory",
  },
  { code: "G90", meaning: "absolute dimensions", key: "distance.absolute", confidence: "read" },
  { code: "G91", meaning: "incremental dimensions", key: "distance.incremental", confidence: "read" },
  { code: "G94", meaning: "feed per minute", key: "feed.per-minute", confidence: "read" },
  { code: "M00", meaning: "program stop", key: "stops.stop", confidence: "read" },
  { code: "M01", meaning: "optional stop", key: "stops.optional", confidence: "read" },
  { code: "M03", meaning: "spindle clockwise", key: "spindle.cw", confidence: "read" },
  { code: "M04", meaning: "spindle counter-clockwise", key: "spindle.ccw", confidence: "read" },
  { code: "M05", meaning: "spindle stop", key: "spindle.stop", confidence: "read" },
  { code: "M06", meaning: "tool change", key: "tools.change", confidence: "read" },
  { code: "M07", meaning: "coolant 2 on (mist)", key: "coolant.mist", confidence: "read" },
  { code: "M08", meaning: "coolant 1 on (flood)", key: "coolant.flood", confidence: "read" },
  { code: "M09", meaning: "coolant off", key: "coolant.off", confidence: "read" },
  { code: "M30", meaning: "end of data", key: "stops.end", confidence: "read" },
];

/** Ranges that the tables leave to the builder of a machine (JB 3208-83; "permanently unassigned"). */
export const builderCodes: readonly (readonly [number, number])[] = [
  [20, 29],
  [90, 99],
];
