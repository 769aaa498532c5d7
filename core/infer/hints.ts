import type { Sample } from "./sample.ts";
import type { Block } from "./walk.ts";

/** Blocks behind a start or a stop in which a wait for it can stand. */
const near = 3;

/**
 * What stands behind starts and stops of the spindle and could be how they are confirmed, in words for the question. It settles
 * nothing: whether a time is long enough, or an input is the right one, no program shows.
 *
 *     confirm.at-speed -> "The programs have G04 P300, M94 P4 R1 Q10.0 behind 14 of 14 starts."
 */
export function hintsOf(sample: Sample): ReadonlyMap<string, string> {
  const pairs = [
    ["confirm.at-speed", [30, 40], "starts"],
    ["confirm.stopped", [50], "stops"],
  ] as const;
  return new Map(
    pairs.flatMap(([key, codes, what]) => {
      const hint = hintOf(sample, codes, what);
      return hint === undefined ? [] : [[key, hint] as const];
    }),
  );
}

function hintOf({ byProgram }: Sample, codes: readonly number[], what: string): string | undefined {
  const counts = new Map<string, number>();
  let total = 0;
  for (const blocks of byProgram)
    blocks.forEach(({ m }, index) => {
      if (!m.some((code) => codes.includes(code))) return;
      total++;
      const waits = blocks.slice(index + 1, index + 1 + near).filter(isWait);
      const text = waits.map(textOf).join(", ");
      if (text !== "") counts.set(text, (counts.get(text) ?? 0) + 1);
    });
  const [most] = [...counts].sort(([, a], [, b]) => b - a);
  if (total === 0) return undefined;
  if ((most as typeof most | undefined) === undefined)
    return `The programs have no dwell and no wait behind ${String(total)} ${what}.`;
  return `The programs have ${most[0]} behind ${String(most[1])} of ${String(total)} ${what}.`;
}

/** A dwell, or a code of the builder with a number of its own. */
function isWait({ g, m, words }: Block): boolean {
  return g.includes(40) || (m.some((code) => code > 100 && code !== 300) && words.has("P"));
}

/** The words of a block as written. */
function textOf({ line }: Block): string {
  return line.words.map(({ letter, digits }) => letter + digits).join(" ");
}
