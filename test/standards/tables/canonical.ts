import type { RowKindName, StepKind } from "#base";

/** A canonical machining function of NISTIR 6556 Table 9 and 4.3 (read), and what stands for it in a sequence. */
export interface Canonical {
  readonly function: string;
  /** Our row or step; undefined with the reason where there is none. */
  readonly kind: RowKindName | StepKind | undefined;
  readonly why?: string;
  /** Blocks whose last row or step it is, and how that reads. */
  readonly blocks?: string;
  readonly line?: string;
}

// prettier-ignore
export const canonicalFunctions: readonly Canonical[] = [
  { function: "SET_ORIGIN_OFFSETS", kind: "work-offset", blocks: "G55", line: "work-offset number=2" },
  { function: "USE_LENGTH_UNITS", kind: "units", blocks: "G20", line: "units value=inch" },
  { function: "SELECT_PLANE", kind: "plane", blocks: "G19", line: "plane value=yz" },
  { function: "SET_TRAVERSE_RATE", kind: undefined, why: "no program can say how fast a rapid is" },
  { function: "STRAIGHT_TRAVERSE", kind: "rapid", blocks: "G0 X1 Y2 Z3", line: "rapid x1 y2 z3" },
  { function: "SET_FEED_RATE", kind: undefined, why: "each motion at feed has the feed in its row" },
  { function: "SET_FEED_REFERENCE", kind: "feed-mode", blocks: "G93", line: "feed-mode value=inverse-time" },
  { function: "SET_MOTION_CONTROL_MODE", kind: "path", blocks: "G61.1", line: "path value=stop" },
  { function: "START_SPEED_FEED_SYNCH", kind: undefined, why: "a part of a tapping cycle" },
  { function: "STOP_SPEED_FEED_SYNCH", kind: undefined, why: "a part of a tapping cycle" },
  // ARC_FEED has end, centre, rotation and the end of the third axis in the order of the plane: Z and X in ZX.
  { function: "ARC_FEED (XY)", kind: "arcXy", blocks: "G0 X0 Y0 Z0\nG3 X10 Z-2 I5 F100", line: "arcXy x10 y0 z-2 c5,0 1 f100" },
  { function: "ARC_FEED (ZX)", kind: "arcZx", blocks: "G0 X0 Y0 Z0\nG18 G2 X-4 Z4 I-4 K0 F100", line: "arcZx x-4 y0 z4 c0,-4 -1 f100" },
  { function: "ARC_FEED (YZ)", kind: "arcYz", blocks: "G0 X0 Y0 Z0\nG19 G3 Y6 Z0 J3 K1 F100", line: "arcYz x0 y6 z0 c3,1 1 f100" },
  { function: "ARC_FEED (XY, by radius)", kind: "radiusXy", blocks: "G0 X0 Y0 Z0\nG2 X10 R5 F100", line: "radiusXy x10 y0 z0 c5,0 -1 f100" },
  { function: "ARC_FEED (ZX, by radius)", kind: "radiusZx", blocks: "G0 X0 Y0 Z0\nG18 G3 X10 Y1 R6 F100", line: "radiusZx x10 y1 z0 c6,0 1 f100" },
  { function: "ARC_FEED (YZ, by radius)", kind: "radiusYz", blocks: "G0 X0 Y0 Z0\nG19 G2 Y10 R6 F100", line: "radiusYz x0 y10 z0 c6,0 -1 f100" },
  { function: "STRAIGHT_FEED", kind: "line", blocks: "G1 X1 F100", line: "line x1 f100" },
  { function: "DWELL", kind: "dwell", blocks: "G4 P1.5", line: "dwell time=1500000" },
  { function: "ELLIPSE_FEED", kind: undefined, why: "no word of the language gives it" },
  { function: "STRAIGHT_PROBE", kind: undefined, why: "programs do not probe" },
  { function: "ORIENT_SPINDLE", kind: "spindle-orient", blocks: "M19", line: "spindle-orient" },
  { function: "SET_SPINDLE_SPEED", kind: "spindle-speed", blocks: "S900", line: "spindle-speed rpm=900000" },
  { function: "START_SPINDLE_CLOCKWISE", kind: "spindle-start", blocks: "S9 M3", line: "spindle-start direction=cw" },
  { function: "START_SPINDLE_COUNTERCLOCKWISE", kind: "spindle-start", blocks: "S9 M4", line: "spindle-start direction=ccw" },
  { function: "STOP_SPINDLE_TURNING", kind: "spindle-stop", blocks: "M5", line: "spindle-stop" },
  { function: "SPINDLE_RETRACT", kind: undefined, why: "a rapid of Z in machine coordinates" },
  { function: "SELECT_TOOL", kind: "select-tool", blocks: "T3", line: "select-tool tool=3" },
  { function: "CHANGE_TOOL", kind: "change-tool", blocks: "T3 M6", line: "change-tool" },
  { function: "USE_TOOL_LENGTH_OFFSET", kind: "length-offset", blocks: "G43 H2", line: "length-offset number=2" },
  { function: "USE_TOOL_LENGTH_OFFSET(0)", kind: "length-offset", blocks: "G43 H1\nG49", line: "length-offset number=0" },
  { function: "COMMENT", kind: undefined, why: "comments do nothing and are not compared" },
  { function: "MESSAGE", kind: "message", blocks: "(MSG, READY)", line: "message text=READY" },
  { function: "CLAMP_AXIS", kind: undefined, why: "rotary axes have no clamps here" },
  { function: "DISABLE_FEED_OVERRIDE, DISABLE_SPEED_OVERRIDE", kind: "overrides", blocks: "M49", line: "overrides value=off" },
  { function: "ENABLE_FEED_OVERRIDE, ENABLE_SPEED_OVERRIDE", kind: "overrides", blocks: "M48", line: "overrides value=on" },
  { function: "FLOOD_ON", kind: "coolant", blocks: "M8", line: "coolant medium=flood on=true" },
  { function: "MIST_ON", kind: "coolant", blocks: "M7", line: "coolant medium=mist on=true" },
  { function: "FLOOD_OFF, MIST_OFF", kind: "coolant", blocks: "M9", line: "coolant medium=all on=false" },
  { function: "PALLET_SHUTTLE", kind: undefined, why: "there are no pallets here" },
  { function: "PROGRAM_STOP", kind: "pause", blocks: "M0", line: "pause optional=false" },
  { function: "OPTIONAL_PROGRAM_STOP", kind: "pause", blocks: "M1", line: "pause optional=true" },
  { function: "PROGRAM_END", kind: "program-end", blocks: "M2", line: "program-end" },
];

/** Rows and steps that no canonical function stands for, each with where it comes from. */
export const ownKinds = {
  aside: "the place of a step among the rows",
  hole: "fixed cycles (3.5.16) are kept whole, and not taken apart into canonical functions",
  "cycle-definition": "as hole",
  cycle: "G80 (3.5.16)",
  "program-start": "program numbers of later controllers",
  distance: "G90, G91: canonical positions are absolute",
  "arc-centre": "G90.1, G91.1 of later controllers",
  "look-ahead": "a mode of later controllers",
  "corner-feed": "a mode of later controllers",
  "local-shift": "G92.2: canonical positions have the shift in them",
  rotation: "a mode of later controllers",
  scale: "a mode of later controllers",
  compensation: "G40 to G42: the interpreter of the report compensates itself",
  output: "a retrofitted machine",
  wait: "a retrofitted machine",
  auxiliary: "a code of the builder",
  "reference-return": "G28: one or two canonical traverses",
} as const satisfies Partial<Record<RowKindName | StepKind, string>>;
