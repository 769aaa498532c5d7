import type { Question } from "./question.ts";

const percentTaken = {
  key: "file.program-number.letter",
  value: "%",
  why: "% carries the number of the program",
};

/** How programs, blocks and numbers look. */
export const formQuestions: readonly Question[] = [
  {
    id: "frame",
    ask: "How does a program begin and end?",
    short: "Begin and end",
    moment: "frame",
    choices: [
      {
        id: "percent-m30",
        words: "a line with % first and last, and M30",
        sets: { "file.delimiter": "percent", "stops.end": "M30" },
        clashes: percentTaken,
      },
      {
        id: "percent-m2",
        words: "a line with % first and last, and M2",
        sets: { "file.delimiter": "percent", "stops.end": "M02" },
        clashes: percentTaken,
      },
      {
        id: "bare-m30",
        words: "no %, and M30 at the end",
        sets: { "file.delimiter": "none", "stops.end": "M30" },
      },
      {
        id: "bare-m2",
        words: "no %, and M2 at the end",
        sets: { "file.delimiter": "none", "stops.end": "M02" },
      },
    ],
  },
  {
    id: "units",
    ask: "How does a program say that it is in millimetres, or in inches?",
    short: "Units",
    moment: "units",
    choices: [
      {
        id: "g20-g21",
        words: "G21 is millimetres, G20 inches",
        sets: { "units.mm": "G21", "units.inch": "G20", "units.programs-in": "job" },
      },
      {
        id: "g70-g71",
        words: "G71 is millimetres, G70 inches",
        sets: { "units.mm": "G71", "units.inch": "G70", "units.programs-in": "job" },
      },
      {
        id: "always-mm",
        words: "not at all: it always counts millimetres",
        sets: { "units.mm": "none", "units.inch": "none", "units.programs-in": "mm" },
      },
      {
        id: "always-inch",
        words: "not at all: it always counts inches",
        sets: { "units.mm": "none", "units.inch": "none", "units.programs-in": "inch" },
      },
    ],
  },
  {
    id: "numbers",
    ask: "How does it want ten millimetres written?",
    short: "Numbers",
    moment: "motion",
    choices: [
      {
        id: "point",
        words: "X10. or X10.000: a decimal point in every length",
        sets: { "numbers.point": "always" },
      },
      {
        id: "point-when-needed",
        words: "X10: a point only where something stands behind it",
        sets: { "numbers.point": "when-needed", "numbers.trailing-zeros": "drop" },
      },
      {
        id: "least-increments",
        words: "X10000 F300: never a point; 1 is 0.001 mm, and 1 mm/min",
        sets: { "numbers.point": "never" },
        with: {
          "numbers.suppressed-zeros": "leading",
          "numbers.feed-per-minute.mm": 0,
          "numbers.feed-per-minute.inch": 1,
        },
      },
    ],
  },
  {
    id: "motion",
    ask: "Must every block that moves say how: G0, G1, G2 or G3?",
    short: "Motion word",
    moment: "motion",
    choices: [
      {
        id: "each-block",
        words: "yes, in every block",
        sets: { "modal.motion": "each-block" },
        clashes: {
          key: "cycles.definition",
          value: "apart",
          why: "a cycle is defined in a block of its own, and each block of a hole would define it anew",
        },
      },
      {
        id: "modal",
        words: "no, once until it changes",
        sets: { "modal.motion": "modal" },
      },
    ],
  },
  {
    id: "block-numbers",
    ask: "Which blocks have a number, N10?",
    short: "Block numbers",
    moment: "motion",
    choices: [
      { id: "none", words: "none", sets: { "blocks.number": "none" } },
      {
        id: "all",
        words: "all of them, in tens",
        sets: {
          "blocks.number.on": "all",
          "blocks.number.start": 10,
          "blocks.number.step": 10,
          "blocks.number.to": 99990,
          "blocks.number.width": 0,
        },
      },
      {
        id: "operations",
        words: "the first of each operation, to start again from there",
        sets: {
          "blocks.number.on": "sections",
          "blocks.number.start": 10,
          "blocks.number.step": 10,
          "blocks.number.to": 99990,
          "blocks.number.width": 0,
        },
      },
    ],
  },
  {
    id: "comments",
    ask: "How are remarks written?",
    short: "Remarks",
    moment: "comment",
    choices: [
      {
        id: "parentheses",
        words: "(IN PARENTHESES)",
        sets: { "comments.style": "parentheses" },
        with: { "idioms.message": "(MSG, {{text}})" },
      },
      {
        id: "semicolon",
        words: "; behind a semicolon, to the end of the line",
        sets: { "comments.style": "semicolon" },
        with: { "file.end-of-block": "none", "idioms.message": ";MSG {{text}}" },
      },
      {
        id: "none",
        words: "not at all: it takes none",
        sets: { "comments.style": "none" },
        with: { "blocks.sections.comments": "no", "idioms.message": "none" },
        clashes: {
          key: "confirm.stopped",
          value: "operator",
          why: "the operator must be told to see to the spindle's standstill",
        },
      },
    ],
  },
];
