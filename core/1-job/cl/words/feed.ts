import * as findings from "../findings.ts";
import { above0, lengthScale, strayMinor, tellOnce } from "../items.ts";
import { scales } from "../../scan/number.ts";
import type { Scale } from "../../scan/number.ts";
import type { ClRun, Feed, FeedPer } from "../state.ts";
import type { Item, Statement } from "../statement.ts";

/** What a word says of a feed: what it counts, and its unit where that is not the source's. */
interface FeedUnit {
  readonly per: FeedPer;
  readonly scale: Scale | undefined;
}

/** Units of feeds. PERMIN and PERREV are in the unit of the source [memory]. */
export const feedUnits: Readonly<Record<string, FeedUnit>> = {
  MMPM: { per: "minute", scale: scales.mm },
  IPM: { per: "minute", scale: scales.inch },
  PERMIN: { per: "minute", scale: undefined },
  MMPR: { per: "revolution", scale: scales.mm },
  IPR: { per: "revolution", scale: scales.inch },
  PERREV: { per: "revolution", scale: undefined },
  INVERS: { per: "inverse", scale: scales.perMinute },
};

/** A feed with its unit, in either order; undefined is reported. */
export function readFeed(run: ClRun, item: Item, unit: FeedUnit | undefined): Feed | undefined {
  const per = unit?.per ?? usualPer(run, item.offset);
  const scale = unit?.scale ?? (per === "inverse" ? scales.perMinute : lengthScale(run, item.offset));
  const value = scale && above0(run, item, scale, "The feed");
  return value === undefined ? undefined : { value, per };
}

/**
 * What a feed counts that does not say it: what the user says, per minute by default. The unit of the feed before does not
 * hold on: 300 a minute taken for 300 a revolution would be far too fast, and the other way round it is only slow.
 */
function usualPer(run: ClRun, offset: number): FeedPer {
  const per = run.options.feed === "per-minute" ? "minute" : "revolution";
  if (run.state.per !== per) tellOnce(run, "feed", findings.feedTaken(offset, per));
  return per;
}

/** A feed that holds from here on, and ends RAPID. @returns whether it is without fault */
export function setFeed(run: ClRun, item: Item, unit: FeedUnit | undefined): boolean {
  const { state } = run;
  const feed = readFeed(run, item, unit);
  state.rapid = false;
  state.afterRapid = false;
  if (feed === undefined) return false;
  state.feed = feed;
  if (unit !== undefined) state.per = unit.per;
  return true;
}

/** FEDRAT/f[,unit] or FEDRAT/unit,f. */
export function fedrat(run: ClRun, statement: Statement): void {
  const numbers = statement.items.filter(({ kind }) => kind === "number");
  const words = statement.items.filter(({ kind }) => kind === "word");
  const units = words.filter(({ text }) => Object.hasOwn(feedUnits, text));
  for (const word of words)
    if (!units.includes(word)) strayMinor(run, statement, word, Object.keys(feedUnits));
  if (numbers.length === 1 && units.length <= 1)
    setFeed(run, numbers[0], units.length === 0 ? undefined : feedUnits[units[0].text]);
  else run.report(findings.wrongItems(statement.offset, "FEDRAT", "FEDRAT/f, MMPM or FEDRAT/MMPM, f"));
}

/** RAPID: the next motion, or all until FEDRAT, at rapid. */
export function rapid(run: ClRun, { offset, items }: Statement): void {
  if (items.length > 0) run.report(findings.wrongItems(offset, "RAPID", "RAPID"));
  if (run.state.circle) run.report(findings.circleWithoutEnd(offset, "RAPID"));
  run.state.circle = undefined;
  run.state.rapid = true;
  run.state.afterRapid = false;
}
