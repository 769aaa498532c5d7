import type { Tool } from "#job";
import type { Run } from "./run.ts";
import { put } from "./steps.ts";
import { refuse } from "./words.ts";

/** The tool word, with the length offset of the tool where the word states it: T0105. */
export function selectTool(run: Run, tool: Pick<Tool, "number" | "lengthOffset">): void {
  const { toolDigits } = run.request.capabilities;
  checkToolWord(run, tool);
  const offset = toolDigits > 0 ? { offset: tool.lengthOffset } : {};
  put(run, { kind: "select-tool", tool: tool.number, ...offset });
}

/** Refuses a tool that its word cannot say. */
function checkToolWord(run: Run, { number, lengthOffset }: Pick<Tool, "number" | "lengthOffset">): void {
  const { machine, request } = run;
  const { emptyTool } = request.capabilities;
  if (emptyTool !== 0 && number === emptyTool)
    refuse(
      run,
      "lower/range",
      `tool ${String(number)} has the number with which the controller empties the spindle`,
      "renumber the tool",
      "tools.empty",
    );
  if (machine.lengthOffset?.form !== "in-tool-word") return;
  const { toolDigits } = request.capabilities;
  const name = String(number);
  const key = "numbers.code-width.T";
  if (toolDigits === 0 && lengthOffset !== number && number !== 0)
    refuse(
      run,
      "offset/active",
      `tool ${name} has length offset ${String(lengthOffset)}, and a tool word without digits for the offset takes that of the tool's number`,
      "give the tool the length offset of its own number, or state more digits if the controller reads T0105",
      key,
    );
  if (toolDigits > 0 && Math.max(number, lengthOffset) >= 10 ** toolDigits)
    refuse(
      run,
      "lower/range",
      `tool ${name} with length offset ${String(lengthOffset)} does not fit into a tool word of ${String(toolDigits)} digits each`,
      "renumber the tool, or state more digits if the controller takes them",
      key,
    );
}
