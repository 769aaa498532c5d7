import type { Finding } from "#base";
import { error, note } from "./finding.ts";

/* Feed, rapids, arcs. */

export const rapidIsOneShot = (offset: number): Finding =>
  note(
    "job/cl-rapid",
    offset,
    "RAPID holds for one motion, so that this one goes at feed.",
    "If RAPID holds until FEDRAT: `--cl rapid=modal`.",
  );

export const feedTaken = (offset: number, per: string): Finding =>
  note(
    "job/cl-feed",
    offset,
    `FEDRAT states no unit: it is taken per ${per}.`,
    "State the unit (MMPM, IPM, MMPR, IPR), or `--cl feed=per-minute` or `--cl feed=per-revolution`.",
  );

export const feedMixed = (offset: number, operation: string): Finding =>
  note(
    "job/cl-feed",
    offset,
    `Operation ${operation} has feeds per minute and per revolution: all are given per minute, at its speeds.`,
    "State all feeds of a tool in one unit.",
  );

export const feedInverseMixed = (offset: number): Finding =>
  error(
    "job/cl-feed",
    offset,
    "Inverse-time feed stands beside other feeds of the same tool.",
    "State all feeds of a tool in one unit.",
  );

export const circleNote = (offset: number): Finding =>
  note(
    "job/cl-circle",
    offset,
    "CIRCLE turns by the right hand about its axis: counter-clockwise about +Z.",
    "If the source has it the other way: `--cl circle=left-handed`.",
  );

export const fullCircleUnclear = (offset: number): Finding =>
  error(
    "job/cl-circle",
    offset,
    "The arc ends where it starts, or so near that either may be meant: a full circle, or none.",
    "State which: `--cl full-circle=turn` or `--cl full-circle=none`.",
  );

export const circleAxis = (offset: number): Finding =>
  error(
    "job/cl-circle",
    offset,
    "The axis of CIRCLE is not parallel to X, Y or Z.",
    "Give arcs in XY, ZX or YZ, or lines instead.",
  );

export const circleWithoutAxis = (offset: number): Finding =>
  error(
    "job/cl-circle",
    offset,
    "CIRCLE without an axis does not say which way it turns.",
    "Write CIRCLE/x, y, z, i, j, k, r.",
  );

export const circleWithoutEnd = (offset: number, word: string): Finding =>
  error(
    "job/cl-circle",
    offset,
    `${word} stands where the end point of CIRCLE was expected.`,
    "Put GOTO with the end point behind CIRCLE.",
  );

export const circleAtRapid = (offset: number): Finding =>
  error("job/cl-circle", offset, "An arc does not go at rapid.", "Put FEDRAT before CIRCLE.");

export const circleRadius = (offset: number): Finding =>
  error(
    "job/arc-radius",
    offset,
    "The radius of CIRCLE is not the distance of its start from its centre, within 0.005 mm or 0.1 %.",
    "Correct the radius, the centre or the start.",
  );
