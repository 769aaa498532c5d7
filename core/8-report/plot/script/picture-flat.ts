/** Motions drawn without a graphics card: on a canvas, a part of the lines while the picture moves, and all of them when it rests. */
import { createProjection } from "./camera.ts";
import { css, dashes } from "./palette.ts";
import { endBytes, look } from "./pieces.ts";
import type { Piece } from "./pieces.ts";
import type { Drawing, Picture, ShownInk } from "./picture.ts";

/** Lines drawn while the picture moves. */
const mostMoving = 40_000;

export function createFlatPicture(canvas: HTMLCanvasElement): Picture {
  const context = canvas.getContext("2d");
  if (context === null) throw new Error("the browser has no canvas");
  const pieces: Piece[] = [];
  return {
    name: "canvas",
    add: (piece) => void pieces.push(piece),
    draw(drawing) {
      const { width, height, background } = drawing;
      const ratio = canvas.width / width;
      context.setTransform(ratio, 0, 0, ratio, 0, 0);
      context.fillStyle = css({ colour: background });
      context.fillRect(0, 0, width, height);
      context.translate(width / 2, height / 2);
      const lines = pieces.reduce((sum, piece) => sum + piece.lines, 0);
      const stride = drawing.isMoving ? Math.max(1, Math.ceil(lines / mostMoving)) : 1;
      for (const path of pathsOf(pieces, drawing, stride).values()) stroke(context, path);
    },
  };
}

interface OpenPath {
  readonly path: Path2D;
  readonly ink: ShownInk;
  readonly isDone: boolean;
  readonly width: number;
}

/** One path for each look, so that a canvas has few strokes to make. */
function pathsOf(pieces: readonly Piece[], drawing: Drawing, stride: number): Map<string, OpenPath> {
  const project = createProjection(drawing.camera);
  const paths = new Map<string, OpenPath>();
  let last: OpenPath | undefined;
  for (const piece of pieces) {
    if (piece.ends === undefined) continue;
    const view = new DataView(piece.ends);
    const split = piece.lineOfMove[Math.min(Math.max(drawing.done - piece.first, 0), piece.moves.count)];
    for (let line = 0; line < piece.lines; line += stride) {
      const at = 2 * line * endBytes;
      const kind = view.getUint8(at + 16);
      const operation = view.getUint16(at + 18, true);
      const index = { tool: view.getUint8(at + 17), operation, kind: kind - 1 }[drawing.colourBy];
      const isOwn = kind !== look.rapid && kind !== look.machine;
      const ink = isOwn ? drawing.inks[index] : kind === look.rapid ? drawing.rapid : drawing.machine;
      if (!ink.isShown) continue;
      const isDone = line < split;
      const name = `${isDone} ${isOwn ? index : -kind - 1}`;
      let open = paths.get(name);
      if (open === undefined)
        paths.set(name, (open = { path: new Path2D(), ink, isDone, width: isOwn ? 1.6 : 1 }));
      // A way that goes on is one line, or its dashes would begin again at each of its pieces.
      const goesOn = open === last && line >= stride && stride === 1 && isJoined(view, at);
      if (!goesOn) open.path.moveTo(...project(...placeAt(view, at)));
      open.path.lineTo(...project(...placeAt(view, at + endBytes)));
      last = open;
    }
  }
  return paths;
}

function stroke(context: CanvasRenderingContext2D, { path, ink, isDone, width }: OpenPath): void {
  context.strokeStyle = css(ink);
  context.globalAlpha = isDone ? 1 : 0.28;
  context.lineWidth = width;
  context.setLineDash([...dashes[ink.dash]]);
  context.stroke(path);
  context.globalAlpha = 1;
}

function placeAt(view: DataView, at: number): [number, number, number] {
  return [view.getFloat32(at, true), view.getFloat32(at + 4, true), view.getFloat32(at + 8, true)];
}

/** Whether a line begins where the one before it ends. */
function isJoined(view: DataView, at: number): boolean {
  return [0, 4, 8].every(
    (part) => view.getFloat32(at + part, true) === view.getFloat32(at - endBytes + part, true),
  );
}
