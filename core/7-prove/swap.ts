import { axisBit, linearAxes } from "#base";
import type { Effects } from "#base";
import { airConfirmed, hearOperator, howToConfirm } from "./confirm.ts";
import { compensationOff } from "./compensation.ts";
import { findings } from "./findings.ts";
import type { SwapEvent } from "./findings-spindle.ts";
import { lengthCancelled } from "./offsets.ts";
import { beginApproach, forgetPosition, heightText, standUp } from "./position.ts";
import { reloadRack } from "./reload.ts";
import { checkOriented, checkStopped, restartSpindle } from "./spindle.ts";
import { beginMotion, loseModes } from "./start.ts";
import { nowhere, unknownTool } from "./state.ts";
import { isPlace, tell } from "./watch.ts";
import type { Watch } from "./watch.ts";
import { listText } from "./words.ts";

/** What must hold before a swap goes on: Z up, spindle still and oriented, coolant off, compensation off. */
export function beforeSwap(watch: Watch, event: SwapEvent): void {
  const { program, swap, approach } = watch.state;
  if (!program.moved) beginMotion(watch, "other");
  // At the rack Z may since have gone down to the rack's clear height.
  const high = watch.traits.rack ? swap.retracted : approach.up;
  if (!high || isPlace(swap.stopBelowAt) || isPlace(approach.lowAt)) {
    tell(watch, findings["swap/retracted"]({ event, height: heightText(watch) }));
    if (watch.traits.rack) swap.retracted = true;
    else standUp(watch);
  }
  swap.stopBelowAt = approach.lowAt = nowhere;
  checkStopped(watch, event);
  checkOriented(watch, event);
  checkCoolant(watch, event);
  compensationOff(watch, "a swap");
}

/** swap/coolant-off. */
export function checkCoolant(watch: Watch, event: SwapEvent): void {
  const { coolant } = watch.state;
  if (coolant.size === 0) return;
  tell(watch, findings["swap/coolant-off"]({ event, media: listText([...coolant]) }));
  coolant.clear();
}

/** Another tool is in the spindle: its length and its limits are to be seen to. */
export function holdTool(watch: Watch, held: number): void {
  const { swap, spindle, windows, once } = watch.state;
  swap.held = held;
  swap.awaitsChange = false;
  spindle.rpmIsOfTool = false;
  swap.tool = watch.traits.tools.get(held);
  swap.measured = false;
  spindle.excused = false;
  windows.staleFeed = true;
  windows.staleAxes |= axisBit.z;
  windows.outside = 0;
  once.told.delete("held");
  if (watch.job.known && held > 0 && !swap.tool) tell(watch, findings["limit/tool-unknown"]({ tool: held }));
}

/**
 * spindle/clamped: a tool that is got ready for the controller's own change goes in before another is selected; otherwise the
 * change between is missing. To select the same one again is how a staged tool is asked for. Not in programs of others: what
 * they skip they may have got ready all the same.
 */
function checkPutIn(watch: Watch, tool: number): void {
  const { swap } = watch.state;
  if (!swap.awaitsChange || swap.selected === tool || watch.facts.swap !== "controller" || !watch.job.known)
    return;
  tell(watch, findings["spindle/never-put-in"]({ before: swap.selected, tool }));
}

/** The tool word; where the controller does not change tools by itself, it makes the length offset act that it brings along. */
export function selectTool(watch: Watch, tool: number, offset: number | undefined): void {
  const { swap, offsets, windows } = watch.state;
  checkPutIn(watch, tool);
  swap.selected = tool;
  swap.awaitsChange = true;
  swap.selectedOffset = offset;
  if (!watch.traits.lengthInTool || watch.facts.swap === "controller") return;
  offsets.length = offset ?? tool;
  windows.staleAxes |= axisBit.z;
}

/** The controller's own tool change (NISTIR 6556 3.6.3). */
export function changeTool(watch: Watch): void {
  const { drawbar, swap, offsets, approach } = watch.state;
  if (drawbar.open) {
    tell(watch, findings["swap/drawbar"]({ fault: "change", how: "" }));
    drawbar.open = false;
    drawbar.confirmed = true;
  }
  beforeSwap(watch, "tool change");
  if (watch.facts.changeEffects?.lengthOffset !== "cancelled") lengthCancelled(watch);
  if (swap.selected === unknownTool && watch.job.known)
    tell(watch, findings["limit/tool-unknown"]({ tool: unknownTool }));
  holdTool(watch, swap.selected);
  // Named already: which tool is held is not asked again.
  if (swap.selected === unknownTool) watch.state.once.told.add("held");
  const effects = watch.facts.changeEffects;
  applyEffects(watch, effects, "the swap");
  beginApproach(watch, "the swap", !approach.up);
  if (watch.traits.lengthInTool) offsets.length = swap.selectedOffset ?? swap.selected;
}

/** What a code does besides its meaning; without a declaration the position counts as lost. */
export function applyEffects(watch: Watch, effects: Effects | undefined, after: "the swap" | "a code"): void {
  const { offsets, coolant, spindle, windows } = watch.state;
  const position = effects?.position ?? "unknown";
  if (position !== "unchanged") {
    forgetPosition(watch, linearAxes);
    beginApproach(watch, after, position === "unknown");
    if (position === "swap-height") standUp(watch);
  }
  if (effects?.coolant === "off") coolant.clear();
  if (effects?.lengthOffset === "cancelled") offsets.length = 0;
  if (effects?.lengthOffset === "active" || effects?.lengthOffset === "cancelled") {
    offsets.lengthByEffect = effects.lengthOffset === "active";
    watch.state.work.known &= ~axisBit.z;
    windows.staleAxes |= axisBit.z;
  }
  if (effects?.spindle === "restarts") restartSpindle(watch);
  if (effects?.spindle !== "stopped" || after === "the swap") return;
  spindle.turning = "stopped";
  spindle.confirmed = false;
}

/** Whether a stop of the program is the swap by hand: a tool was selected that is not the one held. */
function isOperatorSwap(watch: Watch, optional: boolean): boolean {
  const { swap } = watch.state;
  return (
    watch.facts.swap === "operator" &&
    !optional &&
    swap.selected !== unknownTool &&
    swap.selected !== swap.held
  );
}

/** Program stop, optional ones too (NISTIR 6556 3.6.1). */
export function pauseProgram(watch: Watch, optional: boolean): void {
  const { drawbar, swap, approach } = watch.state;
  const swaps = isOperatorSwap(watch, optional);
  // A stop that only asks whether the spindle stands is none at which anybody goes to the rack.
  const stands = watch.state.spindle.turning === "stopped" && watch.state.spindle.confirmed;
  // The switch may be off, so that nobody is asked.
  if (!optional) hearOperator(watch);
  if (drawbar.open) {
    tell(watch, findings["swap/drawbar"]({ fault: "stop", how: "" }));
    drawbar.open = false;
    drawbar.confirmed = true;
  }
  if (swaps) {
    beforeSwap(watch, "operator swap");
    lengthCancelled(watch);
    holdTool(watch, swap.selected);
  } else {
    checkPause(watch);
    // A rack program that does not know what the spindle holds asks for an empty one; words may be missing elsewhere.
    const isRack = watch.traits.rack !== undefined && watch.job.known && !optional;
    if (isRack && stands && swap.held === 0) reloadRack(watch);
    if (isRack && swap.held === unknownTool) holdTool(watch, 0);
  }
  forgetPosition(watch, linearAxes);
  beginApproach(watch, swaps ? "the swap" : "the stop", true);
  swap.retracted = false;
  approach.lowAt = nowhere;
  watch.state.workHeld.confirmed = false;
  watch.state.workHeld.dwelt = 0;
  watch.state.spindle.rpmIsOfTool = false;
  if (watch.facts.afterStop === "loses-modes") loseModes(watch);
}

function checkPause(watch: Watch): void {
  const { approach, swap, program } = watch.state;
  compensationOff(watch, "a stop of the program");
  checkStopped(watch, "pause");
  checkCoolant(watch, "pause");
  const low = program.moved && !approach.up;
  if (low || isPlace(approach.lowAt) || (program.moved && isPlace(swap.stopBelowAt))) {
    const { after } = approach;
    tell(watch, findings["motion/approach"]({ fault: "pause", after, height: heightText(watch) }));
  }
  swap.stopBelowAt = nowhere;
}

/** swap/air, before each release and each clamp. */
export function checkAir(watch: Watch, event: "release" | "clamp"): void {
  if (airConfirmed(watch)) return;
  tell(watch, findings["swap/air"]({ event, how: howToConfirm(watch, "air") }));
  watch.state.drawbar.airConfirmed = true;
}
