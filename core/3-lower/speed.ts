import { roundToGrid } from "#base";
import { roundsToNothing } from "./findings.ts";
import type { Lowering } from "./state.ts";
import { need } from "./state.ts";

/** A spindle speed on the grid of its word, milli-rpm; a speed that would become 0 is refused. */
export function writtenSpeed(state: Lowering, rpm: number, source: number): number {
  const key = {
    path: "numbers.speed",
    why: "to state the spindle speed",
    example: "numbers: { speed: ? } # digits behind the point",
    offset: source,
  };
  const written = roundToGrid(rpm, need(state, state.capabilities.speedGrid, key, 1));
  if (written > 0) return written;
  state.report(roundsToNothing("this spindle speed", "numbers.speed", source));
  return rpm;
}
