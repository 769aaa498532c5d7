/** Findings about the order of blocks: one function a rule; `offset` is the byte of the line. */
import type { Finding } from "#base";
import { unclear } from "../findings-meaning.ts";

/** O words that do not make a structure: one that is not ended, that ends nothing, that has a label twice. */
export function badStructure(offset: number, message: string, fix: string): Finding {
  return unclear("read/structure", offset, message, fix);
}

/** A call of what is not in the file. */
export function unknownSubprogram(offset: number, label: string): Finding {
  return unclear(
    "read/unknown-subprogram",
    offset,
    `The file has no subprogram ${label}.`,
    "Put the subprogram into this file, and call it by the label that it has.",
  );
}

/** A program that goes on and on. */
export function tooManySteps(offset: number, what: string): Finding {
  return unclear(
    "read/step-limit",
    offset,
    `The program is not at its end after ${what}.`,
    "See to it that its loops end; a longer program is not read.",
  );
}

/** A condition whose value is not known. */
export function unknownCondition(offset: number): Finding {
  return unclear(
    "read/branch",
    offset,
    "Which block is next depends on a value that is not known here.",
    "Let it depend on what the program itself has set.",
  );
}

/** A program that branches, where its text is there once only. */
export function noWayBack(offset: number): Finding {
  return unclear(
    "read/branch",
    offset,
    "The program branches, and its text cannot be gone back in here.",
    "Read it from a file.",
  );
}
