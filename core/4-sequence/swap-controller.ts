import type { Tool } from "#job";
import { retract } from "./retract.ts";
import type { Run } from "./run.ts";
import { toolOf } from "./run.ts";
import { selectTool } from "./select-tool.ts";
import { put } from "./steps.ts";
import { orientSpindle, stopSpindle } from "./spindle.ts";
import { cancelBeforeSwap } from "./swap-cancel.ts";
import { fact, need } from "./words.ts";

/** The controller's own tool change; the next tool is staged behind it where the controller wants that. */
export function swapByController(run: Run, tool: Tool): void {
  const { state, machine, request } = run;
  fact(run, machine.changeEffects, "machine.change-effects", "the controller changes its tools");
  selectTool(run, tool);
  if (need(run, "tools.change", "the controller changes its tools")) put(run, { kind: "change-tool" });
  if (machine.changeEffects?.spindle === "restarts") {
    // It turns again at a speed that nobody knows, until it is stopped.
    state.spindle.speed = undefined;
    stopSpindle(run);
  }
  if (machine.lengthOffset?.form === "in-tool-word") state.lengthOffset = tool.lengthOffset;
  const next = nextTool(run, tool.number);
  const preselect = fact(
    run,
    request.capabilities.preselect,
    "tools.preselect",
    "the controller changes its tools",
  );
  if (preselect && next !== undefined) selectTool(run, toolOf(run, next));
  retract(run);
}

/** The controller puts the last tool away; the spindle stands, at swap height. */
export function emptySpindle(run: Run): void {
  orientSpindle(run);
  cancelBeforeSwap(run);
  selectTool(run, { number: 0, lengthOffset: 0 });
  if (need(run, "tools.change", "the controller puts the last tool away")) put(run, { kind: "change-tool" });
  run.state.held = 0;
  retract(run);
}

/** The tool of the next swap, if there is one. */
function nextTool(run: Run, present: number): number | undefined {
  const { request, job, state } = run;
  const coming = request.operations.slice(request.operations.indexOf(state.operation) + 1);
  return coming.map((index) => job.operations[index].tool).find((tool) => tool !== present);
}
