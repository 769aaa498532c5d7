import type { Finding } from "#base";
import { listed } from "../../findings.ts";
import { error, note, milder } from "./finding.ts";

/* Lines and statements. */

export const emptySource = (): Finding =>
  error("job/cl-end", 0, "The source is empty.", "Give cutter location source that ends with FINI.");

export const lineTooLong = (offset: number): Finding =>
  error("job/limit", offset, "This line is longer than 64 kB.", "Give cutter location source as text.");

export const textNotUtf8 = (offset: number): Finding =>
  error("job/encoding", offset, "The text of this statement is not UTF-8.", "Save the source as UTF-8.");

export const binaryData = (offset: number): Finding =>
  error("job/encoding", offset, "This is binary data and no text.", "Give cutter location source as text.");

const syntax = (offset: number, message: string, fix: string): Finding =>
  error("job/cl-syntax", offset, message, fix);

export const strayCharacter = (offset: number, character: string): Finding => {
  const named = /[=()]/.test(character)
    ? ": names and nesting belong to part programs, and are gone from cutter location source"
    : "";
  const code = character.charCodeAt(0);
  const shown = code > 32 && code < 127 ? `\`${character}\`` : `The byte ${code.toString(16)} (hexadecimal)`;
  return syntax(offset, `${shown} does not belong here${named}.`, "Write WORD/item, item, ...");
};

export const beginsWithNumber = (offset: number): Finding =>
  syntax(offset, "A statement begins with a word, and not with a number.", "Write WORD/item, item, ...");

export const noComma = (offset: number, mark: string): Finding =>
  syntax(offset, `\`${mark}\` is missing before this item.`, `Put \`${mark}\` before it.`);

export const endsOpen = (offset: number): Finding =>
  syntax(offset, "The statement ends where an item was expected.", "Finish it, or continue it with `$`.");

export const continuedToNothing = (offset: number): Finding =>
  syntax(offset, "`$` continues the statement, but nothing follows.", "Finish the statement.");

export const tooManyOperations = (offset: number): Finding =>
  error("job/limit", offset, "The source has more than 10,000 operations.", "Make several sources of it.");

export const tooManyItems = (offset: number): Finding =>
  error("job/limit", offset, "The statement has more than 600 items.", "Make several statements of it.");

export const columnsUnclear = (offset: number): Finding =>
  error(
    "job/cl-columns",
    offset,
    "Columns 73 to 80 of this line may be a sequence field or a part of the statement.",
    "State which: `--cl columns=72` for a sequence field, `--cl columns=free` for lines of any length.",
  );

export const columnsTaken = (offset: number): Finding =>
  note(
    "job/cl-columns",
    offset,
    "Columns 73 to 80 are taken for a sequence field, and left out.",
    "If they belong to the statements: `--cl columns=free`.",
  );

export const literalDollar = (offset: number): Finding =>
  note(
    "job/cl-literal",
    offset,
    "The `$` at the end of this text is a part of the text.",
    "If it continues the text on the next line: `--cl literal=continued`.",
  );

/* Words and items. */

export const unknownWord = (offset: number, word: string, meant: string | undefined): Finding =>
  error(
    "job/cl-word",
    offset,
    `The word ${word} is not known${meant === undefined ? "." : `; did you mean ${meant}?`}`,
    meant === undefined
      ? "Leave it out; `--cl unknown=warn` goes over unknown words with a warning."
      : `Write ${meant}.`,
  );

export const rawCode = (offset: number, word: string): Finding =>
  error(
    "job/cl-word",
    offset,
    `${word} puts code of one controller into the program, which nothing here could check.`,
    "Say it in neutral words, or in the dialect file; `--cl unknown=warn` leaves it out with a warning.",
  );

export const skipped = (found: Finding): Finding => ({
  ...milder("warning", found),
  message: `${found.message} It is left out.`,
});

export const withoutCounterpart = (offset: number, what: string, fix: string): Finding =>
  error("job/cl-unsupported", offset, `${what} has no counterpart in a job.`, fix);

export const noEffect = (words: readonly string[]): Finding =>
  note(
    "job/cl-word",
    0,
    `These words of the source have no effect on the program: ${words.join(", ")}.`,
    "Nothing need be done.",
  );

export const wrongItems = (offset: number, word: string, form: string): Finding =>
  error("job/cl-item", offset, `${word} is not of a form that is known.`, `Write ${form}.`);

export const wrongItem = (offset: number, word: string, allowed: readonly string[]): Finding =>
  error("job/cl-item", offset, `${word} takes ${listed(allowed)} here.`, `Write ${listed(allowed)}.`);

export const notNumber = (offset: number, text: string): Finding =>
  error(
    "job/cl-number",
    offset,
    `\`${text.slice(0, 40)}\` is not a number of the source's form.`,
    "Write digits with at most one decimal point; an exponent needs the point (1.0E2).",
  );

export const numberTooLarge = (offset: number, most: string): Finding =>
  error("job/range", offset, `The number is larger than ${most}.`, "Correct the number.");

export const outOfRange = (offset: number, what: string, range: string): Finding =>
  error("job/range", offset, `${what} must be ${range}.`, `Write a number that is ${range}.`);
