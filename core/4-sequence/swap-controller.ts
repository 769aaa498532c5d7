import type { Tool } from "#job";
import { retract } from "./retract.ts";
import type { Run } from "./run.ts";
import { stopSpindle } from "./spindle.ts";
import { put } from "./steps.ts";
import { fact, need } from "./words.ts";

/** The controller's own tool change; the next tool is staged behind it where the controller wants that. */
export function swapByController(run: Run, tool: Tool): void {
  const { state, machine, request } = run;
  fact(run, machine.changeEffects, "machine.change-effects", "the controller changes its tools");
  put(run, { kind: "select-tool", tool: tool.number });
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
  if (preselect && next !== undefined) put(run, { kind: "select-tool", tool: next });
  retract(run);
}

/** The tool of the next swap, if there is one. */
function nextTool(run: Run, present: number): number | undefined {
  const { request, job, state } = run;
  const coming = request.operations.slice(request.operations.indexOf(state.operation) + 1);
  return coming.map((index) => job.operations[index].tool).find((tool) => tool !== present);
}
