import { axisBit, linearAxes, rotaryAxes } from "#base";
import { moveWork, workRapid } from "./motion.ts";
import { applyLengthOffset } from "./offsets.ts";
import { retract } from "./retract.ts";
import type { Run } from "./run.ts";

/** Where an operation goes on, on the grid; x y z in atoms, a b c in micro-degrees. */
export interface Destination {
  readonly at: Float64Array;
  /** Axes of `at` that count. */
  readonly known: number;
}

/**
 * From swap height into the work: X and Y at swap height, then the length offset, then Z alone down to clearance. Rotary
 * axes turn with X and Y, while the tool is clear of everything. Retracting by clearance means that Z may be there already.
 */
export function approach(run: Run, destination: Destination): void {
  const { work } = run.state;
  retract(run);
  moveAcross(run, destination);
  const [, , z] = destination.at;
  if ((work.known & axisBit.z) !== 0 && work.at[2] === z && !hasLengthWord(run)) return;
  applyLengthOffset(run);
  workRapid(run, { z });
}

/**
 * With the same tool, from the clearance of one operation to the start of the next: at the higher of both clearances. The
 * length offset is still active and restated before X and Y.
 */
export function goToNext(run: Run, destination: Destination): void {
  const { work } = run.state;
  const [, , z] = destination.at;
  if (z > work.at[2]) workRapid(run, { z });
  applyLengthOffset(run);
  moveAcross(run, destination);
  if (z < work.at[2]) workRapid(run, { z });
}

function hasLengthWord(run: Run): boolean {
  const form = run.machine.lengthOffset?.form;
  return form === "with-first-z" || form === "own-block";
}

/** X and Y as a rapid that always states both, and the rotary axes that differ or were not known. */
function moveAcross(run: Run, { at, known }: Destination): void {
  const { work } = run.state;
  const target = Float64Array.from(work.at);
  let stated = axisBit.x | axisBit.y;
  for (let axis = 0; axis < 6; axis++) {
    const bit = 1 << axis;
    if ((known & rotaryAxes & bit) !== 0 && ((work.known & bit) === 0 || work.at[axis] !== at[axis]))
      stated |= bit;
    if (stated & bit & ~axisBit.z) target[axis] = at[axis];
  }
  moveWork(run, target, stated & (rotaryAxes | (linearAxes & ~axisBit.z)));
}
