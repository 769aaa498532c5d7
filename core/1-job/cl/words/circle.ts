import * as findings from "../findings.ts";
import { lengthAbove0, lengths, onlyNumbers, plainNumber, tellOnce, withinLengths } from "../items.ts";
import { radiiDiffer } from "../../moves/arc-radius.ts";
import type { Circle, ClRun } from "../state.ts";
import type { Item, Statement } from "../statement.ts";
import type { Point } from "./place.ts";
import { cutting, motionDone, setPlace } from "./place.ts";

/** CIRCLE/xc,yc,zc,i,j,k,r: the arc to the point that follows. */
export function circle(run: ClRun, statement: Statement): void {
  const { items, offset } = statement;
  const { state } = run;
  if (state.circle) run.report(findings.circleWithoutEnd(offset, "CIRCLE"));
  if (items.length === 4 && onlyNumbers(statement)) run.report(findings.circleWithoutAxis(offset));
  else if (items.length !== 7 || !onlyNumbers(statement))
    run.report(findings.wrongItems(offset, "CIRCLE", "CIRCLE/x, y, z, i, j, k, r"));
  else if (state.cycleOn) run.report(findings.cycleStill(offset, "CIRCLE"));
  else state.circle = readCircle(run, items, offset);
}

function readCircle(run: ClRun, items: readonly Item[], offset: number): Circle | undefined {
  const { state, options } = run;
  const centre = lengths(run, items.slice(0, 3));
  const radius = lengthAbove0(run, items[6], "The radius");
  const axis = axisOf(run, items.slice(3, 6));
  if (centre === undefined || radius === undefined || axis === undefined) return undefined;
  const [x, y, z] = centre;
  const drop = options.point === "centre" ? (state.cutter?.corner ?? 0) : 0;
  const [dx, dy, dz] = state.shift;
  const isCcw = axis.positive === (options.circle === "right-handed");
  return {
    centre: [x + dx, y + dy, z + dz - drop],
    axis: axis.index,
    turn: isCcw ? "ccw" : "cw",
    radius,
    offset,
  };
}

/** How far an axis may be from that of the machine: numbers are written to six places or so. */
const straight = 1e-6;

function axisOf(
  run: ClRun,
  items: readonly Item[],
): { readonly index: 0 | 1 | 2; readonly positive: boolean } | undefined {
  const parts = items.map((item) => plainNumber(run, item));
  if (parts.includes(undefined)) return undefined;
  const values = parts as number[];
  const along = ([0, 1, 2] as const).filter((index) => Math.abs(values[index]) > straight);
  if (along.length === 1) return { index: along[0], positive: values[along[0]] > 0 };
  run.report(findings.circleAxis(items[0].offset));
  return undefined;
}

/** Axes of the plane about x, y, z. */
const planeAxes = [
  [1, 2],
  [2, 0],
  [0, 1],
] as const;

/** The arc from where the tool is to a point. */
export function arcTo(run: ClRun, point: Point, circle: Circle, offset: number): void {
  const { state, act, options } = run;
  if (state.rapid) run.report(findings.circleAtRapid(circle.offset));
  tellOnce(run, "circle", findings.circleNote(circle.offset));
  const start = [state.x, state.y, state.z];
  const end = [point.x, point.y, point.z];
  const [first, second] = planeAxes[circle.axis];
  if (state.known !== 7) {
    run.report(findings.placeUnknown(offset, "GOTO", "an arc starts at a place that is not known"));
    return;
  }
  const from = Math.hypot(start[first] - circle.centre[first], start[second] - circle.centre[second]);
  if (radiiDiffer(circle.radius, from)) run.report(findings.circleRadius(circle.offset));
  const closes = isClosed(
    { x: start[first] - circle.centre[first], y: start[second] - circle.centre[second] },
    { x: end[first] - circle.centre[first], y: end[second] - circle.centre[second] },
    circle.turn,
  );
  if (closes && options["full-circle"] === "refuse") {
    run.report(findings.fullCircleUnclear(offset));
    return;
  }
  cutting(run, offset);
  setPlace(run, point, offset);
  withinLengths(run, circle.offset, ...circle.centre);
  if (closes && options["full-circle"] === "none") act.line(offset);
  else act.arc({ plane: circle.axis, turn: circle.turn, centre: circle.centre }, offset);
  motionDone(run, false, offset);
}

/** Ends of an arc that are nearer to each other may have changed places when the source was written: 0.01 mm in atoms. */
const nearlyClosed = 100_000;

/**
 * Whether an arc between two places, seen from its centre, is a full circle or none, for all that can be told: its ends are one,
 * or so near that it goes nearly all the way round because of how they were rounded.
 */
function isClosed(start: PlanePoint, end: PlanePoint, turn: "cw" | "ccw"): boolean {
  const gap = Math.hypot(end.x - start.x, end.y - start.y);
  if (gap === 0 || gap > nearlyClosed) return gap === 0;
  const cross = start.x * end.y - start.y * end.x;
  return turn === "ccw" ? cross <= 0 : cross >= 0;
}

/** A place in the plane of an arc, atoms from its centre. */
interface PlanePoint {
  readonly x: number;
  readonly y: number;
}
