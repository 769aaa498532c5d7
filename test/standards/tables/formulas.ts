/**
 * Handbook formulas with worked values, as far as the compiler works such a thing out. All common practice, worked by hand;
 * no source but where one is named.
 */

/** Feed of a tap: rpm x lead. mm/min. */
export const tapFeeds = [
  { rpm: 480, lead: 1.25, feed: 600 },
  { rpm: 500, lead: 1, feed: 500 },
  // M8 at 12 m/min would be 477.5 rpm and 596.8 mm/min, which whole speeds cannot have.
  { rpm: 477, lead: 1.25, feed: 596.3 },
] as const;

/** Feed a minute: rpm x feed a revolution. mm/rev, mm/min. */
export const feedsPerRevolution = [
  { rpm: 500, perRevolution: 0.1, feed: 50 },
  { rpm: 18_000, perRevolution: 0.2, feed: 3600 },
] as const;

/** Inverse time: F = feed / length, so that a part of a path takes F / its share. 1/min, share of the whole. */
export const inverseTimes = [
  { whole: 10, share: 1 / 2, word: 20 },
  { whole: 10, share: 1 / 4, word: 40 },
] as const;

/** Number of chords of a full circle: t = 2 acos(1 - e / r), 360 / t rounded up. Radius and tolerance in mm. */
export const chords = [
  { radius: 50, tolerance: 0.01, count: 158 },
  { radius: 5, tolerance: 0.01, count: 50 },
  { radius: 5, tolerance: 0.001, count: 158 },
  { radius: 100, tolerance: 0.05, count: 100 },
] as const;

/** Feed of the circle of a helix: feed x circle / path, path = sqrt((r t)^2 + dz^2). One turn. */
export const helices = [
  { radius: 10, down: 20, path: 65.938, feed: 600, circleFeed: 571.7 },
  { radius: 10, down: 2, path: 62.8637, feed: 600, circleFeed: 599.7 },
] as const;

/** Dwell in revolutions: seconds x rpm / 60, rounded up. */
export const dwellTurns = [
  { seconds: 0.5, rpm: 600, turns: 5 },
  { seconds: 0.5, rpm: 601, turns: 6 },
  { seconds: 1, rpm: 12_000, turns: 200 },
] as const;

/** Spin-up: t = (n - n0) x ramp / n_max, s. 18 000 of 24 000 rpm at 8 s for the whole take 6 s. */
export const spinUps = [
  { from: 0, to: 18_000, ramp: 8, most: 24_000, seconds: 6 },
  { from: 6000, to: 18_000, ramp: 8, most: 24_000, seconds: 4 },
] as const;
