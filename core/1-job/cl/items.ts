import { largestLength } from "#base";
import type { Scale } from "../scan/number.ts";
import { scales, toBaseUnits } from "../scan/number.ts";
import * as findings from "./findings.ts";
import { plainDigits } from "./number.ts";
import type { ClRun } from "./state.ts";
import type { Item, Statement } from "./statement.ts";

/** Numbers and words of a statement: each gives undefined where there is none, which is reported. */

/** Says something once a source. */
export function tellOnce(run: ClRun, key: string, finding: ReturnType<typeof findings.circleNote>): void {
  if (run.told.has(key)) return;
  run.told.add(key);
  run.report(finding);
}

/** A number in base units, exactly. */
export function quantity(run: ClRun, item: Item, scale: Scale): number | undefined {
  const digits = item.kind === "number" ? plainDigits(item.text) : undefined;
  if (digits === undefined) {
    run.report(findings.notNumber(item.offset, item.text));
    return undefined;
  }
  const value = toBaseUnits(digits, scale);
  if (value === undefined) run.report(findings.numberTooLarge(item.offset, scale.most));
  return value;
}

/** The same, above 0. */
export function above0(run: ClRun, item: Item, scale: Scale, what: string): number | undefined {
  const value = quantity(run, item, scale);
  if (value === undefined || value > 0) return value;
  run.report(findings.outOfRange(item.offset, what, "above 0"));
  return undefined;
}

/** The unit of lengths; one that is not known is asked for once. */
export function lengthScale(run: ClRun, offset: number): Scale | undefined {
  const { scale } = run.state;
  if (scale === undefined) tellOnce(run, "units", findings.unitsUnknown(offset));
  return scale;
}

/** A length in atoms. */
export function length(run: ClRun, item: Item): number | undefined {
  const scale = lengthScale(run, item.offset);
  return scale && quantity(run, item, scale);
}

/** A length above 0 in atoms. */
export function lengthAbove0(run: ClRun, item: Item, what: string): number | undefined {
  const scale = lengthScale(run, item.offset);
  return scale && above0(run, item, scale, what);
}

/** Lengths of several items; undefined if one of them is none. */
export function lengths(run: ClRun, items: readonly Item[]): number[] | undefined {
  const values = items.map((item) => length(run, item));
  return values.every((value) => value !== undefined) ? values : undefined;
}

/** Reports a place or height that came out larger than lengths may be, once a source. @returns whether all are within */
export function withinLengths(run: ClRun, offset: number, ...values: readonly number[]): boolean {
  const isWithin = values.every((value) => Math.abs(value) <= largestLength);
  if (!isWithin) tellOnce(run, "length", findings.numberTooLarge(offset, scales.mm.most));
  return isWithin;
}

const mostNumber = 99_999_999;

/** A whole number from 1 on, such as that of a tool; "3." is one, too. */
export function wholeNumber(run: ClRun, item: Item, what: string): number | undefined {
  const value = quantity(run, item, scales.revolution);
  if (value === undefined) return undefined;
  const number = value / 1_000_000;
  if (Number.isInteger(number) && number >= 1 && number <= mostNumber) return number;
  run.report(findings.outOfRange(item.offset, what, `a whole number from 1 to ${mostNumber}`));
  return undefined;
}

/** A number without unit, for directions. */
export function plainNumber(run: ClRun, item: Item): number | undefined {
  const digits = item.kind === "number" ? plainDigits(item.text) : undefined;
  const value = digits === undefined ? NaN : Number(digits);
  if (Number.isFinite(value)) return value;
  run.report(findings.notNumber(item.offset, item.text));
  return undefined;
}

/** A minor word that is none of those allowed: an error, or a warning if the user wants unknown words gone over. */
export function strayMinor(run: ClRun, { word }: Statement, item: Item, allowed: readonly string[]): void {
  const found = findings.wrongItem(item.offset, word, allowed);
  const isWord = item.kind === "word";
  run.report(isWord && run.options.unknown === "warn" ? findings.skipped(found) : found);
}

/** Whether all items are numbers. */
export function onlyNumbers({ items }: Statement): boolean {
  return items.every(({ kind }) => kind === "number");
}
