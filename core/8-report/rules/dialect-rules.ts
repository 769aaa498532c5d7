import type { RuleTexts } from "./rule-texts.ts";

/** The dialect file (2-dialect, 9-cli), and what a job needs of it (3-lower, 4-sequence). */
export const dialectRules = {
  "dialect/file": "The dialect is a shipped one, or a file that exists.",
  "dialect/folder": "The dialect file is a file and not a folder.",
  "dialect/unreadable": "The dialect file may be read.",
  "dialect/exists":
    "A dialect file, which somebody may have written into, is not replaced unless the user says so.",
  "dialect/answers":
    "A file of answers has known questions, each with one of its answers and what that needs.",
  "dialect/sample": "The sample job of the interview can be posted with the file that it writes.",
  "dialect/case": "A case gives steps in the notation of cases, and the blocks that are expected for them.",
  "dialect/changed": "The dialect file does not change while it is read.",
  "dialect/format": "What is said about numbers and blocks fits together.",
  "dialect/size": "A dialect or set-up file is no longer than such a file can sensibly be.",
  "dialect/encoding": "A dialect or set-up file is UTF-8 text.",
  "dialect/yaml":
    "A dialect or set-up file is YAML 1.2 of plain data: no aliases, tags or second document, no key twice.",
  "dialect/schema": "A dialect or set-up file has known keys, each once, with values of the right kind.",
  "dialect/setup": "In a set-up file a tool is in one place: in one pocket, or in the spindle.",
  "dialect/extends": "The chain of `extends` ends, and is not longer than eight files.",
  "dialect/path": "A file extends a shipped dialect, or a file in its own folder or below.",
  "dialect/undeclared": "Some file of the chain states what the job needs; nothing is taken for granted.",
  "dialect/no-machine":
    "A machine is declared in full; without it the longest times are taken, and travel and speeds are not checked.",
  "dialect/unanswered":
    "A key that is listed as unanswered is told on every post; a confirmation among them is a wait or a dwell.",
  "dialect/not-a-program": "A dialect is inferred from programs: blocks of letters and numbers.",
  "dialect/not-inferred": "Some shipped dialect can be made to say what the programs say.",
  "dialect/contradiction": "The programs that a dialect is inferred from say a thing in one way.",
  "dialect/unknown-code": "Each code of the programs that a dialect is inferred from has a known meaning.",
  "dialect/inferred": "What was left out of an inferred file, or of the programs that it is inferred from.",
  "dialect/none": "What the dialect cannot say, and which jobs are refused for it (dialect check).",
  "dialect/same":
    "A line of a dialect file changes something; what is stated already can be left out (dialect check).",
  "dialect/characters": "Text that goes into programs holds only characters that the dialect allows.",
  "dialect/order": "The order of words names each address once, and every address that is in use.",
  "dialect/arc": "What is said about arcs fits together.",
  "dialect/grid":
    "Number formats are as fine as the base units allow, and coarser formats divide by finer ones.",
  "dialect/template":
    "An idiom holds literal words and {{name}} for one whole number or comment, and nothing else.",
  "dialect/idiom-meaning": "An idiom, read back, gives exactly the steps that it is for.",
  "dialect/standard-code": "A code that the standards give a meaning is not used for another one.",
  "dialect/code-twice": "One code has one meaning.",
  "dialect/expression": "An expression is arithmetic on the names and units it may use, and gives a time.",
  "dialect/confirm": "A confirmation is one of wait, dwell, intrinsic and operator.",
  "dialect/signal":
    "A wait names a signal that the machine has; two signals share an input only at different levels.",
  "dialect/wait-continues": "A wait that continues when its time is up confirms nothing.",
  "dialect/confirm-by-operator":
    "What happens while the program cannot stop is confirmed by a signal or a time.",
  "dialect/machine": "The facts of the machine fit together.",
  "dialect/rack": "The facts of the rack fit together, and lie inside the travel.",
  "dialect/retract": "The retract leads to a height that is safe with any length offset.",
} as const satisfies RuleTexts;
