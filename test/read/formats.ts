import type { MachineFacts } from "#base";
import type { Code, Codes, Format, NumberFormat, UnitFormats } from "#dialect";

/** G59.1 -> { letter: "G", value: 591 } */
export function code(text: string): Code {
  return { letter: text.charAt(0) as "G" | "M", value: Math.round(Number(text.slice(1)) * 10) };
}

/** A number format; without more it has a point when needed. */
export function numbers(decimals: number, more: Partial<NumberFormat> = {}): NumberFormat {
  return {
    decimals,
    point: "when-needed",
    trailingZeros: "drop",
    leadingZero: true,
    plus: false,
    suppressed: "leading",
    digits: 0,
    wholeDigits: 0,
    ...more,
  };
}

function both(mm: number, inch: number, more: Partial<NumberFormat> = {}): UnitFormats {
  return { mm: numbers(mm, more), inch: numbers(inch, more) };
}

/** Number formats of all addresses in one style. */
export function numberFormats(more: Partial<NumberFormat> = {}): Format["numbers"] {
  return {
    length: both(3, 4, more),
    arcCentre: both(3, 4, more),
    angle: numbers(3, more),
    feedPerMinute: both(1, 2, more),
    feedPerRevolution: both(4, 5, more),
    inverseTime: numbers(4, more),
    speed: numbers(0),
    dwell: numbers(2, more),
    cycleDwell: numbers(2, more),
    timeout: numbers(1, more),
    width: { G: 1, M: 1, T: 1, H: 1, D: 1 },
  };
}

/** Codes of NISTIR 6556 Tables 5 and 7, and of later controllers where it has none (G73, G74, G95, G90.1, M19; from memory). */
export const codes: Codes = {
  rapid: code("G0"),
  line: code("G1"),
  arcCw: code("G2"),
  arcCcw: code("G3"),
  modes: {
    units: { mm: code("G21"), inch: code("G20") },
    plane: { xy: code("G17"), zx: code("G18"), yz: code("G19") },
    distance: { absolute: code("G90"), incremental: code("G91") },
    "arc-centre": { absolute: code("G90.1"), incremental: code("G91.1") },
    "feed-mode": { "per-minute": code("G94"), "per-revolution": code("G95"), "inverse-time": code("G93") },
    path: { exact: code("G61"), stop: code("G61.1"), blend: code("G64") },
    overrides: { on: code("M48"), off: code("M49") },
    cycle: { off: code("G80") },
    "local-shift": { off: code("G92.2") },
    rotation: { off: code("G69") },
    scale: { off: code("G50") },
  },
  dwell: code("G4"),
  compensation: { off: code("G40"), left: code("G41"), right: code("G42") },
  lengthOn: code("G43"),
  lengthOff: code("G49"),
  workOffsets: [
    undefined,
    ...["G54", "G55", "G56", "G57", "G58", "G59", "G59.1", "G59.2", "G59.3"].map(code),
  ],
  machineMove: code("G53"),
  referenceReturn: code("G28"),
  cycles: {
    drill: code("G81"),
    dwell: code("G82"),
    peck: code("G83"),
    "chip-break": code("G73"),
    tap: code("G84"),
    "tap-left": code("G74"),
    ream: code("G85"),
    "bore-stop": code("G86"),
    "bore-manual": code("G88"),
    "bore-dwell": code("G89"),
  },
  cycleReturn: { initial: code("G98"), retract: code("G99") },
  spindleCw: code("M3"),
  spindleCcw: code("M4"),
  spindleStop: code("M5"),
  spindleOrient: code("M19"),
  coolant: { mist: code("M7"), flood: code("M8") },
  coolantOff: code("M9"),
  toolChange: code("M6"),
  stop: code("M0"),
  optionalStop: code("M1"),
  end: code("M2"),
};

/** A controller that takes whatever NISTIR 6556 takes; tests change what they are about. */
export const format: Format = {
  extension: "nc",
  lineEnd: "\n",
  lastLineEnd: true,
  blockEnd: "",
  delimiter: "none",
  programNumber: null,
  characters: "ascii",
  comments: { style: "parentheses", longest: 80, place: "anywhere" },
  blockNumber: { on: "sections", start: 10, step: 10, to: 99999, width: 0 },
  separator: " ",
  order: [..."NGXYZABCIJKRPQLFSTHDM"],
  longest: 250,
  gWords: "any",
  mWords: 4,
  modes: "together",
  blockDelete: { mark: "slash", place: "before-number" },
  optionalStopMark: "",
  mostWords: 0,
  sections: { beginAt: "operation", mark: "N" },
  byteOrderMark: false,
  header: undefined,
  footer: undefined,
  leader: 0,
  blankLines: "skipped",
  stopsAct: "before-motion",
  numbers: numberFormats(),
  modal: { motion: "modal", axes: "changed", arcEnd: "changed", arcCentre: "non-zero", feed: "modal" },
  unitsIn: "job",
  distance: "absolute",
  codes,
  arc: {
    form: "incremental-centre",
    radiusWord: "R",
    turnsWord: null,
    helix: true,
    fullCircle: true,
    largestSweep: 360_000_000,
    planes: ["xy", "zx", "yz"],
  },
  dwell: { word: "P", unit: "s" },
  cycles: {
    repeat: "positions",
    levels: "absolute",
    retractWord: "R",
    peckWord: "Q",
    dwellWord: "P",
    dwellUnit: "s",
    levelWithout: undefined,
    backOff: { peck: undefined, chipBreak: undefined },
    endedBy: "any-motion",
  },
  spindle: { order: "speed-first", blocks: "together" },
  tools: { blocks: "together", order: "select-first" },
  lengthOffset: { word: "H", form: "with-first-z" },
  compensationWord: "D",
  pathToleranceWord: "P",
  referenceIntermediate: "incremental-zero",
  waitValues: { on: 1, off: 0, timeoutUnit: "s" },
  idioms: { message: { blocks: [[{ literal: "(MSG, " }, { value: "text" }, { literal: ")" }]] } },
  extraCodes: [
    {
      letter: "M",
      value: 940,
      meaning: { kind: "wait" },
      words: { P: "signal", R: "level", Q: "timeout" },
      key: "idioms.wait-signal",
    },
    {
      letter: "M",
      value: 200,
      meaning: { kind: "output", on: true },
      words: { P: "output" },
      key: "idioms.output-on",
    },
    {
      letter: "M",
      value: 210,
      meaning: { kind: "output", on: false },
      words: { P: "output" },
      key: "idioms.output-off",
    },
    {
      letter: "M",
      value: 200,
      meaning: { kind: "auxiliary", action: "release" },
      words: { P: 7 },
      key: "idioms.release",
    },
    {
      letter: "M",
      value: 930,
      meaning: { kind: "auxiliary", action: "opaque" },
      words: {},
      key: "codes.M93",
    },
  ],
};

/** A machine of which only is said what reading depends on. */
export const machine: MachineFacts = {
  declared: true,
  statable: [],
  travel: {},
  spindle: {
    minRpm: undefined,
    maxRpm: undefined,
    spinUp: undefined,
    spinDown: undefined,
    coastDown: undefined,
    orient: false,
  },
  confirm: {},
  onTimeout: undefined,
  signals: {},
  retract: undefined,
  lengthOffset: { form: "with-first-z", selectMoves: false, cancelMoves: false },
  lengths: "table",
  swap: "controller",
  changeEffects: {
    position: "unchanged",
    spindle: "stopped",
    coolant: "unchanged",
    lengthOffset: "unchanged",
  },
  opaqueEffects: {
    M93: { position: "unknown", spindle: "unchanged", coolant: "unchanged", lengthOffset: "unchanged" },
  },
  drawbar: undefined,
  rack: undefined,
  park: undefined,
  outputs: [],
  hood: false,
  keepOut: [],
  tapping: undefined,
  feed: { least: 0, most: Infinity },
  rapids: "straight",
  arcTolerance: undefined,
};
