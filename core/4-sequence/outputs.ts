import type { OutputFacts } from "#base";
import type { Run } from "./run.ts";
import { put } from "./steps.ts";
import { need } from "./words.ts";

/** Switches the outputs that are on while the tool turns in the work. */
export function switchCuttingOutputs(run: Run, on: boolean): void {
  for (const output of run.machine.outputs) {
    if (output.during === "cutting" && run.state.outputs.has(output.number) !== on)
      switchOutput(run, output, on);
  }
}

/** Switches on the outputs that are on all through the program. */
export function switchProgramOutputsOn(run: Run): void {
  for (const output of run.machine.outputs) if (output.during === "program") switchOutput(run, output, true);
}

/** Switches all outputs off, those too that should be off already. */
export function switchAllOutputsOff(run: Run): void {
  for (const output of run.machine.outputs) switchOutput(run, output, false);
}

function switchOutput(run: Run, output: OutputFacts, on: boolean): void {
  const { outputs } = run.state;
  if (!need(run, `idioms.output-${on ? "on" : "off"}`, `the machine has the output \`${output.name}\``))
    return;
  put(run, { kind: "output", number: output.number, on });
  if (on) outputs.add(output.number);
  else outputs.delete(output.number);
}
