import { coolantOff } from "./coolant.ts";
import { raiseHood } from "./hood.ts";
import { restoreModes } from "./modes.ts";
import { cancelLengthOffset } from "./offsets.ts";
import { switchAllOutputsOff } from "./outputs.ts";
import { restoreWorkOffset } from "./motion.ts";
import { park } from "./pause.ts";
import { retract } from "./retract.ts";
import type { Run } from "./run.ts";
import { orientSpindle, stopSpindle } from "./spindle.ts";
import { put } from "./steps.ts";
import { emptySpindle } from "./swap-controller.ts";
import { returnLastTool } from "./swap-rack.ts";
import { fact, need } from "./words.ts";

/** Leaves the machine safe: Z up, coolant off, hood up, outputs off, stop confirmed, tool put away, offset cancelled. */
export function finishProgram(run: Run): void {
  const { machine, state } = run;
  retract(run);
  coolantOff(run);
  raiseHood(run);
  switchAllOutputsOff(run);
  stopSpindle(run);
  retract(run);
  cancelLengthOffset(run);
  retract(run);
  const returns = machine.swap === "rack" && machine.rack?.atEnd === "return";
  if (returns && state.held) {
    orientSpindle(run);
    returnLastTool(run);
  }
  if (machine.endsEmpty && state.held !== 0) emptySpindle(run);
  if (machine.park) park(run, "it ends at the parking place");
  const endResets = fact(run, machine.endResets, "stops.end-resets", "a program has an end");
  if (endResets === false) {
    restoreWorkOffset(run);
    restoreModes(run);
  }
  if (need(run, "stops.end", "a program has an end")) put(run, { kind: "program-end" });
}
