import type { RuleTexts } from "./rule-texts.ts";

/** A program as an input (core/retrace); the rules of reading it hold for it, too. */
export const programJobRules = {
  "job/program-empty": "The program moves a tool in work coordinates.",
  "job/program-units": "The program's units are stated by it, its dialect or a head file.",
  "job/program-tool":
    "Each tool has a number, a kind and a size: from tool words, comments or a head file, which counts before comments.",
  "job/program-clearance":
    "The Z of safe travel is the one at which the tool approaches, or a higher one of a head file.",
  "job/program-place": "Where the tool cuts, its place in work coordinates is known.",
  "job/program-machine-frame": "Nothing is cut in machine coordinates.",
  "job/program-idle": "Rapids lead to work; those that lead to none are left out.",
  "job/program-spindle": "The tool that cuts turns, and turns the other way only behind a retract.",
  "job/program-feed": "The feeds of one operation count one thing, or can be given per minute.",
  "job/program-path": "One path mode holds for all of an operation: the strictest that the program states.",
  "job/program-offset":
    "A tool has one length offset, that which the program selects; where it selects none, a head file states it.",
  "job/program-hole": "A cycle has a counterpart among a job's holes, and its levels and lead are known.",
  "job/program-arc": "Start and end of an arc are equally far from its centre, within 0.005 mm or 0.1 %.",
  "job/program-rotary": "Linear and rotary axes move together under inverse-time feed only.",
  "job/program-compensation": "Compensation is off where the program stops and where an operation ends.",
  "job/program-stop": "A stop behind a tool word asks for the tool, or for nothing.",
  "job/program-pause": "The program stops for the operator at or above the Z of safe travel.",
  "job/program-code":
    "Each code has a counterpart in a job, or is one that a program of a job gets by itself.",
  "job/program-limit":
    "The program stays inside the bounds of the reader: operations, steps between two motions.",
  "job/program-form": "Form is not asked of a program that is an input, as long as its meaning is clear.",
} as const satisfies RuleTexts;
