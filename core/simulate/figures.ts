import type { CutFigures } from "#base";

/** What is gathered of one part of the work; mm, mm3, minutes. */
export interface Part {
  readonly id: string;
  readonly tool: number;
  removed: number;
  greatestRate: number;
  /** Lowest Z of the tip. */
  lowest: number;
  lowestOffset: number;
}

/** A part of which nothing is known yet. */
export function createPart(id: string, tool: number): Part {
  return { id, tool, removed: 0, greatestRate: 0, lowest: Infinity, lowestOffset: 0 };
}

/**
 * The stretch of cutting over which a rate is worked out: short motions pass over whole cells or none, so that a rate by
 * motions would be chance.
 */
export interface Stretch {
  volume: number;
  minutes: number;
  length: number;
}

/** A stretch without length. */
export function createStretch(): Stretch {
  return { volume: 0, minutes: 0, length: 0 };
}

/** Ends a stretch: what comes has another tool, or does not cut on. */
export function endStretch(stretch: Stretch): void {
  stretch.volume = stretch.minutes = stretch.length = 0;
}

/** Adds a motion, and takes the rate when the stretch is as long as `enough`, mm. */
export function addMotion(
  stretch: Stretch,
  part: Part,
  volume: number,
  minutes: number,
  length: number,
  enough: number,
): void {
  part.removed += volume;
  stretch.volume += volume;
  stretch.minutes += minutes;
  stretch.length += length;
  if (stretch.length < enough) return;
  noteRate(part, stretch.volume, stretch.minutes);
  endStretch(stretch);
}

/** Takes a rate, if there is one. */
export function noteRate(part: Part, volume: number, minutes: number): void {
  if (minutes > 0) part.greatestRate = Math.max(part.greatestRate, volume / minutes);
}

/** The figures of a part. */
export function figuresOf(part: Part, bottom: number): CutFigures {
  const { id, tool, removed, greatestRate, lowest } = part;
  return { id, tool, removed, greatestRate, below: Math.max(bottom - lowest, 0) };
}

/** The figures of all parts with one tool, by tools. */
export function byTool(figures: readonly CutFigures[]): CutFigures[] {
  const tools = new Map<number, CutFigures>();
  for (const one of figures) {
    const sum = tools.get(one.tool);
    tools.set(one.tool, {
      id: `tool ${String(one.tool)}`,
      tool: one.tool,
      removed: (sum?.removed ?? 0) + one.removed,
      greatestRate: Math.max(sum?.greatestRate ?? 0, one.greatestRate),
      below: Math.max(sum?.below ?? 0, one.below),
    });
  }
  return [...tools.values()];
}
