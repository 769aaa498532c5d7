import type { RackFacts } from "#base";
import type { Tool } from "#job";
import { clampEmpty, clampTool, releaseTool } from "./drawbar.ts";
import { workAuxiliary } from "./hood.ts";
import { stateRackModes } from "./modes.ts";
import { machineMove } from "./motion.ts";
import { moveToHeight, pocketOf, rackStyles, sink } from "./rack.ts";
import { retract } from "./retract.ts";
import type { Run } from "./run.ts";
import { fact } from "./words.ts";

/**
 * The program drives to the pockets and works the drawbar: the tool that is held goes back into its own pocket before the
 * next one is picked. All motion is in machine coordinates.
 */
export function swapByRack(run: Run, tool: Tool): void {
  visitRack(run, (rack) => {
    if (run.state.held) returnTool(run, rack, run.state.held);
    pickTool(run, rack, tool.number);
  });
}

/** Puts the last tool back at the end of the program; the drawbar is left closed. */
export function returnLastTool(run: Run): void {
  visitRack(run, (rack) => {
    const { held } = run.state;
    if (held) returnTool(run, rack, held);
    if (run.state.released) clampEmpty(run);
    run.state.held = 0;
  });
}

/** What every visit begins and ends with; the cover is open only while the tool is about. */
function visitRack(run: Run, visit: (rack: RackFacts) => void): void {
  const rack = fact(run, run.machine.rack, "machine.rack.style", "its tools wait in a rack");
  const drawbar = fact(run, run.machine.drawbar, "machine.drawbar.travels", "its tools wait in a rack");
  if (!rack || !drawbar) return;
  stateRackModes(run);
  if (rack.cover) workAuxiliary(run, "cover-open", "the rack has a cover");
  visit(rack);
  retract(run);
  if (rack.cover) workAuxiliary(run, "cover-close", "the rack has a cover");
}

/** Over to the pocket at swap height, where a tool clears whatever lies on the way; down, in, release, and up off it. */
function returnTool(run: Run, rack: RackFacts, tool: number): void {
  const pocket = pocketOf(run, rack, tool);
  if (!pocket) return;
  const style = rackStyles[rack.style];
  machineMove(run, style.entry(run, rack, pocket));
  sink(run, rack);
  style.goIn(run, rack, pocket);
  releaseTool(run);
  moveToHeight(run, rack.clearZ);
  if (run.machine.drawbar?.travels === "clamped") clampEmpty(run);
}

/** Over the filled pocket with an open drawbar, down over the tool, clamp, and out. */
function pickTool(run: Run, rack: RackFacts, tool: number): void {
  const pocket = pocketOf(run, rack, tool);
  if (!pocket) return;
  machineMove(run, pocket);
  moveToHeight(run, rack.clearZ);
  if (!run.state.released) releaseTool(run);
  pickUp(run, rack);
  rackStyles[rack.style].comeOut(run, rack, pocket);
  moveToHeight(run, rack.clearZ);
}

function pickUp(run: Run, rack: RackFacts): void {
  const cleans = run.machine.drawbar?.taperAir === true;
  const because = "air cleans the taper (`machine.drawbar.taper-air`)";
  sink(run, rack, () => {
    if (cleans) workAuxiliary(run, "taper-air-on", because);
  });
  if (cleans) workAuxiliary(run, "taper-air-off", because);
  clampTool(run);
}
