import type { HeightField, Patch } from "./field.ts";
import { noteCut, patchOf, risesAbove } from "./field.ts";
import type { Path, Span } from "./path.ts";
import { lowestAt, spanAt } from "./path.ts";
import type { Shape } from "./shape.ts";

/** A field being swept, with what each sweep came to; filled in anew for each. */
export interface Sweeper {
  readonly field: HeightField;
  readonly path: Path;
  /** Whether material is taken away, or only looked for. */
  removes: boolean;
  /** How far the tool's surface is raised, mm: what it enters by less is not counted. */
  lift: number;
  /** Whether this tool has cut at the start of the path, so that what lies under it there need not be looked at. */
  begun: boolean;
  /** Sum of the heights taken away, mm: times the area of a cell it is a volume. */
  removed: number;
  /** The most that material stood above the surface of the tool where it went, mm; 0 where it met none. */
  deepest: number;
  /** The most that material taken away stood above the tip, mm. */
  engaged: number;
  readonly patch: Patch;
  readonly span: Span;
}

/** A sweeper over a field. */
export function createSweeper(field: HeightField, path: Path): Sweeper {
  return {
    field,
    path,
    removes: true,
    lift: 0,
    begun: false,
    removed: 0,
    deepest: 0,
    engaged: 0,
    patch: { firstColumn: 0, lastColumn: 0, firstRow: 0, lastRow: 0 },
    span: { from: 0, to: 0 },
  };
}

/**
 * Sweeps a shape along the path: each cell whose centre it passes over is left no higher than the lowest place of its surface
 * there. That place is exact for a straight path at any slope, so that the only error is that of looking at cells by their
 * centres.
 */
export function sweep(sweeper: Sweeper, shape: Shape): void {
  const { field, path, patch, lift } = sweeper;
  const { radius } = shape;
  sweeper.removed = sweeper.deepest = sweeper.engaged = 0;
  const lowest = Math.min(path.z0, path.z1) + lift;
  const [lowX, highX] = path.x0 < path.x1 ? [path.x0, path.x1] : [path.x1, path.x0];
  const [lowY, highY] = path.y0 < path.y1 ? [path.y0, path.y1] : [path.y1, path.y0];
  if (lowest >= field.top) return;
  if (!patchOf(field, patch, lowX - radius, highX + radius, lowY - radius, highY + radius)) return;
  // What stands at the bottom is nothing.
  if (!risesAbove(field, patch, Math.max(lowest, field.bottom))) return;
  if (shape.kind === "flat" && path.slope === 0) sweepLevel(sweeper, radius);
  else sweepSurface(sweeper, shape);
  if (sweeper.removes && sweeper.removed > 0) noteCut(field, patch);
}

/** A flat end at one height: rows of cells are cut off at it. */
function sweepLevel(sweeper: Sweeper, radius: number): void {
  const { field, path, patch, span, begun } = sweeper;
  const { cellX, cellY, columns } = field;
  const begins = begun && path.length > 0;
  for (let row = patch.firstRow; row <= patch.lastRow; row++) {
    const y = field.y + (row + 0.5) * cellY;
    if (!spanAt(path, radius, y, span)) continue;
    const from = Math.max(0, Math.ceil((span.from - field.x) / cellX - 0.5));
    const to = Math.min(columns, Math.ceil((span.to - field.x) / cellX - 0.5));
    const offset = y - path.y0;
    const square = radius * radius - offset * offset;
    if (!begins || square < 0) cutRow(sweeper, row, from, to);
    else {
      // The disc under the start has been cut.
      const half = Math.sqrt(square);
      cutRow(sweeper, row, from, Math.min(to, Math.ceil((path.x0 - half - field.x) / cellX - 0.5)));
      cutRow(sweeper, row, Math.max(from, Math.ceil((path.x0 + half - field.x) / cellX - 0.5)), to);
    }
  }
}

/** Cuts the cells `from` to `to` (not included) of a row off at the height of the path. */
function cutRow(sweeper: Sweeper, row: number, from: number, to: number): void {
  const { field, path, removes, lift } = sweeper;
  const { heights, bottom } = field;
  const level = path.z0 + lift;
  const floor = Math.fround(Math.max(level, bottom));
  const begin = row * field.columns;
  let sum = 0;
  let highest = floor;
  for (let index = begin + from; index < begin + to; index++) {
    const height = heights[index];
    if (height <= floor) continue;
    if (height > highest) highest = height;
    if (!removes) continue;
    sum += height - floor;
    heights[index] = floor;
  }
  if (highest === floor) return;
  sweeper.removed += sum;
  const depth = highest - level;
  if (depth > sweeper.deepest) sweeper.deepest = depth;
  if (depth + lift > sweeper.engaged) sweeper.engaged = depth + lift;
}

/** Any shape along any path: the lowest place of the surface is worked out for each cell that stands above the tip. */
function sweepSurface(sweeper: Sweeper, shape: Shape): void {
  const { field, path, patch, span } = sweeper;
  const { cellX, cellY, columns } = field;
  for (let row = patch.firstRow; row <= patch.lastRow; row++) {
    const y = field.y + (row + 0.5) * cellY;
    if (!spanAt(path, shape.radius, y, span)) continue;
    const from = Math.max(0, Math.ceil((span.from - field.x) / cellX - 0.5));
    const to = Math.min(columns, Math.ceil((span.to - field.x) / cellX - 0.5));
    sweepRow(sweeper, shape, row, from, to);
  }
}

/** A row of a surface. Written out by kinds of shapes, and on local variables: this is where the time goes. */
function sweepRow(sweeper: Sweeper, shape: Shape, row: number, from: number, to: number): void {
  const { field, path, removes, lift, begun } = sweeper;
  const { heights, bottom, cellX } = field;
  const { length, alongX, alongY, slope } = path;
  const { radius, flat, corner } = shape;
  const rises = shape.kind === "cone" ? shape.slope : 0;
  const isFlat = shape.kind === "flat";
  const raised = path.z0 + lift;
  const offsetY = field.y + (row + 0.5) * field.cellY - path.y0;
  const lowest = Math.max(Math.min(path.z0, path.z1) + lift, bottom);
  const begins = begun && length > 0;
  const begin = row * field.columns;
  // A slope is lowest where the rim passes, which rounding may put outside of it.
  const squareRadius = radius * radius * (1 + 1e-9);
  const squareFlat = flat * flat;
  const squareCorner = corner * corner;
  let offsetX = field.x + (from + 0.5) * cellX - path.x0;
  let along = offsetX * alongX + offsetY * alongY;
  const step = cellX * alongX;
  let { removed, deepest, engaged } = sweeper;
  for (let index = begin + from; index < begin + to; index++, offsetX += cellX, along += step) {
    const height = heights[index];
    if (height <= lowest) continue;
    const aside = offsetY * alongX - offsetX * alongY;
    let at = 0;
    if (slope !== 0) at = lowestAt(shape, path, along, aside);
    else if (along > 0) at = along < length ? along : length;
    if (begins && at === 0) continue;
    const behind = along - at;
    const distance = aside * aside + behind * behind;
    if (distance > squareRadius) continue;
    const tip = raised + slope * at;
    let surface = tip;
    if (!isFlat && distance > squareFlat) {
      const beyond = Math.sqrt(distance) - flat;
      surface +=
        rises === 0 ? corner - Math.sqrt(Math.max(squareCorner - beyond * beyond, 0)) : beyond * rises;
    }
    if (height <= surface) continue;
    if (height - surface > deepest) deepest = height - surface;
    if (height - tip > engaged) engaged = height - tip;
    if (!removes) continue;
    if (surface < bottom) surface = bottom;
    removed += height - surface;
    heights[index] = surface;
  }
  sweeper.removed = removed;
  sweeper.deepest = deepest;
  sweeper.engaged = engaged;
}
