import type { Box, NamedBox } from "#base";
import { roundingSlack } from "./watch.ts";
import type { Watch } from "./watch.ts";
import { workOrigin } from "./travel.ts";
import type { Column } from "./state.ts";

/** Makes a column from a box that lies `origin` away; touching it, and rounding, is no entry. */
export function columnOf(
  box: Box,
  name: string,
  origin: readonly [number, number, number] = [0, 0, 0],
): Column {
  const { min, max } = box;
  return {
    name,
    lowX: min[0] - origin[0] + roundingSlack,
    highX: max[0] - origin[0] - roundingSlack,
    lowY: min[1] - origin[1] + roundingSlack,
    highY: max[1] - origin[1] - roundingSlack,
    top: max[2] - origin[2] - roundingSlack,
  };
}

/** Boxes that work motion stays out of, under the work offset in force. */
export function keepOutColumns(watch: Watch): Column[] {
  const { facts, job } = watch;
  const columns = job.fixtures.map((box) => columnOf(box, `the fixture ${box.name}`));
  const origin = workOrigin(watch);
  if (!origin) return columns;
  const named = (box: NamedBox): Column => columnOf(box, `the keep-out box ${box.name}`, origin);
  columns.push(...facts.keepOut.map(named));
  if (facts.rack?.zone) columns.push(columnOf(facts.rack.zone, "the rack zone", origin));
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
    within(range, from[2], to[2], -Infinity, column.top)
  );
}

/** Whether the box that a motion may sweep enters a column: each axis may run ahead of the others. */
export function sweepEnters(column: Column, from: Float64Array, to: Float64Array): boolean {
  return (
    Math.max(from[0], to[0]) > column.lowX &&
    Math.min(from[0], to[0]) < column.highX &&
    Math.max(from[1], to[1]) > column.lowY &&
    Math.min(from[1], to[1]) < column.highY &&
    Math.min(from[2], to[2]) < column.top
  );
}

/** Whether a place in X and Y lies in a column. */
export function isOver(column: Column, x: number, y: number): boolean {
  return x > column.lowX && x < column.highX && y > column.lowY && y < column.highY;
}
