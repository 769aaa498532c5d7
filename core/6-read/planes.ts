import type { Plane } from "#base";
import { rowKind } from "#base";
import { letterI, letterJ, letterK } from "./letters.ts";

/** What an arc needs to know of its plane. */
export interface PlaneFacts {
  readonly name: Plane;
  /** Index of its first and second axis, and of its normal. */
  readonly first: 0 | 1 | 2;
  readonly second: 0 | 1 | 2;
  readonly normal: 0 | 1 | 2;
  /** Letters of the centre along them; the one of the normal does not belong to the plane. */
  readonly firstCentre: number;
  readonly secondCentre: number;
  readonly foreignCentre: number;
  /** Row kinds of arcs by centre and by radius. */
  readonly byCentre: number;
  readonly byRadius: number;
}

/** The planes; in ZX the first axis is Z, so that the sense is seen from +Y (NISTIR 6556 3.5.3 and Table 9). */
export const planes = {
  xy: {
    name: "xy",
    first: 0,
    second: 1,
    normal: 2,
    firstCentre: letterI,
    secondCentre: letterJ,
    foreignCentre: letterK,
    byCentre: rowKind.arcXy,
    byRadius: rowKind.radiusXy,
  },
  zx: {
    name: "zx",
    first: 2,
    second: 0,
    normal: 1,
    firstCentre: letterK,
    secondCentre: letterI,
    foreignCentre: letterJ,
    byCentre: rowKind.arcZx,
    byRadius: rowKind.radiusZx,
  },
  yz: {
    name: "yz",
    first: 1,
    second: 2,
    normal: 0,
    firstCentre: letterJ,
    secondCentre: letterK,
    foreignCentre: letterI,
    byCentre: rowKind.arcYz,
    byRadius: rowKind.radiusYz,
  },
} as const satisfies Record<Plane, PlaneFacts>;
