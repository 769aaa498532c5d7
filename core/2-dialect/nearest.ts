/**
 * The known word that a mistyped one most likely stands for: `retact` -> `retract`. A slip of one letter in three or so
 * is taken for a slip; beyond that nothing is suggested.
 */
export function nearest(word: string, known: Iterable<string>): string | undefined {
  let best: string | undefined;
  let least = Math.floor(word.length / 3) + 1.5;
  for (const candidate of known) {
    const edits = distance(word.toLowerCase(), candidate.toLowerCase(), least);
    if (edits < least) [best, least] = [candidate, edits];
  }
  return best;
}

/** " Did you mean `x`?", or nothing. */
export function didYouMean(word: string, known: Iterable<string>): string {
  const found = nearest(word, known);
  return found === undefined ? "" : ` Did you mean \`${found}\`?`;
}

/** Insertions, deletions, replacements and swaps of neighbours between two words; `limit` or more is cut short. */
function distance(from: string, to: string, limit: number): number {
  if (Math.abs(from.length - to.length) >= limit) return limit;
  let before: number[] = [];
  let last = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (let i = 1; i <= from.length; i++) {
    const row = [i];
    for (let j = 1; j <= to.length; j++) {
      const same = from[i - 1] === to[j - 1];
      row[j] = Math.min(last[j] + 1, row[j - 1] + 1, last[j - 1] + (same ? 0 : 1));
      const swapped = i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1];
      if (swapped) row[j] = Math.min(row[j], before[j - 2] + 1);
    }
    [before, last] = [last, row];
  }
  return last[to.length];
}
