import { rowKind } from "#base";
import { findings } from "./findings.ts";
import { xyAxes } from "./position.ts";
import { tell } from "./watch.ts";
import type { Watch } from "./watch.ts";

/** Compensation word (NISTIR 6556 appendix B; the errors of its interpreter). */
export function compensate(watch: Watch, side: "off" | "left" | "right", offset: number): void {
  const { compensation, modes, swap } = watch.state;
  if (side === "off") {
    compensation.exit ||= compensation.on && !compensation.entry;
    compensation.on = compensation.entry = false;
    return;
  }
  const say = (fault: "again" | "plane" | "offset"): void => tell(watch, findings["motion/comp"]({ fault }));
  const wanted = swap.tool?.radiusOffset ?? 0;
  if (compensation.on) say("again");
  else if (modes.plane !== undefined && modes.plane !== "xy") say("plane");
  else if (offset !== 0 && wanted !== 0 && offset !== wanted) say("offset");
  compensation.on = compensation.entry = true;
  compensation.exit = false;
}

/** Whatever cannot be done under compensation; the first finding ends it. */
export function compensationOff(watch: Watch, what: string): void {
  const { compensation } = watch.state;
  if (!compensation.on) return;
  tell(watch, findings["motion/comp-left-on"]({ what }));
  compensation.on = compensation.entry = compensation.exit = false;
}

/** motion/comp for a row in the work frame: the first motion in the plane after a word begins or ends it. */
export function checkCompensation(watch: Watch): void {
  const { compensation, work, swap } = watch.state;
  const { row } = watch;
  if (!(compensation.entry || compensation.exit) || !(row.moved & xyAxes)) return;
  if (compensation.entry) {
    const radius = swap.tool ? swap.tool.diameter / 2 : 0;
    const dx = row.at[0] - work.at[0];
    const dy = row.at[1] - work.at[1];
    if (row.kind !== rowKind.line) tell(watch, findings["motion/comp"]({ fault: "entry-kind" }));
    else if (Math.sqrt(dx * dx + dy * dy) <= radius)
      tell(watch, findings["motion/comp"]({ fault: "entry-short" }));
  } else if (row.kind !== rowKind.line && row.kind !== rowKind.rapid) {
    tell(watch, findings["motion/comp"]({ fault: "exit-arc" }));
  }
  compensation.entry = compensation.exit = false;
}
