import type { MachineFacts } from "#base";
import type { Tool } from "#job";
import { confirmSensedClamp } from "./drawbar.ts";
import { workAuxiliary } from "./hood.ts";
import { retract } from "./retract.ts";
import type { Run } from "./run.ts";
import { selectTool } from "./select-tool.ts";
import { stopSpindle } from "./spindle.ts";
import { cancelBeforeSwap } from "./swap-cancel.ts";
import { swapByController } from "./swap-controller.ts";
import { swapByOperator } from "./swap-operator.ts";
import { swapByRack } from "./swap-rack.ts";
import { fact, refuse } from "./words.ts";

/** How a machine swaps tools. */
type SwapStyle = NonNullable<MachineFacts["swap"]>;

const styles = {
  controller: swapByController,
  rack: swapByRack,
  operator: swapByOperator,
  none: refuseSwap,
} as const satisfies Record<SwapStyle, (run: Run, tool: Tool) => void>;

/** A machine for one tool a program: the operator puts it in before the program starts. */
function refuseSwap(run: Run): void {
  const tools = new Set(run.request.operations.map((index) => run.job.operations[index].tool));
  refuse(
    run,
    "lower/swap",
    `no tool is swapped within a program (\`machine.swap: none\`), and this one uses tools ${[...tools].join(", ")}`,
    "post each tool as a program of its own (`--only`), or state `machine: { swap: operator }` if the program may stop for it",
    "machine.swap",
  );
}

/** Brings a tool into the spindle; the spindle stands, at swap height. */
export function swapTool(run: Run, tool: Tool): void {
  const style = fact(
    run,
    run.machine.swap,
    "machine.swap",
    "it uses a tool that is not known to be in the spindle",
  );
  cancelBeforeSwap(run);
  if (style) styles[style](run, tool);
  run.state.held = tool.number;
}

/** Goes on with the tool that the spindle holds at the start of the program. */
export function keepTool(run: Run, tool: Tool): void {
  confirmSensedClamp(run);
  if (run.machine.lengthOffset?.form !== "in-tool-word") return;
  // The tool word alone brings the length offset; to a controller that holds the tool the change is none.
  if (run.machine.swap === "controller") swapByController(run, tool);
  else selectTool(run, tool);
}

/** Measures the tool's length where lengths are measured after a swap, or where the job asks for it. */
export function measureTool(run: Run, tool: Tool): void {
  const lengths = fact(run, run.machine.lengths, "machine.lengths", "each tool has a length of its own");
  if (!(tool.measure ?? lengths === "measured")) return;
  // At a stop the operator may have turned the spindle.
  if (run.state.spindle.speed !== 0) stopSpindle(run);
  workAuxiliary(run, "measure", `the length of tool ${String(tool.number)} is measured after its swap`);
  retract(run);
}
