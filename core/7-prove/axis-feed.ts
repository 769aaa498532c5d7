import { milliPerRpm } from "#base";
import { perMinute } from "./feed.ts";
import { findings } from "./findings.ts";
import type { Position } from "./state.ts";
import { tell } from "./watch.ts";
import type { Watch } from "./watch.ts";
import { feedText } from "./words.ts";

const linear = ["x", "y", "z"] as const;

/** A share of a feed is worked out in doubles, so that this much over a limit is none. */
const calculated = 1 + 1e-9;

/** A feed that is worked out from another unit is rounded, so that 0.1 % over a limit is none (common practice, no source). */
const workedOut = 1.001;

/** Sets the highest feed of each axis anew, for another tool, speed or feed mode. */
export function setAxisFeeds(watch: Watch): void {
  const { windows, modes, spindle } = watch.state;
  let least = Infinity;
  for (let axis = 0; axis < 3; axis++) {
    windows.axisMost[axis] = watch.facts.axisFeed[linear[axis]] ?? Infinity;
    least = Math.min(least, windows.axisMost[axis]);
  }
  const { feed } = modes;
  windows.feedUnit = feed === "per-minute" ? 1 : feed === "inverse-time" ? 0 : spindle.rpm / milliPerRpm;
  windows.freeFeed = least === Infinity ? Infinity : windows.feedUnit > 0 ? least / windows.feedUnit : 0;
}

/**
 * limit/feed of each axis for a straight row: its share of the feed along the path.
 *
 * @param length path of the row in X, Y and Z, atoms
 */
export function checkLineAxes(watch: Watch, from: Position, length: number): void {
  const { row, state } = watch;
  if (row.feed <= state.windows.freeFeed || !(length > 0)) return;
  const shares = [0, 0, 0];
  for (let axis = 0; axis < 3; axis++) {
    const placed = row.known & from.known & (1 << axis);
    if (placed) shares[axis] = Math.abs(row.at[axis] - from.at[axis]) / length;
  }
  checkShares(watch, perMinute(watch, length), shares);
}

/**
 * limit/feed of each axis.
 *
 * @param feed along the path, atoms a minute
 * @param shares the largest part of it that each of X, Y and Z has anywhere in the motion
 */
export function checkShares(watch: Watch, feed: number, shares: readonly number[]): void {
  const { modes, windows } = watch.state;
  const slack = modes.feed === "per-minute" ? calculated : workedOut;
  const text = (value: number): string => feedText(value, "per-minute", modes.units);
  for (let axis = 0; axis < 3; axis++) {
    const speed = feed * shares[axis];
    if (speed <= windows.axisMost[axis] * slack) continue;
    const limit = watch.facts.axisFeed[linear[axis]]!;
    const detail = {
      axis: linear[axis],
      feed: text(speed),
      limit: text(limit),
      beyond: text(speed - limit),
      fits: text(limit / shares[axis]),
    };
    tell(watch, findings["limit/axis-feed"](detail));
    // Named once: from here on only a feed that is further out is told.
    windows.axisMost[axis] = speed;
  }
}
