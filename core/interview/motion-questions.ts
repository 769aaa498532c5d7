import type { Question } from "./question.ts";

/** What moves: rapids, arcs, dwells, holes, and who changes tools. */
export const motionQuestions: readonly Question[] = [
  {
    id: "rapids",
    ask: "When X, Y and Z all change in one G0: what way does the tool take?",
    short: "Way of a rapid",
    moment: "rapid",
    choices: [
      {
        id: "dog-leg",
        words: "each axis runs until it is there, or nobody knows: the careful one",
        sets: { "motion.rapids": "dog-leg" },
      },
      {
        id: "straight",
        words: "a straight line: tried, or promised by the manual",
        sets: { "motion.rapids": "straight" },
      },
    ],
  },
  {
    id: "arcs",
    ask: "How does it want arcs, G2 and G3?",
    short: "Arcs",
    moment: "arc",
    choices: [
      {
        id: "distance-to-centre",
        words: "I and J: how far the centre is from where the arc begins",
        sets: { "arc.form": "incremental-centre" },
      },
      {
        id: "place-of-centre",
        words: "I and J: where the centre is",
        sets: { "arc.form": "absolute-centre" },
      },
      {
        id: "radius",
        words: "R: the radius, and half a circle at most",
        sets: { "arc.form": "radius" },
        with: {
          "arc.radius-word": "R",
          "arc.largest-sweep": 180,
          "arc.quadrants": "any",
          "arc.full-circle": "no",
        },
      },
      {
        id: "none",
        words: "not at all: short straight lines take their place",
        sets: { "arc.form": "none" },
      },
    ],
  },
  {
    id: "dwell",
    ask: "How does it write a dwell of half a second?",
    short: "Dwell",
    moment: "dwell",
    choices: [dwell("P", "s"), dwell("P", "ms"), dwell("X", "s"), dwell("X", "ms"), dwell("F", "s")],
  },
  {
    id: "holes",
    ask: "Does it drill by itself, with G81 to G89?",
    short: "Fixed cycles",
    moment: "holes",
    choices: [
      {
        id: "none",
        words: "no: write each hole out as single moves",
        sets: { cycles: "none" },
      },
    ],
  },
  {
    id: "swap",
    ask: "Who changes tools? (A rack is written by hand: see dialects/README.md.)",
    short: "Tool change",
    moment: "swap",
    choices: [
      {
        id: "nobody",
        words: "nobody: one tool a program, in the spindle before it starts",
        sets: { "machine.swap": "none" },
      },
      {
        id: "operator",
        words: "the operator, at a stop that says which tool",
        sets: { "machine.swap": "operator" },
      },
    ],
  },
];

function dwell(letter: string, unit: "s" | "ms"): Question["choices"][number] {
  const decimals = unit === "s" ? 2 : 0;
  return {
    id: `${letter.toLowerCase()}-${unit === "s" ? "seconds" : "milliseconds"}`,
    words: `G4 ${letter}${unit === "s" ? "0.5, seconds" : "500, milliseconds"}`,
    sets: { "dwell.word": letter, "dwell.unit": unit },
    with: {
      "cycles.words.dwell-unit": unit,
      "numbers.dwell": decimals,
      "numbers.cycle-dwell": decimals,
    },
  };
}
