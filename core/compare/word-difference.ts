/** How two words differ that say the same step, and which keys decide about that. */
import type { Item } from "./item.ts";
import type { Causes } from "./keys.ts";
import { allStyles, numberForm, numberOf } from "./number-form.ts";
import type { RoleWord } from "./words.ts";

type Difference = Pick<Item, "aspect" | "keys">;

/** Keys that choose in which unit or from where a number counts. */
const scales = [
  "dwell.unit",
  "cycles.words.dwell-unit",
  "wait.timeout-unit",
  "distance.programs-in",
  "cycles.levels",
  "arc.form",
  "arc.feed-along",
  "spindle.speed-unit",
  "feed.inverse-time-unit",
  "units.programs-in",
];

/** Of which words a scale is: the key that the emitter names for them. */
const scaled: Readonly<Record<string, readonly string[]>> = {
  "numbers.dwell": ["dwell.unit"],
  "numbers.cycle-dwell": ["cycles.words.dwell-unit"],
  "numbers.timeout": ["wait.timeout-unit"],
  "numbers.speed": ["spindle.speed-unit"],
  "numbers.arc-centre": ["arc.form"],
};

/**
 * The difference of two words of one role.
 *
 * @param isOther whether their step has other values, for which the number differs
 * @returns undefined where only the value of the step differs, or nothing
 */
export function wordDifference(
  { word: one, role }: RoleWord,
  { word: other }: RoleWord,
  isOther: boolean,
  causes: Causes,
): Difference | undefined {
  const keys = [...new Set([...one.keys, ...other.keys])];
  const [a, b] = [numberOf(one.text), numberOf(other.text)];
  if (a === undefined || b === undefined)
    return isOther ? undefined : { aspect: "other text", keys: causes.among(keys) };
  if (/^[GMTHD]$/.test(a.letter) && a.letter === b.letter) return codeDifference(a, b, keys, isOther, causes);
  const address = a.letter === b.letter ? [] : causes.among(keys.filter((key) => role.endsWith(key)));
  const grids = keys.filter((key) => key.startsWith("numbers."));
  const ways = a.letter === b.letter ? [] : ["letter"];
  if (a.value === b.value) {
    const form = numberForm(a, b, grids);
    return named([...ways, ...form.ways], [...address, ...causes.among(form.keys)]);
  }
  if (isOther) return named(ways, address);
  const own = scales.filter((key) => grids.some((grid) => scaled[grid]?.includes(key)) || keys.includes(key));
  const scale = causes.among(own.length > 0 ? own : scales);
  return named(
    [...ways, "scale of the number"],
    [...address, ...scale, ...causes.among([...allStyles, ...grids])],
  );
}

function named(ways: readonly string[], keys: readonly string[]): Difference | undefined {
  return ways.length === 0 ? undefined : { aspect: ways.join(", "), keys: [...new Set(keys)] };
}

function codeDifference(
  a: { readonly letter: string; readonly value: number },
  b: { readonly value: number },
  keys: readonly string[],
  isOther: boolean,
  causes: Causes,
): Difference | undefined {
  if (a.value === b.value)
    return { aspect: "digits of codes", keys: causes.among([`numbers.code-width.${a.letter}`]) };
  return isOther ? undefined : { aspect: "other code", keys: causes.among(keys) };
}
