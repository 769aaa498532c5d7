import type { FeedMode } from "#base";
import { milliPerRpm, roundToGrid } from "#base";
import { asFastAsRapid, roundsToNothing } from "./findings.ts";
import type { Lowering } from "./state.ts";
import { need, tellOnce } from "./state.ts";

/**
 * The feed mode in which an operation is written: its own, or per minute where the dialect has no feed per revolution
 * (the feed is then multiplied by the speed).
 */
export function writtenFeedMode(own: FeedMode, words: Readonly<Record<string, boolean>>): FeedMode {
  return own === "per-revolution" && words["feed.per-revolution"] !== true ? "per-minute" : own;
}

/** The least increment of the feed word in the mode that is written. */
function feedGrid(state: Lowering, source: number): number {
  const { capabilities, units, feedMode } = state;
  // A mode without a word is refused as such at the start of its operation; its grid is then nobody's business.
  if (feedMode !== "per-minute" && capabilities.words[`feed.${feedMode}`] === false) return 1;
  const key = (path: string, example: string) => ({
    path,
    why: "to write its feeds",
    example,
    offset: source,
  });
  switch (feedMode) {
    case "per-minute":
      return need(
        state,
        capabilities.feedPerMinuteGrid?.[units],
        key(
          "numbers.feed-per-minute",
          "numbers: { feed-per-minute: { mm: ?, inch: ? } } # digits behind the point",
        ),
        1,
      );
    case "per-revolution":
      return need(
        state,
        capabilities.feedPerRevolutionGrid?.[units],
        key(
          "numbers.feed-per-revolution",
          "numbers: { feed-per-revolution: { mm: ?, inch: ? } } # digits behind the point",
        ),
        1,
      );
    case "inverse-time":
      return need(
        state,
        capabilities.inverseTimeGrid,
        key("numbers.inverse-time", "numbers: { inverse-time: ? } # digits behind the point"),
        1,
      );
  }
}

/** A feed of the job in the mode that is written, not rounded: 0.1 mm a revolution at 500 rpm -> 50 mm a minute. */
export function inWrittenMode(state: Lowering, raw: number): number {
  const perRevolution = state.operation.feedMode === "per-revolution";
  return perRevolution && state.feedMode === "per-minute" ? (raw * state.rpm) / milliPerRpm : raw;
}

/** Where a line at one feed is a rapid, no feed of the job may be as fast. */
function checkRapidFeed(state: Lowering, feed: number, source: number): void {
  const { capabilities, feedMode, units } = state;
  const { rapidFeed } = capabilities;
  if (rapidFeed === null || rapidFeed === undefined) return;
  if (feedMode === "per-minute" ? feed >= rapidFeed[units] : true)
    tellOnce(state, "motion.rapid-feed", () => {
      state.report(asFastAsRapid(source));
    });
}

/** Rounds a feed (already in the written mode) onto the grid of the feed word; a feed that would become 0 is refused. */
export function roundFeed(state: Lowering, feed: number, source: number): number {
  const grid = feedGrid(state, source);
  const written = roundToGrid(feed, grid);
  checkRapidFeed(state, written, source);
  if (written > 0) return written;
  state.report(roundsToNothing("this feed", "numbers.feed-per-minute", source));
  return grid;
}

/** The feed word for a feed of the job; remembers the last one, since runs of one feed are the rule. */
export function lowerFeed(state: Lowering, raw: number, source: number): number {
  if (raw !== state.rawFeed) {
    state.rawFeed = raw;
    state.feed = roundFeed(state, inWrittenMode(state, raw), source);
  }
  return state.feed;
}

/** Forgets the last feed; needed where the speed or the operation changes. */
export function forgetFeed(state: Lowering): void {
  state.rawFeed = -1;
}
