import type { Cursor, Word } from "./cursor.ts";
import type { Sequence } from "./sequence.ts";

/** What a number of a case is for the dialect. */
export type Gridded =
  "length" | "centre" | "angle" | "feed" | "lead" | "speed" | "dwell" | "peck" | "cycle-dwell";

/** The least increment of a number, base units; undefined where the dialect states none. */
function gridOf({ capabilities, units, feedMode }: Sequence, what: Gridded): number | undefined {
  const feeds = {
    "per-minute": capabilities.feedPerMinuteGrid?.[units],
    "per-revolution": capabilities.feedPerRevolutionGrid?.[units],
    "inverse-time": capabilities.inverseTimeGrid,
  };
  const grids: Readonly<Record<Gridded, number | undefined>> = {
    length: capabilities.lengthGrid?.[units],
    centre: capabilities.centreGrid?.[units],
    angle: capabilities.angleGrid,
    feed: feeds[feedMode],
    lead: capabilities.feedPerRevolutionGrid?.[units],
    speed: capabilities.speedGrid,
    dwell: capabilities.dwellGrid,
    peck: capabilities.cycles.peckGrid?.[units],
    "cycle-dwell": capabilities.cycles.dwellGrid,
  };
  return grids[what];
}

/** Refuses a number that the dialect cannot write: rounding is not for a case, which gives what is to be written. */
export function fits(cursor: Cursor, sequence: Sequence, word: Word, value: number, what: Gridded): void {
  const grid = gridOf(sequence, what);
  if (grid === undefined || value % grid === 0) return;
  cursor.fail(
    word,
    `\`${word.text}\` is finer than the dialect writes it.`,
    "Give the number as it is rounded.",
  );
}
