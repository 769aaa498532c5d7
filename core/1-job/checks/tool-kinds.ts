import type { ToolKind } from "#base";

/** What is compared of a kind of tool. */
export interface KindChecks {
  /** Its chip load stands in the tables of router bits. */
  readonly chipLoad?: true;
  /** It cuts at its whole diameter, so that pi D n is the speed of its edge. */
  readonly fullDiameter?: true;
  /** It mills, so that the slowest speeds of the sources hold for it. */
  readonly mills?: true;
  /** It does not cut at its centre unless the job says so. */
  readonly openCentre?: true;
  /** Its place is open behind it, so that a tap may follow. */
  readonly makesHole?: true;
}

/** By kind of tool. The tips of cones cut at a part of the diameter; drills have no chip loads in the tables. */
export const kindChecks: Readonly<Record<ToolKind, KindChecks>> = {
  "end-mill": { chipLoad: true, fullDiameter: true, mills: true, makesHole: true },
  "ball-mill": { chipLoad: true, mills: true, makesHole: true },
  "bull-nose": { chipLoad: true, fullDiameter: true, mills: true, makesHole: true },
  "face-mill": { fullDiameter: true, mills: true, openCentre: true },
  "v-bit": {},
  engraver: {},
  drill: { fullDiameter: true, makesHole: true },
  "spot-drill": {},
  reamer: { fullDiameter: true, makesHole: true },
  tap: {},
  "boring-bar": { fullDiameter: true, makesHole: true },
  chamfer: {},
  "thread-mill": { fullDiameter: true },
  probe: {},
  "drag-knife": {},
  pen: {},
};
