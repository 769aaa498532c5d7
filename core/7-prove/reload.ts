import type { RackFacts } from "#base";
import { isDiameterKnown } from "#base";
import { findings } from "./findings.ts";
import { isTool } from "./state.ts";
import { tell } from "./watch.ts";
import type { Watch } from "./watch.ts";

/**
 * A stop of the program with an empty spindle, in a job whose rack is loaded anew: the next of the planned loads is in the rack behind
 * it. With a tool in the spindle nobody reloads, since its pocket would not stay free. A second stop behind it asks something else.
 */
export function reloadRack(watch: Watch): void {
  const { swap } = watch.state;
  const next = watch.job.reloads?.[swap.reload.made];
  if (next === undefined || !swap.reload.open) return;
  swap.reload.made++;
  swap.reload.open = false;
  swap.pockets.forEach((_, pocket) => (swap.pockets[pocket] = next[pocket] ?? 0));
  swap.homes.clear();
  checkRackList(watch, next);
}

/** swap/pocket: a stop that was planned and not made leaves the wrong tools in the rack. */
export function checkReloads(watch: Watch): void {
  const planned = watch.job.reloads?.length ?? 0;
  const { made } = watch.state.swap.reload;
  if (made < planned) tell(watch, findings["swap/reloads"]({ planned, made }));
}

/** limit/pockets, for a list of what is in the rack: pockets that are not there, tools that touch. */
export function checkRackList(watch: Watch, list: readonly number[]): void {
  const { rack } = watch.traits;
  if (!rack) return;
  list.forEach((tool, index) => {
    if (tool === 0 || index < rack.pockets.length) return;
    const limit = `pocket ${index + 1} of ${rack.pockets.length}`;
    tell(watch, findings["limit/pockets"]({ tool, fault: "missing", limit }));
  });
  list.forEach((_, pocket) => checkNeighbours(watch, rack, list, pocket));
}

/** Each pair is looked at once: a pocket with those before it. */
function checkNeighbours(watch: Watch, rack: RackFacts, list: readonly number[], pocket: number): void {
  for (let other = 0; other < pocket; other++) {
    const width = (widthOf(watch, list[pocket]) + widthOf(watch, list[other])) / 2;
    const [one, two] = [rack.pockets[pocket], rack.pockets[other]] as const;
    if (width === 0 || one === undefined || two === undefined) continue;
    if (width < Math.hypot(one.x - two.x, one.y - two.y)) continue;
    const limit = `pocket ${pocket + 1}, tool ${list[other]} in pocket ${other + 1}`;
    tell(watch, findings["limit/pockets"]({ tool: list[pocket], fault: "crowded", limit }));
  }
}

/** Diameter of a tool in a pocket, atoms; one that is not known is not compared here. */
function widthOf({ traits }: Watch, tool: number): number {
  const diameter = isTool(tool) ? traits.tools.get(tool)?.diameter : undefined;
  return diameter !== undefined && isDiameterKnown(diameter) ? diameter : -Infinity;
}
