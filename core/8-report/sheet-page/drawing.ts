/** The stock with clamps and work zero, from above and from the front, dimensioned. */
import type { SheetBox, SheetPlan } from "../sheet/sheet.ts";
import { arrow, dimensionAlong, dimensionUp, label, line, rectangle, zeroMark } from "./svg.ts";
import { numberText } from "./words.ts";

/** Width of the drawing, and of its margins, pixels. */
const width = 680;
const margin = { left: 110, right: 84, top: 34 } as const;
/** Height of the view from above at most. */
const highest = 300;
/** Between the two views: room for the dimensions. */
const gap = 118;
/** The stock is drawn at least so thick. */
const thinnest = 44;

/** Letters of the fixtures in the drawing: A to Z, then A1 and so on. */
export function letterOfFixture(index: number): string {
  return String.fromCharCode(65 + (index % 26)) + (index < 26 ? "" : String(Math.floor(index / 26)));
}

/** A drawing of the set-up as SVG; undefined where the job states no stock. */
export function setupDrawing({ stock, fixtures, clearance }: SheetPlan, unit: string): string | undefined {
  if (stock === undefined) return undefined;
  const view = viewOf(stock, fixtures, clearance.most);
  const body = [
    fromAbove(view, stock, fixtures, unit),
    fromFront(view, stock, fixtures, clearance.most, unit),
  ].join("");
  const said = `Stock ${stock.size.map(numberText).join(" by ")} ${unit} from above and from the front, with work zero${fixtures.length > 0 ? " and clamps" : ""}`;
  return `<svg class="drawing" viewBox="0 0 ${width} ${Math.ceil(view.height)}" role="img" aria-label="${said}">
<defs><pattern id="hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line class="hatch" x1="0" y1="0" x2="0" y2="7"/></pattern></defs>
${body}</svg>`;
}

/** Where places in work coordinates lie in the picture. */
interface View {
  readonly x: (place: number) => number;
  readonly y: (place: number) => number;
  readonly z: (place: number) => number;
  /** Edges of the view from above, pixels: left of all, below all. */
  readonly left: number;
  /** Right edge of all. */
  readonly right: number;
  readonly floor: number;
  /** The same of the view from the front. */
  readonly ground: number;
  readonly height: number;
  /** Whether heights are drawn larger than lengths. */
  readonly isTall: boolean;
}

function viewOf(stock: SheetBox, fixtures: readonly SheetBox[], clearance: number): View {
  const boxes = [stock, ...fixtures];
  const low = (axis: number) => Math.min(0, ...boxes.map(({ min }) => min[axis]));
  const high = (axis: number) => Math.max(0, ...boxes.map(({ max }) => max[axis]));
  const [spanX, spanY] = [high(0) - low(0), high(1) - low(1)];
  const scale = Math.min((width - margin.left - margin.right) / spanX, highest / spanY);
  const top = Math.max(clearance, high(2));
  const tall = Math.min(thinnest / stock.size[2], 200 / (top - low(2)));
  const scaleZ = Math.max(Math.min(scale, 260 / (top - low(2))), tall);
  const floor = margin.top + spanY * scale;
  const front = floor + gap;
  const ground = front + (top - low(2)) * scaleZ;
  return {
    x: (place) => margin.left + (place - low(0)) * scale,
    y: (place) => margin.top + (high(1) - place) * scale,
    z: (place) => front + (top - place) * scaleZ,
    left: margin.left,
    right: margin.left + spanX * scale,
    floor,
    ground,
    height: ground + 20,
    isTall: Math.abs(scaleZ / scale - 1) > 0.02,
  };
}

function fromAbove(
  view: View,
  { min, max, size }: SheetBox,
  fixtures: readonly SheetBox[],
  unit: string,
): string {
  const { x, y, left, floor } = view;
  const boxes = fixtures.map(({ min: low, max: high }, index) => {
    const [centreX, centreY] = [(x(low[0]) + x(high[0])) / 2, (y(low[1]) + y(high[1])) / 2];
    return (
      rectangle(x(low[0]), y(low[1]), x(high[0]), y(high[1]), "fixture") +
      lettered(centreX, centreY, letterOfFixture(index))
    );
  });
  // The distances of zero from the nearest corner come first, the size of the stock outside them.
  const fromLeft =
    min[0] === 0 ? "" : dimensionAlong(x(min[0]), x(0), floor + 34, y(min[1]), numberText(Math.abs(min[0])));
  const fromFrontEdge =
    min[1] === 0 ? "" : dimensionUp(y(min[1]), y(0), left - 28, x(min[0]), numberText(Math.abs(min[1])));
  return [
    label(left, 20, "From above", "start"),
    rectangle(x(min[0]), y(min[1]), x(max[0]), y(max[1]), "stock"),
    ...boxes,
    fromLeft,
    dimensionAlong(x(min[0]), x(max[0]), floor + 66, y(min[1]), `${numberText(size[0])} ${unit}`),
    fromFrontEdge,
    dimensionUp(y(min[1]), y(max[1]), left - 74, x(min[0]), `${numberText(size[1])} ${unit}`),
    axesAt(x(0), y(0), "Y"),
  ].join("");
}

function fromFront(
  view: View,
  { min, max, size }: SheetBox,
  fixtures: readonly SheetBox[],
  clearance: number,
  unit: string,
): string {
  const { x, z, left } = view;
  const right = view.right + 16;
  const note = view.isTall ? "From the front; heights not to the same scale" : "From the front";
  const boxes = fixtures.map(({ min: low, max: high }) =>
    rectangle(x(low[0]), z(low[2]), x(high[0]), z(high[2]), "outline"),
  );
  const level = (place: number, shift: number): string =>
    line(x(max[0]) + 4, z(place), right + 4, z(place), "thin") +
    label(right + 8, z(place) + 5 + shift, `Z${numberText(place)}`, "start");
  // Two levels that lie close together: the words of the upper one are put higher.
  const isClose = Math.abs(z(max[2]) - z(0)) < 16 && max[2] !== 0;
  const side = max[2] > 0 ? -1 : 1;
  return [
    label(left, z(Math.max(clearance, max[2])) - 12, note, "start"),
    line(left, z(clearance), right, z(clearance), "dashed"),
    label(right + 8, z(clearance) + 5, `Z${numberText(clearance)}`, "start"),
    label(right - 4, z(clearance) + 16, "clearance", "end"),
    rectangle(x(min[0]), z(min[2]), x(max[0]), z(max[2]), "stock"),
    ...boxes,
    level(max[2], isClose ? side * 7 : 0),
    level(min[2], 0),
    ...(max[2] === 0 ? [] : [level(0, isClose ? -side * 7 : 0)]),
    dimensionUp(z(min[2]), z(max[2]), left - 28, x(min[0]), `${numberText(size[2])} ${unit}`),
    axesAt(x(0), z(0), "Z"),
  ].join("");
}

/** Work zero with the directions of its axes. */
function axesAt(x: number, y: number, up: string): string {
  return [
    arrow(x, y, x + 40, y),
    label(x + 46, y + 5, "X", "start"),
    arrow(x, y, x, y - 40),
    label(x + 4, y - 42, up, "start"),
    zeroMark(x, y),
  ].join("");
}

/** The letter of a fixture on its hatching. */
function lettered(x: number, y: number, letter: string): string {
  const half = 6 + 5 * letter.length;
  return rectangle(x - half, y - 11, x + half, y + 11, "plate") + label(x, y + 6, letter);
}
