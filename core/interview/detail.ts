import type { Detail, DetailForm } from "./question.ts";

/** How each form of detail looks. */
const forms = {
  time: {
    pattern: /^\d{1,6}(\.\d{1,6})? ?(s|ms|min)$/,
    words: "a time with its unit, such as 20 s or 500 ms",
  },
  "whole-number": { pattern: /^\d{1,4}$/, words: "a whole number, such as 4" },
  text: { pattern: /\S/, words: "a text" },
} as const satisfies Record<DetailForm, { readonly pattern: RegExp; readonly words: string }>;

/** What is wrong with what was said to a detail; undefined: nothing. "it can be a time with its unit, ..." */
export function whatIsWrong({ form }: Detail, said: string): string | undefined {
  const { pattern, words } = forms[form];
  return pattern.test(said.trim()) ? undefined : `it can be ${words}`;
}
