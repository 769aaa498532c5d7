import type { StepKind } from "#base";

/** Functions that a generated emitter may define and call, each with the comment that stands before it. */
const emitterFunctions = {
  emitUnproved: "Writes the rows of all batches; a chunk is handed on when it is full.",
  cleanText: "A text as a message to the operator has it.",
  writeRows: "Writes rows until a chunk is full; returns the row that comes next.",
  writeStep: "Writes a rare step.",
  writeRapid: "A rapid in work coordinates; a length offset that waits joins it where it states Z.",
  writeLine: "A line in work coordinates.",
  writeMachineRapid: "A rapid in machine coordinates.",
  writeMachineLine: "A line in machine coordinates.",
  writeArcXy: "An arc or helix in the XY plane.",
  writeArcZx: "An arc or helix in the ZX plane.",
  writeArcYz: "An arc or helix in the YZ plane.",
  writeHole: "A hole of the fixed cycle in force.",
  writeDelimiter: "The line that the text begins and ends with.",
  finish: "Ends the text.",
  settle: "Writes what has waited to share the block of the next step.",
  beginSection: "A section of the program begins before the next block.",
  beginBlock: "Writes the block number.",
  endBlock: "Takes back the separator behind the last word, and ends the block.",
  writeModes: "Writes the modes that share a block.",
  writeMode:
    "Writes the word of a mode; where modes share a block, `group` is its place in the order of execution.",
  createState: "Everything that is remembered from one row to the next.",
  take: "The bytes written so far, as a chunk.",
  restate: "Makes the next block state all its modal words.",
  keepPlace: "Remembers where a row in work coordinates ends.",
  requireKnown: "An incremental word needs to know where the axis is.",
  writeComment: "A comment in a line of its own.",
  writeFeed: "The feed word in the unit of the feed mode.",
  writeLength: "A word with a length, in the units of the program.",
  writeArcCentre: "A word for the shape of an arc: a centre or a radius.",
  writeAngle: "A word with an angle in degrees.",
  writeFeedPerMinute: "A feed in lengths a minute.",
  writeFeedPerRevolution: "A feed in lengths a revolution.",
  writeInverseTime: "A feed in inverse time: how often a minute the motion would go into.",
  writeSpeed: "A word with a spindle speed.",
  writeDwellTime: "A word with the time of a dwell.",
  writeCycleDwell: "A word with the time of a dwell in a fixed cycle.",
  writePeck: "A word with the depth of a peck.",
  writeTimeout: "The longest time of a wait, without a word of its own.",
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
  "look-ahead": "writeLookAhead",
  "corner-feed": "writeCornerFeed",
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

/** The comment that stands before each of them. */
const stepComments: Readonly<Record<StepKind, string>> = {
  "program-start": "Delimiter, program number and header.",
  units: "Units of the lengths that follow.",
  plane: "Plane of the arcs and cycles that follow.",
  distance: "Absolute or incremental words from here on.",
  "arc-centre": "Whether arc centres are absolute or incremental from here on.",
  "feed-mode": "What a feed means from here on.",
  path: "How closely the path is kept from here on.",
  "look-ahead": "Whether the controller looks ahead of the block it is at.",
  "corner-feed": "Whether the feed is lowered in inside corners.",
  overrides: "Whether the operator's overrides act.",
  cycle: "Cancels the fixed cycle.",
  "local-shift": "Cancels a local shift of the work coordinates.",
  rotation: "Cancels a rotation of the work coordinates.",
  scale: "Cancels a scale of the work coordinates.",
  compensation: "Cutter compensation on or off.",
  "work-offset": "Another work offset: where the axes are in it is unknown.",
  "length-offset": "A tool length offset, or none: where Z is with it is unknown.",
  "select-tool": "The number of the next tool.",
  "change-tool": "The controller's own tool change.",
  "spindle-speed": "The spindle speed.",
  "spindle-start": "Starts the spindle.",
  "spindle-stop": "Stops the spindle.",
  "spindle-orient": "Turns the spindle to its angle and holds it there.",
  coolant: "A coolant on, or one or all off.",
  output: "An output of the controller on or off.",
  wait: "Waits for a signal.",
  dwell: "Waits for a time.",
  pause: "Stops for the operator, who may move the axes.",
  message: "Tells the operator something.",
  "cycle-definition": "Defines a fixed cycle: kept for its holes, the first of which states it.",
  auxiliary: "An action that the controller's builder has a code for.",
  "reference-return": "Sends axes to their reference points.",
  "program-end": "Ends the program.",
};

/** Comments by function. */
const comments = new Map<string, string>([
  ...Object.entries(emitterFunctions),
  ...(Object.entries(stepFunctions) as [StepKind, string][]).map(
    ([kind, name]) => [name, stepComments[kind]] as const,
  ),
]);

/** What the generated code may construct. */
export const constructors = ["Uint8Array", "Error", "TextEncoder"] as const;

/** Functions of the language, and methods of numbers, texts, lists and byte arrays; the first two are `Math`'s. */
export const methods = [
  "floor",
  "abs",
  "charCodeAt",
  "charAt",
  "includes",
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

/** The comment before a function. */
export function commentOf(name: EmitterFunction): string {
  return (
    comments.get(name) ?? "The digits of a number that counts grid cells, in one of the dialect's formats."
  );
}

/** Names of all functions that a generated emitter may define, number printers apart. */
export function functionNames(): string[] {
  return [...Object.keys(emitterFunctions), ...Object.values(stepFunctions)];
}
