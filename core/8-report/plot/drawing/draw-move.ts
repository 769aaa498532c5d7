import { curveOf, placeOnCurve, quadrantParts } from "../curve.ts";
import type { Curve } from "../curve.ts";
import { isArcMove } from "../moves.ts";
import type { PassingMove } from "../walk-moves.ts";
import type { PathText } from "./path-text.ts";
import type { View } from "./view.ts";
import { across, down } from "./view.ts";

/** Circles of a smaller radius on the sheet are drawn as their quadrants' chords. */
const smallestRadius = 3;

/** Angle of one cubic curve of a helix seen from the side, radians: off by r / 5000. */
const curveAngle = Math.PI / 6;

/** Draws the way of a motion into a path of a view: lines, parts of circles in their plane, and else what is seen of them. */
export function drawMove(path: PathText, view: View, move: PassingMove): void {
  const { from, to } = move;
  if (!isArcMove(move.kind)) {
    path.lineTo(across(view, from), down(view, from), across(view, to), down(view, to));
    return;
  }
  const curve = curveOf(move.kind, from, to, move.c1, move.c2, move.turns);
  const [first, second] = curve.axes;
  const isFaced = [first, second].every((axis) => axis === view.right || axis === view.up);
  if (isFaced) drawCircle(path, view, curve, first === view.right);
  else drawSideways(path, view, curve);
}

/** In quarters, so that no part is more than half a turn however many turns there are. */
function drawCircle(path: PathText, view: View, curve: Curve, isSameSense: boolean): void {
  const radius = curve.radius * view.scale;
  const isCounterClockwise = curve.sweep > 0 === isSameSense;
  pieces(view, curve, (x0, y0, x1, y1) => {
    if (radius < smallestRadius) path.lineTo(x0, y0, x1, y1);
    else path.arcTo(x0, y0, x1, y1, radius, isCounterClockwise ? 0 : 1);
  });
}

/** Seen along its plane, an arc is a line to and fro between its extremes, and a helix a wave. */
function drawSideways(path: PathText, view: View, curve: Curve): void {
  if (curve.rise === 0) {
    pieces(view, curve, path.lineTo);
    return;
  }
  const count = Math.ceil(Math.abs(curve.sweep) / curveAngle);
  for (let piece = 0; piece < count; piece++) path.curveTo(wave(view, curve, piece / count, 1 / count));
}

function pieces(
  view: View,
  curve: Curve,
  draw: (x0: number, y0: number, x1: number, y1: number) => void,
): void {
  const place = [0, 0, 0];
  placeOnCurve(curve, 0, place);
  let [x, y] = [across(view, place), down(view, place)];
  for (const part of [...quadrantParts(curve), 1]) {
    placeOnCurve(curve, part, place);
    const [nextX, nextY] = [across(view, place), down(view, place)];
    draw(x, y, nextX, nextY);
    [x, y] = [nextX, nextY];
  }
}

/** A piece of a helix seen from the side as a cubic curve with the same ends and the same directions there. */
function wave(view: View, curve: Curve, from: number, length: number): number[] {
  const ends = [from, from + length].map((part) => {
    const at = [0, 0, 0];
    placeOnCurve(curve, part, at);
    const slope = [0, 0, 0];
    const angle = curve.start + part * curve.sweep;
    slope[curve.axes[0]] = -curve.radius * Math.sin(angle) * curve.sweep * length;
    slope[curve.axes[1]] = curve.radius * Math.cos(angle) * curve.sweep * length;
    slope[curve.axes[2]] = curve.rise * length;
    return { at, slope };
  });
  const [start, end] = ends;
  const control = [
    start.at.map((value, axis) => value + start.slope[axis] / 3),
    end.at.map((value, axis) => value - end.slope[axis] / 3),
  ];
  return [start.at, ...control, end.at].flatMap((at) => [across(view, at), down(view, at)]);
}
