import type { NamedBox } from "#base";
import { atomsPerMillimetre, lineCrosses } from "#base";
import type { Path } from "./path.ts";

/** A fixture in mm, work coordinates. What is above counts: the tool comes from there. */
export interface Fixture {
  readonly name: string;
  readonly lowX: number;
  readonly highX: number;
  readonly lowY: number;
  readonly highY: number;
  readonly top: number;
}

/** A fixture in mm. */
export function fixtureOf({ name, min, max }: NamedBox): Fixture {
  const [lowX, lowY] = min.map((place) => place / atomsPerMillimetre);
  const [highX, highY, top] = max.map((place) => place / atomsPerMillimetre);
  return { name, lowX, highX, lowY, highY, top };
}

/**
 * How far below the fixture's top something of a radius goes in it, mm; 0 where it does not touch. Exact but for a slope: over
 * the part of the path that is below the top, its lowest end counts.
 *
 * @param lift how far above the tip it begins
 */
export function depthIn(fixture: Fixture, path: Path, radius: number, lift: number): number {
  const { x0, y0, x1, y1 } = path;
  const z0 = path.z0 + lift;
  const z1 = path.z1 + lift;
  const lowest = Math.min(z0, z1);
  if (lowest >= fixture.top) return 0;
  // Most motions are far away.
  if (Math.min(x0, x1) - radius >= fixture.highX || Math.max(x0, x1) + radius <= fixture.lowX) return 0;
  if (Math.min(y0, y1) - radius >= fixture.highY || Math.max(y0, y1) + radius <= fixture.lowY) return 0;
  const reaches = z0 === z1 ? 0 : (fixture.top - z0) / (z1 - z0);
  const from = z0 > fixture.top ? reaches : 0;
  const to = z1 > fixture.top ? reaches : 1;
  const at = (share: number): [number, number] => [x0 + share * (x1 - x0), y0 + share * (y1 - y0)];
  return distance(fixture, ...at(from), ...at(to)) < radius ? fixture.top - lowest : 0;
}

/** Distance of a line from a rectangle, mm; 0 where it goes through. */
function distance(box: Fixture, x0: number, y0: number, x1: number, y1: number): number {
  if (lineCrosses([x0, x1, box.lowX, box.highX], [y0, y1, box.lowY, box.highY])) return 0;
  const corners = [box.lowX, box.highX].flatMap((x) => [box.lowY, box.highY].map((y) => [x, y] as const));
  return Math.min(
    toBox(box, x0, y0),
    toBox(box, x1, y1),
    ...corners.map(([x, y]) => toLine(x, y, x0, y0, x1, y1)),
  );
}

function toBox(box: Fixture, x: number, y: number): number {
  return Math.hypot(Math.max(box.lowX - x, x - box.highX, 0), Math.max(box.lowY - y, y - box.highY, 0));
}

function toLine(x: number, y: number, x0: number, y0: number, x1: number, y1: number): number {
  const [dx, dy] = [x1 - x0, y1 - y0];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, ((x - x0) * dx + (y - y0) * dy) / square));
  return Math.hypot(x - x0 - share * dx, y - y0 - share * dy);
}
