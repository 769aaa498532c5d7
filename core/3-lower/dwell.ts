import { roundToGrid } from "#base";
import { noWord, roundsToNothing } from "./findings.ts";
import { writeAside } from "./output.ts";
import type { Lowering } from "./state.ts";
import { need } from "./state.ts";

/** A dwell on the grid of its word. */
export function lowerDwell(state: Lowering, time: number, source: number): void {
  const key = {
    path: "dwell.code",
    why: "since it dwells",
    example: "dwell: { code: G04, word: P, unit: ? } # s, ms or rev",
    offset: source,
  };
  if (!need<boolean>(state, state.capabilities.words["dwell.code"], key, true)) {
    state.report(noWord("dwell.code", "a dwell", "leave the dwell out of the job", source));
  }
  const grid = need(
    state,
    state.capabilities.dwellGrid,
    { ...key, path: "numbers.dwell", example: "numbers: { dwell: ? } # digits behind the point" },
    1,
  );
  if (state.capabilities.dwellByTurns) {
    const revolutions = revolutionsOf(time, state.rpm, grid);
    writeAside(state.output, { kind: "dwell", time: 0, revolutions }, source);
    return;
  }
  const written = roundToGrid(time, grid);
  if (written === 0) state.report(roundsToNothing("this dwell", "numbers.dwell", source));
  writeAside(state.output, { kind: "dwell", time: written }, source);
}

/**
 * The fewest whole steps of the grid that last no shorter than a time: 0.5 s at 600 rpm, whole revolutions -> 5. The product of time
 * and speed is beyond what a number holds exactly, and a dwell must not come out shorter than it was asked for.
 *
 * @param time microseconds
 * @param rpm milli-rpm; where it is 0 sequencing refuses the dwell
 * @param grid millionths of a revolution, a whole number
 * @returns millionths of a revolution, at least one step
 */
export function revolutionsOf(time: number, rpm: number, grid: number): number {
  // A millionth of a revolution takes 60 000 / milli-rpm microseconds.
  const step = 60_000n * BigInt(grid);
  const product = BigInt(Math.ceil(time)) * BigInt(Math.floor(rpm));
  const steps = Number((product + step - 1n) / step);
  return Math.max(1, steps) * grid;
}
