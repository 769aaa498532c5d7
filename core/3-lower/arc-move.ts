import type { Plane } from "#base";
import type { ArcPath } from "./arc-geometry.ts";

/** An arc on its way to rows. */
export interface ArcMove {
  readonly plane: Plane;
  readonly path: ArcPath;
  /** Whole turns beyond the first started one, and the sweep of the last part. */
  readonly turns: number;
  /** Start and end of the axis normal to the plane, atoms. */
  readonly from: number;
  readonly to: number;
  /** Feed of the job along the path, in the written mode, not rounded. */
  readonly feed: number;
  readonly radius: number;
  readonly source: number;
}
