import type { RuleTexts } from "./rule-texts.ts";

/** Cutter location source as an input (1-job/cl); the rules of a job hold for it, too. */
export const clRules = {
  "job/cl-syntax": "A statement is WORD/item, item, ... with `$` where it goes on in the next line.",
  "job/cl-columns": "It is clear whether columns 73 to 80 are a sequence field.",
  "job/cl-literal":
    "A `$` at the end of a free text belongs to the text, unless the user says that it continues it.",
  "job/cl-word": "Each word is one of the vocabulary, and none puts code of one controller into the program.",
  "job/cl-unsupported": "What a statement asks for has a counterpart in a job.",
  "job/cl-item": "A statement has items of a form that its word takes.",
  "job/cl-number": "Numbers are decimals; an exponent needs the decimal point.",
  "job/cl-units": "The unit of each length is stated before it.",
  "job/cl-shift": "What ORIGIN and TRANS do to coordinates is stated by the user, where they are not 0.",
  "job/cl-place": "The place that a statement starts from or keeps is known.",
  "job/cl-axis": "The tool axis is +Z.",
  "job/cl-fourth": "A fourth number of GOTO is a feed, unless the user refuses it.",
  "job/cl-home": "GOHOME raises Z to clearance, or goes to the place of FROM where the user says so.",
  "job/cl-clearance": "The Z of safe travel is stated, or taken from the highest place of an operation.",
  "job/cl-rapid": "RAPID holds for one motion, unless the user says that it holds until FEDRAT.",
  "job/cl-feed": "The unit of a feed is stated, and those of one tool count one thing.",
  "job/cl-circle": "CIRCLE says which way it turns, and the end of its arc follows.",
  "job/cl-cycle":
    "A cycle names its depth, feed and heights, and is off before anything that it would change.",
  "job/cl-tool": "A tool is loaded before it moves, and has one set of data.",
  "job/cl-tip":
    "GOTO leads the tip of the tool, unless the user says that it leads the centre of the rounding.",
  "job/cl-spindle": "A tool that cuts turns, in a direction that is stated.",
  "job/cl-end": "The source moves a tool, ends with END or FINI, and nothing follows.",
} as const satisfies RuleTexts;
