import type { IdiomPart, IdiomValue } from "./dialect.ts";

/** A word of an idiom: its letter, and a fixed number or the value that the number is. */
export interface IdiomWord {
  readonly letter: string;
  readonly number: { readonly literal: string } | { readonly value: IdiomValue };
}

/** What the parts of a template say as words, or why they are refused. */
export type WordsResult = { readonly words: readonly IdiomWord[] } | { readonly problem: string };

/** A literal run of words, the last of which may be a letter that waits for its value. */
const literalWords = /^(?:[A-Z][-+]?(?:\d+(?:\.\d*)?|\.\d+))*[A-Z]?$/;
const oneWord = /([A-Z])([-+]?(?:\d+(?:\.\d*)?|\.\d+))?/g;

/**
 * Splits parts into words: `M94 P` `{{signal}}` -> M94, P = signal. A value is the whole number of a word; blanks between
 * words have no meaning.
 */
export function toWords(parts: readonly IdiomPart[]): WordsResult {
  const words: IdiomWord[] = [];
  let waiting: string | undefined;
  for (const part of parts) {
    if ("value" in part) {
      if (waiting === undefined)
        return {
          problem: `{{${part.value}}} must be the whole number of a word, such as P{{${part.value}}}`,
        };
      words.push({ letter: waiting, number: part });
      waiting = undefined;
      continue;
    }
    const found = readLiteral(part.literal, waiting);
    if ("problem" in found) return found;
    words.push(...found.words);
    waiting = found.waiting;
  }
  return waiting === undefined ? { words } : { problem: `the word ${waiting} has no number` };
}

function readLiteral(
  literal: string,
  waiting: string | undefined,
): { words: IdiomWord[]; waiting: string | undefined } | { problem: string } {
  if (waiting !== undefined) return { problem: `the word ${waiting} has no number` };
  const words: IdiomWord[] = [];
  const runs = literal.split(/ +/);
  let open: string | undefined;
  for (const [index, run] of runs.entries()) {
    if (!literalWords.test(run)) return { problem: `\`${run}\` is not made of words such as M21 or P4` };
    // A digit directly behind a value would be read as a part of its number.
    for (const [, letter, digits] of run.matchAll(oneWord)) {
      if (open !== undefined) return { problem: `the word ${open} has no number` };
      if (digits === undefined) open = letter;
      else words.push({ letter: letter, number: { literal: digits } });
    }
    if (open !== undefined && index < runs.length - 1) return { problem: `the word ${open} has no number` };
  }
  return { words, waiting: open };
}
