/** What lies over the motions: boxes, axes, work zeros, findings, the tool, and a scale. */
import type { Extent, PlotBox, PlotHead, Point } from "../plot.ts";
import { micrometresPerUnit, placeText } from "../plot.ts";
import type { Camera } from "./camera.ts";
import { createProjection, directions } from "./camera.ts";

/** Where the tool is. */
export interface ToolPlace {
  readonly at: Point;
  /** 0 where it is not known. */
  readonly diameter: number;
  readonly name: string;
}

/** What is laid over, and how. */
export interface Laying {
  readonly head: PlotHead;
  readonly camera: Camera;
  readonly centre: Point;
  readonly width: number;
  readonly height: number;
  readonly ink: string;
  readonly soft: string;
  readonly paper: string;
  readonly alarm: string;
  readonly tool: ToolPlace | undefined;
  readonly showsBoxes: boolean;
  /** Index of the finding that is looked at; -1 for none. */
  readonly mark: number;
}

/** A finding on the screen, pixels of the page. */
export interface MarkOnScreen {
  readonly index: number;
  readonly x: number;
  readonly y: number;
}

/** Draws it all anew; gives the findings where they can be clicked. */
export function layOver(context: CanvasRenderingContext2D, laying: Laying): MarkOnScreen[] {
  const { width, height, camera, centre } = laying;
  const ratio = context.canvas.width / width;
  context.setTransform(ratio, 0, 0, ratio, 0, 0);
  context.clearRect(0, 0, width, height);
  context.font = "13px system-ui, sans-serif";
  const project = createProjection(camera);
  const place: Place = ([x, y, z]) => {
    const [sx, sy] = project(x - centre[0], y - centre[1], z - centre[2]);
    return [sx + width / 2, sy + height / 2];
  };
  if (laying.showsBoxes) laying.head.boxes.forEach((box) => drawBox(context, laying, box, place));
  drawZeros(context, laying, place);
  if (laying.tool) drawTool(context, laying, laying.tool, place);
  drawScale(context, laying);
  return drawMarks(context, laying, place);
}

type Place = (at: Point) => readonly [number, number];

const boxDashes: Readonly<Record<PlotBox["kind"], readonly number[]>> = {
  stock: [],
  fixture: [7, 3],
  "keep-out": [12, 3, 2, 3],
  rack: [12, 3, 2, 3],
  travel: [2, 4],
};

/** Corners of a box by bits: 1 for most X, 2 for most Y, 4 for most Z. */
function corner({ min, max }: Extent, bits: number): Point {
  const pick = (axis: 0 | 1 | 2): number => ((bits >> axis) & 1 ? max[axis] : min[axis]);
  return [pick(0), pick(1), pick(2)];
}

function drawBox(context: CanvasRenderingContext2D, { ink, soft }: Laying, box: PlotBox, place: Place): void {
  context.strokeStyle = box.kind === "stock" ? ink : soft;
  context.lineWidth = box.kind === "stock" ? 1.4 : 1;
  context.setLineDash([...boxDashes[box.kind]]);
  context.beginPath();
  for (let bits = 0; bits < 8; bits++)
    for (const step of [1, 2, 4])
      if ((bits & step) === 0) {
        context.moveTo(...place(corner(box, bits)));
        context.lineTo(...place(corner(box, bits | step)));
      }
  context.stroke();
  context.setLineDash([]);
  if (box.kind === "stock") return;
  context.fillStyle = soft;
  const [x, y] = place(corner(box, 4));
  context.fillText(box.name, x + 3, y - 4);
}

/** Length of the axes at work zero, pixels. */
const axisPixels = 46;

function drawZeros(context: CanvasRenderingContext2D, laying: Laying, place: Place): void {
  const { right, up } = directions(laying.camera);
  context.strokeStyle = context.fillStyle = laying.ink;
  context.lineWidth = 2;
  for (const { at, offset } of laying.head.workZeros) {
    const [x, y] = place(at);
    [..."XYZ"].forEach((letter, axis) => {
      const [dx, dy] = [right[axis] * axisPixels, -up[axis] * axisPixels];
      if (Math.hypot(dx, dy) < 6) return;
      context.beginPath();
      context.moveTo(x, y);
      context.lineTo(x + dx, y + dy);
      context.stroke();
      label(context, laying, letter, x + dx * 1.18 - 4, y + dy * 1.18 + 5);
    });
    context.beginPath();
    context.arc(x, y, 4, 0, 2 * Math.PI);
    context.fill();
    if (laying.head.workZeros.length > 1) label(context, laying, `work zero ${offset}`, x + 8, y + 16);
  }
}

function label(
  context: CanvasRenderingContext2D,
  { paper, ink }: Laying,
  text: string,
  x: number,
  y: number,
): void {
  context.lineWidth = 3;
  context.strokeStyle = paper;
  context.strokeText(text, x, y);
  context.fillStyle = ink;
  context.fillText(text, x, y);
  context.strokeStyle = ink;
  context.lineWidth = 2;
}

/** The tool as a circle of its diameter at the tip, and its axis; a cross where the diameter is not known. */
function drawTool(context: CanvasRenderingContext2D, laying: Laying, tool: ToolPlace, place: Place): void {
  const { at, diameter } = tool;
  const { scale } = laying.camera;
  const radius = Math.max(diameter / 2, 3 / scale);
  const shaft = 40 / scale;
  const circle = (z: number): void => {
    for (let step = 0; step <= 36; step++) {
      const angle = (step / 36) * 2 * Math.PI;
      const point = place([at[0] + radius * Math.cos(angle), at[1] + radius * Math.sin(angle), z]);
      if (step === 0) context.moveTo(...point);
      else context.lineTo(...point);
    }
  };
  context.beginPath();
  circle(at[2]);
  circle(at[2] + shaft);
  context.moveTo(...place(at));
  context.lineTo(...place([at[0], at[1], at[2] + shaft * 1.8]));
  for (const [width, colour] of [
    [5, laying.paper],
    [2.2, laying.alarm],
  ] as const) {
    context.lineWidth = width;
    context.strokeStyle = colour;
    context.stroke();
  }
}

function drawMarks(context: CanvasRenderingContext2D, laying: Laying, place: Place): MarkOnScreen[] {
  const shown: MarkOnScreen[] = [];
  context.textAlign = "center";
  laying.head.marks.forEach(({ at }, index) => {
    if (at === undefined) return;
    const [x, y] = place(at);
    context.beginPath();
    context.arc(x, y, 11, 0, 2 * Math.PI);
    context.fillStyle = index === laying.mark ? laying.alarm : laying.paper;
    context.fill();
    context.lineWidth = 2.5;
    context.strokeStyle = laying.alarm;
    context.stroke();
    context.fillStyle = index === laying.mark ? laying.paper : laying.alarm;
    context.fillText(String(index + 1), x, y + 4.5);
    shown.push({ index, x, y });
  });
  context.textAlign = "start";
  return shown;
}

/** A bar of a round length at the lower left. */
function drawScale(context: CanvasRenderingContext2D, laying: Laying): void {
  const { camera, height, head } = laying;
  const unit = micrometresPerUnit[head.units];
  const least = 60 / camera.scale / unit;
  const power = 10 ** Math.floor(Math.log10(least));
  const length = power * ([1, 2, 5].find((factor) => factor * power >= least) ?? 10);
  const pixels = length * unit * camera.scale;
  context.strokeStyle = laying.ink;
  context.lineWidth = 2;
  context.beginPath();
  context.moveTo(14, height - 22);
  context.lineTo(14, height - 14);
  context.lineTo(14 + pixels, height - 14);
  context.lineTo(14 + pixels, height - 22);
  context.stroke();
  label(context, laying, `${placeText(length * unit, head.units)} ${head.units}`, 20, height - 20);
}
