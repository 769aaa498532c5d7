import type { Arc } from "./arcs.ts";

/** A piece of a contour in the XY plane; mm. */
export interface Piece {
  /** End on the contour. */
  readonly x: number;
  readonly y: number;
  readonly z: number;
  /** Direction at its start and at its end. */
  readonly startX: number;
  readonly startY: number;
  readonly endX: number;
  readonly endY: number;
  /** The arc of the contour; undefined for a line. */
  readonly arc: Arc | undefined;
  readonly minutes: number;
  readonly at: { readonly row: number; readonly offset: number };
}

/** A contour that the tool follows at its radius. The last piece waits until the next says where it ends. */
export interface Contour {
  /** 1: the tool is on the left, -1: on the right. */
  readonly side: number;
  /** Place on the contour. */
  x: number;
  y: number;
  z: number;
  waiting: Piece | undefined;
  /** The first line, from off the contour to the first piece, has yet to be made. */
  entering: boolean;
}
