import { axes, axisBit, lengthText } from "#base";
import type { Axis } from "#base";
import { findings } from "./findings.ts";
import { tell, tellOnce } from "./watch.ts";
import type { Watch } from "./watch.ts";
import { angleText } from "./words.ts";

/** A place on an axis in words. */
function placeText(watch: Watch, axis: number, place: number): string {
  return axis < 3 ? lengthText(place, watch.state.modes.units) : angleText(place);
}

/**
 * How far work coordinates lie from machine coordinates on an axis, atoms; undefined where that is not known. For Z the
 * spindle nose stands above the tool tip by the tool's length.
 */
function shiftOf(watch: Watch, axis: number): number | undefined {
  if (axis > 2) return 0;
  const { offsets, swap } = watch.state;
  const origin = watch.job.workOffsets[watch.traits.workWords ? offsets.work : Math.max(offsets.work, 1)];
  if (!origin) return undefined;
  if (axis < 2) return origin[axis];
  if (offsets.length === 0 && !offsets.lengthByEffect && watch.traits.lengthWords) return origin[2];
  const length = swap.tool?.length;
  // Without length offsets Z is set by hand for each tool, so that no one origin holds.
  const byHand = watch.facts.lengthOffset === undefined || watch.facts.lengthOffset.form === "none";
  return length === undefined || byHand ? undefined : origin[2] + length;
}

/** Sets the bounds of travel of some axes in work coordinates, or begins a span where the shift is not known. */
export function setTravelWindow(watch: Watch, mask: number): void {
  const { low, high, span } = watch.state.windows;
  for (let axis = 0; axis < 6; axis++) {
    if (!(mask & (1 << axis))) continue;
    const travel = watch.facts.travel[axes[axis]];
    const shift = shiftOf(watch, axis);
    low[axis] = -Infinity;
    high[axis] = Infinity;
    span[axis] = Infinity;
    if (!travel) continue;
    if (shift !== undefined) {
      low[axis] = travel[0] - shift;
      high[axis] = travel[1] - shift;
    } else {
      low[axis] = Infinity;
      high[axis] = -Infinity;
      span[axis] = travel[1] - travel[0];
    }
  }
}

/** Whether the window of an axis is a span that grows with the motion. */
function isSpan(watch: Watch, axis: number): boolean {
  return watch.state.windows.span[axis] !== Infinity;
}

/** The one note that says what is not fully checked. */
export function noteSpans(watch: Watch): void {
  const { facts, job } = watch;
  const boxes = facts.keepOut.length > 0 || facts.rack?.zone !== undefined;
  const unknown = isSpan(watch, 0) || isSpan(watch, 1);
  if (unknown) {
    const what = job.workOffsets.some((origin) => origin)
      ? "This work offset's origin is not known"
      : "Work zero is not known";
    tellOnce(watch, "span", findings["limit/span-only"]({ what, boxes }));
  } else if (isSpan(watch, 2)) {
    tellOnce(
      watch,
      "span",
      findings["limit/span-only"]({ what: "The tool's length is not known, so for Z", boxes: false }),
    );
  }
}

/**
 * limit/travel for the part of an axis that a motion covers.
 *
 * @param least lowest place of the motion in work coordinates, atoms or micro-degrees
 * @param most highest place
 */
export function checkExtent(watch: Watch, axis: number, least: number, most: number): void {
  const { windows } = watch.state;
  if (axis === 2 && least < windows.airFloor) tellNotInAir(watch, least);
  const { low, high } = windows;
  if (least >= low[axis] && most <= high[axis]) return;
  if (isSpan(watch, axis)) {
    growSpan(watch, axis, least, most);
    return;
  }
  const shift = shiftOf(watch, axis) ?? 0;
  if (least < low[axis]) tellBeyond(watch, axis, 0, least + shift, low[axis] + shift);
  if (most > high[axis])
    tellBeyond(watch, axis, 1, most + shift, high[axis] + shift, watch.job.airCut && axis === 2);
}

/** motion/air-cut; from here on only a place that is lower still is told. */
function tellNotInAir(watch: Watch, z: number): void {
  const { units } = watch.state.modes;
  const top = lengthText(watch.job.stock?.max[2] ?? 0, units);
  tell(watch, findings["motion/air-cut"]({ z: lengthText(z, units), top }));
  watch.state.windows.airFloor = z;
}

function growSpan(watch: Watch, axis: number, least: number, most: number): void {
  const { windows } = watch.state;
  const { low, high, span } = windows;
  low[axis] = Math.min(low[axis], least);
  high[axis] = Math.max(high[axis], most);
  const bit = 1 << (2 * axis);
  if (high[axis] - low[axis] <= span[axis] || windows.outside & bit) return;
  windows.outside |= bit;
  const detail = {
    axis: axes[axis].toUpperCase(),
    span: placeText(watch, axis, high[axis] - low[axis]),
    travel: placeText(watch, axis, span[axis]),
  };
  tell(watch, findings["limit/span"](detail));
}

/** Names an end of travel once for each tool and work offset. */
function tellBeyond(
  watch: Watch,
  axis: number,
  side: 0 | 1,
  place: number,
  end: number,
  raised = false,
): void {
  const { windows } = watch.state;
  const bit = 1 << (2 * axis + side);
  if (windows.outside & bit) return;
  windows.outside |= bit;
  const detail = {
    axis: axes[axis].toUpperCase(),
    place: placeText(watch, axis, place),
    end: placeText(watch, axis, end),
    beyond: placeText(watch, axis, Math.abs(place - end)),
    raised,
  };
  tell(watch, findings["limit/travel"](detail));
}

/** limit/travel at the end of a row in work coordinates. */
export function checkEndTravel(watch: Watch): void {
  const { row } = watch;
  for (let axis = 0; axis < 6; axis++) {
    if (row.known & row.moved & (1 << axis)) checkExtent(watch, axis, row.at[axis], row.at[axis]);
  }
}

/**
 * How far the place of Z that has travel lies above the one that a machine-frame row names, atoms: where that is the tip of
 * the tool, the spindle nose stands above it by the tool's length. Unknown lengths count as none.
 */
function noseAbove(watch: Watch): number {
  const { offsets, swap } = watch.state;
  if (watch.facts.retract?.actsOn !== "tool-tip") return 0;
  const active = offsets.length > 0 || offsets.lengthByEffect;
  return active ? (swap.tool?.length ?? 0) : 0;
}

/** limit/travel of a row in machine coordinates: retracts, the way to a swap and in the rack, the parking place. */
export function checkMachineTravel(watch: Watch): void {
  const { row, facts } = watch;
  for (let axis = 0; axis < 6; axis++) {
    const name: Axis = axes[axis];
    const travel = facts.travel[name];
    if (!travel || !(row.known & axisBit[name])) continue;
    const place = row.at[axis] + (axis === 2 ? noseAbove(watch) : 0);
    if (place < travel[0]) tellBeyond(watch, axis, 0, place, travel[0]);
    if (place > travel[1]) tellBeyond(watch, axis, 1, place, travel[1]);
  }
}

/** Whether the origin of the work offset in force is known, so that boxes in machine coordinates can be placed. */
export function workOrigin(watch: Watch): readonly [number, number, number] | undefined {
  return watch.job.workOffsets[
    watch.traits.workWords ? watch.state.offsets.work : Math.max(watch.state.offsets.work, 1)
  ];
}
