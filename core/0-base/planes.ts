import { rowKind } from "./batch.ts";

/**
 * Index of the first, second and normal axis of the planes XY, ZX and YZ, in the order of the row kinds of arcs. In ZX the first is Z
 * (NISTIR 6556 Table 9).
 */
const planes = [
  [0, 1, 2],
  [2, 0, 1],
  [1, 2, 0],
] as const;

/** Axes of a plane: first, second, normal. */
export type PlaneAxes = (typeof planes)[number];

/** The axes of an arc's plane, by its row kind: by centre or by radius. */
export function planeOfArc(kind: number): PlaneAxes {
  return planes[(kind - rowKind.arcXy) % planes.length];
}
