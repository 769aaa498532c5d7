import type { Observed } from "../evidence.ts";
import { counted, settle, vote } from "../evidence.ts";
import type { Sample } from "../sample.ts";
import { withG } from "../sample.ts";

/** Letters of a dwell's time. */
const letters = ["P", "X", "U", "F", "S"];

/** Longest dwell in seconds, and shortest in milliseconds, that leaves no doubt of its unit. */
const surely = { seconds: 60, milliseconds: 100 } as const;

/** The word and the unit of a dwell. The unit is settled only where its numbers can be nothing else. */
export function dwell(sample: Sample): Observed[] {
  const dwells = withG(sample, 40).flatMap(({ line, words }) => {
    const letter = letters.find((one) => words.has(one));
    return letter === undefined ? [] : [{ line, letter, word: words.get(letter)! }];
  });
  const ballots = dwells.map(({ line, letter }) => ({ value: letter, line }));
  const found = vote("dwell.word", ballots, "dwells");
  if (dwells.length === 0) return found;
  const broken = dwells.filter(({ word }) => word.digits.includes(".") && word.value % 1 !== 0);
  const large = dwells.filter(({ word }) => word.value >= surely.milliseconds && !word.digits.includes("."));
  const small = dwells.every(({ word }) => word.value <= surely.seconds);
  if (broken.length > 0 && small)
    return [
      ...found,
      settle("dwell.unit", "s", counted(broken, dwells.length, "dwells have a part behind the point")),
    ];
  if (large.length > 0 && broken.length === 0 && dwells.every(({ word }) => word.value >= surely.milliseconds || word.value === 0))
    return [...found, settle("dwell.unit", "ms", `${counted(large, dwells.length, "dwells are whole and 100 or more")}; in seconds they would be minutes`, { only: (base) => base("dwell.unit") !== "rev" })]; // prettier-ignore
  return found;
}
