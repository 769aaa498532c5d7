import { axisBit, lengthText, rowKind } from "#base";
import type { RackFacts } from "#base";
import { commandDrawbar, howToConfirm } from "./confirm.ts";
import { findings } from "./findings.ts";
import { lengthCancelled } from "./offsets.ts";
import { beginApproach, xyAxes } from "./position.ts";
import { isTool, unknownTool, unnumberedTool } from "./state.ts";
import { beforeSwap, checkAir, holdTool } from "./swap.ts";
import { tell } from "./watch.ts";
import type { Watch } from "./watch.ts";

/** Index of the pocket at a place in machine coordinates, atoms; -1 where there is none. */
export function pocketAt(rack: RackFacts, x: number, y: number): number {
  return rack.pockets.findIndex((pocket) => pocket.x === x && pocket.y === y);
}

/** Whether a place lies in the rack zone, or at a pocket or its approach where no zone is declared. */
function isInRack(watch: Watch, rack: RackFacts): boolean {
  const [x, y] = watch.row.at;
  if (rack.zone) {
    const { min, max } = rack.zone;
    return x >= min[0] && x <= max[0] && y >= min[1] && y <= max[1];
  }
  return isAtPocket(watch, rack);
}

/** Whether a row ends at a pocket, or at the place beside it from which a holder slides in. */
export function isAtPocket(watch: Watch, rack: RackFacts): boolean {
  const { at } = watch.row;
  const { slide } = rack;
  const beside = slide !== undefined && pocketAt(rack, at[0] + slide.x, at[1] + slide.y) >= 0;
  return beside || pocketAt(rack, at[0], at[1]) >= 0;
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

/** swap/drawbar: nothing moves before a release or a clamp is confirmed. */
export function checkHeldStill(watch: Watch): void {
  const { drawbar } = watch.state;
  if (drawbar.confirmed) return;
  const how = howToConfirm(watch, drawbar.open ? "released" : "clamped");
  tell(
    watch,
    findings["swap/drawbar"]({ fault: drawbar.open ? "release-unconfirmed" : "clamp-unconfirmed", how }),
  );
  drawbar.confirmed = true;
}

/**
 * swap/drawbar for a row in machine coordinates.
 *
 * @returns false where the row travels as it must not, so that its height needs no second finding
 */
export function checkDrawbarRow(watch: Watch): boolean {
  const { drawbar } = watch.state;
  const { rack } = watch.traits;
  if (!watch.row.moved) return true;
  checkHeldStill(watch);
  const fault = drawbar.open && rack ? openFault(watch, rack) : undefined;
  if (!fault) return true;
  if (!drawbar.excused) tell(watch, findings["swap/drawbar"]({ fault, how: "" }));
  drawbar.excused = true;
  return false;
}

/** What is wrong with a row while the drawbar is open: it may rise, travel empty where that is allowed, or descend. */
function openFault(watch: Watch, rack: RackFacts): "travel" | "low" | "full" | "down" | undefined {
  const { swap, machine } = watch.state;
  const { row } = watch;
  const knows = (machine.known & axisBit.z) !== 0;
  if (row.moved & xyAxes) {
    if (isTool(swap.held)) return "full";
    if (!knows || machine.at[2] < rack.clearZ) return "low";
    return watch.facts.drawbar?.travels === "released" ? undefined : "travel";
  }
  const sinks = !knows || row.at[2] < machine.at[2];
  return row.at[2] < rack.clearZ && sinks && standingAt(watch) < 0 ? "down" : undefined;
}

/** A row of the program's own swap: what must hold before it enters the rack, and what its pocket must hold. */
export function checkRackRow(watch: Watch): void {
  const { rack } = watch.traits;
  const { row, state } = watch;
  if (!rack || !row.moved || (row.known & xyAxes) !== xyAxes || !isInRack(watch, rack)) return;
  beforeSwap(watch, "rack");
  if (watch.facts.retract?.actsOn === "tool-tip") lengthCancelled(watch);
  if (rack.cover && !state.drawbar.coverOpen) {
    tell(watch, findings["limit/cover"]());
    state.drawbar.coverOpen = true;
  }
  if (row.moved & xyAxes) state.swap.puts = -1;
  const pocket = pocketAt(rack, row.at[0], row.at[1]);
  checkSideways(watch, rack, pocket);
  const arrives = (row.moved & xyAxes) !== 0 || row.at[2] < state.machine.at[2];
  const descends = arrives && (row.known & axisBit.z) !== 0 && row.at[2] < rack.clearZ;
  if (descends && isAtPocket(watch, rack)) checkSeat(watch, rack);
  if (descends && pocket >= 0) checkDescent(watch, pocket);
}

/** swap/pocket: no row goes below the seat of a holder, and none at rapid past the height at which the feed begins. */
function checkSeat(watch: Watch, rack: RackFacts): void {
  const { row, state } = watch;
  const say = (fault: "deep" | "fast"): void => tell(watch, findings["swap/seat"]({ fault }));
  if (row.at[2] < rack.pocketZ) {
    if (state.once.told.has("down")) return;
    say("deep");
    // What is let go or gripped down there is no second fault.
    state.once.told.add("down");
    state.drawbar.excused = true;
  } else if (
    row.kind === rowKind.rapid &&
    row.moved & axisBit.z &&
    row.at[2] < rack.pocketZ + rack.descendFrom
  ) {
    say("fast");
  }
}

/** swap/pocket: where holders slide in and out, a tool is neither lowered into its pocket nor lifted out of it. */
function checkSideways(watch: Watch, rack: RackFacts, pocket: number): void {
  const { swap, machine } = watch.state;
  const { row } = watch;
  if (rack.style !== "slide-in" || pocket < 0 || swap.held === 0 || row.moved !== axisBit.z) return;
  const low = Math.min(row.at[2], machine.at[2]);
  if (low >= rack.clearZ || watch.state.once.told.has("sideways")) return;
  watch.state.once.told.add("sideways");
  tell(watch, findings["swap/pocket"]({ fault: "sideways", tool: swap.held, pocket: pocket + 1 }));
}

/** swap/pocket and swap/drawbar on the way down to a pocket. */
function checkDescent(watch: Watch, pocket: number): void {
  const { swap, drawbar } = watch.state;
  checkHeldKnown(watch);
  if (isTool(swap.held)) {
    if (swap.puts < 0) checkReturn(watch, pocket);
  } else if (swap.held === 0 && isTool(swap.pockets[pocket]) && !drawbar.open) {
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
  if (swap.held !== unknownTool || !watch.job.known || watch.state.once.told.has("held")) return;
  tell(watch, findings["swap/bare-pocket"]({ fault: "unknown", pocket: 0 }));
  swap.held = 0;
}

/** swap/pocket: a full spindle comes down on its own free pocket only. Otherwise it counts as put in its own. */
function checkReturn(watch: Watch, pocket: number): void {
  const { swap } = watch.state;
  const say = (fault: "full" | "foreign"): void =>
    tell(watch, findings["swap/pocket"]({ fault, tool: swap.held, pocket: pocket + 1 }));
  const own = swap.homes.get(swap.held) ?? watch.job.rack.indexOf(swap.held);
  swap.puts = own >= 0 ? own : pocket;
  if (isTool(swap.pockets[pocket])) say("full");
  else if (own >= 0 && own !== pocket) say("foreign");
}

/** The drawbar lets go. */
export function release(watch: Watch): void {
  const { swap } = watch.state;
  const { rack } = watch.traits;
  beforeSwap(watch, "release");
  checkAir(watch, "release");
  checkHeldKnown(watch);
  if (rack && isTool(swap.held)) putBack(watch, rack);
  swap.puts = -1;
  watch.state.once.told.delete("sideways");
  if (swap.held !== 0) {
    holdTool(watch, 0);
    swap.reload.open = true;
  }
  commandDrawbar(watch, true, true);
}

/** swap/pocket: a tool is let go in a pocket. Where the way there was wrong and named, it counts as put in its own. */
function putBack(watch: Watch, rack: RackFacts): void {
  const { swap, once } = watch.state;
  const seated = seatedIn(watch, rack) >= 0 && swap.puts >= 0;
  const pocket = seated ? swap.puts : (swap.homes.get(swap.held) ?? -1);
  if (!seated && !once.told.has("down")) {
    tell(watch, findings["swap/pocket"]({ fault: "outside", tool: swap.held, pocket: 0 }));
  }
  if (pocket >= 0) swap.pockets[pocket] = swap.held;
}

/** The pocket that the spindle sits in; -1 where it sits in none. */
function seatedIn(watch: Watch, rack: RackFacts): number {
  const { machine } = watch.state;
  return machine.known & axisBit.z && machine.at[2] === rack.pocketZ ? standingAt(watch) : -1;
}

/** The drawbar grips: a tool, where the spindle sits in a pocket; otherwise nothing. */
export function clamp(watch: Watch): void {
  const { swap } = watch.state;
  const { rack } = watch.traits;
  beforeSwap(watch, "clamp");
  checkAir(watch, "clamp");
  const pocket = rack ? seatedIn(watch, rack) : -1;
  if (rack && pocket >= 0) pick(watch, rack, pocket);
  else if (rack && watch.state.drawbar.excused && swap.held === 0) {
    // The way to the pocket was named: what would have been picked there is in the spindle.
    holdTool(watch, unknownTool);
    watch.state.once.told.add("held");
  }
  commandDrawbar(watch, false, pocket >= 0 || swap.held !== 0);
}

/** A pick: what is in the pocket comes into the spindle. */
function pick(watch: Watch, rack: RackFacts, pocket: number): void {
  const { swap, drawbar } = watch.state;
  if (isTool(swap.held))
    tell(watch, findings["swap/pocket"]({ fault: "second", tool: swap.held, pocket: 0 }));
  const content = swap.pockets[pocket];
  // What comes out of a pocket of unknown content is a tool all the same, and has to go back there.
  const tool = content === unknownTool ? unnumberedTool : content;
  if (tool === 0) tell(watch, findings["swap/bare-pocket"]({ fault: "empty", pocket: pocket + 1 }));
  lengthCancelled(watch);
  swap.pockets[pocket] = 0;
  if (isTool(tool)) swap.homes.set(tool, pocket);
  holdTool(watch, tool === 0 ? unknownTool : tool);
  // An empty pocket was named, or there is no job: which tool is held then is not asked again.
  if (tool <= 0) watch.state.once.told.add("held");
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
