/**
 * A path of a drawing that stays small: places are put on a grid of the sheet, motions that stay in one cell are one, and a line
 * that is there already is not drawn a second time.
 */
export interface PathText {
  readonly lineTo: (fromX: number, fromY: number, x: number, y: number) => void;
  /** Part of a circle of at most half a turn; `sweep` as SVG has it: 1 is clockwise on the sheet. */
  readonly arcTo: (fromX: number, fromY: number, x: number, y: number, radius: number, sweep: 0 | 1) => void;
  /** A cubic curve with its two control places. */
  readonly curveTo: (places: readonly number[]) => void;
  /** A whole circle with a cross at its centre, or the cross alone. */
  readonly hole: (x: number, y: number, radius: number) => void;
  readonly text: () => string;
  /** Characters so far. */
  readonly length: () => number;
}

/** The part of the sheet that lines are cut to. */
export interface Window {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Coordinates on the sheet are below this, so that four of them are one whole number. */
const base = 8192;

/** Starts a path on a grid of so many units of the sheet. */
export function createPathText(grid: number, window: Window): PathText {
  const parts: string[] = [];
  const drawn = new Set<number | string>();
  let length = 0;
  let penX = NaN;
  let penY = NaN;
  const add = (part: string): void => {
    parts.push(part);
    length += part.length;
  };
  const snap = (value: number): number => Math.round(value / grid) * grid;
  const start = (x: number, y: number): void => {
    if (x !== penX || y !== penY) add(`M${x} ${y}`);
  };
  const isNew = (key: number | string): boolean => {
    const before = drawn.size;
    return drawn.add(key).size > before;
  };
  const end = (x: number, y: number): void => {
    penX = x;
    penY = y;
  };
  return {
    lineTo(fromX, fromY, toX, toY) {
      const cut = clipped(window, fromX, fromY, toX, toY);
      if (cut === undefined) return;
      const [x0, y0, x1, y1] = [snap(cut[0]), snap(cut[1]), snap(cut[2]), snap(cut[3])];
      if ((x0 === x1 && y0 === y1) || !isNew(((x0 * base + y0) * base + x1) * base + y1)) return;
      start(x0, y0);
      add(y0 === y1 ? `h${x1 - x0}` : x0 === x1 ? `v${y1 - y0}` : `l${x1 - x0} ${y1 - y0}`);
      end(x1, y1);
    },
    arcTo(fromX, fromY, toX, toY, radius, sweep) {
      const [x0, y0, x1, y1] = [snap(fromX), snap(fromY), snap(toX), snap(toY)];
      const text = `a${short(radius)} ${short(radius)} 0 0 ${sweep} ${x1 - x0} ${y1 - y0}`;
      if ((x0 === x1 && y0 === y1) || !isNew(`${x0} ${y0}${text}`)) return;
      start(x0, y0);
      add(text);
      end(x1, y1);
    },
    curveTo(places) {
      const [x0, y0, ...rest] = places.map(snap);
      const text = `c${rest.map((value, index) => value - (index % 2 === 0 ? x0 : y0)).join(" ")}`;
      if (rest.every((value, index) => value === (index % 2 === 0 ? x0 : y0))) return;
      if (!isNew(`${x0} ${y0}${text}`)) return;
      start(x0, y0);
      add(text);
      end(rest[4], rest[5]);
    },
    hole(centreX, centreY, radius) {
      const [x, y] = [snap(centreX), snap(centreY)];
      if (isNew(`${x} ${y} ${short(radius)}`)) add(holeText(x, y, short(radius)));
      end(NaN, NaN);
    },
    text: () => parts.join(""),
    length: () => length,
  };
}

/** A cross, and a circle around it where the radius is known. */
function holeText(x: number, y: number, radius: number): string {
  const half = short(Math.max(radius, 8) * 1.3);
  const cross = `M${short(x - half)} ${y}h${short(2 * half)}M${x} ${short(y - half)}v${short(2 * half)}`;
  if (radius === 0) return cross;
  const [turn, width] = [`a${radius} ${radius} 0 1 0`, short(2 * radius)];
  return `${cross}M${short(x - radius)} ${y}${turn} ${width} 0${turn} ${-width} 0`;
}

function short(value: number): number {
  return Math.round(value * 10) / 10;
}

/** The part of a line that lies in a window (Liang and Barsky 1984); undefined where none does. */
export function clipped(
  window: Window,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
): readonly [number, number, number, number] | undefined {
  const [dx, dy] = [x1 - x0, y1 - y0];
  let [from, to] = [0, 1];
  const edges = [
    [-dx, x0 - window.left],
    [dx, window.left + window.width - x0],
    [-dy, y0 - window.top],
    [dy, window.top + window.height - y0],
  ];
  for (const [step, room] of edges) {
    if (step === 0 && room < 0) return undefined;
    if (step < 0) from = Math.max(from, room / step);
    if (step > 0) to = Math.min(to, room / step);
  }
  if (from > to) return undefined;
  return [x0 + from * dx, y0 + from * dy, x0 + to * dx, y0 + to * dy];
}
