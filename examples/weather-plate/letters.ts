/** Stroke letters of our own: lines and small arcs on a body 6 high. Only the letters that the plate needs. */
import { distance } from "./paths.ts";
import type { Piece, Point } from "./paths.ts";

/** One stroke: the tool goes down at `from` and up after the last piece. */
export interface Stroke {
  /** Where the tool goes down. */
  from: Point;
  /** What it cuts. */
  pieces: readonly Piece[];
}

interface Letter {
  width: number;
  strokes: readonly Stroke[];
}

type Pair = readonly [number, number];

const bodyHeight = 6;
const gap = 1.5;
const spaceWidth = 2;

const point = ([x, y]: Pair): Point => ({ x, y });

/** A stroke of straight lines. */
const straight = (from: Pair, ...to: Pair[]): Stroke => ({ from: point(from), pieces: to.map((place) => ({ to: point(place) })) });

/** Cuts the corner at `corner` with an arc of `radius`, since an engraver that stops in a corner leaves a dot. */
function bentCorner(before: Point, corner: Point, after: Point, radius: number): Piece[] {
  const [lengthIn, lengthOut] = [distance(before, corner), distance(corner, after)];
  const [inX, inY] = [(corner.x - before.x) / lengthIn, (corner.y - before.y) / lengthIn];
  const [outX, outY] = [(after.x - corner.x) / lengthOut, (after.y - corner.y) / lengthOut];
  const cross = inX * outY - inY * outX;
  const cut = radius * Math.tan(Math.acos(inX * outX + inY * outY) / 2);
  const start = { x: corner.x - cut * inX, y: corner.y - cut * inY };
  const end = { x: corner.x + cut * outX, y: corner.y + cut * outY };
  const side = Math.sign(cross);
  const centre = { x: start.x - side * radius * inY, y: start.y + side * radius * inX };
  return [{ to: start }, { to: end, centre, turn: cross > 0 ? "ccw" : "cw" }];
}

/** A stroke of lines whose corners are rounded with `radius`. */
function bent(radius: number, from: Pair, ...to: Pair[]): Stroke {
  const places = [from, ...to].map(point);
  const pieces = places.slice(1).flatMap((place, index) => {
    const [before, after] = [places[index], places[index + 2]];
    return before === undefined || after === undefined ? [{ to: place }] : bentCorner(before, place, after, radius);
  });
  return { from: point(from), pieces };
}

const half = 1.5 * Math.cos(Math.PI / 6);

const letters: Readonly<Record<string, Letter>> = {
  A: { width: 4, strokes: [bent(0.25, [0, 0], [2, 6], [4, 0]), straight([0.7, 2.1], [3.3, 2.1])] },
  E: { width: 3.4, strokes: [bent(0.5, [3.4, 6], [0, 6], [0, 0], [3.4, 0]), straight([0, 3.1], [2.8, 3.1])] },
  H: { width: 4, strokes: [straight([0, 0], [0, 6]), straight([0, 3.1], [4, 3.1]), straight([4, 6], [4, 0])] },
  I: { width: 0, strokes: [straight([0, 6], [0, 0])] },
  N: { width: 4, strokes: [bent(0.2, [0, 0], [0, 6], [4, 0], [4, 6])] },
  O: {
    width: 4,
    strokes: [{
      from: { x: 4, y: 2 },
      pieces: [
        { to: { x: 4, y: 4 } },
        { to: { x: 0, y: 4 }, centre: { x: 2, y: 4 }, turn: "ccw" },
        { to: { x: 0, y: 2 } },
        { to: { x: 4, y: 2 }, centre: { x: 2, y: 2 }, turn: "ccw" },
      ],
    }],
  },
  R: {
    width: 3.9,
    strokes: [
      {
        from: { x: 0, y: 0 },
        pieces: [
          { to: { x: 0, y: 6 } },
          { to: { x: 2.2, y: 6 } },
          { to: { x: 2.2, y: 2.8 }, centre: { x: 2.2, y: 4.4 }, turn: "cw" },
          { to: { x: 0, y: 2.8 } },
        ],
      },
      straight([2, 2.8], [3.9, 0]),
    ],
  },
  S: {
    width: 3,
    strokes: [{
      from: { x: 1.5 + half, y: 5.25 },
      pieces: [
        { to: { x: 1.5, y: 3 }, centre: { x: 1.5, y: 4.5 }, turn: "ccw" },
        { to: { x: 1.5 - half, y: 0.75 }, centre: { x: 1.5, y: 1.5 }, turn: "cw" },
      ],
    }],
  },
  T: { width: 4, strokes: [straight([0, 6], [4, 6]), straight([2, 6], [2, 0])] },
  W: { width: 5, strokes: [bent(0.2, [0, 6], [1.2, 0], [2.5, 4.6], [3.8, 0], [5, 6])] },
};

function letterOf(character: string): Letter {
  if (character === " ") return { width: spaceWidth, strokes: [] };
  const letter = letters[character];
  if (letter === undefined) throw new Error(`no stroke letter for "${character}"`);
  return letter;
}

/** The strokes of `text`, `height` high, with its middle at `middle`. A character without a letter throws. */
export function lettering(text: string, height: number, middle: Point): Stroke[] {
  const scale = height / bodyHeight;
  const line = [...text].map(letterOf);
  const width = line.reduce((sum, letter) => sum + letter.width + gap, -gap);
  let left = -width / 2;
  return line.flatMap((letter) => {
    const shift = left;
    left += letter.width + gap;
    const place = (from: Point): Point => ({ x: middle.x + scale * (from.x + shift), y: middle.y + scale * (from.y - bodyHeight / 2) });
    return letter.strokes.map((stroke) => placed(stroke, place));
  });
}

function placed(stroke: Stroke, place: (from: Point) => Point): Stroke {
  const pieces = stroke.pieces.map((piece) => ({
    ...piece,
    to: place(piece.to),
    ...(piece.centre === undefined ? {} : { centre: place(piece.centre) }),
  }));
  return { from: place(stroke.from), pieces };
}
