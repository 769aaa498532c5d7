/** What a drawing of the motions is asked for, whichever way it is drawn. */
import type { Camera } from "./camera.ts";
import type { Ink } from "./palette.ts";
import type { Piece } from "./pieces.ts";

/** An ink, and whether what has it is shown. */
export interface ShownInk extends Ink {
  readonly isShown: boolean;
}

/** How motions are drawn now. */
export interface Drawing {
  readonly camera: Camera;
  /** Pixels of the page. */
  readonly width: number;
  readonly height: number;
  readonly background: readonly [number, number, number];
  readonly colourBy: "tool" | "operation" | "kind";
  /** By tool, operation or kind. */
  readonly inks: readonly ShownInk[];
  /** By look: rapids and machine motions have inks of their own whatever is coloured by. */
  readonly rapid: ShownInk;
  readonly machine: ShownInk;
  /** Motions before this one are done; those behind are faint. */
  readonly done: number;
  /** Drawn while the picture moves: it may be coarse. */
  readonly isMoving: boolean;
}

/** A way to draw motions on a canvas. */
export interface Picture {
  readonly name: string;
  /** What is said of it on the page; empty for nothing. */
  readonly note: () => string;
  readonly add: (piece: Piece) => void;
  readonly draw: (drawing: Drawing) => void;
}
