import { wasComputed } from "./block.ts";
import { letterOfAxis } from "./letters.ts";
import type { Quantity } from "./quantities.ts";
import { exactValue, onGrid } from "./read-computed.ts";
import type { Reader } from "./reader.ts";
import type { State } from "./state.ts";

/*
 * A place that was worked out is handed on as the grid has it, and the controller stands where the value says. What lies
 * between is kept, so that incremental words do not add it up: three times X[10/3] is 10.
 */

/** Whether the block at hand has a number that was worked out, or an axis is off the grid. */
export function hasResidues({ state, block }: Reader): boolean {
  return state.residues !== 0 || (block.careful && block.computed !== 0);
}

/** What the axes of an absolute motion are off from where the controller has them. */
export function keepResidues(reader: Reader, place: Float64Array, named: number): void {
  const { state, block } = reader;
  for (let axis = 0; axis < 6; axis++) {
    if ((named & (1 << axis)) === 0) continue;
    const letter = letterOfAxis[axis];
    const isExact = !wasComputed(block, letter);
    setResidue(state, axis, isExact ? 0 : exactValue(reader, letter, quantityOf(reader, axis)) - place[axis]);
  }
}

/** The distance that an axis goes on the grid, for one that was worked out or that starts off the grid; keeps the rest. */
export function distanceOnGrid(reader: Reader, place: Float64Array, axis: number, distance: number): number {
  const letter = letterOfAxis[axis];
  const isExact = !wasComputed(reader.block, letter);
  return advance(
    reader,
    place,
    axis,
    isExact ? distance : exactValue(reader, letter, quantityOf(reader, axis)),
  );
}

/** Goes an exact distance from where the controller has the axis: gives the distance on the grid, and keeps the rest. */
export function advance(reader: Reader, place: Float64Array, axis: number, exact: number): number {
  const { state } = reader;
  const quantity = quantityOf(reader, axis);
  // Numbers that were written are added as they are, whatever the units were when the axis came here.
  if (state.residue[axis] === 0 && onGrid(exact, quantity) === exact) return exact;
  const target = place[axis] + state.residue[axis] + exact;
  const reached = onGrid(target, quantity);
  setResidue(state, axis, target - reached);
  return reached - place[axis];
}

/** From here on the axis is on the grid, or it is off by as much. */
export function setResidue(state: State, axis: number, residue: number): void {
  state.residue[axis] = residue;
  const bit = 1 << axis;
  state.residues = residue === 0 ? state.residues & ~bit : state.residues | bit;
}

function quantityOf({ state, quantities }: Reader, axis: number): Quantity {
  return axis < 3 ? state.length : quantities.angle;
}
