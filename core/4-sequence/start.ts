import { askOperator } from "./confirm.ts";
import { coolantOff } from "./coolant.ts";
import { remark } from "./findings.ts";
import { stateAllModes } from "./modes.ts";
import { cancelLengthOffset, stateWorkOffset } from "./offsets.ts";
import { switchProgramOutputsOn } from "./outputs.ts";
import { retract } from "./retract.ts";
import type { Run } from "./run.ts";
import { stopSpindle } from "./spindle.ts";
import { put } from "./steps.ts";
import { refuse } from "./words.ts";

/**
 * Brings the machine from an unknown state into a known one before anything moves: modes, spindle, coolant; then Z alone
 * to swap height, which is valid whatever length offset is active; only then is that offset cancelled.
 */
export function startProgram(run: Run): void {
  const { job, state, machine, request } = run;
  const first = job.operations[request.operations[0] ?? -1];
  state.source = first?.source ?? 0;
  tellMissing(run);
  const numbered = request.capabilities.words["file.program-number"] === true;
  if (numbered) checkProgramNumber(run);
  put(run, { kind: "program-start", number: numbered ? (job.program.number ?? 0) : 0 });
  stateAllModes(run, first);
  stopSpindle(run);
  coolantOff(run);
  // A retract to clearance is in work coordinates: it has to know which.
  if (first && machine.retract?.by === "clearance") stateWorkOffset(run, first);
  retract(run);
  cancelLengthOffset(run);
  retract(run);
  state.fresh = true;
  askForEmptySpindle(run);
  switchProgramOutputsOn(run);
}

/** Says what of a machine is not stated, until nothing is that a job is checked against. */
function tellMissing({ machine, state, report }: Run): void {
  const tell = (message: string, key: string): void => {
    report(remark("dialect/no-machine", "warning", message, state.source, key));
  };
  if (!machine.declared)
    tell(
      "the dialect file states neither spindle nor travel of a machine of its own: speeds and travel are not checked, and times, inputs and codes that it inherits are those of the shipped dialect",
      "machine",
    );
  const unstated = machine.unsaid.filter((key) => key.startsWith("machine."));
  if (unstated.length > 0)
    tell(
      `of the machine these are not stated, and not checked: ${inCode(unstated)}`,
      unstated[0] ?? "machine",
    );
  const inherited = machine.unsaid.filter((key) => !key.startsWith("machine."));
  if (inherited.length > 0)
    tell(
      `these are not the machine's own, but inherited from a dialect without a machine: ${inCode(inherited)}; state them as they are at the machine`,
      inherited[0] ?? "confirm",
    );
}

const inCode = (keys: readonly string[]): string => keys.map((key) => `\`${key}\``).join(", ");

/** A rack program that does not know what the spindle holds would drive a tool into a filled pocket. */
function askForEmptySpindle(run: Run): void {
  const { state, machine } = run;
  if (machine.swap !== "rack" || state.held !== undefined) return;
  askOperator(run, "EMPTY THE SPINDLE AND CLAMP IT");
  retract(run);
  state.held = 0;
  state.fresh = false;
}

/** A controller that stores programs by number cannot take one without, nor one that it keeps to itself. */
function checkProgramNumber(run: Run): void {
  const { job, request } = run;
  const { from, to } = request.capabilities.programNumbers ?? { from: 0, to: Infinity };
  const { number } = job.program;
  const key = "file.program-number";
  if (number === undefined) {
    const example = 'state one in the job: "program": { "number": 1 }';
    refuse(
      run,
      "lower/program-number",
      "the controller wants a program number, and the job states none",
      example,
      key,
    );
  } else if (number < from || number > to) {
    const what = `program number ${String(number)} is none that the controller has for programs`;
    refuse(run, "lower/program-number", what, `take one from ${String(from)} to ${String(to)}`, key);
  }
}
