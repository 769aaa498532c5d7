import type { RuleTexts } from "./rule-texts.ts";

/** The comparison (7-prove), and the program as a file (9-cli). */
export const programRules = {
  "proof/differs": "What is read in the program is what the job means, step by step and field by field.",
  "proof/missing-step": "The program leaves out nothing that the job asks for.",
  "proof/extra-step": "The program does nothing that the job does not ask for.",
  "proof/case": "What a dialect writes for the steps of a case is read back as these steps (dialect test).",
  "program/not-found": "The program file exists.",
  "program/folder": "The program file is a file and not a folder.",
  "program/unreadable": "The program file may be read.",
  "program/changed": "The program file does not change while it is read.",
  "program/not-writable": "The program, or the module, can be written where it is to go.",
  "program/disk-full": "There is room for the program or the module.",
  "program/overwrites-input":
    "A program or a module does not replace the job, the set-up or the dialect that it is made from.",
  "program/not-generated": "A module replaces generated modules only, unless the user says --force.",
  "program/no-types":
    "The types of a module go into a file beside it; standard output has no place for them.",
  "program/not-as-proved": "The bytes on the disk are those that were proved.",
} as const satisfies RuleTexts;
