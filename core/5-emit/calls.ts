import type { StepKind } from "#base";

/** Functions that a generated emitter may define and call, each with the comment that stands before it. */
const emitterFunctions = {
  emitUnproved: "Writes the rows of all batches; a chunk is handed on when it is full.",
  cleanText: "A text as a message to the operator has it.",
  writeRows: "Writes rows until a chunk is full; returns the row that comes next.",
  writeStep: "Writes a rare step.",
  writeRapid: "",
  writeLine: "",
  writeMachineRapid: "A rapid in machine coordinates.",
  writeMachineLine: "A line in machine coordinates.",
  writeArcXy: "",
  writeArcZx: "",
  writeArcYz: "",
  writeHole: "A hole of the fixed cycle in force.",
  writeDelimiter: "",
  finish: "Ends the text.",
  settle: "Writes what has waited to share the block of the next step.",
  beginBlock: "Writes the block number.",
  endBlock: "Takes back the separator behind the last word, and ends the block.",
  writeModes: "Writes the modes that share a block.",
  writeMode: "Writes the word of a mode; `group` is its place in the order of execution.",
  createState: "Everything that is remembered from one row to the next.",
  take: "The bytes written so far, as a chunk.",
  restate: "Makes the next block state all its modal words.",
  keepPlace: "Remembers where a row in work coordinates ends.",
  requireKnown: "An incremental word needs to know where the axis is.",
  writeComment: "A comment in a line of its own.",
  writeFeed: "The feed word in the unit of the feed mode.",
  writeLength: "",
  writeArcCentre: "",
  writeAngle: "",
  writeFeedPerMinute: "",
  writeFeedPerRevolution: "",
  writeInverseTime: "",
  writeSpeed: "",
  writeDwellTime: "",
  writeCycleDwell: "",
  writePeck: "",
  writeTimeout: "",
  writeWholeWord: "A word with a whole number of at least `width` digits.",
  writeWhole: "The digits of a whole number below 2^31.",
  writeLarge: "The digits of a whole number of any size.",
  writePadded: "The digits of a whole number, with zeros before it up to `width`.",
  write: "Text of the dialect, which is ASCII.",
  writeText: "Any text, as UTF-8; makes room for it.",
  cleanCharacters: "A text from the job in the characters of comments, cut to `longest` of them.",
  fault: "The dialect has no word for what a step asks: a fault of the compiler.",
} as const;

/** The functions that write the rare steps, one a kind. */
export const stepFunctions = {
  "program-start": "writeProgramStart",
  units: "writeUnits",
  plane: "writePlane",
  distance: "writeDistance",
  "arc-centre": "writeArcCentreMode",
  "feed-mode": "writeFeedMode",
  path: "writePath",
  overrides: "writeOverrides",
  cycle: "writeCycleOff",
  "local-shift": "writeLocalShift",
  rotation: "writeRotation",
  scale: "writeScale",
  compensation: "writeCompensation",
  "work-offset": "writeWorkOffset",
  "length-offset": "writeLengthOffset",
  "select-tool": "writeSelectTool",
  "change-tool": "writeChangeTool",
  "spindle-speed": "writeSpindleSpeed",
  "spindle-start": "writeSpindleStart",
  "spindle-stop": "writeSpindleStop",
  "spindle-orient": "writeSpindleOrient",
  coolant: "writeCoolant",
  output: "writeOutput",
  wait: "writeWait",
  dwell: "writeDwell",
  pause: "writePause",
  message: "writeMessage",
  "cycle-definition": "writeCycleDefinition",
  auxiliary: "writeAuxiliary",
  "reference-return": "writeReferenceReturn",
  "program-end": "writeProgramEnd",
} as const satisfies Record<StepKind, string>;

/** What the generated code may construct. */
export const constructors = ["Uint8Array", "Error", "TextEncoder"] as const;

/** Functions of the language, and methods of numbers, texts, lists and byte arrays; the first two are `Math`'s. */
export const methods = [
  "floor",
  "abs",
  "charCodeAt",
  "charAt",
  "slice",
  "push",
  "join",
  "normalize",
  "toUpperCase",
  "replace",
  "trim",
  "trimEnd",
  "subarray",
  "set",
  "encode",
  "trace",
] as const;

/** Functions of the language that stand alone. */
export const globals = ["Number", "Array.from"] as const;

/** A number printer: how many decimals, and a number of its own where several styles have as many. */
export type Printer = `writeDecimals${number}` | `writeDecimals${number}Style${number}`;

/** A function that generated code defines and calls. */
export type EmitterFunction = keyof typeof emitterFunctions | (typeof stepFunctions)[StepKind] | Printer;

/** What generated code may construct with `new`. */
export type Constructor = (typeof constructors)[number];

/** A method that generated code may call. */
export type Method = (typeof methods)[number];

/** The comment before a function; empty where its name says all. */
export function commentOf(name: EmitterFunction): string {
  return name in emitterFunctions ? emitterFunctions[name as keyof typeof emitterFunctions] : "";
}

/** Names of all functions that a generated emitter may define, number printers apart. */
export function functionNames(): string[] {
  return [...Object.keys(emitterFunctions), ...Object.values(stepFunctions)];
}
