import type { RuleTexts } from "./rule-texts.ts";

/** The job, the set-up file and the command line (1-job, 9-cli). */
export const jobRules = {
  "job/usage": "The command line is one that the command understands.",
  "job/not-found": "The job or set-up file exists.",
  "job/folder": "The job or set-up file is a file and not a folder.",
  "job/unreadable": "The job or set-up file may be read.",
  "job/changed": "The job or set-up file does not change while it is read.",
  "job/json": "The job is one JSON value, as RFC 8259 has it.",
  "job/encoding": "The job is UTF-8 without a byte order mark; its text holds no half surrogate pairs.",
  "job/limit": "The job stays inside the bounds of the reader: text, nesting, the part outside of `moves`.",
  "job/tool-size":
    "A tool has a diameter that a tool can have; 100 m stands for one that an input did not say.",
  "job/version": "The job states a version of the format that the reader knows.",
  "job/type": "Each value has the type that its key asks for.",
  "job/unknown-key": "Each key is one of the format, and stands where the format has it.",
  "job/repeated-key": "No key stands twice in one object.",
  "job/missing-key": "No key that the format demands is left out.",
  "job/number": "Numbers are finite.",
  "job/range": "Numbers are inside their range.",
  "job/value": "A word is one of those that its key allows.",
  "job/list": "Lists have the number of elements that the format asks for, and none is empty.",
  "job/move": "Each move is of one kind.",
  "job/axes": "A rapid or a line names at least one axis.",
  "job/box": "The least corner of a box is below its greatest in each axis.",
  "job/tool": "The values of a tool fit together.",
  "job/spare":
    "A spare has the kind and the cutting geometry of its tool, which is no spare itself and states a life; no operation names it.",
  "job/tool-undefined": "An operation uses a tool that the job defines.",
  "job/unique": "Tool numbers and operation ids are unique.",
  "job/spindle": "A spindle is stated with a tool that turns, and only there; a change of speed needs one.",
  "job/first-move": "The first motion of an operation is a rapid that names x and y.",
  "job/arc-radius": "Start and end of an arc are equally far from its centre, within 0.005 mm or 0.1 %.",
  "job/holes": "Holes have depth < top <= retract, and stand where cycles can work.",
  "job/tap": "A tapped hole agrees with the tool and the speed.",
  "job/feed": "Each line, arc and hole has a feed.",
  "job/path": "A path is not used under inverse-time feed.",
  "job/rotary": "Linear and rotary axes move together under inverse-time feed only.",
  "job/compensation":
    "Compensation is off before holes, pauses and the operation's end, and stays in the XY plane.",
  "job/pause": "A pause stands at or above clearance.",
  "job/material":
    "The stock's material is one of which the trade checks have tables; otherwise its feeds and speeds are not looked at.",
  "job/chip-load":
    "A mill's chip load, feed / (speed x teeth), is near the table for its diameter and the stock's material.",
  "job/feed-left-over": "A feed that does not suit its tool is not that of another tool before it.",
  "job/cutting-speed":
    "The cutting speed, pi x diameter x speed, is near what is in use for the stock's material.",
  "job/plunge": "A tool that does not cut at its centre is not fed straight down into the stock.",
  "job/plunge-feed": "A mill is fed down into the stock slower than it cuts sideways.",
  "job/flute-length":
    "No tool goes deeper into a hole, or below the top of the stock, than its flutes are long.",
  "job/low-rapid": "Rapids over the stock go at clearance, or at least 1 mm over its top.",
  "job/tiny-arc": "No arc is smaller than 0.01 mm in radius.",
  "job/hole-twice": "No hole is made a second time by a tool of the same kind.",
  "job/tap-hole": "A tapped place has a hole, as deep as the thread.",
  "job/unused-tool": "Each tool that the job lists is used by an operation.",
  "job/operation-unknown": "Options that choose operations name operations that the job has.",
  "job/more": "Reading stops after many findings; the rest of the job was not looked at.",
} as const satisfies RuleTexts;
