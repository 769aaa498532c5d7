import type { Observed, Settled, Value } from "../evidence.ts";
import { lineOf, settle } from "../evidence.ts";
import type { Sample } from "../sample.ts";
import { unitsOf } from "../units.ts";
import type { Spoken } from "./number-classes.ts";
import { classesOf } from "./number-classes.ts";
import type { NumberStyle } from "./number-style.ts";
import { styleOf } from "./number-style.ts";

/** Keys of the number groups that depend on the units of the program. */
const byUnits: ReadonlySet<string> = new Set([
  "length",
  "arc-centre",
  "peck",
  "feed-per-minute",
  "feed-per-revolution",
]);

/** Decimals, points, zeros and signs of the numbers of each address. */
export function numbers(sample: Sample): Observed[] {
  const classes = classesOf(sample);
  const length = classes.get("length");
  if (!length) return [];
  const common = styleOf(length);
  const units = unitsOf(sample) ?? "mm";
  return [
    ...commonKeys(common, length),
    ...[...classes].flatMap(([name, spoken]) => groupKeys(name, spoken, common, units)),
  ];
}

/** What holds for all numbers: as the lengths have it. */
function commonKeys(style: NumberStyle, spoken: readonly Spoken[]): Observed[] {
  const of = `${String(spoken.length)} lengths`;
  const key = (name: string, value: Value | undefined, say: string): Settled[] =>
    value === undefined ? [] : [settle(`numbers.${name}`, value, say)];
  return [
    ...key("point", style.point, `${style.pointSaid} of ${of}`),
    ...key("trailing-zeros", style.trailingZeros, `${style.trailingSaid} of ${of}`),
    ...key("leading-zero", style.leadingZero, style.leadingSaid),
    ...key("plus", style.plus, style.plusSaid),
    ...key("suppressed-zeros", style.suppressed, style.suppressedSaid),
    ...key("digits", style.digits, style.suppressedSaid),
    ...style.doubts.map((message): Observed => ({
      kind: "contradiction",
      key: "numbers",
      message,
      lines: [],
    })),
  ];
}

/** The decimals of a group, and what it writes otherwise than the lengths do. */
function groupKeys(
  name: string,
  spoken: readonly Spoken[],
  common: NumberStyle,
  units: "mm" | "inch",
): Observed[] {
  const style = styleOf(spoken, name === "length" ? undefined : common);
  const path = `numbers.${name}`;
  const key = byUnits.has(name) ? `${path}.${units}` : path;
  return [...decimalsKey(key, style, spoken), ...(name === "length" ? [] : ownKeys(path, style, common))];
}

/** Digits behind the point: exactly where zeros are kept, from below where they are dropped. */
function decimalsKey(key: string, style: NumberStyle, spoken: readonly Spoken[]): Settled[] {
  const { decimals } = style;
  if (decimals === undefined) return [];
  const deepest = spoken.find(({ digits }) => behindPoint(digits) === decimals.least) ?? spoken[0];
  const bare = (inherited: Value | undefined): number =>
    typeof inherited === "object" && !Array.isArray(inherited) ? Number((inherited as { decimals?: Value }).decimals) : Number(inherited); // prettier-ignore
  const holds = (inherited: Value | undefined): boolean =>
    decimals.exact ? bare(inherited) === decimals.least : bare(inherited) >= decimals.least;
  const says = `${String(decimals.least)} digits behind the point, e.g. ${deepest.letter}${deepest.digits} on ${lineOf(deepest.line)}`;
  const evidence = decimals.exact
    ? says
    : `at most ${says}; zeros at the end are left out, so that there may be more`;
  return [settle(key, decimals.least, evidence, { holds, ...(decimals.exact ? {} : { limit: true }) })];
}

function behindPoint(digits: string): number {
  const at = digits.indexOf(".");
  return at < 0 ? 0 : digits.length - at - 1;
}

/** Keys of a group whose numbers are written otherwise than lengths. */
function ownKeys(path: string, style: NumberStyle, common: NumberStyle): Settled[] {
  if (style.decimals?.exact && style.decimals.least === 0) return [];
  const entries = [
    ["point", style.point, common.point, style.pointSaid],
    ["trailing-zeros", style.trailingZeros, common.trailingZeros, style.trailingSaid],
    ["leading-zero", style.leadingZero, common.leadingZero, style.leadingSaid],
    // Feeds, speeds and times have no direction, and never a sign.
    ...(path === "numbers.arc-centre" || path === "numbers.peck" ? [["plus", style.plus, common.plus, style.plusSaid] as const] : []), // prettier-ignore
  ] as const;
  return entries.flatMap(([name, own, other, said]) =>
    own === undefined || own === other
      ? []
      : [settle(`${path}.${name}`, own, `${said} of these numbers, otherwise than lengths`)],
  );
}
