/** Several cuts of one operation, one after the other. */
import type { Move } from "./job-text.ts";
import { rapid } from "./paths.ts";
import type { Point } from "./paths.ts";
import { clearance, feedStart } from "./plate.ts";

/** One cut: it is entered and left above its own places, with the tool where the feed begins. */
export interface Cut {
  /** Where the tool comes down, mm. */
  at: Point;
  /** What it does from there; it ends where the tool may rise straight. */
  moves: readonly Move[];
}

/** Over the first cut and down, from cut to cut at the height where feed begins, and up to `lift` after the last. */
export function oneByOne(cuts: readonly Cut[], lift: number = clearance): Move[] {
  return cuts.flatMap(({ at, moves }, index) => [
    rapid({ ...at }),
    ...(index === 0 ? [rapid({ z: feedStart })] : []),
    ...moves,
    rapid({ z: index === cuts.length - 1 ? lift : feedStart }),
  ]);
}
