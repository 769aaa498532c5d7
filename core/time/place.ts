import type { JobFacts, MachineFacts } from "#base";

/*
 * Where the tool stands, for the length of its ways. Places are kept in machine coordinates where the shift of the work offset is
 * known, and otherwise in a space of their own, so that a way from one to the other counts as none instead of as a guess.
 */

/** A place of X, Y and Z. */
export interface Place {
  readonly at: Float64Array;
  /** 0: machine coordinates; above: work coordinates of unknown shift; `lost`: unknown. */
  readonly space: Int32Array;
  /** Shift from work to machine coordinates where it is known, and the space of work coordinates. */
  readonly shift: Float64Array;
  readonly workSpace: Int32Array;
  spaces: number;
  workOffset: number;
  lengthActive: boolean;
}

/** The space of a place that nobody knows. */
const lost = -1;

/** A place of which nothing is known. */
export function createPlace(): Place {
  return {
    at: new Float64Array(3),
    space: new Int32Array(3).fill(lost),
    shift: new Float64Array(3),
    workSpace: Int32Array.of(1, 1, 1),
    spaces: 1,
    workOffset: 1,
    lengthActive: false,
  };
}

/** Works out the shift of axes anew, after another offset. */
export function reshift(place: Place, facts: MachineFacts, job: JobFacts, tool: number, mask: number): void {
  const origin = job.workOffsets[place.workOffset];
  const length = job.tools.find(({ number }) => number === tool)?.length;
  const byHand = facts.lengthOffset === undefined || facts.lengthOffset.form === "none";
  for (let axis = 0; axis < 3; axis++) {
    if (!(mask & (1 << axis))) continue;
    const nose = axis < 2 || !place.lengthActive ? 0 : length;
    const known = origin !== undefined && nose !== undefined && !(axis === 2 && byHand);
    place.shift[axis] = known ? origin[axis] + nose : 0;
    place.workSpace[axis] = known ? 0 : ++place.spaces;
  }
}

/** Forgets where axes are. */
export function lose(place: Place, mask: number): void {
  for (let axis = 0; axis < 3; axis++) if (mask & (1 << axis)) place.space[axis] = lost;
}

/**
 * Goes to a place on an axis.
 *
 * @returns the way, atoms with its sign; 0 where nobody knows where it begins
 */
export function go(place: Place, axis: number, to: number, machine: boolean): number {
  const space = machine ? 0 : place.workSpace[axis];
  const at = machine ? to : to + place.shift[axis];
  const way = place.space[axis] === space ? at - place.at[axis] : 0;
  place.at[axis] = at;
  place.space[axis] = space;
  return way;
}

/** Whether X, Y and Z stand at known places of the work. */
export function isInWork({ space, workSpace }: Place): boolean {
  return space[0] === workSpace[0] && space[1] === workSpace[1] && space[2] === workSpace[2];
}
