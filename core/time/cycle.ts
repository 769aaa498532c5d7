import type { CycleDefinition, CycleKind } from "#base";
import { usualBackOff } from "#base";

/** What a hole is made of; Z alone, lengths in atoms. */
export interface HoleActions {
  rapid(way: number): void;
  feed(way: number): void;
  /** Stands at depth. */
  dwell(): void;
  /** The spindle reverses at depth. */
  reverse(): void;
}

/** How the tool gets out again. */
const comesOut = {
  drill: "rapid",
  dwell: "rapid",
  peck: "rapid",
  "chip-break": "rapid",
  tap: "feed",
  "tap-left": "feed",
  ream: "feed",
  "bore-dwell": "feed",
  "bore-stop": "rapid",
  "bore-manual": "rapid",
} as const satisfies Record<CycleKind, "rapid" | "feed">;

/** Goes through a hole from its retract level down and up to it again (NISTIR 6556 3.5.16). */
export function runHole(cycle: CycleDefinition, actions: HoleActions): void {
  const deep = cycle.retract - cycle.depth;
  if (cycle.peck > 0 && (cycle.cycle === "peck" || cycle.cycle === "chip-break")) peck(cycle, deep, actions);
  else actions.feed(deep);
  if (cycle.dwell > 0) actions.dwell();
  if (cycle.cycle === "tap" || cycle.cycle === "tap-left") actions.reverse();
  actions[comesOut[cycle.cycle]](deep);
}

/** Down by pecks that are counted from the retract level, out of the hole or off its bottom after each but the last. */
function peck(cycle: CycleDefinition, deep: number, actions: HoleActions): void {
  const backOff = cycle.backOff ?? usualBackOff;
  let last = 0;
  while (last < deep) {
    const next = Math.min(last + cycle.peck, deep);
    const back = Math.min(backOff, last);
    actions.feed(next - last + back);
    last = next;
    if (last >= deep) return;
    if (cycle.cycle === "peck") {
      actions.rapid(last);
      actions.rapid(last - Math.min(backOff, last));
    } else actions.rapid(Math.min(backOff, last));
  }
}
