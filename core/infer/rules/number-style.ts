import { largestOf } from "../evidence.ts";
import type { Spoken } from "./number-classes.ts";

/** How numbers are written, as far as examples show it; undefined: they do not. */
export interface NumberStyle {
  readonly point: "always" | "when-needed" | "never" | undefined;
  readonly pointSaid: string;
  readonly trailingZeros: "keep" | "drop" | "one" | undefined;
  readonly trailingSaid: string;
  readonly leadingZero: "keep" | "drop" | undefined;
  readonly leadingSaid: string;
  readonly plus: "yes" | "no" | undefined;
  readonly plusSaid: string;
  readonly suppressed: "leading" | "trailing" | "none" | undefined;
  readonly digits: number | undefined;
  readonly suppressedSaid: string;
  /** Digits behind the point: exactly so many, or no fewer. */
  readonly decimals: { readonly least: number; readonly exact: boolean } | undefined;
  /** What is written in two ways. */
  readonly doubts: readonly string[];
}

/** From this share on the rest is taken for exceptions. */
const enough = 0.95;
/** A whole number from here on that has no point anywhere is taken for a count of least increments. */
const largeCount = 5000;

/**
 * How some numbers are written.
 *
 * @param common how lengths are written: what a few whole numbers do not show is as there
 */
export function styleOf(spoken: readonly Spoken[], common?: NumberStyle): NumberStyle {
  const texts = spoken.map(({ digits }) => digits.replace(/^[+-]/, ""));
  const pointed = texts.filter((text) => text.includes("."));
  const whole = texts.filter((text) => !text.includes("."));
  const doubts: string[] = [];
  const point = pointOf(pointed, whole, spoken, common, doubts);
  const seen = point === "never" ? undefined : (trailingOf(pointed, doubts) ?? oneDigit(pointed, common));
  // A whole number without a point beside others that have one has left its zeros out.
  const trailing = seen ?? (point === "when-needed" ? "drop" : undefined);
  const decimals = decimalsOf(pointed, whole, trailing, point, common);
  return {
    point,
    pointSaid: point === "never" ? "no point on any" : `a point on ${String(pointed.length)}`,
    trailingZeros: trailing,
    trailingSaid: `zeros at the end ${trailing === "keep" ? "kept" : "left out"} on ${String(pointed.length)}`,
    ...leadingOf(texts),
    ...plusOf(spoken),
    ...impliedOf(point, texts),
    decimals,
    doubts,
  };
}

function pointOf(
  pointed: readonly string[],
  whole: readonly string[],
  spoken: readonly Spoken[],
  common: NumberStyle | undefined,
  doubts: string[],
): NumberStyle["point"] {
  if (pointed.length > 0 && whole.length === 0) return pointed.some(isWhole) ? "always" : undefined;
  if (pointed.length === 0)
    return common === undefined || common.point === "never" ? impliedOrWhole(spoken) : undefined;
  // Whole numbers without a point beside others with ".0" or "10." are written in two ways.
  const bare = pointed.filter(isWhole);
  if (bare.length === 0) return "when-needed";
  const share = Math.max(bare.length, whole.length) / (bare.length + whole.length);
  doubts.push(
    `whole numbers have a point on ${String(bare.length)} words and none on ${String(whole.length)}`,
  );
  if (share < enough) return undefined;
  return bare.length > whole.length ? "always" : "when-needed";
}

/** "10." and "10.000" */
function isWhole(text: string): boolean {
  return /\.0*$/.test(text);
}

/** Numbers without any point: counts of least increments where they are large, or whole numbers. */
function impliedOrWhole(spoken: readonly Spoken[]): NumberStyle["point"] {
  const fixed = new Set(spoken.map(({ digits }) => digits.replace(/^[+-]/, "").length)).size === 1;
  const padded = spoken.some(({ digits }) => /^[+-]?0\d/.test(digits));
  const largest = largestOf(spoken.map(({ value }) => Math.abs(value)));
  if (spoken.length >= 8 && ((fixed && padded) || largest >= largeCount)) return "never";
  return undefined;
}

function trailingOf(pointed: readonly string[], doubts: string[]): NumberStyle["trailingZeros"] {
  if (pointed.length === 0) return undefined;
  const behind = pointed.map((text) => text.slice(text.indexOf(".") + 1));
  const lengths = new Set(behind.map(({ length }) => length));
  const ends = behind.filter((text) => text.endsWith("0") && text.length > 1);
  const bare = behind.filter((text) => text === "");
  if (lengths.size === 1 && behind[0].length > 1 && (ends.length > 0 || behind.length < 4))
    return ends.length > 0 ? "keep" : undefined;
  if (lengths.size === 1 && behind[0].length === 1) return undefined;
  if (ends.length === 0) return behind.includes("0") ? "one" : "drop";
  const [most] = [...lengths].sort((a, b) => count(behind, b) - count(behind, a));
  doubts.push(`zeros at the end are kept on ${String(ends.length)} of ${String(behind.length)} words`);
  if (count(behind, most) >= enough * behind.length && bare.length === 0) return "keep";
  return ends.length <= (1 - enough) * behind.length ? "drop" : undefined;
}

/** One digit behind each point, zeros among them, is what lengths do where they keep zeros, and where they keep one. */
function oneDigit(pointed: readonly string[], common: NumberStyle | undefined): NumberStyle["trailingZeros"] {
  const isOne = pointed.length > 0 && pointed.every((text) => /\.\d$/.test(text));
  const shows = pointed.some((text) => text.endsWith(".0"));
  return isOne && shows && common?.trailingZeros !== "drop" ? common?.trailingZeros : undefined;
}

function count(texts: readonly string[], length: number): number {
  return texts.filter((text) => text.length === length).length;
}

function decimalsOf(
  pointed: readonly string[],
  whole: readonly string[],
  trailing: NumberStyle["trailingZeros"],
  point: NumberStyle["point"],
  common: NumberStyle | undefined,
): NumberStyle["decimals"] {
  if (point === "never") return undefined;
  const least = largestOf(
    pointed.map((text) => text.length - text.indexOf(".") - 1),
    0,
  );
  // Where all numbers have a point, those of an address that never has one have no decimals.
  if (pointed.length === 0)
    return common?.point === "always" && whole.length > 0 ? { least: 0, exact: true } : undefined;
  return { least: Math.min(7, Math.max(1, least)), exact: trailing === "keep" };
}

function leadingOf(texts: readonly string[]): Pick<NumberStyle, "leadingZero" | "leadingSaid"> {
  const small = texts.filter((text) => /^0?\.\d*[1-9]/.test(text));
  const dropped = small.filter((text) => text.startsWith("."));
  const zero = dropped.length === 0 ? "keep" : dropped.length === small.length ? "drop" : undefined;
  return {
    leadingZero: small.length === 0 ? undefined : zero,
    leadingSaid: `${String(dropped.length === 0 ? small.length : dropped.length)} of ${String(small.length)} numbers below 1, such as ${small[0] ?? ""}`,
  };
}

function plusOf(spoken: readonly Spoken[]): Pick<NumberStyle, "plus" | "plusSaid"> {
  const positive = spoken.filter(({ digits, value }) => value > 0 || digits.startsWith("+"));
  const signed = positive.filter(({ digits }) => digits.startsWith("+"));
  const plus = signed.length === 0 ? "no" : signed.length === positive.length ? "yes" : undefined;
  return {
    plus: positive.length === 0 ? undefined : plus,
    plusSaid: `a plus sign on ${String(signed.length)} of ${String(positive.length)} numbers above 0`,
  };
}

/** Which zeros an implied point leaves out: none where all numbers have the same digits, the leading ones where none leads. */
function impliedOf(
  point: NumberStyle["point"],
  texts: readonly string[],
): Pick<NumberStyle, "suppressed" | "digits" | "suppressedSaid"> {
  if (point !== "never") return { suppressed: undefined, digits: undefined, suppressedSaid: "" };
  const lengths = new Set(texts.map(({ length }) => length));
  const leads = texts.filter((text) => /^0\d/.test(text)).length;
  const ends = texts.filter((text) => /[1-9]0+$/.test(text)).length;
  if (lengths.size === 1 && leads > 0)
    return { suppressed: "none", digits: texts[0].length, suppressedSaid: `all ${String(texts.length)} numbers have ${String(texts[0].length)} digits` }; // prettier-ignore
  if (leads === 0 && ends > 0)
    return { suppressed: "leading", digits: undefined, suppressedSaid: `no zero leads any of ${String(texts.length)} numbers` }; // prettier-ignore
  return { suppressed: undefined, digits: undefined, suppressedSaid: "" };
}
