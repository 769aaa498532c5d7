import { atomsPerMillimetre, axisBit, isDiameterKnown } from "#base";
import type { Tool } from "#job";
import { confirmSensedClamp } from "./drawbar.ts";
import { example, remark } from "./findings.ts";
import { putMessage } from "./message.ts";
import { stopForOperator } from "./stop.ts";
import { workRapid } from "./motion.ts";
import { retract } from "./retract.ts";
import type { Run } from "./run.ts";
import { selectTool } from "./select-tool.ts";
import { fact, need, refuse } from "./words.ts";

/** The operator changes the tool while the program stands; afterwards nobody knows where the machine is. */
export function swapByOperator(run: Run, tool: Tool): void {
  const { words } = run.request.capabilities;
  const { retract: facts } = run.machine;
  // For the first tool the machine may stay where it is: nobody can say that it is in the way there.
  const mayStay = !run.state.held && facts?.changePosition === undefined;
  if (facts?.by === "clearance" && !mayStay) goToChangePosition(run);
  // The message stands directly before the stop, when nothing moves any more; no tool word parts it from a stop in its block.
  const { stopComment, toolsNamed } = run.request.capabilities;
  const wordFirst = stopComment === "with-stop" && toolsNamed;
  if (wordFirst) selectTool(run, tool);
  if (words["idioms.message"] === true) putMessage(run, request(run, tool));
  else warnOfSilence(run, tool);
  // Where the message is all that names the tool, it selects it.
  if (!wordFirst) selectTool(run, tool);
  if (need(run, "stops.stop", "the operator changes the tools")) stopForOperator(run, false);
  retract(run);
  confirmSensedClamp(run);
}

function request(run: Run, tool: Tool): string {
  const set = run.machine.lengths === "operator" ? " AND SET Z" : "";
  const description = tool.description === "" ? "" : `, ${tool.description}`;
  return `LOAD TOOL ${String(tool.number)}${set}, ${plainWords(tool)}${description}`;
}

/** The program stops and shows a number at most: whoever starts it has to know what to put in. */
function warnOfSilence(run: Run, tool: Tool): void {
  const message = `the dialect has no messages, so the program stops for a tool without showing "${request(run, tool)}"`;
  const fix = `give the operator the list of tools, or state \`${example("idioms.message")}\` in the dialect if the controller takes comments`;
  const finding = remark("lower/no-message", "warning", message, run.state.source, "idioms.message");
  run.report({ ...finding, fix });
}

/** Kind and diameter, which a description need not say: drill 5 mm. */
export function plainWords({ kind, diameter }: Tool): string {
  if (!isDiameterKnown(diameter)) return kind;
  return `${kind} ${String(Number((diameter / atomsPerMillimetre).toFixed(3)))} mm`;
}

/** Clearance alone is seldom room enough for a tool to be changed: Z up first, then X and Y. */
function goToChangePosition(run: Run): void {
  const because = "the operator changes tools and the tool is retracted to clearance only";
  const place = fact(run, run.machine.retract?.changePosition, "machine.retract.change-position", because);
  if (!place) return;
  const { work, clearance } = run.state;
  const { x, y, z } = place;
  if (z < clearance) {
    refuse(
      run,
      "swap/retracted",
      "the change position lies below the clearance of the job",
      "state a higher Z in `machine.retract.change-position`, or a lower clearance in the job",
      "machine.retract.change-position",
    );
    return;
  }
  if ((work.known & axisBit.z) === 0 || work.at[2] < z) workRapid(run, { z });
  workRapid(run, { x, y });
}
