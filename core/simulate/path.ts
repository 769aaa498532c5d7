import type { Shape } from "./shape.ts";

/** A straight motion of the tip, filled in anew for each; mm, work coordinates. */
export interface Path {
  x0: number;
  y0: number;
  /** Height at the start; of a motion along Z alone, its lowest. */
  z0: number;
  x1: number;
  y1: number;
  z1: number;
  /** Length in the XY plane, and direction there; 0, 1, 0 along Z. */
  length: number;
  alongX: number;
  alongY: number;
  /** Rise for each mm of that length. */
  slope: number;
}

/** A path of which nothing is known yet. */
export function createPath(): Path {
  return { x0: 0, y0: 0, z0: 0, x1: 0, y1: 0, z1: 0, length: 0, alongX: 1, alongY: 0, slope: 0 };
}

/** Lengths below this are no motion, mm: far below an increment of a controller. */
const noLength = 1e-9;

/** Sets the ends of a path. */
export function setPath(
  path: Path,
  x0: number,
  y0: number,
  z0: number,
  x1: number,
  y1: number,
  z1: number,
): void {
  const dx = x1 - x0;
  const dy = y1 - y0;
  const length = Math.sqrt(dx * dx + dy * dy);
  const moves = length > noLength;
  path.x0 = x0;
  path.y0 = y0;
  path.z0 = moves ? z0 : Math.min(z0, z1);
  path.x1 = x1;
  path.y1 = y1;
  path.z1 = moves ? z1 : path.z0;
  path.length = moves ? length : 0;
  path.alongX = moves ? dx / length : 1;
  path.alongY = moves ? dy / length : 0;
  path.slope = moves ? (z1 - z0) / length : 0;
}

/** The part of a row of cells that a motion sweeps, from the one X to the other; mm. */
export interface Span {
  from: number;
  to: number;
}

/**
 * Where the sweep of a disc crosses a row: a hull of two discs, which is convex, so that each row is one stretch.
 *
 * @returns false where it does not
 */
export function spanAt(path: Path, radius: number, y: number, span: Span): boolean {
  const { x0, x1, length, alongX, alongY } = path;
  const square = radius * radius;
  const fromStart = y - path.y0;
  let from = Infinity;
  let to = -Infinity;
  let half = square - fromStart * fromStart;
  if (half >= 0) {
    half = Math.sqrt(half);
    from = x0 - half;
    to = x0 + half;
  }
  if (length > 0) {
    const fromEnd = y - path.y1;
    half = square - fromEnd * fromEnd;
    if (half >= 0) {
      half = Math.sqrt(half);
      if (x1 - half < from) from = x1 - half;
      if (x1 + half > to) to = x1 + half;
    }
    // The two straight edges, a radius to the left and to the right of the path.
    const side = radius * alongX;
    const left = (fromStart - side) / alongY;
    if (left >= 0 && left <= length) {
      const x = x0 - radius * alongY + alongX * left;
      if (x < from) from = x;
      if (x > to) to = x;
    }
    const right = (fromStart + side) / alongY;
    if (right >= 0 && right <= length) {
      const x = x0 + radius * alongY + alongX * right;
      if (x < from) from = x;
      if (x > to) to = x;
    }
  }
  span.from = from;
  span.to = to;
  return from <= to;
}

/**
 * How far along the path the tip stands when the tool comes lowest over a place. Tools are convex, and so is the height over
 * the place as the tool passes: the lowest point on the path is the lowest on its line, or the end next to it.
 *
 * @param along place along the path, from its start; mm
 * @param aside distance from its line, to either side; mm
 */
export function lowestAt(shape: Shape, path: Path, along: number, aside: number): number {
  if (path.slope === 0) return along <= 0 ? 0 : Math.min(along, path.length);
  if (shape.kind === "corner" && shape.flat > 0) return lowestOfCorner(shape, path, along, aside);
  const at = along - Math.sign(path.slope) * leadOf(shape, path.slope, aside);
  return at <= 0 ? 0 : at >= path.length ? path.length : at;
}

/** How far the lower end of a sloped motion is ahead of the place under it, mm. */
function leadOf(shape: Shape, slope: number, aside: number): number {
  const steep = Math.abs(slope);
  const reach = Math.sqrt(Math.max(shape.radius * shape.radius - aside * aside, 0));
  if (shape.kind === "flat") return reach;
  if (shape.kind === "cone") {
    if (steep >= shape.slope) return reach;
    const onCone = (Math.abs(aside) * steep) / Math.sqrt(shape.slope * shape.slope - steep * steep);
    const onFlat = Math.sqrt(Math.max(shape.flat * shape.flat - aside * aside, 0));
    return Math.min(Math.max(onCone, onFlat), reach);
  }
  const square = shape.corner * shape.corner - aside * aside;
  return Math.min(steep * Math.sqrt(Math.max(square, 0) / (1 + steep * steep)), reach);
}

/** Halvings: the place is found to a 65,536th of the path. */
const halvings = 16;

/** For a corner round a flat end there is no closed form: halves in on the place from which on the surface rises again. */
function lowestOfCorner(shape: Shape, path: Path, along: number, aside: number): number {
  const reach = Math.sqrt(Math.max(shape.radius * shape.radius - aside * aside, 0));
  let low = Math.max(0, along - reach);
  let high = Math.min(path.length, along + reach);
  // Most paths are short, and lowest at one of their ends.
  if (low >= high || isRising(shape, path, along, aside, low)) return low;
  if (!isRising(shape, path, along, aside, high)) return high;
  for (let step = 0; step < halvings; step++) {
    const middle = (low + high) / 2;
    if (isRising(shape, path, along, aside, middle)) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** Whether the surface over a place rises as a tool with a corner goes on from a point of its path. */
function isRising(shape: Shape, path: Path, along: number, aside: number, at: number): boolean {
  const ahead = at - along;
  const radius = Math.sqrt(aside * aside + ahead * ahead);
  const beyond = radius - shape.flat;
  if (beyond <= 0) return path.slope > 0;
  const rest = shape.corner * shape.corner - beyond * beyond;
  if (rest <= 0) return ahead > 0;
  return path.slope + (beyond / Math.sqrt(rest)) * (ahead / radius) > 0;
}
