/**
 * The known word that an unknown one was probably meant to be: the nearest by edits (insert, drop, change, swap of
 * neighbours), if it is near enough. "fed" among feed, turn -> feed; "speed" among feed, turn -> undefined.
 */
export function nearest(word: string, known: Iterable<string>): string | undefined {
  // A long text is no slip of the pen, and its distances would cost time.
  if (word.length > 40) return undefined;
  const lower = word.toLowerCase();
  const near = [...known]
    .map((candidate) => ({ candidate, distance: edits(lower, candidate.toLowerCase()) }))
    .filter(({ candidate, distance }) => distance <= Math.max(1, Math.floor(candidate.length / 3)))
    .filter(({ candidate, distance }) => distance < candidate.length)
    .sort((first, second) => first.distance - second.distance);
  return near[0]?.candidate;
}

/** A swap counts a little less than a change, so that "xz" means zx rather than xy. */
const swap = 0.9;

/** Edits between two words: insertions, deletions, changes and swaps of neighbours. */
function edits(first: string, second: string): number {
  let before: number[] = [];
  let last = Array.from({ length: second.length + 1 }, (_, column) => column);
  for (let row = 1; row <= first.length; row++) {
    const current = [row];
    for (let column = 1; column <= second.length; column++) {
      const same = first[row - 1] === second[column - 1];
      const swapped = first[row - 1] === second[column - 2] && first[row - 2] === second[column - 1];
      const changed = last[column - 1] + (same ? 0 : 1);
      const best = Math.min(changed, last[column] + 1, current[column - 1] + 1);
      current.push(swapped ? Math.min(best, before[column - 2] + swap) : best);
    }
    before = last;
    last = current;
  }
  return last[second.length];
}
