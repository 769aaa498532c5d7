import { milliPerRpm, roundToGrid } from "#base";
import type { Holes } from "#job";
import { tappingRefused } from "./findings.ts";
import { roundFeed } from "./feed.ts";
import type { Lowering } from "./state.ts";
import { need } from "./state.ts";

/** How far the printed feed of a tap may be off rpm x lead: 0.1 %. */
const mostShare = 0.001;

/**
 * The feed of a tap as it is written: rpm x lead a minute, or the lead a revolution. 480 rpm x 1.25 mm -> 600 mm/min.
 *
 * @returns the feed in the written mode; where it cannot be said within 0.1 % it is refused as `limit/tapping`
 */
export function tapFeed(state: Lowering, holes: Holes, source: number): number {
  const key = {
    path: "machine.tapping",
    why: "since it taps",
    example: "machine: { tapping: { kind: ? } } # none, floating or synchronised",
    offset: source,
  };
  const tapping = need(state, state.machine.tapping, key, { kind: "floating", reversal: 0, longhand: false });
  if (tapping.kind === "none") {
    state.report(
      tappingRefused(
        "the machine cannot tap (`machine.tapping.kind: none`)",
        "make these threads in another way, for instance with a thread mill, or declare how the machine taps: `machine: { tapping: { kind: ? } }`, with floating or synchronised in place of the question mark",
        source,
      ),
    );
  }
  if (state.capabilities.cycles.tapLead) return tapLead(state, holes, source);
  const exact = state.feedMode === "per-revolution" ? holes.lead : (state.rpm * holes.lead) / milliPerRpm;
  const written = roundFeed(state, exact, source);
  if (Math.abs(written - exact) > mostShare * exact) {
    const fitting = fittingSpeed(state, holes.lead, source);
    state.report(
      tappingRefused(
        "speed x lead cannot be written as a feed within 0.1 %",
        `set the spindle to ${String(fitting / milliPerRpm)} rpm, whose feed has no remainder`,
        source,
      ),
    );
  }
  return written;
}

/** The lead as the feed word of the cycle states it; refused where it is off by more than 0.1 %. */
function tapLead(state: Lowering, { lead }: Holes, source: number): number {
  const key = {
    path: "numbers.feed-per-revolution",
    why: "since the feed word of a tap is its lead",
    example: "numbers: { feed-per-revolution: { mm: ?, inch: ? } } # digits behind the point",
    offset: source,
  };
  const grid = need(state, state.capabilities.feedPerRevolutionGrid?.[state.units], key, 1);
  const written = roundToGrid(lead, grid);
  if (Math.abs(written - lead) > mostShare * lead)
    state.report(
      tappingRefused(
        "the lead cannot be written within 0.1 %",
        "state more decimals in `numbers.feed-per-revolution` if the controller takes them",
        source,
      ),
    );
  return written;
}

/** The nearest whole speed whose feed can be written within 0.1 %; the present one where none is near. */
function fittingSpeed(state: Lowering, lead: number, source: number): number {
  const fits = (rpm: number): boolean => {
    const exact = (rpm * lead) / milliPerRpm;
    return exact > 0 && Math.abs(roundFeed(state, exact, source) - exact) <= mostShare * exact;
  };
  for (let step = 0; step < 5000; step++) {
    const [below, above] = [state.rpm - step * milliPerRpm, state.rpm + step * milliPerRpm];
    if (below > 0 && fits(below)) return below;
    if (fits(above)) return above;
  }
  return state.rpm;
}
