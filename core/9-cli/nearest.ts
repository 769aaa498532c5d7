/** The known word that a mistyped one was probably meant to be: `dialct` -> `dialect`. Undefined: none is near. */
export function nearest(word: string, known: readonly string[]): string | undefined {
  const scored = known.map((candidate) => ({ candidate, edits: distance(word.toLowerCase(), candidate) }));
  const near = scored.filter(
    ({ candidate, edits }) => edits <= Math.max(1, Math.floor(candidate.length / 3)),
  );
  return near.sort((a, b) => a.edits - b.edits)[0]?.candidate;
}

/** Insertions, deletions, changes and swaps of neighbours that make one word of another. */
function distance(from: string, to: string): number {
  const rows = [Array.from({ length: to.length + 1 }, (_, column) => column)];
  for (let row = 1; row <= from.length; row++) {
    rows[row] = [row];
    for (let column = 1; column <= to.length; column++) {
      const changed = rows[row - 1][column - 1] + (from[row - 1] === to[column - 1] ? 0 : 1);
      const best = Math.min(changed, rows[row - 1][column] + 1, rows[row][column - 1] + 1);
      const swaps = row > 1 && from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1];
      rows[row][column] = swaps ? Math.min(best, rows[row - 2][column - 2] + 1) : best;
    }
  }
  return rows[from.length][to.length];
}
