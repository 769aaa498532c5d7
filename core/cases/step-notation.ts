import type { AuxiliaryAction, CoolantMedium, Step } from "#base";
import { axes } from "#base";
import type { Cursor, Word } from "./cursor.ts";
import { nextNumber, oneOf, took } from "./cursor.ts";
import { fits } from "./grids.ts";
import type { Sequence } from "./sequence.ts";

/** Reads the words behind the first of a step that is no motion; gives the steps that it stands for, in order. */
export type StepReader = (cursor: Cursor, sequence: Sequence, first: Word) => readonly Step[];

const media = ["mist", "flood", "air", "through-tool"] as const satisfies readonly CoolantMedium[];

/**
 * `spindle cw 12000`: speed and start as a program has them, the start first only where blocks are apart, since S is executed
 * before M03 in one block; `spindle 9000`, `spindle stop`.
 */
const spindle: StepReader = (cursor, sequence) => {
  const word = cursor.peek();
  if (/^\d/.test(word?.text ?? "")) return [speed(cursor, sequence)];
  const action = oneOf(cursor, ["cw", "ccw", "stop", "orient"], "spindle action, or speed");
  if (action === "stop") return [{ kind: "spindle-stop" }];
  if (action === "orient") return [{ kind: "spindle-orient" }];
  const start: Step = { kind: "spindle-start", direction: action };
  if (cursor.peek() === undefined) return [start];
  const said = speed(cursor, sequence);
  const { spindleOrder, spindleBlocks } = sequence.capabilities;
  return spindleOrder === "start-first" && spindleBlocks === "apart" ? [start, said] : [said, start];
};

function speed(cursor: Cursor, sequence: Sequence): Step {
  const word = cursor.peek();
  const rpm = nextNumber(cursor, "rpm", "The spindle's speed");
  if (word !== undefined) fits(cursor, sequence, word, rpm, "speed");
  return { kind: "spindle-speed", rpm };
}

/** `coolant mist`, `coolant mist off`, `coolant off`. */
const coolant: StepReader = (cursor) => {
  const medium = oneOf(cursor, [...media, "off"], "coolant");
  if (medium === "off") return [{ kind: "coolant", medium: "all", on: false }];
  return [{ kind: "coolant", medium, on: !took(cursor, "off") }];
};

/** `dwell 0.5`, in seconds, and `dwell 3 turns` of the spindle. */
const dwell: StepReader = (cursor, sequence, first) => {
  const word = cursor.peek() ?? first;
  const value = nextNumber(cursor, "seconds", "The dwell");
  fits(cursor, sequence, word, value, "dwell");
  return [
    took(cursor, "turns") ? { kind: "dwell", time: 0, revolutions: value } : { kind: "dwell", time: value },
  ];
};

/** `wait 4 on 10`: for input 4 to be on, 10 seconds at most. */
const wait: StepReader = (cursor) => {
  const input = nextNumber(cursor, "whole", "The input");
  const level = oneOf(cursor, ["on", "off"], "level of the input");
  return [
    { kind: "wait", input, level, timeout: nextNumber(cursor, "seconds", "The longest time, in seconds,") },
  ];
};

const output: StepReader = (cursor) => {
  const number = nextNumber(cursor, "whole", "The output");
  return [{ kind: "output", number, on: oneOf(cursor, ["on", "off"], "state of the output") === "on" }];
};

/** `tool 3`: the tool word; `change` is the change itself. */
const tool: StepReader = (cursor) => {
  const number = nextNumber(cursor, "whole", "The tool");
  if (!took(cursor, "offset")) return [{ kind: "select-tool", tool: number }];
  return [{ kind: "select-tool", tool: number, offset: nextNumber(cursor, "whole", "The length offset") }];
};

const lengthOffset: StepReader = (cursor) => [
  {
    kind: "length-offset",
    number: took(cursor, "off") ? 0 : nextNumber(cursor, "whole", "The length offset, or off,"),
  },
];

/** `comp left 3`, `comp right`, `comp off`. */
const comp: StepReader = (cursor) => {
  const value = oneOf(cursor, ["left", "right", "off"], "side of the compensation");
  const isNumber = value !== "off" && cursor.peek() !== undefined;
  return [
    { kind: "compensation", value, offset: isNumber ? nextNumber(cursor, "whole", "The radius offset") : 0 },
  ];
};

const path: StepReader = (cursor, sequence) => {
  const value = oneOf(cursor, ["exact", "stop", "blend"], "path mode");
  if (!took(cursor, "within")) return [{ kind: "path", value }];
  const word = cursor.peek();
  const tolerance = nextNumber(cursor, "length", "The tolerance");
  if (word !== undefined) fits(cursor, sequence, word, tolerance, "length");
  return [{ kind: "path", value, tolerance }];
};

/** `reference z`, `reference x y`. */
const reference: StepReader = (cursor) => {
  let mask = 0;
  do mask |= 1 << axes.indexOf(oneOf(cursor, axes, "axis"));
  while (cursor.peek() !== undefined);
  return [{ kind: "reference-return", axes: mask }];
};

const program: StepReader = (cursor, sequence, first) => {
  if (sequence.batch.count > 0) cursor.fail(first, "`program` begins a case, and stands nowhere else.");
  sequence.whole = true;
  sequence.known[0] = 0;
  return [
    {
      kind: "program-start",
      number: cursor.peek() === undefined ? 0 : nextNumber(cursor, "whole", "The program number"),
    },
  ];
};

/** A text to the end of the step. */
const message: StepReader = (cursor, _, first) => {
  const text = cursor.rest();
  if (text === "") cursor.fail(first, "A message has a text.");
  return [{ kind: "message", text }];
};

const code: StepReader = (cursor) => {
  const word = cursor.next();
  if (word === undefined || !/^[GM]\d{1,3}(\.\d)?$/.test(word.text))
    return cursor.fail(word, "A code of the dialect's own is a word such as M93.");
  return [{ kind: "auxiliary", action: "opaque", code: word.text }];
};

function action(name: Exclude<AuxiliaryAction, "opaque">): StepReader {
  return () => [{ kind: "auxiliary", action: name, code: "" }];
}

/** A mode: its word, and its values. */
function mode<const T extends string>(
  values: readonly T[],
  make: (value: T) => Step,
  what: string,
): StepReader {
  return (cursor) => [make(oneOf(cursor, values, what))];
}

const onOff = ["on", "off"] as const;

/** Steps by their first word. */
export const steps = {
  spindle,
  coolant,
  dwell,
  wait,
  output,
  tool,
  change: () => [{ kind: "change-tool" }],
  "length-offset": lengthOffset,
  "work-offset": (cursor) => [
    { kind: "work-offset", number: nextNumber(cursor, "whole", "The work offset") },
  ],
  comp,
  units: mode(["mm", "inch"], (value) => ({ kind: "units", value }), "unit"),
  plane: mode(["xy", "zx", "yz"], (value) => ({ kind: "plane", value }), "plane"),
  distance: mode(["absolute", "incremental"], (value) => ({ kind: "distance", value }), "way to say places"),
  "arc-centre": mode(
    ["absolute", "incremental"],
    (value) => ({ kind: "arc-centre", value }),
    "way to say centres",
  ),
  "feed-mode": mode(
    ["per-minute", "per-revolution", "inverse-time"],
    (value) => ({ kind: "feed-mode", value }),
    "feed mode",
  ),
  path,
  "look-ahead": mode(onOff, (value) => ({ kind: "look-ahead", value }), "state"),
  "corner-feed": mode(onOff, (value) => ({ kind: "corner-feed", value }), "state"),
  overrides: mode(onOff, (value) => ({ kind: "overrides", value }), "state"),
  cycle: mode(["off"], (value) => ({ kind: "cycle", value }), "state"),
  "local-shift": mode(["off"], (value) => ({ kind: "local-shift", value }), "state"),
  rotation: mode(["off"], (value) => ({ kind: "rotation", value }), "state"),
  scale: mode(["off"], (value) => ({ kind: "scale", value }), "state"),
  pause: (cursor) => [{ kind: "pause", optional: took(cursor, "optional") }],
  message,
  release: action("release"),
  clamp: action("clamp"),
  "taper-air-on": action("taper-air-on"),
  "taper-air-off": action("taper-air-off"),
  "cover-open": action("cover-open"),
  "cover-close": action("cover-close"),
  "hood-up": action("hood-up"),
  "hood-down": action("hood-down"),
  measure: action("measure"),
  code,
  reference,
  program,
  end: () => [{ kind: "program-end" }],
} as const satisfies Record<string, StepReader>;
