import { atomsPerInch, atomsPerUnit, frame } from "#base";
import type { Batch, UnitSystem } from "#base";
import type { InterpreterSetup } from "./run-interpreter.ts";

/** Where the interpreter's machine is, for what has to be told in program coordinates. Lengths in atoms, angles in micro-degrees. */
export interface MachineState {
  units: UnitSystem;
  /** X Y Z A B C of the spindle nose in machine coordinates; the interpreter begins at 0. */
  readonly place: number[];
  workOffset: number;
  lengthOffset: number;
  selected: number;
  /** Program coordinates behind the last motion, atoms: known difference "place after a change". */
  lastMotion: readonly number[];
}

/** Work offsets of the machine: whole quarter inches, all different, so that a wrong one is seen in the traverses to machine Z 0. */
export function workOffsetInches(number: number): readonly [number, number, number] {
  return [number, -number / 2, number / 4];
}

/** The reference point in machine coordinates, inches (NISTIR 6556 Table 2: parameters 5161 to 5163). */
const homeInches = [8, 9, 10] as const;

/** Length of a tool, inches; all different. */
export function lengthInches(number: number): number {
  return number === 0 ? 0 : 1 + number / 4;
}

/**
 * The machine on which our programs are run. Radii are 0, so that the compensated path is the contour that the job states:
 * how a contour is offset is the controller's business.
 */
export const interpreterSetup: InterpreterSetup = {
  tools: Array.from({ length: 20 }, (_, index) => ({
    number: index + 1,
    length: lengthInches(index + 1),
    diameter: 0,
  })),
  parameters: {
    ...Object.fromEntries(
      [1, 2, 3, 4, 5, 6, 7, 8, 9].flatMap((number) =>
        // NISTIR 6556 Table 2: 5221 to 5226 are those of the first coordinate system, 20 on those of the next.
        workOffsetInches(number).map((value, axis) => [5201 + 20 * number + axis, value]),
      ),
    ),
    ...Object.fromEntries(homeInches.map((value, axis) => [5161 + axis, value])),
    // Offsets that a program before has left behind by G92 (5211 to 5216), and that they are on (5210, from memory).
    ...{ 5210: 1, 5211: 0.5, 5212: 0.25, 5213: 0.125 },
  },
};

/** A machine as the interpreter has it when a program begins. */
export function createMachine(units: UnitSystem): MachineState {
  return { units, place: [0, 0, 0, 0, 0, 0], workOffset: 1, lengthOffset: 0, selected: 0, lastMotion: [] };
}

/** What machine coordinates exceed program coordinates by (NISTIR 6556 3.5.11, 3.5.13), atoms. */
function shift({ workOffset, lengthOffset }: MachineState, axis: number): number {
  if (axis > 2) return 0;
  const length = axis === 2 ? lengthInches(lengthOffset) : 0;
  return (workOffsetInches(workOffset)[axis] + length) * atomsPerInch;
}

/** Goes where a row says; axes that it does not state stay. */
export function go(machine: MachineState, batch: Batch, row: number): void {
  for (let axis = 0; axis < 6; axis++) {
    if ((batch.stated[row] & (1 << axis)) === 0) continue;
    const value = [batch.x, batch.y, batch.z, ...(batch.abc ?? [])][axis]?.[row] ?? 0;
    machine.place[axis] = batch.frame[row] === frame.machine ? value : value + shift(machine, axis);
  }
}

/** Takes axes to the reference point. */
export function goHome(machine: MachineState, axes: number): void {
  for (let axis = 0; axis < 6; axis++)
    if (axes & (1 << axis)) machine.place[axis] = (homeInches[axis as 0 | 1 | 2] ?? 0) * atomsPerInch;
}

/** Goes to a place in program coordinates, atoms. */
export function goTo(machine: MachineState, axis: number, value: number): void {
  machine.place[axis] = value + shift(machine, axis);
}

/** Program coordinates of the machine's place, atoms and micro-degrees. */
export function programPlace(machine: MachineState): number[] {
  return machine.place.map((value, axis) => value - shift(machine, axis));
}

/** A length in program units. */
export function inUnits({ units }: MachineState, atoms: number): number {
  return atoms / atomsPerUnit[units];
}

/** Takes the coordinates of the last motion for those of the place: known difference "place after a change". */
export function takeUpLastMotion(machine: MachineState): void {
  for (const [axis, value] of machine.lastMotion.entries())
    machine.place[axis] = value + shift(machine, axis);
}

/** The machine's place behind a motion, as the interpreter prints it. */
export function printedPlace(machine: MachineState): number[] {
  machine.lastMotion = programPlace(machine);
  return machine.lastMotion.map((value, axis) => (axis < 3 ? inUnits(machine, value) : value / 1e6));
}
