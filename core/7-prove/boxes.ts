import type { Box, NamedBox } from "#base";
import { roundingSlack } from "./watch.ts";
import type { Watch } from "./watch.ts";
import { workOrigin } from "./travel.ts";
import type { Column } from "./window-state.ts";

/** Radius of the tool in the spindle, atoms; 0 where it is not known, so that its centre alone counts. */
function toolRadius(watch: Watch): number {
  return (watch.state.swap.tool?.diameter ?? 0) / 2;
}

/** Makes a column from a box that lies `origin` away, `grown` to all sides; touching it, and rounding, is no entry. */
function columnOf(
  box: Box,
  name: string,
  grown: number,
  origin: readonly [number, number, number] = [0, 0, 0],
): Column {
  const { min, max } = box;
  const margin = grown - roundingSlack;
  return {
    name,
    lowX: min[0] - origin[0] - margin,
    highX: max[0] - origin[0] + margin,
    lowY: min[1] - origin[1] - margin,
    highY: max[1] - origin[1] + margin,
    top: max[2] - origin[2] - roundingSlack,
    corner: 0,
  };
}

/** The stock, with all around it that is nearer than the radius of the tool in the spindle; undefined where none is stated. */
export function stockColumn(watch: Watch): Column | undefined {
  const { stock } = watch.job;
  const radius = toolRadius(watch);
  return stock && { ...columnOf(stock, "the stock", radius), corner: Math.max(radius - roundingSlack, 0) };
}

/**
 * Boxes that work motion stays out of, under the work offset in force, each grown by the radius of the tool in the spindle.
 * They keep their square edges, so that a tool stays a little further away from these than it must.
 */
export function keepOutColumns(watch: Watch): Column[] {
  const { facts, job } = watch;
  const radius = toolRadius(watch);
  const columns = job.fixtures.map((box) => columnOf(box, `the fixture ${box.name}`, radius));
  const origin = workOrigin(watch);
  if (!origin) return columns;
  const named = (box: NamedBox): Column => columnOf(box, `the keep-out box ${box.name}`, radius, origin);
  columns.push(...facts.keepOut.map(named));
  if (facts.rack?.zone) columns.push(columnOf(facts.rack.zone, "the rack zone", radius, origin));
  return columns;
}

/** The part of a line from `start` to `end`, as shares 0 to 1, in which it is strictly between `low` and `high`. */
function within(
  range: { from: number; to: number },
  start: number,
  end: number,
  low: number,
  high: number,
): boolean {
  if (start === end) return start > low && start < high;
  const first = (low - start) / (end - start);
  const second = (high - start) / (end - start);
  range.from = Math.max(range.from, Math.min(first, second));
  range.to = Math.min(range.to, Math.max(first, second));
  return range.from < range.to;
}

/** Whether a straight motion enters a column. Places in work coordinates, atoms. */
export function lineEnters(column: Column, from: Float64Array, to: Float64Array): boolean {
  const range = { from: 0, to: 1 };
  return (
    within(range, from[0], to[0], column.lowX, column.highX) &&
    within(range, from[1], to[1], column.lowY, column.highY) &&
    within(range, from[2], to[2], -Infinity, column.top) &&
    (column.corner === 0 || partEnters(column, from, to, range))
  );
}

/** Distance of the place nearest to an edge from the box within the rounded corners, for a box of places; 0 inside it. */
function gapTo(column: Column, lowX: number, highX: number, lowY: number, highY: number): number {
  const { corner } = column;
  const x = Math.max(column.lowX + corner - highX, lowX - column.highX + corner, 0);
  const y = Math.max(column.lowY + corner - highY, lowY - column.highY + corner, 0);
  return Math.hypot(x, y);
}

/** Steps of the search for the nearest place of a line: each leaves two thirds, so that 1e6 mm shrink below an atom. */
const searchSteps = 80;

/** Whether a part of a line enters a column with round edges. Its distance from the box has one least place: halved in on. */
function partEnters(
  column: Column,
  from: Float64Array,
  to: Float64Array,
  part: { readonly from: number; readonly to: number },
): boolean {
  const gap = (share: number): number => {
    const x = from[0] + share * (to[0] - from[0]);
    const y = from[1] + share * (to[1] - from[1]);
    return gapTo(column, x, x, y, y);
  };
  let { from: first, to: last } = part;
  for (let step = 0; step < searchSteps; step++) {
    const third = (last - first) / 3;
    if (gap(first + third) <= gap(last - third)) last -= third;
    else first += third;
  }
  return gap((first + last) / 2) < column.corner;
}

/** Whether the box that a motion may sweep enters a column: each axis may run ahead of the others. */
export function sweepEnters(column: Column, from: Float64Array, to: Float64Array): boolean {
  return (
    Math.max(from[0], to[0]) > column.lowX &&
    Math.min(from[0], to[0]) < column.highX &&
    Math.max(from[1], to[1]) > column.lowY &&
    Math.min(from[1], to[1]) < column.highY &&
    Math.min(from[2], to[2]) < column.top &&
    (column.corner === 0 || gapOfSweep(column, from, to) < column.corner)
  );
}

function gapOfSweep(column: Column, from: Float64Array, to: Float64Array): number {
  const [x, y] = from;
  return gapTo(column, Math.min(x, to[0]), Math.max(x, to[0]), Math.min(y, to[1]), Math.max(y, to[1]));
}

/** Whether a place in X and Y lies in a column. */
export function isOver(column: Column, x: number, y: number): boolean {
  const within = x > column.lowX && x < column.highX && y > column.lowY && y < column.highY;
  return within && (column.corner === 0 || gapTo(column, x, x, y, y) < column.corner);
}
