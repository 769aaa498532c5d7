import * as findings from "../findings.ts";
import { strayMinor } from "../items.ts";
import type { ClRun } from "../state.ts";
import type { Item, Statement } from "../statement.ts";
import { feedUnits } from "./feed.ts";

/** Words of a cycle with the numbers that belong to them. "feed" stands for all units of a feed. */
export type CycleWord = "FEDTO" | "feed" | "CLEAR" | "RAPTO" | "RTRCTO" | "RETURN" | "DWELL" | "STEP" | "TPI";

/** What stands behind a word: its number, and the word of its unit. */
export interface CycleItem {
  /** The word itself, or the number where it has none. */
  readonly word: Item;
  readonly number: Item | undefined;
  readonly unit: string | undefined;
}

const withNumber: Readonly<Record<string, CycleWord>> = {
  FEDTO: "FEDTO",
  CLEAR: "CLEAR",
  RAPTO: "RAPTO",
  RTRCTO: "RTRCTO",
  DWELL: "DWELL",
  STEP: "STEP",
  INCR: "STEP",
  TPI: "TPI",
};

const allowed = [...Object.keys(withNumber), "RETURN", ...Object.keys(feedUnits)];

/** Sorts the items behind the kind of a cycle by their words; undefined where their order is not fixed. */
export function sortItems(run: ClRun, statement: Statement): Map<CycleWord, CycleItem> | undefined {
  const found = new Map<CycleWord, CycleItem>();
  const { items } = statement;
  const put = (word: CycleWord, item: CycleItem): void => {
    if (found.has(word)) run.report(findings.cycleTwice(item.word.offset, item.word.text));
    else found.set(word, item);
  };
  let at = 1;
  if (items[at]?.kind === "number") {
    if (run.options.cycle === "keywords") {
      run.report(findings.cyclePositional(items[at].offset));
      return undefined;
    }
    at = takePositions(statement, put);
  }
  while (at < items.length) at = takeWord(run, statement, at, put);
  return found;
}

type Put = (word: CycleWord, item: CycleItem) => void;

/** CYCLE/kind, depth, feed, unit, clearance [memory]. @returns the index behind them */
function takePositions({ items }: Statement, put: Put): number {
  const plain = (item: Item): CycleItem => ({ word: item, number: item, unit: undefined });
  let at = 1;
  put("FEDTO", plain(items[at++]));
  if (items[at]?.kind === "number") {
    const unit = items[at + 1] && Object.hasOwn(feedUnits, items[at + 1].text) ? items[at + 1] : undefined;
    put("feed", { word: items[at], number: items[at], unit: unit?.text });
    at += unit ? 2 : 1;
  }
  if (items[at]?.kind === "number") put("CLEAR", plain(items[at++]));
  return at;
}

/** A word and its number; a feed may stand before its unit. @returns the index behind them */
function takeWord(run: ClRun, statement: Statement, at: number, put: Put): number {
  const { items } = statement;
  const item = items[at];
  const next = items[at + 1] as Item | undefined;
  const isUnit = (one: Item | undefined): boolean => one !== undefined && Object.hasOwn(feedUnits, one.text);
  if (item.kind === "number" && isUnit(next)) {
    put("feed", { word: item, number: item, unit: next?.text });
    return at + 2;
  }
  if (item.text === "RETURN") {
    put("RETURN", { word: item, number: undefined, unit: undefined });
    return at + 1;
  }
  const word = isUnit(item)
    ? "feed"
    : Object.hasOwn(withNumber, item.text)
      ? withNumber[item.text]
      : undefined;
  if (word === undefined) {
    strayMinor(run, statement, item, allowed);
    return at + 1;
  }
  if (next?.kind !== "number") {
    run.report(findings.cycleNeeds(item.offset, items[0].text, `a number behind ${item.text}`));
    return at + 1;
  }
  const turns = word === "DWELL" && items[at + 2]?.text === "REV";
  put(word, { word: item, number: next, unit: turns ? "REV" : isUnit(item) ? item.text : undefined });
  return at + (turns ? 3 : 2);
}
