import {
  centreByRadius,
  createArcShape,
  crossesRectangle,
  largestShares,
  lengthText,
  linearAxes,
  rowKind,
  shapeArc,
} from "#base";
import type { ArcShape, Plane, UnitSystem } from "#base";
import { isOver } from "./boxes.ts";
import { checkShares } from "./axis-feed.ts";
import { checkFeed, perMinute } from "./feed.ts";
import { findings } from "./findings.ts";
import type { Column } from "./window-state.ts";
import { checkExtent } from "./travel.ts";
import { tell, tellOnce } from "./watch.ts";
import type { Watch } from "./watch.ts";

/** Planes in the order of the row kinds, with the index of their first, second and normal axis. */
const planes = [
  { name: "xy", first: 0, second: 1, normal: 2 },
  { name: "zx", first: 2, second: 0, normal: 1 },
  { name: "yz", first: 1, second: 2, normal: 0 },
] as const satisfies readonly { name: Plane; first: number; second: number; normal: number }[];

type ArcPlane = (typeof planes)[number];

/** A chord may exceed the diameter by the share that a calculation in doubles is off (NISTIR 6556 allows 1e-12). */
const chordShare = 1 + 1e-12;

/** arc/plane, for arcs and for cycles, which need XY. */
export function checkPlane(watch: Watch, wanted: Plane): void {
  const { modes } = watch.state;
  if (modes.plane !== undefined && modes.plane !== wanted) {
    tell(watch, findings["arc/plane"]({ wanted: wanted.toUpperCase(), selected: modes.plane.toUpperCase() }));
  }
  modes.plane = wanted;
}

/** All rules for an arc but those of approach, spindle and compensation. */
export function checkArc(watch: Watch): void {
  const { row, state } = watch;
  const plane = planes[(row.kind - rowKind.arcXy) % 3];
  checkPlane(watch, plane.name);
  const shape = createArcShape();
  const known = (state.work.known & linearAxes) === linearAxes && (row.known & linearAxes) === linearAxes;
  if (!known) {
    checkFeed(watch);
    return;
  }
  const fits = shapeOf(watch, plane, shape);
  const length = arcLength(watch, plane, shape);
  checkFeed(watch, length);
  if (!fits) return;
  checkArcAxes(watch, plane, shape, length);
  const { low1, high1, low2, high2 } = shape;
  const start = state.work.at[plane.normal];
  const end = row.at[plane.normal];
  checkExtent(watch, plane.first, low1, high1);
  checkExtent(watch, plane.second, low2, high2);
  checkExtent(watch, plane.normal, Math.min(start, end), Math.max(start, end));
  checkArcKeepOut(watch, plane, shape);
}

/** Length along an arc or helix, atoms. */
function arcLength(watch: Watch, plane: ArcPlane, shape: ArcShape): number {
  const { row, state } = watch;
  const circle = shape.radius * shape.angle;
  const rise = row.at[plane.normal] - state.work.at[plane.normal];
  return Math.sqrt(circle * circle + rise * rise);
}

/** limit/feed of each axis: in the plane its share is largest where the tangent is nearest to it. */
function checkArcAxes(watch: Watch, plane: ArcPlane, shape: ArcShape, length: number): void {
  const { row, state } = watch;
  if (row.feed <= state.windows.freeFeed || !(length > 0)) return;
  const normal = Math.abs(row.at[plane.normal] - state.work.at[plane.normal]) / length;
  const inPlane = Math.sqrt(Math.max(1 - normal * normal, 0));
  const [first, second] = largestShares(shape);
  const shares = [0, 0, 0];
  shares[plane.first] = first * inPlane;
  shares[plane.second] = second * inPlane;
  shares[plane.normal] = normal;
  checkShares(watch, perMinute(watch, length), shares);
}

/** arc/radius; fills in the shape. False where there is no sensible one. */
function shapeOf(watch: Watch, plane: ArcPlane, shape: ArcShape): boolean {
  const { row, state } = watch;
  const p0 = state.work.at[plane.first];
  const q0 = state.work.at[plane.second];
  const p1 = row.at[plane.first];
  const q1 = row.at[plane.second];
  const byRadius = row.kind >= rowKind.radiusXy;
  if (byRadius) {
    if (!checkChord(watch, p1 - p0, q1 - q0)) return false;
    centreByRadius(shape, p0, q0, p1, q1, row.c1, row.turns < 0 ? -1 : 1);
  } else {
    shape.centre1 = row.c1;
    shape.centre2 = row.c2;
    if (!checkRadii(watch, p0 - row.c1, q0 - row.c2, p1 - row.c1, q1 - row.c2)) return false;
  }
  shapeArc(shape, p0, q0, p1, q1, row.turns);
  return true;
}

/** arc/radius for an arc by radius: it spans its chord, and is no full circle. */
function checkChord(watch: Watch, dp: number, dq: number): boolean {
  const { row, state } = watch;
  const chord = Math.sqrt(dp * dp + dq * dq);
  const radius = Math.abs(row.c1);
  if (chord > 0 && chord <= 2 * radius * chordShare) return true;
  const { units } = state.modes;
  tell(watch, findings["arc/chord"]({ chord: lengthText(chord, units), radius: lengthText(radius, units) }));
  return false;
}

/** arc/radius for an arc by centre. */
function checkRadii(watch: Watch, dp0: number, dq0: number, dp1: number, dq1: number): boolean {
  const tolerance = watch.facts.arcTolerance;
  if (!tolerance) {
    tellOnce(watch, "arc-tolerance", findings["arc/tolerance-undeclared"]());
    return true;
  }
  const units: UnitSystem = watch.state.modes.units;
  const start = Math.sqrt(dp0 * dp0 + dq0 * dq0);
  const end = Math.sqrt(dp1 * dp1 + dq1 * dq1);
  const allowed = Math.max(tolerance[units], tolerance.relative * start);
  if (start > 0 && end > 0 && Math.abs(start - end) <= allowed) return true;
  const text = (length: number): string => lengthText(length, units);
  tell(watch, findings["arc/radius"]({ start: text(start), end: text(end), allowed: text(allowed) }));
  return false;
}

/** limit/keep-out for an arc: exactly in XY, by its extent in the other planes. */
function checkArcKeepOut(watch: Watch, plane: ArcPlane, shape: ArcShape): void {
  const { row, state } = watch;
  const { columns } = state.windows;
  for (const column of columns) {
    const enters =
      plane.name === "xy" ? entersFlat(watch, shape, column) : entersUpright(watch, plane, shape, column);
    if (enters) tell(watch, findings["limit/keep-out"]({ box: column.name }), row.offset);
  }
}

function entersFlat(watch: Watch, shape: ArcShape, column: Column): boolean {
  const { row, state } = watch;
  if (Math.min(row.at[2], state.work.at[2]) >= column.top) return false;
  if (shape.high1 <= column.lowX || shape.low1 >= column.highX) return false;
  if (shape.high2 <= column.lowY || shape.low2 >= column.highY) return false;
  if (isOver(column, row.at[0], row.at[1]) || isOver(column, state.work.at[0], state.work.at[1])) return true;
  return crossesRectangle(shape, column.lowX, column.highX, column.lowY, column.highY);
}

function entersUpright(watch: Watch, plane: ArcPlane, shape: ArcShape, column: Column): boolean {
  const { row, state } = watch;
  const low = [0, 0, 0];
  const high = [0, 0, 0];
  low[plane.first] = shape.low1;
  high[plane.first] = shape.high1;
  low[plane.second] = shape.low2;
  high[plane.second] = shape.high2;
  low[plane.normal] = Math.min(row.at[plane.normal], state.work.at[plane.normal]);
  high[plane.normal] = Math.max(row.at[plane.normal], state.work.at[plane.normal]);
  const over =
    high[0] > column.lowX && low[0] < column.highX && high[1] > column.lowY && low[1] < column.highY;
  return over && low[2] < column.top;
}

/** Axes that a work row of this kind needs to be known before it starts. */
export function axesOfStart(kind: number): number {
  if (kind < rowKind.arcXy || kind > rowKind.radiusYz) return 0;
  const plane = planes[(kind - rowKind.arcXy) % 3];
  return (1 << plane.first) | (1 << plane.second);
}
