import { nearest } from "#base";

/** " Did you mean `x`?", or nothing. */
export function didYouMean(word: string, known: Iterable<string>): string {
  const found = nearest(word, known);
  return found === undefined ? "" : ` Did you mean \`${found}\`?`;
}
