import { askOperator } from "./confirm.ts";
import { putMessage } from "./message.ts";
import { park } from "./pause.ts";
import type { Run } from "./run.ts";
import { toolOf } from "./run.ts";
import { cancelBeforeSwap } from "./swap-cancel.ts";
import { plainWords } from "./swap-operator.ts";
import { returnLastTool } from "./swap-rack.ts";
import { need } from "./words.ts";

/**
 * Stops for the rack to be loaded anew, where that is planned before an operation. All is safe already: Z at swap height, coolant
 * off, the spindle confirmed to stand. The tool goes back to its pocket first, so that the spindle is empty at the stop and
 * every tool in its place, and the machine is parked out of the way where it has a place for that; behind it the swap goes on as from a rack that was loaded so.
 *
 * @returns whether it has stopped
 */
export function reloadRack(run: Run, operation: number): boolean {
  const { facts } = run.request;
  const index = facts.reloadsBefore?.indexOf(operation) ?? -1;
  const rack = facts.reloads?.[index];
  if (rack === undefined) return false;
  const { state } = run;
  if (state.held) {
    cancelBeforeSwap(run);
    returnLastTool(run);
  }
  if (run.machine.park) park(run, "the operator reaches into the rack");
  if (need(run, "idioms.message", "the operator is told what to load")) tellExchanges(run, index, rack);
  askOperator(run, "THEN GO ON");
  state.homes.clear();
  rack.forEach((tool, pocket) => {
    if (tool !== 0) state.homes.set(tool, pocket);
  });
  return true;
}

/** A message for each pocket that changes, in their order. */
function tellExchanges(run: Run, index: number, rack: readonly number[]): void {
  const { facts } = run.request;
  const { reloads = [] } = facts;
  const before = index === 0 ? atStart(run) : reloads[index - 1];
  putMessage(run, `RELOAD THE RACK, STOP ${index + 1} OF ${reloads.length}, THE SPINDLE STAYS EMPTY`);
  rack.forEach((tool, pocket) => {
    const out = before[pocket] ?? 0;
    if (out === tool) return;
    const parts = [
      out === 0 ? [] : [`TOOL ${out} OUT`],
      tool === 0 ? [] : [`TOOL ${tool} IN, ${described(run, tool)}`],
    ];
    putMessage(run, `POCKET ${pocket + 1}: ${parts.flat().join(", ")}`);
  });
}

/** The rack at the start, with the tool that the spindle held then in its pocket. */
function atStart({ request }: Run): readonly number[] {
  const { rack, heldPocket, spindleHolds = 0 } = request.facts;
  return rack.map((tool, pocket) => (pocket === heldPocket ? spindleHolds : tool));
}

/** Kind, diameter and description; of a tool that only the rack knows, nothing. */
function described(run: Run, number: number): string {
  const tool = toolOf(run, number);
  return tool.description === "" ? plainWords(tool) : `${plainWords(tool)}, ${tool.description}`;
}
