/** The plate's edges: chamfers, and the outline with its holding tabs. */
import { oneByOne } from "./cuts.ts";
import type { Cut } from "./cuts.ts";
import type { Move } from "./job-text.ts";
import { circle, contour, contourStart, distance, line, offset, pieceMove, rapid, trace } from "./paths.ts";
import type { Piece, Point, RoundedBox } from "./paths.ts";
import { cableSlot, clearance, feeds, feedStart, millRadius, mountingHoles, outline, pocket, through, vane } from "./plate.ts";

/** A 0.6 mm chamfer: the 90 degree tip runs 1 mm beside the edge and 1 + 0.6 mm below the face. */
const chamfer = { aside: 1, z: -1.6 };

/** Round a hole of `radius`, entered and left in its middle. */
function chamferHole(centre: Point, radius: number): Cut {
  const path = radius - chamfer.aside;
  return {
    at: centre,
    moves: [
      line({ z: chamfer.z }, feeds.plunge),
      line({ x: centre.x + path }, feeds.chamfer),
      circle(centre, path, "ccw", {}),
      line({ x: centre.x }),
    ],
  };
}

/** Round an opening or the outline, entered on the path. */
function chamferBox(box: RoundedBox, turn: "cw" | "ccw", startX: number): Cut {
  return {
    at: contourStart(box, turn, startX),
    moves: [line({ z: chamfer.z }, feeds.plunge), ...trace(contour(box, turn, startX), feeds.chamfer)],
  };
}

/** Every hole that was bored, both openings, and the outline while the plate is still one with its frame. */
export function chamfers(): Move[] {
  return oneByOne([
    ...mountingHoles.map(([x, y]) => chamferHole({ x, y }, 4.2)),
    chamferHole(vane, 13),
    chamferBox(offset(pocket, -chamfer.aside), "ccw", pocket.centre.x),
    chamferBox(offset(cableSlot, -chamfer.aside), "ccw", cableSlot.centre.x),
    chamferBox(offset(outline, chamfer.aside), "cw", outline.centre.x),
  ]);
}

/** Holding tabs: 6 mm wide and 2 mm thick; the tool rises over `up` and sinks over `down`, so that no metal is met at a plunge. */
const tabs = { z: -8, flat: 6 + 2 * millRadius, up: 4, down: 14, at: [{ x: 50, y: 120 }, { x: 130, y: 120 }, { x: 180, y: 60 }, { x: 130, y: 0 }, { x: 50, y: 0 }, { x: 0, y: 60 }] };

/** Depths of the outline's passes; the last two meet the tabs. */
const passDepths = [-1.3, -2.6, -3.9, -5.2, -6.5, -7.8, -9.1, through];

const between = (from: Point, to: Point, along: number): Point => {
  const part = along / distance(from, to);
  return { x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) };
};

/** How far along a straight piece each of its tabs lies, nearest first. */
function tabsOn(from: Point, to: Point): number[] {
  const length = distance(from, to);
  const [stepX, stepY] = [(to.x - from.x) / length, (to.y - from.y) / length];
  return tabs.at
    .map((tab) => ({ along: (tab.x - from.x) * stepX + (tab.y - from.y) * stepY, aside: Math.abs((tab.y - from.y) * stepX - (tab.x - from.x) * stepY) }))
    .filter(({ along, aside }) => aside < 2 * millRadius && along > 0 && along < length)
    .map(({ along }) => along)
    .sort((one, other) => one - other);
}

/** The pieces at depth `z`, lifted over the tabs where `z` is below them. */
function traceOverTabs(start: Point, pieces: readonly Piece[], z: number, feed: number): Move[] {
  let from = start;
  return pieces.flatMap((piece, index) => {
    const here = from;
    from = piece.to;
    const lifts = z < tabs.z && piece.centre === undefined ? tabsOn(here, piece.to).flatMap((along) => lift(here, piece.to, along, z, feed)) : [];
    return [...lifts, pieceMove(piece, index === 0 || lifts.length > 0 ? feed : undefined)];
  });
}

function lift(from: Point, to: Point, along: number, z: number, feed: number): Move[] {
  const place = (distanceAlong: number): Point => between(from, to, distanceAlong);
  const edge = tabs.flat / 2;
  return [
    line({ ...place(along - edge - tabs.up) }, feed),
    line({ ...place(along - edge), z: tabs.z }),
    line({ ...place(along + edge) }),
    line({ ...place(along + edge + tabs.down), z }, feeds.slot),
  ];
}

/**
 * The outline with the tool's radius worked in. Each pass ramps down along the upper side between x 14 and 36 (3.4 degrees)
 * and runs clockwise, climb milling. The last round takes the 0.15 mm that the others left.
 */
export function profile(): Move[] {
  const [rough, fine] = [offset(outline, millRadius + 0.15), offset(outline, millRadius)];
  const [rampStart, rampEnd, fineX] = [14, 36, 38];
  const start = contourStart(rough, "cw", rampStart);
  const top = { x: rampEnd, y: start.y };
  const passes = passDepths.flatMap((z) => [
    line({ x: rampEnd, z }, feeds.slot),
    ...traceOverTabs(top, contour(rough, "cw", rampEnd, rampStart), z, feeds.slot),
  ]);
  const fineStart = contourStart(fine, "cw", fineX);
  return [
    rapid({ ...start }),
    { pause: "put M8 screws through the four corner holes into the spoil board" },
    rapid({ z: feedStart }),
    line({ z: 0.2 }, feeds.plunge),
    ...passes,
    line({ x: rampEnd }),
    line({ ...fineStart }),
    ...traceOverTabs(fineStart, contour(fine, "cw", fineX), through, feeds.finish),
    rapid({ z: clearance }),
  ];
}
