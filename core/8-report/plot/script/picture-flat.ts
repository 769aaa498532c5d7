/** Motions drawn without a graphics card: on a canvas, a part of the lines while the picture moves, and all of them when it rests. */
import { createProjection } from "./camera.ts";
import { css, dashes } from "./palette.ts";
import { coarseSplit, endBytes, goesOn, lineSplit, look } from "./pieces.ts";
import type { Piece } from "./pieces.ts";
import type { Drawing, Picture, ShownInk } from "./picture.ts";

/** Most lines that are drawn one by one; of more, some stand for others at rest, too. */
const mostFine = 250_000;

export function createFlatPicture(canvas: HTMLCanvasElement): Picture {
  const context = canvas.getContext("2d");
  if (context === null) throw new Error("the browser has no canvas");
  const pieces: Piece[] = [];
  let lines = 0;
  return {
    name: "canvas",
    note: () => `Drawn without the graphics card${lines > mostFine ? ", and coarsely" : ""}.`,
    add(piece) {
      pieces.push(piece);
      lines += piece.lines;
    },
    draw(asked) {
      const drawing = lines > mostFine ? { ...asked, isMoving: true } : asked;
      const { width, height, background } = drawing;
      const ratio = canvas.width / width;
      context.setTransform(ratio, 0, 0, ratio, 0, 0);
      context.fillStyle = css({ colour: background });
      context.fillRect(0, 0, width, height);
      context.translate(width / 2, height / 2);
      for (const path of pathsOf(pieces, drawing).values()) stroke(context, path);
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
function pathsOf(pieces: readonly Piece[], drawing: Drawing): Map<string, OpenPath> {
  const project = createProjection(drawing.camera);
  const paths = new Map<string, OpenPath>();
  for (const piece of pieces) {
    const ends = drawing.isMoving ? piece.coarse.ends : piece.ends;
    if (ends === undefined) continue;
    const split = drawing.isMoving ? coarseSplit(piece, drawing.done) : lineSplit(piece, drawing.done);
    const [floats, looks] = [new Float32Array(ends), new Uint32Array(ends)];
    let last: OpenPath | undefined;
    for (let line = 0; 2 * line * endBytes < ends.byteLength; line++) {
      const at = (2 * line * endBytes) / 4;
      const open = pathOf(paths, drawing, looks[at + 4], line < split);
      // A way that goes on is one line, or its dashes would begin again at each of its pieces.
      if (open !== undefined && (open !== last || !goesOn(floats, looks, line)))
        open.path.moveTo(...project(floats[at], floats[at + 1], floats[at + 2]));
      open?.path.lineTo(...project(floats[at + 5], floats[at + 6], floats[at + 7]));
      last = open;
    }
  }
  return paths;
}

/** The path that a line belongs to; undefined where it is not shown. `what`: look, tool, and operation in two bytes. */
function pathOf(
  paths: Map<string, OpenPath>,
  drawing: Drawing,
  what: number,
  isDone: boolean,
): OpenPath | undefined {
  const kind = what & 255;
  const isOwn = kind !== look.rapid && kind !== look.machine;
  const index = { tool: (what >> 8) & 255, operation: what >>> 16, kind: kind - 1 }[drawing.colourBy];
  const ink = isOwn ? drawing.inks[index] : kind === look.rapid ? drawing.rapid : drawing.machine;
  if (!ink.isShown) return undefined;
  const name = `${isDone} ${isOwn ? index : -kind - 1}`;
  const known = paths.get(name);
  if (known !== undefined) return known;
  const open = { path: new Path2D(), ink, isDone, width: isOwn ? 1.6 : 1 };
  paths.set(name, open);
  return open;
}

function stroke(context: CanvasRenderingContext2D, { path, ink, isDone, width }: OpenPath): void {
  context.strokeStyle = css(ink);
  context.globalAlpha = isDone ? 1 : 0.28;
  context.lineWidth = width;
  context.setLineDash([...dashes[ink.dash]]);
  context.stroke(path);
  context.globalAlpha = 1;
}
