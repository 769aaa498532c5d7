import { axisBit, frame, inverseTimeUnit, linearAxes, milliPerRpm, rotaryAxes } from "#base";
import { findings } from "./findings.ts";
import type { Position } from "./state.ts";
import { tell } from "./watch.ts";
import type { Watch } from "./watch.ts";
import { feedText } from "./words.ts";

/** A feed that is worked out from another unit is rounded, so that 0.1 % over a limit is none (common practice, no source). */
const workedOutShare = 1.001;

/** Length of a straight row in X, Y and Z, atoms. */
export function lineLength(watch: Watch, from: Position): number {
  const { at } = watch.row;
  const dx = at[0] - from.at[0];
  const dy = at[1] - from.at[1];
  const dz = at[2] - from.at[2];
  return Math.sqrt(dx * dx + dy * dy + dz * dz);
}

/**
 * Least and most feed of rows that need no closer look, in the unit of the feed mode in force.
 *
 * @returns an empty range where each row has to be worked out by itself (inverse time under a limit)
 */
export function feedWindow(watch: Watch): { low: number; high: number } {
  const { modes, spindle, swap } = watch.state;
  const { least, most } = watch.facts.feed;
  const high = Math.min(most, swap.tool?.maxFeed ?? Infinity);
  if (modes.feed === "per-minute") return { low: Math.max(least, Number.MIN_VALUE), high };
  if (modes.feed === "inverse-time")
    return { low: Number.MIN_VALUE, high: high === Infinity ? Number.MAX_VALUE : 0 };
  const turns = spindle.rpm / milliPerRpm;
  return turns > 0
    ? { low: Math.max(least / turns, Number.MIN_VALUE), high: high / turns }
    : { low: Infinity, high: 0 };
}

/**
 * The row's feed in atoms a minute.
 *
 * @param length path of the row in atoms; only inverse time uses it
 */
export function perMinute(watch: Watch, length: number): number {
  const { modes, spindle } = watch.state;
  if (modes.feed === "per-minute") return watch.row.feed;
  if (modes.feed === "per-revolution") return (watch.row.feed * spindle.rpm) / milliPerRpm;
  return (watch.row.feed / inverseTimeUnit) * length;
}

/**
 * motion/feed, limit/feed and the feed half of limit/tool.
 *
 * @param length path of the row in atoms; only inverse time uses it
 */
export function checkFeed(watch: Watch, length = 0): void {
  const { state, row } = watch;
  const { windows, modes } = state;
  if (!(row.feed > 0)) {
    if (!state.feedExcused) tell(watch, findings["motion/feed"]({ fault: "none" }));
    state.feedExcused = true;
    return;
  }
  state.feedExcused = false;
  if (row.frame === frame.machine && modes.feed !== "per-minute")
    tell(watch, findings["motion/feed"]({ fault: "machine" }));
  if (modes.feed !== "inverse-time" && row.moved & linearAxes && row.moved & rotaryAxes) {
    tell(watch, findings["motion/feed"]({ fault: "mixed" }));
  }
  if (row.feed >= windows.lowFeed && row.feed <= windows.highFeed) return;
  checkLimits(watch, perMinute(watch, length), modes.feed === "per-minute");
  // Named once: from here on only a feed that is further out is told.
  if (modes.feed === "inverse-time") return;
  if (row.frame === frame.work) windows.highFeed = Math.max(windows.highFeed, row.feed);
  windows.lowFeed = Math.min(windows.lowFeed, row.feed);
}

/** The same for a tap whose feed word is its lead: the feed is that times the speed. */
export function checkLeadFeed(watch: Watch): void {
  const { state, row } = watch;
  const feed = (row.feed * state.spindle.rpm) / milliPerRpm;
  if (feed > 0) checkLimits(watch, feed, false);
  else if (!state.feedExcused) tell(watch, findings["motion/feed"]({ fault: "none" }));
  state.feedExcused = !(feed > 0);
}

/** @param exact whether the feed is as it was said, and not worked out from another unit */
function checkLimits(watch: Watch, feed: number, exact: boolean): void {
  const { state, row, facts } = watch;
  const { modes, swap } = state;
  const { units } = modes;
  const over = (limit: number): boolean => feed > (exact ? limit : limit * workedOutShare);
  const text = (value: number): string => feedText(value, "per-minute", units);
  const { least, most } = facts.feed;
  const slow = modes.feed !== "inverse-time" && feed < (exact ? least : least / workedOutShare);
  if (over(most) || slow) {
    tell(watch, findings["limit/feed"]({ feed: text(feed), limit: text(slow ? least : most), fast: !slow }));
  }
  const tool = row.frame === frame.work ? swap.tool : undefined;
  if (tool && over(tool.maxFeed)) {
    const detail = {
      tool: tool.number,
      what: `it feeds at ${text(feed)}`,
      limit: `its most is ${text(tool.maxFeed)}`,
    };
    tell(watch, findings["limit/tool"](detail));
  }
}

/** Whether a row moves Z down from where it was known to be, so that a rapid could go into something. */
export function goesDown(watch: Watch): boolean {
  const { row, state } = watch;
  if (!(row.moved & axisBit.z)) return false;
  return !(state.work.known & axisBit.z) || row.at[2] < state.work.at[2];
}
