import type { Effects } from "#base";
import { axisBit } from "#base";
import type { Reader } from "./reader.ts";
import { losePlace, loseWork } from "./state.ts";

/** All axes. */
const everyAxis = 63;

/** What a code does besides its meaning. Undeclared effects may be any: the place is lost. */
export function applyEffects({ state }: Reader, effects: Effects | undefined): void {
  if (effects?.position !== "unchanged") losePlace(state, everyAxis);
  if (effects?.spindle === "stopped") state.spindle = "stopped";
  if (effects?.spindle === "restarts") state.spindle = "running";
  if (effects === undefined || effects.lengthOffset === "unchanged") return;
  loseWork(state, axisBit.z);
  state.lengthOffset = effects.lengthOffset === "cancelled" ? 0 : undefined;
}
