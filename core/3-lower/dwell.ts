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
    example: "dwell: { code: G04, word: P, unit: s }",
    offset: source,
  };
  if (!need<boolean>(state, state.capabilities.words["dwell.code"], key, true)) {
    state.report(noWord("dwell.code", "a dwell", "leave the dwell out of the job", source));
  }
  const written = roundToGrid(
    time,
    need(state, state.capabilities.dwellGrid, { ...key, path: "numbers.dwell", example: "3" }, 1),
  );
  if (written === 0) state.report(roundsToNothing("this dwell", "numbers.dwell", source));
  writeAside(state.output, { kind: "dwell", time: written }, source);
}
