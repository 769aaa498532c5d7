import { axisBit, linearAxes } from "#base";
import * as findings from "../findings.ts";
import { aptBaseUnits } from "../number.ts";
import { length, lengths, onlyNumbers, plainNumber, tellOnce } from "../items.ts";
import type { ClRun } from "../state.ts";
import type { Item, Statement } from "../statement.ts";
import { arcTo } from "./circle.ts";
import { holeAt } from "./cycle-holes.ts";
import { setFeed } from "./feed.ts";
import type { Point } from "./place.ts";
import { cutting, motionDone, setPlace } from "./place.ts";

const xy = axisBit.x | axisBit.y;

/** What may stand behind the coordinates: x,y,z,f; x,y,z,i,j,k; x,y,z,i,j,k,f. */
interface PointItems {
  readonly coordinates: readonly Item[];
  readonly axis: readonly Item[];
  readonly feed: Item | undefined;
}

function splitItems({ items }: Statement): PointItems | undefined {
  const { length: count } = items;
  if (count < 2 || count === 5 || count > 7) return undefined;
  return {
    coordinates: items.slice(0, count === 2 ? 2 : 3),
    axis: count >= 6 ? items.slice(3, 6) : [],
    feed: count === 4 ? items[3] : items[6],
  };
}

/** How far a direction may be from +Z and still be it: numbers are written to six places or so. */
const straight = 1e-6;

function checkAxis(run: ClRun, items: readonly Item[]): boolean {
  const parts = items.map((item) => plainNumber(run, item));
  if (parts.includes(undefined)) return false;
  const [i, j, k] = parts as number[];
  if (items.length === 0 || (Math.abs(i) <= straight && Math.abs(j) <= straight && k > 0)) return true;
  run.report(findings.axisTilted(items[0].offset));
  return false;
}

/** GOTO/x,y,z[,i,j,k][,f]; GOTO/x,y keeps Z. */
export function goto(run: ClRun, statement: Statement): void {
  const parts = splitItems(statement);
  if (parts === undefined || !onlyNumbers(statement)) {
    run.report(findings.wrongItems(statement.offset, "GOTO", "GOTO/x, y, z, or with i, j, k and a feed"));
    return;
  }
  const places = lengths(run, parts.coordinates);
  if (!checkAxis(run, parts.axis) || places === undefined || !takeFeed(run, statement, parts)) return;
  const { state } = run;
  const [x, y, z] = places;
  const drop = tipDrop(run, statement.offset);
  if (z === undefined && (state.known & axisBit.z) === 0) {
    run.report(findings.placeUnknown(statement.offset, "GOTO", "Z is not stated, and not known here"));
    return;
  }
  moveTo(
    run,
    {
      x: x + state.shift[0],
      y: y + state.shift[1],
      z: z === undefined ? state.z : z + state.shift[2] - drop,
    },
    statement,
  );
}

/** A feed behind the coordinates holds from here on, as FEDRAT would make it. */
function takeFeed(run: ClRun, statement: Statement, { feed }: PointItems): boolean {
  if (feed === undefined) return true;
  if (statement.items.length === 4) {
    if (run.options.fourth === "refuse") {
      run.report(findings.fourthRefused(feed.offset));
      return false;
    }
    tellOnce(run, "fourth", findings.fourthIsFeed(feed.offset));
  }
  return setFeed(run, feed, undefined);
}

/** How far below the stated point the tip is: the rounding's radius, where its centre is led. */
function tipDrop(run: ClRun, offset: number): number {
  const { state, options } = run;
  if (options.point === "tip") {
    if (state.cutter !== undefined && state.cutter.corner > 0)
      tellOnce(run, "point", findings.pointNote(offset));
    return 0;
  }
  if (state.cutter === undefined) tellOnce(run, `point ${state.tool}`, findings.pointUnknown(offset));
  return state.cutter?.corner ?? 0;
}

/** GODLTA/dx,dy,dz, or GODLTA/d along the tool axis, + away from the work. */
export function godlta(run: ClRun, statement: Statement): void {
  const { items, offset } = statement;
  const { state } = run;
  const isForm = items.length === 1 || items.length === 3 || items.length === 4;
  if (!isForm || !onlyNumbers(statement)) {
    run.report(findings.wrongItems(offset, "GODLTA", "GODLTA/dx, dy, dz or GODLTA/d"));
    return;
  }
  if (state.known !== linearAxes) {
    run.report(findings.placeUnknown(offset, "GODLTA", "the place before it is not known"));
    return;
  }
  const parts = { coordinates: items.slice(0, 3), axis: [], feed: items[3] };
  const steps = lengths(run, parts.coordinates);
  if (steps === undefined || !takeFeed(run, statement, parts)) return;
  const [dx, dy, dz] = steps.length === 1 ? [0, 0, steps[0]] : steps;
  moveTo(run, { x: state.x + dx, y: state.y + dy, z: state.z + dz }, statement);
}

/** Moves to a point as RAPID, CIRCLE and CYCLE have it. */
function moveTo(run: ClRun, point: Point, statement: Statement): void {
  const { state, act } = run;
  const { offset } = statement;
  if (state.tool === 0) {
    tellOnce(run, "no tool", findings.noTool(offset));
    return;
  }
  if (state.cycleOn) holeAt(run, point, offset);
  else if (state.circle) {
    if (statement.word === "GOTO") arcTo(run, point, state.circle, offset);
    else run.report(findings.circleWithoutEnd(offset, statement.word));
    state.circle = undefined;
  } else if (state.rapid) {
    setPlace(run, point, offset);
    act.rapid(linearAxes, offset);
    motionDone(run, true, offset);
  } else {
    if (state.afterRapid) tellOnce(run, "rapid", findings.rapidIsOneShot(offset));
    cutting(run, offset);
    setPlace(run, point, offset);
    act.line(offset);
    motionDone(run, false, offset);
  }
}

/** FROM/x,y,z[,i,j,k][,f]: where the tool is. */
export function from(run: ClRun, statement: Statement): void {
  const parts = splitItems(statement);
  if (parts === undefined || parts.coordinates.length < 3 || !onlyNumbers(statement)) {
    run.report(findings.wrongItems(statement.offset, "FROM", "FROM/x, y, z"));
    return;
  }
  const places = lengths(run, parts.coordinates);
  if (!checkAxis(run, parts.axis) || places === undefined || !takeFeed(run, statement, parts)) return;
  const { state } = run;
  const drop = state.tool === 0 ? 0 : tipDrop(run, statement.offset);
  const [x, y, z] = places.map((place, axis) => place + state.shift[axis] - (axis === 2 ? drop : 0));
  state.home ??= [x, y, z];
  const isHere = state.known === linearAxes && state.x === x && state.y === y && state.z === z;
  if (isHere) return;
  if (state.moved) run.report(findings.secondFrom(statement.offset));
  state.x = x;
  state.y = y;
  state.z = z;
  state.known = linearAxes;
}

/** GOHOME: Z to clearance, and to the place of FROM where the user says so. */
export function gohome(run: ClRun, { offset, items }: Statement): void {
  const { state, act, options } = run;
  if (items.length > 0) run.report(findings.wrongItems(offset, "GOHOME", "GOHOME"));
  state.rapid = options.rapid === "modal" && state.rapid;
  if (!state.moved) return;
  state.toolZ = undefined;
  act.rapid(axisBit.z, offset);
  state.known = xy;
  if (options.home === "from" && state.home === undefined) run.report(findings.homeUnknown(offset));
  else if (options.home === "from" && state.home !== undefined) {
    [state.x, state.y] = state.home;
    act.rapid(xy, offset);
  } else {
    state.known = 0;
    tellOnce(run, "home", findings.homeIsClearance(offset));
  }
  motionDone(run, true, offset);
}

/** CLEARP/z or CLEARP/XYPLAN,z: the clearance plane. */
export function clearp(run: ClRun, { offset, items }: Statement): void {
  const [first, second] = items;
  const isPlane = first?.text === "XYPLAN" && second !== undefined;
  const item = isPlane ? second : first;
  if (item?.kind !== "number" || items.length > (isPlane ? 2 : 1)) {
    run.report(findings.wrongItems(offset, "CLEARP", "CLEARP/z or CLEARP/XYPLAN, z"));
    return;
  }
  const z = length(run, item);
  if (z !== undefined) run.state.clearancePlane = z + run.state.shift[2];
}

/** Z of the clearance plane: of CLEARP, or what the user states. */
function planeOf({ state, options, headClearance }: ClRun): number | undefined {
  const { clearancePlane, scale } = state;
  if (clearancePlane !== undefined) return clearancePlane;
  const isStated = options.clearance !== undefined && scale !== undefined;
  return isStated ? aptBaseUnits(options.clearance, scale) : headClearance;
}

/** RETRCT: up to the clearance plane at rapid; a tool that is there or above stays. */
export function retrct(run: ClRun, { offset, items }: Statement): void {
  const { state, act } = run;
  if (items.length > 0) run.report(findings.wrongItems(offset, "RETRCT", "RETRCT"));
  const plane = planeOf(run);
  if (plane === undefined) run.report(findings.clearanceUnknown(offset));
  // A tool that is still at clearance is as high as it goes.
  if (plane === undefined || !state.moved || state.toolZ === undefined) return;
  const isTop = state.toolZ >= plane;
  // The point of the holes that follow is another thing than the place of the tool.
  if (state.cycleOn) state.known &= ~axisBit.z;
  else state.known |= axisBit.z;
  if (!isTop) state.toolZ = plane;
  state.z = state.toolZ;
  if (isTop) return;
  act.rapid(axisBit.z, offset);
  motionDone(run, true, offset);
}
