/** What a manual says, and what a dialect file says for it. A test resolves each as a leaf. */
export interface Recipe {
  readonly says: string;
  /** Lines of YAML, each a top-level key in flow form. */
  readonly write: readonly string[];
}

function recipe(says: string, ...write: string[]): Recipe {
  return { says, write };
}

/** In the order of the chapters. */
export const recipes: readonly Recipe[] = [
  recipe("lines end with carriage return and line feed", "file: { line-end: crlf }"),
  recipe(
    "programs are called O0001 to O7999",
    "file: { program-number: { letter: O, digits: 4, from: 1, to: 7999 } }",
  ),
  recipe("no percent sign at start and end", "file: { delimiter: none }"),
  recipe(
    "no mark at the end of a block, no program number",
    "file: { end-of-block: none, program-number: none }",
  ),
  recipe(
    "every block has a number, in tens",
    "blocks: { number: { on: all, start: 10, step: 10, to: 99990, width: 0 } }",
  ),
  recipe(
    "numbers at the first block of each operation alone",
    "blocks: { number: { on: sections, start: 100, step: 10, to: 9990, width: 0 } }",
  ),
  recipe("nothing may stand between the words", "blocks: { separator: none }"),
  recipe("one G code in a block", "blocks: { g-words: one, modes: apart }"),
  recipe("a block has 72 characters at most", "blocks: { longest: 72 }"),
  recipe(
    "comments begin with a semicolon",
    "comments: { style: semicolon }",
    'idioms: { message: ";MSG {{text}}" }',
  ),
  recipe(
    "no decimal points; 1 is a thousandth of a millimetre",
    "numbers: { point: never, suppressed-zeros: leading }",
  ),
  recipe("four decimals", "numbers: { length: { mm: 4 }, arc-centre: { mm: 4 } }"),
  recipe("write .5 and not 0.5", "numbers: { leading-zero: drop }"),
  recipe("G1 and M3, not G01 and M03", "numbers: { code-width: { G: 1, M: 1 } }"),
  recipe("a motion word in every block", "modal: { motion: each-block }"),
  recipe("the feed in every block that cuts", "modal: { feed: each-block }"),
  recipe("G21 and G20 say millimetres and inches", "units: { mm: G21, inch: G20, programs-in: job }"),
  recipe(
    "it counts millimetres (or inches) and has no word for them",
    "units: { mm: none, inch: none, programs-in: mm }",
  ),
  recipe("coordinates are absolute", "distance: { programs-in: absolute }"),
  recipe("work offset G54 and no other", "work-offset: [G54]"),
  recipe("rapids are not straight: each axis runs until it is there", "motion: { rapids: dog-leg }"),
  recipe("I and J are coordinates, not distances from the start", "arc: { form: absolute-centre }"),
  recipe(
    "arcs by R, half a circle at most",
    "arc: { form: radius, radius-word: R, largest-sweep: 180, full-circle: no }",
  ),
  recipe(
    "arcs of 90 degrees at most (they may still cross a quadrant line)",
    "arc: { largest-sweep: 90, full-circle: no }",
  ),
  recipe("no arc across a quadrant line of its circle", "arc: { quadrants: one, full-circle: no }"),
  recipe("no arcs at all: chords", "arc: { form: none }"),
  recipe("no helices", "arc: { helix: no }"),
  recipe(
    "dwell is G4 X with whole milliseconds, and in a cycle as well (the letter of a cycle's dwell is cycles.words.dwell)",
    "dwell: { code: G04, word: X, unit: ms }",
    "cycles: { words: { dwell-unit: ms } }",
    "numbers: { dwell: 0, cycle-dwell: 0 }",
  ),
  recipe("S in a block of its own behind M3", "spindle: { order: start-first, blocks: apart }"),
  recipe("no coolant, no mist", "coolant: { mist: none, flood: none, off: none }"),
  recipe("T in one block, M6 in the next", "tools: { blocks: apart, order: select-first }"),
  recipe("the next tool is called as soon as a change is done", "tools: { preselect: yes }"),
  recipe("there is no G83: pecks are written out", "cycles: { peck: none }"),
  recipe("G83 backs off 0.5 mm", "cycles: { back-off: { peck: 0.5 } }"),
  recipe(
    "G98 and G99 say the level between holes",
    "cycles: { return: { initial: G98, retract: G99, without: none } }",
  ),
  recipe("X and Y in each hole block", "cycles: { positions: both }"),
  recipe("no fixed cycles", "cycles: none"),
  recipe(
    "R of a cycle counts from the level where the tool stands, and Z from R (a control on which both count from there cannot be said: state cycles none)",
    "cycles: { levels: relative }",
  ),
  recipe("the program ends with M2", "stops: { end: M02 }"),
  recipe(
    "it does not wait for the spindle; 4 s up, 8 s down",
    "confirm: { at-speed: { dwell: 4 s }, stopped: { dwell: 8 s } }",
  ),
  recipe(
    "it waits for the spindle by itself",
    'confirm: { at-speed: { intrinsic: "manual page 88, tried with a slow ramp" } }',
  ),
  recipe(
    "M95 P3 R1 Q10 waits until input 3 is on, for 10 s at most, and input 3 is the drive's at-speed contact",
    'idioms: { wait-signal: "M95 P{{signal}} R{{level}} Q{{timeout}}" }',
    "machine: { signals: { at-speed: 3 }, waits: { on-timeout: alarm } }",
    "confirm: { at-speed: { wait: at-speed, timeout: 10 s } }",
  ),
  recipe(
    "the operator changes tools by hand at a place of yours and sets Z for each; no tool lengths, no T word, the message says which tool",
    "length-offset: none",
    "tools: { in-operator-swap: no }",
    'idioms: { message: "(MSG, {{text}})" }',
    "machine: { swap: operator, lengths: operator, length-offset: { form: none }, retract: { by: clearance, change-position: [0, 0, 50] } }",
  ),
  recipe(
    "a rack: six pockets 80 mm apart, tools dropped in from above, M21 opens the drawbar and M22 closes it",
    "machine-move: G53",
    "idioms: { release: M21, clamp: M22 }",
    "machine: { swap: rack, retract: { by: machine-move, z: 0, acts-on: spindle-nose }, drawbar: { travels: clamped, taper-air: no }, rack: { style: drop-in, clear-z: -5, pocket-z: -78, descend-from: 20, descend-feed: 600, pockets: { first: [40, 20], pitch: [80, 0], count: 6 }, zone: { min: [0, 0, -95], max: [500, 60, -5] }, at-end: { tool: return } } }",
    "confirm: { released: { dwell: 2 s }, clamped: { dwell: 2 s } }",
  ),
];
