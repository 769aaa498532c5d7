import type { Code, Format } from "#dialect";

/** Whether the dialect has a word: it is neither `none` nor undeclared. */
export function hasWord(code: Code | null | undefined): code is Code {
  return code !== null && code !== undefined;
}

/** A code as a word, with the least digits of its letter: G 10 -> "G1" or "G01", G 591 -> "G59.1". */
export function codeText(format: Format, code: Code): string {
  const tenths = code.value % 10;
  const whole = String((code.value - tenths) / 10).padStart(format.numbers.width[code.letter], "0");
  return `${code.letter}${whole}${tenths === 0 ? "" : `.${tenths}`}`;
}
