import type { Finding, Severity } from "#base";

/** Rules of a program that is read as a job; what each demands stands in the catalogue of rules. */
export const programJobRules = [
  "job/program-empty",
  "job/program-units",
  "job/program-tool",
  "job/program-clearance",
  "job/program-place",
  "job/program-machine-frame",
  "job/program-idle",
  "job/program-spindle",
  "job/program-feed",
  "job/program-path",
  "job/program-offset",
  "job/program-hole",
  "job/program-arc",
  "job/program-rotary",
  "job/program-compensation",
  "job/program-pause",
  "job/program-stop",
  "job/program-code",
  "job/program-limit",
  "job/program-form",
] as const;

type Rule = (typeof programJobRules)[number];

function finding(severity: Severity, rule: Rule, offset: number, message: string, fix: string): Finding {
  return { rule, severity, message, place: { source: "job", offset }, fix };
}

type Made = (offset: number, message: string, fix: string) => Finding;

/** Findings by severity: rule, byte offset, message, way out. */
export const error =
  (rule: Rule): Made =>
  (offset, message, fix) =>
    finding("error", rule, offset, message, fix);
export const warning =
  (rule: Rule): Made =>
  (offset, message, fix) =>
    finding("warning", rule, offset, message, fix);
export const note =
  (rule: Rule): Made =>
  (offset, message, fix) =>
    finding("note", rule, offset, message, fix);

export const empty = (): Finding =>
  error("job/program-empty")(
    0,
    "The program moves no tool in the work.",
    "Give a program with motion in work coordinates.",
  );

export const unitsTaken = (units: string): Finding =>
  warning("job/program-units")(
    0,
    `Neither the program nor the dialect states units; the numbers are taken to be ${units}.`,
    "State them in the program, or as `units` in a head file (`--head FILE`).",
  );

export const noTool = (offset: number): Finding =>
  note("job/program-tool")(
    offset,
    "The program names no tool; its tool is called 1.",
    "Name it by a tool word where it has another number.",
  );

export const toolGuessed = (severity: Severity, offset: number, tool: number, said: string): Finding =>
  finding(
    severity,
    "job/program-tool",
    offset,
    `Tool ${tool}: ${said}.`,
    "State the tool in a head file (`--head FILE`), as a job's `tools` have it.",
  );

export const pocketTaken = (offset: number): Finding =>
  note("job/program-tool")(
    offset,
    "The program takes its tools from pockets and does not name them; each has the number of its pocket.",
    "Say in a comment at the head: The rack is loaded: pocket 1 tool 1, pocket 2 tool 2.",
  );

export const clearanceTaken = (offset: number, height: string): Finding =>
  note("job/program-clearance")(
    offset,
    `Z of safe travel is taken from the approach: ${height}.`,
    "State `clearance` in a head file (`--head FILE`) if it is another.",
  );

export const clearanceUnknown = (offset: number): Finding =>
  error("job/program-clearance")(
    offset,
    "The tool travels here high above the work, in machine coordinates, and comes down with the same tool: a job would have it travel at clearance, and nothing says how high that is.",
    "State `clearance` in a head file (`--head FILE`): a height at which it is safe to travel.",
  );

export const travelsLow = (offset: number): Finding =>
  error("job/program-machine-frame")(
    offset,
    "A motion of X or Y in machine coordinates, and Z has not gone up before: a job has no such way.",
    "Bring Z up in machine coordinates first, or write the way in work coordinates.",
  );

export const radiusDiffers = (offset: number, tool: number, first: number, second: number): Finding =>
  error("job/program-offset")(
    offset,
    `Tool ${tool} has radius offset ${second} here, and ${first} before; in a job each tool has one.`,
    "Give the tool one radius offset, or two numbers.",
  );

export const lengthLeft = (offset: number, tool: number): Finding =>
  error("job/program-offset")(
    offset,
    `Tool ${tool} cuts without a length offset here, and with one elsewhere; in a job each tool has one throughout.`,
    "Use its length offset in all of its cuts.",
  );

export const radiusLeft = (offset: number, tool: number): Finding =>
  error("job/program-offset")(
    offset,
    `Tool ${tool} is compensated for here without a radius offset, and elsewhere with one; in a job each tool has one throughout.`,
    "Name its radius offset wherever compensation begins.",
  );

export const swapUnclear = (offset: number, said: string): Finding =>
  error("job/program-stop")(
    offset,
    `The program stops behind a tool word and says "${said}": is the tool changed at this stop, or not?`,
    "Write LOAD TOOL and its number into the message, or put the tool word behind the stop.",
  );

export const placeUnknown = (offset: number, names: string): Finding =>
  error("job/program-place")(
    offset,
    `The tool moves here, and the place of ${names} in work coordinates is not known.`,
    "State it with a rapid before the work, as an approach does: X and Y, then Z.",
  );

export const machineCut = (offset: number): Finding =>
  error("job/program-machine-frame")(
    offset,
    "A motion at feed in machine coordinates: a job has none.",
    "Write it in work coordinates.",
  );

export const idle = (offset: number): Finding =>
  note("job/program-idle")(
    offset,
    "These rapids lead to no work and are left out.",
    "A program of the job parks as its own dialect says (`machine.park`).",
  );

export const spindleStands = (offset: number): Finding =>
  error("job/program-spindle")(
    offset,
    "The tool cuts here, and the spindle does not turn.",
    "Start it before, or state a tool that never turns in a head file (`--head FILE`).",
  );

export const spindleTurned = (offset: number): Finding =>
  error("job/program-spindle")(
    offset,
    "The spindle turns the other way here, and the tool has not gone up before.",
    "Bring Z up to where the tool travels before it turns the other way.",
  );

export const feedModes = (offset: number): Finding =>
  error("job/program-feed")(
    offset,
    "The feed counts inverse time in a part of this operation, and something else in another.",
    "Bring Z up to where the tool travels, and rapid on from there, before it counts otherwise.",
  );

export const noFeed = (offset: number): Finding =>
  error("job/program-feed")(offset, "The tool cuts here, and no feed has been stated.", "State a feed.");

export const feedConverted = (offset: number): Finding =>
  note("job/program-feed")(
    offset,
    "Feeds per minute and per revolution stand in one operation; they are given per minute.",
    "Retract between them if the feed is to follow the speed.",
  );

export const pathChanged = (offset: number): Finding =>
  note("job/program-path")(
    offset,
    "The path mode changes inside an operation; the stricter one holds for all of it.",
    "Retract between them, to have two operations.",
  );

export const stopAtCorners = (offset: number): Finding =>
  note("job/program-path")(
    offset,
    "The program stops at each corner; a job asks for the exact path.",
    "Tell the machine's operator if the stops matter.",
  );

export const lengthUnused = (offset: number, tool: number): Finding =>
  error("job/program-offset")(
    offset,
    `The program selects no length offset with tool ${tool}, and a program of this job selects one where the dialect has them: what it holds is not known.`,
    `State \`lengthOffset\` of tool ${tool} in a head file (\`--head FILE\`): a number whose offset holds what the machine is to add to Z, or 0.`,
  );

export const lengthOfSpare = (offset: number, spare: number, tool: number): Finding =>
  error("job/program-offset")(
    offset,
    `The program selects no length offset with tool ${tool}, and nothing says which one tool ${spare}, its spare, gets where the dialect has them.`,
    `State \`lengthOffset\` of tool ${spare} in the head file: a number whose offset holds what the machine is to add to Z, or 0.`,
  );

export const lengthTaken = (offset: number, tool: number): Finding =>
  warning("job/program-offset")(
    offset,
    `The program selects no length offset with tool ${tool}; a program of this job selects that of the head file where the dialect has them.`,
    "See that this length offset holds what the machine is to add to Z, or 0.",
  );

export const lengthOtherwise = (
  offset: number,
  tool: number,
  inHead: number,
  line: number,
  here: number,
): Finding =>
  warning("job/program-offset")(
    offset,
    `Tool ${tool} has length offset ${inHead} in the head file (line ${line}), and the program selects ${here}; the program counts.`,
    "State the same in both, or leave `lengthOffset` out of the head file.",
  );

export const toolDiffers = (
  offset: number,
  tool: number,
  inHead: string,
  line: number,
  here: string,
): Finding =>
  warning("job/program-tool")(
    offset,
    `Tool ${tool} is ${inHead} in the head file (line ${line}), and ${here} here, in a comment; the head file counts.`,
    "See which tool the program was made for; state that one in the head file, or mend the comment.",
  );

export const lengthDiffers = (offset: number, tool: number, first: number, second: number): Finding =>
  error("job/program-offset")(
    offset,
    `Tool ${tool} has length offset ${second} here, and ${first} before; in a job each tool has one.`,
    "Give the tool one length offset, or two numbers.",
  );

export const manualCycle = (offset: number, cycle: string): Finding =>
  error("job/program-hole")(
    offset,
    `A job has no cycle that stops the spindle at the bottom (${cycle}).`,
    "Bore with a feed out (`bore`), or leave these holes out.",
  );

export const topTaken = (offset: number, from: string): Finding =>
  note("job/program-hole")(
    offset,
    `A program does not say where the top of a hole is; it is taken to be ${from}.`,
    "It matters to checks alone: the cut is from the retract level to the depth. State `stock` in a head file if it is elsewhere.",
  );

export const tapStands = (offset: number): Finding =>
  error("job/program-hole")(
    offset,
    "The lead of this tap is not known: the spindle has no speed.",
    "State the speed before the cycle.",
  );

export const arcRadius = (offset: number): Finding =>
  error("job/program-arc")(
    offset,
    "The start and the end of this arc are not equally far from its centre.",
    "Give an end and a centre that agree within 0.005 mm or 0.1 %.",
  );

export const arcReach = (offset: number): Finding =>
  error("job/program-arc")(
    offset,
    "The radius of this arc does not reach from its start to its end.",
    "State a radius of at least half the distance.",
  );

export const rotaryTogether = (offset: number): Finding =>
  error("job/program-rotary")(
    offset,
    "A line moves linear and rotary axes together, which a job allows under inverse-time feed alone.",
    "State the feed as inverse time, or make two motions of it.",
  );

export const compensationOn = (offset: number, where: string): Finding =>
  error("job/program-compensation")(offset, `Cutter compensation is still on ${where}.`, "Cancel it before.");

export const pauseBelow = (offset: number): Finding =>
  error("job/program-pause")(
    offset,
    "The program stops here with the tool below where it travels.",
    "Go up before the stop.",
  );

export const codeUnsaid = (offset: number, what: string): Finding =>
  error("job/program-code")(
    offset,
    `${what} has no counterpart in a job.`,
    "Take it out of the program, or put it in once more behind posting.",
  );

export const tooMuch = (offset: number): Finding =>
  error("job/program-limit")(
    offset,
    "More than 4,096 steps stand between two motions.",
    "Take out those that say nothing new.",
  );

export const tooManyOperations = (offset: number): Finding =>
  error("job/program-limit")(offset, "The program has more than 10,000 operations.", "Split the program.");

export const formUnasked = (count: number): Finding =>
  note("job/program-form")(
    0,
    `${count} ${count === 1 ? "block is" : "blocks are"} not in the form that this dialect asks for; their meaning is clear.`,
    "`tapewright prove PROGRAM --dialect D` lists them.",
  );
