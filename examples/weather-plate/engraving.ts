/** The engraving: a wind rose round the bearing of the vane, the four winds, and the plate's title. */
import { oneByOne } from "./cuts.ts";
import type { Cut } from "./cuts.ts";
import type { Move } from "./job-text.ts";
import { lettering } from "./letters.ts";
import type { Stroke } from "./letters.ts";
import { bearing, circle, line, trace } from "./paths.ts";
import type { Point } from "./paths.ts";
import { engravingClearance, feeds, vane } from "./plate.ts";

/** 0.15 mm deep, the engraver with its 0.2 mm tip cuts a line 0.37 mm wide. */
const depth = -0.15;

/** Radii of the rose in mm, from the bearing outwards; the winds' letters stand between point and scale. */
const rose = { inner: 15, pointBase: 16, point: 22.5, letters: 27, scale: 32, tick: 34, longTick: 35.5, outer: 38 };

/** One stroke of the engraver. */
const stroke = (at: Point, cut: readonly Move[]): Cut => ({ at, moves: [line({ z: depth }, feeds.plunge), ...cut] });

const letterStroke = ({ from, pieces }: Stroke): Cut => stroke(from, trace(pieces, feeds.engrave));

function ring(radius: number): Cut {
  return stroke({ x: vane.x + radius, y: vane.y }, [circle(vane, radius, "ccw", { feed: feeds.engrave })]);
}

/** A tick every five degrees, a longer one every ten, one across the whole scale at the eight winds. */
function tick(degrees: number): Cut {
  const end = degrees % 45 === 0 ? rose.outer : degrees % 10 === 0 ? rose.longTick : rose.tick;
  return stroke(bearing(vane, rose.scale, degrees), [line({ ...bearing(vane, end, degrees) }, feeds.engrave)]);
}

/** A point of the rose: a closed triangle, the four main winds longer than the others. */
function windPoint(degrees: number): Cut {
  const tip = bearing(vane, degrees % 90 === 0 ? rose.point : rose.point - 2.5, degrees);
  const [left, right] = [bearing(vane, rose.pointBase, degrees - 14), bearing(vane, rose.pointBase, degrees + 14)];
  const points = [tip, right, left].map(({ x, y }) => [x, y, depth] as const);
  return stroke(left, [{ path: { kind: "line", points }, feed: feeds.engrave }]);
}

/** An arc with an arrow head between two main winds, the way the scale counts. */
function arrow(degrees: number): Cut[] {
  const [from, to] = [bearing(vane, rose.letters, degrees - 22), bearing(vane, rose.letters, degrees + 22)];
  const shaft: Move = { arc: { ...to, cx: vane.x, cy: vane.y }, turn: "cw", feed: feeds.engrave };
  const barbs = [rose.letters - 1, rose.letters + 1].map((radius) => bearing(vane, radius, degrees + 17));
  return [stroke(from, [shaft]), ...barbs.map((barb) => stroke(barb, [line({ ...to }, feeds.engrave)]))];
}

/** The directions of a full circle, `step` degrees apart, beginning at `first`. */
const every = (step: number, first = 0): number[] => Array.from({ length: 360 / step }, (_, index) => first + index * step);

/** All of the engraving, from the tool's arrival to its last retract. */
export function engraving(): Move[] {
  const winds = ["N", "E", "S", "W"].flatMap((wind, index) => lettering(wind, 6, bearing(vane, rose.letters, index * 90)));
  const title = lettering("WEATHER STATION", 5, { x: vane.x, y: 11.5 });
  const cuts = [
    ...[rose.inner, rose.scale, rose.outer].map(ring),
    ...every(5).map(tick),
    ...every(45).map(windPoint),
    ...every(90, 45).flatMap(arrow),
    ...winds.map(letterStroke),
    ...title.map(letterStroke),
  ];
  return oneByOne(cuts, engravingClearance);
}
