import { axisBit, rowKind } from "#base";
import type { RackFacts } from "#base";
import { commandDrawbar, howToConfirm } from "./confirm.ts";
import { findings } from "./findings.ts";
import { lengthCancelled } from "./offsets.ts";
import { beginApproach, xyAxes } from "./position.ts";
import { unknownTool } from "./state.ts";
import { beforeSwap, checkAir, holdTool } from "./swap.ts";
import { tell } from "./watch.ts";
import type { Watch } from "./watch.ts";
import { lengthText } from "./words.ts";

/** Index of the pocket at a place in machine coordinates, atoms; -1 where there is none. */
export function pocketAt(rack: RackFacts, x: number, y: number): number {
  return rack.pockets.findIndex((pocket) => pocket.x === x && pocket.y === y);
}

/** Whether a place lies in the rack zone, or at a pocket or its approach where no zone is declared. */
function isInRack(rack: RackFacts, x: number, y: number): boolean {
  if (rack.zone) {
    const { min, max } = rack.zone;
    return x >= min[0] && x <= max[0] && y >= min[1] && y <= max[1];
  }
  const { slide } = rack;
  return pocketAt(rack, x, y) >= 0 || (slide !== undefined && pocketAt(rack, x + slide.x, y + slide.y) >= 0);
}

/** The pocket that the spindle stands at in machine coordinates; -1 where its place is not known, or there is none. */
function standingAt(watch: Watch): number {
  const { rack } = watch.traits;
  const { known, at } = watch.state.machine;
  return rack && (known & xyAxes) === xyAxes ? pocketAt(rack, at[0], at[1]) : -1;
}

/** Whether a row slides a holder in or out of its pocket: a line between the pocket and its approach, holder seated. */
export function isSlide(watch: Watch, rack: RackFacts): boolean {
  const { slide } = rack;
  const { row } = watch;
  const { at } = watch.state.machine;
  if (!slide || row.kind !== rowKind.line || at[2] !== rack.pocketZ || row.at[2] !== rack.pocketZ)
    return false;
  const to = pocketAt(rack, row.at[0], row.at[1]);
  if (to >= 0) return at[0] === row.at[0] - slide.x && at[1] === row.at[1] - slide.y;
  return pocketAt(rack, at[0], at[1]) >= 0 && row.at[0] === at[0] - slide.x && row.at[1] === at[1] - slide.y;
}

/** swap/drawbar for a row in machine coordinates. */
export function checkDrawbarRow(watch: Watch): void {
  const { drawbar, swap, machine } = watch.state;
  const { row, traits } = watch;
  const { rack } = traits;
  if (!row.moved) return;
  if (!drawbar.confirmed) {
    const fault = drawbar.open ? "release-unconfirmed" : "clamp-unconfirmed";
    tell(
      watch,
      findings["swap/drawbar"]({ fault, how: howToConfirm(watch, drawbar.open ? "released" : "clamped") }),
    );
    drawbar.confirmed = true;
  }
  if (!drawbar.open || !rack) return;
  const say = (fault: "travel" | "low" | "full" | "down"): void => {
    tell(watch, findings["swap/drawbar"]({ fault, how: "" }));
    drawbar.open = false;
  };
  const clear = (machine.known & axisBit.z) !== 0 && machine.at[2] >= rack.clearZ;
  if (row.moved & xyAxes) {
    if (swap.held > 0) say("full");
    else if (!clear) say("low");
    else if (watch.facts.drawbar?.travels !== "released") say("travel");
  } else if (row.at[2] < rack.clearZ && row.at[2] < machine.at[2] && standingAt(watch) < 0) say("down");
}

/** A row of the program's own swap: what must hold before it enters the rack, and what its pocket must hold. */
export function checkRackRow(watch: Watch): void {
  const { rack } = watch.traits;
  const { row, state } = watch;
  if (!rack || !row.moved || (row.known & xyAxes) !== xyAxes || !isInRack(rack, row.at[0], row.at[1])) return;
  beforeSwap(watch, "rack");
  if (watch.facts.retract?.actsOn === "tool-tip") lengthCancelled(watch);
  if (rack.cover && !state.drawbar.coverOpen) {
    tell(watch, findings["limit/cover"]());
    state.drawbar.coverOpen = true;
  }
  const pocket = pocketAt(rack, row.at[0], row.at[1]);
  const arrives = (row.moved & xyAxes) !== 0 || row.at[2] < state.machine.at[2];
  if (pocket >= 0 && arrives && row.known & axisBit.z && row.at[2] < rack.clearZ) checkDescent(watch, pocket);
}

/** swap/pocket and swap/drawbar on the way down to a pocket. */
function checkDescent(watch: Watch, pocket: number): void {
  const { swap, drawbar } = watch.state;
  checkHeldKnown(watch);
  if (swap.held > 0) {
    checkReturn(watch, pocket);
  } else if (swap.held === 0 && swap.pockets[pocket] > 0 && !drawbar.open) {
    tell(watch, findings["swap/drawbar"]({ fault: "clamped-descent", how: "" }));
    drawbar.open = true;
  } else if (swap.held === 0 && swap.pockets[pocket] === 0) {
    tell(watch, findings["swap/bare-pocket"]({ fault: "empty", pocket: pocket + 1 }));
    swap.pockets[pocket] = unknownTool;
  }
}

/** swap/pocket: a job's rack program knows what the spindle holds. */
function checkHeldKnown(watch: Watch): void {
  const { swap } = watch.state;
  if (swap.held !== unknownTool || !watch.job.known) return;
  tell(watch, findings["swap/bare-pocket"]({ fault: "unknown", pocket: 0 }));
  swap.held = 0;
}

/** swap/pocket: a full spindle comes down on its own free pocket only. */
function checkReturn(watch: Watch, pocket: number): void {
  const { swap } = watch.state;
  const say = (fault: "full" | "foreign"): void =>
    tell(watch, findings["swap/pocket"]({ fault, tool: swap.held, pocket: pocket + 1 }));
  const own = watch.job.rack.indexOf(swap.held);
  if (swap.pockets[pocket] > 0) say("full");
  else if (own >= 0 && own !== pocket && swap.homes.get(swap.held) !== pocket) say("foreign");
  swap.pockets[pocket] = 0;
  swap.homes.set(swap.held, pocket);
}

/** The drawbar lets go. */
export function release(watch: Watch): void {
  const { swap, machine } = watch.state;
  const { rack } = watch.traits;
  beforeSwap(watch, "release");
  checkAir(watch, "release");
  checkHeldKnown(watch);
  const pocket = standingAt(watch);
  if (rack && swap.held > 0) {
    const seated = pocket >= 0 && (machine.known & axisBit.z) !== 0 && machine.at[2] === rack.pocketZ;
    if (!seated) tell(watch, findings["swap/pocket"]({ fault: "outside", tool: swap.held, pocket: 0 }));
    else if (swap.pockets[pocket] > 0) checkReturn(watch, pocket);
    if (seated) swap.pockets[pocket] = swap.held;
  }
  if (rack && pocket >= 0 && swap.held !== 0) holdTool(watch, 0);
  else if (swap.held > 0) holdTool(watch, 0);
  commandDrawbar(watch, true, true);
}

/** The drawbar grips: a tool, where the spindle sits in a pocket; otherwise nothing. */
export function clamp(watch: Watch): void {
  const { swap, machine } = watch.state;
  const { rack } = watch.traits;
  beforeSwap(watch, "clamp");
  checkAir(watch, "clamp");
  const pocket = standingAt(watch);
  const seated =
    rack !== undefined && pocket >= 0 && (machine.known & axisBit.z) !== 0 && machine.at[2] === rack.pocketZ;
  if (seated) pick(watch, rack, pocket);
  commandDrawbar(watch, false, seated || swap.held !== 0);
}

/** A pick: what is in the pocket comes into the spindle. */
function pick(watch: Watch, rack: RackFacts, pocket: number): void {
  const { swap, drawbar } = watch.state;
  if (swap.held > 0) tell(watch, findings["swap/pocket"]({ fault: "second", tool: swap.held, pocket: 0 }));
  const tool = swap.pockets[pocket];
  if (tool === 0) tell(watch, findings["swap/bare-pocket"]({ fault: "empty", pocket: pocket + 1 }));
  lengthCancelled(watch);
  swap.pockets[pocket] = 0;
  swap.homes.set(tool, pocket);
  holdTool(watch, tool === 0 ? unknownTool : tool);
  drawbar.toolSensed = false;
  beginApproach(watch, "the swap", true);
  checkFits(watch, rack, pocket);
}

/** limit/pockets, for the tool just picked. */
function checkFits(watch: Watch, rack: RackFacts, pocket: number): void {
  const { tool } = watch.state.swap;
  const { units } = watch.state.modes;
  if (!tool) return;
  const say = (fault: "wide" | "long", limit: number): void =>
    tell(
      watch,
      findings["limit/pockets"]({
        tool: tool.number,
        fault,
        limit: `pocket ${pocket + 1}, ${lengthText(limit, units)} at most`,
      }),
    );
  if (tool.diameter > rack.widest) say("wide", rack.widest);
  if (tool.length !== undefined && tool.length > rack.longest) say("long", rack.longest);
}

/** limit/pockets, for a set-up that lists more pockets than there are. */
export function checkRackList(watch: Watch): void {
  const { rack } = watch.traits;
  if (!rack) return;
  watch.job.rack.forEach((tool, index) => {
    if (tool === 0 || index < rack.pockets.length) return;
    tell(
      watch,
      findings["limit/pockets"]({
        tool,
        fault: "missing",
        limit: `pocket ${index + 1} of ${rack.pockets.length}`,
      }),
    );
  });
}
