import { code, format } from "./formats.ts";
import type { Reading } from "./support.ts";
import { formatWith } from "./support.ts";

function pointed(point: "always" | "never"): typeof format {
  const style = { ...format.numbers.length.mm, point };
  return formatWith({ numbers: { ...format.numbers, length: { mm: style, inch: style } } });
}

/** A rule, the smallest blocks that break it, and how the dialect must be for that. */
export interface RuleCase {
  readonly rule: string;
  readonly blocks: string;
  readonly reading?: Reading;
  /** Text of the block on which the finding stands; the first block unless given. */
  readonly on?: string;
}

const modal = (change: Partial<typeof format.modal>): Reading => ({
  format: formatWith({ modal: { ...format.modal, ...change } }),
});

const tools = (change: Partial<NonNullable<typeof format.tools>>): Reading => ({
  format: formatWith({
    tools: {
      blocks: "together",
      order: "select-first",
      preselect: undefined,
      changedBy: "code",
      named: true,
      empty: undefined,
      ...change,
    },
  }),
});

export const formCases: readonly RuleCase[] = [
  { rule: "block/motion-word", blocks: "G0 X1\nX2", on: "X2", reading: modal({ motion: "each-block" }) },
  { rule: "block/motion-word", blocks: "G0 X1\nT1 M6\nX2", on: "X2" },
  { rule: "block/motion-word", blocks: "G0 X1\nM0\nX2", on: "X2" },
  {
    rule: "block/motion-word",
    blocks: "G0 X1 Y1\nG99 G81 Z-1 R1 F9\nX2",
    on: "X2",
    reading: modal({ motion: "each-block" }),
  },
  { rule: "block/word-order", blocks: "X1 G0", on: "G0" },
  { rule: "block/word-order", blocks: "G0 N5 X1", on: "N5" },
  { rule: "block/word-order", blocks: "M6 T1", on: "T1" },
  {
    rule: "block/word-order",
    blocks: "T1 M6",
    on: "M6",
    reading: {
      format: formatWith({
        tools: {
          blocks: "together",
          order: "change-first",
          preselect: undefined,
          changedBy: "code",
          named: true,
          empty: undefined,
        },
      }),
    },
  },
  { rule: "block/tool-words", blocks: "T1\nM6", on: "M6" },
  { rule: "block/tool-words", blocks: "T1 M6", on: "M6", reading: tools({ blocks: "apart" }) },
  { rule: "block/tool-words", blocks: "T1\nT2 M6", on: "T2 M6", reading: tools({ preselect: false }) },
  { rule: "block/tool-words", blocks: "T1 M6\nT2 M6", on: "M6", reading: tools({ preselect: true }) },
  { rule: "block/length-block", blocks: "G43 H1\nG0 Z1", on: "G0 Z1" },
  {
    rule: "block/length-block",
    blocks: "G43 G0 Z1 H1",
    reading: { format: formatWith({ lengthOffset: { ...format.lengthOffset!, form: "own-block" } }) },
  },
  { rule: "block/tool-words", blocks: "S9 T1", on: "T1", reading: tools({ changedBy: "tool-word" }) },
  { rule: "block/tool-words", blocks: "T1\nM0", reading: tools({ named: false }) },
  {
    rule: "block/cancelled",
    blocks: "G40\nT1 M6",
    on: "M6",
    reading: { format: formatWith({ cancelsBeforeChange: true }) },
  },
  {
    rule: "block/offset-number",
    blocks: "T1 M6\nG43 G0 Z1 H2",
    on: "G43",
    reading: { format: formatWith({ lengthOffset: { ...format.lengthOffset!, free: false } }) },
  },
  { rule: "block/feed-word", blocks: "G1 X1 F10\nX2", on: "X2", reading: modal({ feed: "each-block" }) },
  {
    rule: "block/feed-word",
    blocks: "G1 X1 F10\nG0 X2\nG1 X3",
    on: "G1 X3",
    reading: modal({ feed: "after-rapid" }),
  },
  { rule: "block/feed-word", blocks: "G1 X1 F10\nM0\nG1 X3", on: "G1 X3" },
  { rule: "block/axis-words", blocks: "G0 X1 Y1\nX2", on: "X2", reading: modal({ axes: "all" }) },
  {
    rule: "block/arc-words",
    blocks: "G0 X0 Y0\nG2 X2 I1 F9",
    on: "G2 X2",
    reading: modal({ arcEnd: "both" }),
  },
  {
    rule: "block/arc-words",
    blocks: "G0 X0 Y0\nG2 X2 I1 F9",
    on: "G2 X2",
    reading: modal({ arcCentre: "both" }),
  },
  {
    rule: "block/cycle-words",
    blocks: "G0 X0 Y0 Z3\nG99 G81 X1 Y1 Z-1 R1 F9\nX2",
    on: "X2",
    reading: { format: formatWith({ cycles: { ...format.cycles!, positions: "both" } }) },
  },
  {
    rule: "block/cycle-words",
    blocks: "G0 X0 Y0 Z3\nG99 G81 X1 Z-1 R1 F9\nX2 Z-1",
    on: "X2 Z-1",
  },
  {
    rule: "block/cycle-words",
    blocks: "G0 X0 Y0\nG99 G81 Z-1 R1 F9\nX2",
    on: "X2",
    reading: { format: formatWith({ cycles: format.cycles && { ...format.cycles, repeat: "all" } }) },
  },
  {
    rule: "block/length",
    blocks: "G0 X1 (THIS IS LONG)",
    reading: {
      format: formatWith({ longest: 12, comments: { style: "parentheses", longest: 80, place: "anywhere" } }),
    },
    on: "G0 X1",
  },
  { rule: "block/stop-message", blocks: "M0 (MSG, TURN)", on: "M0" },
  { rule: "block/speed-word", blocks: "S500 M3\nM5\nM3", on: "M3" },
  ...[
    { blocks: "S500 M3", on: "M3" },
    { blocks: "M41\nS5000 M3", on: "M3" },
    { blocks: "M41\nS500 M3\nM42", on: "M42" },
    { blocks: "M41\nS500 M3\nS5000", on: "S5000" },
    { blocks: "M41\nS500 M3\nM5\nS400 M3", on: "M3" },
  ].map((one) => ({
    rule: "block/gear-range",
    ...one,
    reading: {
      format: formatWith({
        gears: [
          { code: { letter: "M", value: 410 }, from: 100_000, to: 1_000_000 },
          { code: { letter: "M", value: 420 }, from: 1_000_000, to: 9_000_000 },
        ],
      }),
    },
  })),
  {
    rule: "block/stop-message",
    blocks: "(MSG, TURN)\nM0",
    on: "M0",
    reading: { format: formatWith({ stops: { ...format.stops, comment: "with-stop" } }) },
  },
  {
    rule: "block/length",
    blocks: "(THIS IS LONG)",
    reading: { format: formatWith({ comments: { style: "parentheses", longest: 5, place: "anywhere" } }) },
  },
  { rule: "block/number-form", blocks: "G0 X+1", on: "X+1" },
  { rule: "block/number-form", blocks: "G0 X.5", on: "X.5" },
  { rule: "block/number-form", blocks: "G0 X01", on: "X01" },
  { rule: "block/number-form", blocks: "G0 X1.50", on: "X1.50" },
  { rule: "block/number-form", blocks: "S100.0 M3", on: "S100.0" },
  { rule: "block/number-form", blocks: "G000 X1", on: "G000" },
  {
    rule: "block/words",
    blocks: "G0 X1\nG0 X2 Y2 Z2",
    on: "G0 X2",
    reading: { format: formatWith({ mostWords: 3 }) },
  },
  {
    rule: "block/own-block",
    blocks: "G0 X1 (FAR)",
    on: "(FAR)",
    reading: { format: formatWith({ comments: { style: "parentheses", longest: 80, place: "own-block" } }) },
  },
  { rule: "block/separator", blocks: "G0X1", on: "X1" },
  { rule: "block/separator", blocks: "G0 X 1", on: " 1" },
  {
    rule: "block/characters",
    blocks: "G0 x1",
    on: "x1",
    reading: { format: formatWith({ characters: "upper" }) },
  },
  {
    rule: "block/characters",
    blocks: "(Left)",
    on: "eft)",
    reading: { format: formatWith({ characters: "upper" }) },
  },
  {
    rule: "block/g-words",
    blocks: "G55 G0 X1",
    on: "G0",
    reading: { format: formatWith({ gWords: "one" }) },
  },
  {
    rule: "block/g-words",
    blocks: "G55 G61",
    on: "G61",
    reading: { format: formatWith({ modes: "apart" }) },
  },
  {
    rule: "block/g-words",
    blocks: "G55 G0 X1",
    on: "G0",
    reading: { format: formatWith({ modes: "apart" }) },
  },
  { rule: "block/m-words", blocks: "M5 M9", on: "M9", reading: { format: formatWith({ mWords: 1 }) } },
  {
    rule: "block/axes-at-once",
    blocks: "G0 X1 Y1",
    reading: { format: formatWith({ motion: { ...format.motion, rapidAxes: "one-at-a-time" } }) },
  },
  {
    rule: "block/axes-at-once",
    blocks: "G1 X1 Y1 Z1 F9",
    reading: { format: formatWith({ motion: { ...format.motion, axesAtOnce: 2 } }) },
  },
  { rule: "block/own-block", blocks: "G0 X1 M5", on: "M5" },
  { rule: "block/own-block", blocks: "G0 X1 S9 M3", on: "M3" },
  { rule: "block/own-block", blocks: "G0 X1 M8", on: "M8" },
  { rule: "block/own-block", blocks: "G0 X1 T1 M6", on: "M6" },
  { rule: "block/own-block", blocks: "G0 X1 M0", on: "M0" },
  { rule: "block/spindle-order", blocks: "M3 S10", on: "M3" },
  { rule: "block/spindle-order", blocks: "M3\nS10", on: "S10" },
  {
    rule: "block/spindle-order",
    blocks: "S10 M3",
    on: "M3",
    reading: { format: formatWith({ spindle: { order: "start-first", blocks: "together" } }) },
  },
  {
    rule: "block/spindle-order",
    blocks: "S10\nM3",
    on: "M3",
    reading: { format: formatWith({ spindle: { order: "start-first", blocks: "apart" } }) },
  },
];

export const meaningCases: readonly RuleCase[] = [
  { rule: "read/unknown-code", blocks: "G12 X1", on: "G12" },
  { rule: "read/unknown-code", blocks: "M77 P1", on: "M77" },
  { rule: "read/unknown-word", blocks: "G0 X1 U2", on: "U2" },
  { rule: "read/unknown-word", blocks: "G0 X1 @", on: "@" },
  { rule: "read/unknown-word", blocks: "G0 X1 DIAMETER", on: "DIAMETER" },
  { rule: "read/number", blocks: "G0 X", on: "X" },
  { rule: "read/number", blocks: "T0 M6", on: "T0" },
  { rule: "read/decimal", blocks: "G0 X10", on: "X10", reading: { format: pointed("always") } },
  { rule: "read/decimal", blocks: "G0 X1.5", on: "X1.5", reading: { format: pointed("never") } },
  { rule: "read/finer-than-grid", blocks: "G0 X1.00005", on: "X1" },
  { rule: "read/repeated-word", blocks: "G0 X1 X2", on: "X2" },
  { rule: "read/modal-conflict", blocks: "G0 G1 X1 F9", on: "G1" },
  { rule: "read/modal-conflict", blocks: "G4 P1 M94 R1 Q1", on: "M94" },
  { rule: "read/variable", blocks: "G0 X#1", on: "X#1" },
  { rule: "read/variable", blocks: "G0 X[1+2]", on: "X[1+2]" },
  { rule: "read/variable", blocks: "#1=5", on: "#1" },
  { rule: "read/variable", blocks: "#1=[G1 X5] (c)", on: "#1" },
  { rule: "read/variable", blocks: "G1 F#<feed>", on: "F#" },
  { rule: "read/subprogram", blocks: "M98 P100 L2", on: "M98" },
  { rule: "read/subprogram", blocks: "M99" },
  { rule: "read/subprogram", blocks: "G65 P9010 X1 Y2", on: "G65" },
  { rule: "read/subprogram", blocks: "CALL 100" },
  { rule: "read/subprogram", blocks: "O100", on: "O100" },
  { rule: "read/subprogram", blocks: "O<PROBE> CALL" },
  { rule: "read/branch", blocks: "IF [#1 EQ 2] GOTO 20" },
  { rule: "read/branch", blocks: "GOTO 20" },
  { rule: "read/branch", blocks: "WHILE [#1 LT 5] DO1" },
  { rule: "read/comment", blocks: "(LEFT" },
  { rule: "read/unused-word", blocks: "G0 X1 P5", on: "P5" },
  { rule: "read/unused-word", blocks: "H1", on: "H1" },
  { rule: "read/unused-word", blocks: "M20 P1 Q2", on: "Q2" },
  { rule: "read/word-missing", blocks: "G43", on: "G43" },
  { rule: "read/word-missing", blocks: "G4", on: "G4" },
  { rule: "read/word-missing", blocks: "M94 P4 R1", on: "M94" },
  { rule: "read/word-missing", blocks: "M20", on: "M20" },
  { rule: "read/arc", blocks: "G0 X0 Y0\nG2 X1 F9", on: "X1" },
  {
    rule: "read/cycle",
    blocks: "G0 X0 Y0 Z3\nG99 G81 X1 Z-1 R1 F9 L0",
    on: "G99",
    reading: { format: formatWith({ cycles: { ...format.cycles!, definition: "apart" } }) },
  },
  {
    rule: "read/cycle",
    blocks: "G0 X0 Y0 Z3\nG99 G81 Z-1 R1 F9",
    on: "G99",
    reading: { format: formatWith({ cycles: { ...format.cycles!, definition: "apart" } }) },
  },
  {
    rule: "read/cycle",
    blocks: "G0 X0 Y0 Z3\nG99 G84 X1 Z-1 R1 F9",
    on: "G99",
    reading: { format: formatWith({ codes: { ...format.codes, tapSynchronised: code("M29") } }) },
  },
  {
    rule: "read/cycle",
    blocks: "G0 X0 Y0 Z3\nM29\nG99 G81 X1 Z-1 R1 F9",
    on: "G99",
    reading: { format: formatWith({ codes: { ...format.codes, tapSynchronised: code("M29") } }) },
  },
  { rule: "read/cycle", blocks: "G0 X0 Y0\nG99 G81 X1 Z2 R1 F9", on: "Z2" },
  { rule: "read/position", blocks: "G91 G0 X1", on: "X1" },
  { rule: "read/encoding", blocks: "G0 X1 \u00fc", on: "\u00fc" },
  { rule: "read/encoding", blocks: "G0 \u0000X1", on: "\u0000" },
  { rule: "read/encoding", blocks: "(A\u0007)", on: "\u0007" },
  { rule: "read/block-delete", blocks: "/G0 X1" },
  { rule: "read/after-end", blocks: "M2\nG0 X1", on: "G0 X1" },
];
