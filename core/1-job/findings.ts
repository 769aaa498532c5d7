import type { Finding, Severity } from "#base";

/** Every rule of this stage; what each demands stands in the catalogue of rules. */
export const rules = [
  "job/json",
  "job/encoding",
  "job/limit",
  "job/version",
  "job/type",
  "job/unknown-key",
  "job/repeated-key",
  "job/missing-key",
  "job/number",
  "job/range",
  "job/value",
  "job/list",
  "job/move",
  "job/axes",
  "job/box",
  "job/tool",
  "job/tool-undefined",
  "job/unique",
  "job/spindle",
  "job/first-move",
  "job/arc-radius",
  "job/holes",
  "job/tap",
  "job/feed",
  "job/path",
  "job/rotary",
  "job/compensation",
  "job/pause",
  "job/more",
  "limit/tool",
  "job/spare",
  "job/tool-size",
  "offset/shared",
] as const;

/** A rule of this stage. */
export type JobRule = (typeof rules)[number];

function finding(severity: Severity, rule: JobRule, offset: number, message: string, fix: string): Finding {
  return { rule, severity, message, place: { source: "job", offset }, fix };
}

const error = (rule: JobRule, offset: number, message: string, fix: string): Finding =>
  finding("error", rule, offset, message, fix);

/** Words in a sentence: `a`, `b` or `c`. */
export function listed(words: readonly string[], joint = "or"): string {
  const quoted = words.map((word) => `\`${word}\``);
  const last = quoted.pop() ?? "";
  return quoted.length === 0 ? last : `${quoted.join(", ")} ${joint} ${last}`;
}

/* The text itself. */

export const notJson = (offset: number, wanted: string, found: string): Finding =>
  error(
    "job/json",
    offset,
    `${wanted} was expected here, but ${found} stands.`,
    "Correct the JSON at this place.",
  );

export const cutShort = (offset: number, wanted: string): Finding =>
  error(
    "job/json",
    offset,
    `The job is cut short: it ends where ${wanted} was expected.`,
    "Write the job again.",
  );

export const emptyJob = (): Finding =>
  error("job/json", 0, "The job is empty.", 'Give a job: a JSON object with the key "job".');

export const notText = (offset: number): Finding =>
  error(
    "job/json",
    offset,
    "This is not a JSON text; it looks like binary data.",
    "Give the job as JSON in UTF-8.",
  );

export const byteOrderMark = (): Finding =>
  error(
    "job/encoding",
    0,
    "The job begins with a byte order mark.",
    "Save it as UTF-8 without a byte order mark.",
  );

export const otherEncoding = (): Finding =>
  error("job/encoding", 0, "The job is UTF-16 or UTF-32.", "Save it as UTF-8 without a byte order mark.");

export const notUtf8 = (offset: number): Finding =>
  error("job/encoding", offset, "These bytes are not UTF-8.", "Save the job as UTF-8.");

export const halfSurrogate = (offset: number): Finding =>
  error(
    "job/encoding",
    offset,
    "This text holds one half of a surrogate pair.",
    "Write the whole character.",
  );

export const overLimit = (offset: number, what: string, most: string): Finding =>
  error(
    "job/limit",
    offset,
    `${what} is larger than the reader accepts (${most}).`,
    `Keep it within ${most}.`,
  );

export const headTooLarge = (offset: number): Finding =>
  overLimit(offset, "The part of the job outside of `moves`", "4 MB");

/* The format. */

export const otherVersion = (offset: number): Finding =>
  error("job/version", offset, "This version of the job format is not known.", 'Write "job": "1".');

export const wrongType = (offset: number, key: string, wanted: string): Finding =>
  error("job/type", offset, `${key} must be ${wanted}.`, `Write ${wanted} here.`);

export const unknownKey = (offset: number, key: string, owner: string, meant: string | undefined): Finding =>
  error(
    "job/unknown-key",
    offset,
    `${owner} has no key \`${key}\`${meant === undefined ? "" : `; did you mean \`${meant}\`?`}`.replace(
      /[^?]$/,
      "$&.",
    ),
    meant === undefined ? `Leave \`${key}\` out.` : `Write \`${meant}\`.`,
  );

export const strayKey = (offset: number, key: string, owner: string, why: string): Finding =>
  error("job/unknown-key", offset, `${owner} has no key \`${key}\`: ${why}.`, `Leave \`${key}\` out.`);

export const repeatedKey = (offset: number, key: string): Finding =>
  error("job/repeated-key", offset, `The key \`${key}\` stands here a second time.`, "Keep one of the two.");

export const missingKey = (offset: number, key: string, owner: string): Finding =>
  error("job/missing-key", offset, `${owner} needs the key \`${key}\`.`, `Add \`${key}\`.`);

export const notFinite = (offset: number, key: string): Finding =>
  error("job/number", offset, `${key} is not a finite number.`, "Write a number.");

export const outOfRange = (offset: number, key: string, range: string): Finding =>
  error("job/range", offset, `${key} must be ${range}.`, `Write a number that is ${range}.`);

export const wrongWord = (
  offset: number,
  key: string,
  allowed: readonly string[],
  meant: string | undefined,
): Finding =>
  error(
    "job/value",
    offset,
    `${key} must be ${listed(allowed)}${meant === undefined ? "." : `; did you mean \`${meant}\`?`}`,
    meant === undefined ? `Write ${listed(allowed)}.` : `Write \`${meant}\`.`,
  );

export const blankText = (offset: number, key: string): Finding =>
  error("job/value", offset, `${key} must not be blank.`, "Write a text.");

export const wrongCount = (offset: number, key: string, wanted: string): Finding =>
  error("job/list", offset, `${key} must have ${wanted}.`, `Give ${wanted}.`);

export const repeatedElement = (offset: number, key: string): Finding =>
  error("job/list", offset, `${key} names one element twice.`, "Name each once.");

/* What the head means. */

export const boxInsideOut = (offset: number, box: string, axis: string): Finding =>
  error(
    "job/box",
    offset,
    `${box}: \`min\` is not below \`max\` in ${axis}.`,
    `Give min and max of ${axis} in order.`,
  );

export const speedsInsideOut = (offset: number, tool: number): Finding =>
  error(
    "job/tool",
    offset,
    `Tool ${tool}: \`minRpm\` is above \`maxRpm\`.`,
    "Give least and greatest speed in order.",
  );

export const toolUndefined = (offset: number, tool: number, operation: string): Finding =>
  error(
    "job/tool-undefined",
    offset,
    `Operation \`${operation}\` uses tool ${tool}, which the job does not define.`,
    "Define the tool under `tools`, or use one that is defined.",
  );

export const toolTwice = (offset: number, number: number): Finding =>
  error("job/unique", offset, `Two tools have the number ${number}.`, "Give each tool a number of its own.");

export const operationTwice = (offset: number, id: string): Finding =>
  error(
    "job/unique",
    offset,
    `Two operations have the id \`${id}\`.`,
    "Give each operation an id of its own.",
  );

export const spindleMissing = (offset: number, operation: string, kind: string): Finding =>
  error(
    "job/spindle",
    offset,
    `Operation \`${operation}\` uses a tool that turns (${kind}), and states no spindle.`,
    'Add "spindle" with rpm and direction.',
  );

export const spindleRefused = (offset: number, operation: string, kind: string): Finding =>
  error(
    "job/spindle",
    offset,
    `Operation \`${operation}\` states a spindle, but its tool never turns (${kind}).`,
    'Leave "spindle" out.',
  );

export const spindleUnstated = (offset: number): Finding =>
  error(
    "job/spindle",
    offset,
    "This move changes the spindle's speed, but the operation states no spindle.",
    "Leave the move out.",
  );

export const perRevolutionStandstill = (offset: number, operation: string): Finding =>
  error(
    "job/feed",
    offset,
    `Operation \`${operation}\` feeds per revolution, but its tool never turns.`,
    "Feed per minute.",
  );

export const handAgainstDirection = (
  offset: number,
  tool: number,
  hand: string,
  direction: string,
): Finding =>
  error(
    "limit/tool",
    offset,
    `Tool ${tool} cuts ${hand}-handed, so it must not turn ${direction}.`,
    `Turn it ${hand === "right" ? "cw" : "ccw"}, or correct the tool's \`hand\`.`,
  );

export const offsetShared = (offset: number, tool: number, other: number, number: number): Finding =>
  finding(
    "warning",
    "offset/shared",
    offset,
    `Tools ${other} and ${tool} share the length offset ${number}.`,
    "Give each tool a length offset of its own, unless both are of the same length.",
  );

/** A spare that cannot take over from its tool. @param why ends a sentence that begins with the spare */
export const spareRefused = (offset: number, spare: number, why: string, fix: string): Finding =>
  error("job/spare", offset, `Tool ${spare} cannot be a spare for ${why}.`, fix);

export const spareNeverUsed = (offset: number, spare: number, tool: number): Finding =>
  finding(
    "warning",
    "job/spare",
    offset,
    `Tool ${spare} never takes over from tool ${tool}: nothing says when that is worn.`,
    `State the \`life\` of tool ${tool}, in minutes of cutting.`,
  );

export const spareUsed = (offset: number, spare: number, tool: number, operation: string): Finding =>
  error(
    "job/spare",
    offset,
    `Operation \`${operation}\` uses tool ${spare}, which is a spare for tool ${tool}: how long it has cut could not be told.`,
    `Name tool ${tool}, for which the spare takes over when it is worn; or leave out \`spareFor\`.`,
  );

/** What `job` writes where a source or a program did not say the diameter, or a mistake of that size. */
export const diameterStandsIn = (offset: number, tool: number): Finding =>
  finding(
    "warning",
    "job/tool-size",
    offset,
    `Nobody has said how wide tool ${tool} is: a diameter of 100 m stands for that, and nothing can be checked that needs it.`,
    "State the tool's diameter.",
  );

/* What the moves mean. */

export const noKind = (offset: number, kinds: readonly string[]): Finding =>
  error("job/move", offset, "This move is of no kind.", `Give it one of ${listed(kinds)}.`);

export const twoKinds = (offset: number, first: string, second: string): Finding =>
  error("job/move", offset, `This move is both \`${first}\` and \`${second}\`.`, "Make two moves of it.");

export const noAxis = (offset: number): Finding =>
  error("job/axes", offset, "This move names no axis.", "Name at least one axis, or leave the move out.");

export const notFirst = (offset: number, operation: string): Finding =>
  error(
    "job/first-move",
    offset,
    `The first motion of operation \`${operation}\` must be a rapid that names x and y.`,
    "Begin with a rapid to x and y.",
  );

export const radiusDiffers = (offset: number, start: string, end: string): Finding =>
  error(
    "job/arc-radius",
    offset,
    `The arc starts ${start} mm from its centre and ends ${end} mm from it.`,
    "Give an end and a centre that agree within 0.005 mm or 0.1 %.",
  );

export const radiusNothing = (offset: number): Finding =>
  error("job/arc-radius", offset, "The arc starts or ends on its centre.", "Give a centre away from both.");

export const levelsOutOfOrder = (offset: number, what: string): Finding =>
  error("job/holes", offset, `Holes need ${what}.`, "Give levels with depth < top <= retract.");

export const holesRefused = (offset: number, where: string, fix: string): Finding =>
  error("job/holes", offset, `Holes are not used ${where}.`, fix);

export const tapStandstill = (offset: number): Finding =>
  error("job/tap", offset, "A tap needs a spindle that turns.", "Use a tool that turns.");

export const tapLead = (offset: number): Finding =>
  error(
    "job/tap",
    offset,
    "The lead of the holes is not that of the tool.",
    "Give both the same lead, or use another tap.",
  );

export const tapFeed = (offset: number, rpm: string): Finding =>
  error(
    "job/tap",
    offset,
    "The feed of a tap must be speed times lead, within 0.1 %.",
    `Leave the feed out, or turn at ${rpm} rpm.`,
  );

export const tapTool = (offset: number, kind: string): Finding =>
  finding(
    "warning",
    "job/tap",
    offset,
    `Holes are tapped with a tool that is no tap (${kind}).`,
    "Use a tap, or correct the tool's kind.",
  );

export const noFeed = (offset: number, what: string): Finding =>
  error("job/feed", offset, `${what} has no feed, and none holds here.`, "State a feed.");

export const noOwnFeed = (offset: number, what: string, why: string): Finding =>
  error("job/feed", offset, `${what} must state its own feed: ${why}.`, "State a feed here.");

export const pathInverseTime = (offset: number): Finding =>
  error(
    "job/path",
    offset,
    "A path cannot be used under inverse-time feed.",
    "Write each point as a move of its own.",
  );

export const rotaryTogether = (offset: number): Finding =>
  error(
    "job/rotary",
    offset,
    "A line moves linear and rotary axes together, which needs inverse-time feed.",
    'Use "feedMode": "inverse-time", or two moves.',
  );

export const compensationOn = (offset: number, where: string): Finding =>
  error(
    "job/compensation",
    offset,
    `Compensation is still on ${where}.`,
    'Switch it off before: { "comp": "off" }.',
  );

export const pauseBelow = (offset: number): Finding =>
  error("job/pause", offset, "The pause stands below clearance.", "Go up to clearance first.");

export const more = (offset: number, count: number): Finding =>
  error("job/more", offset, `Reading stops here after ${count} findings.`, "Correct these, then read again.");
