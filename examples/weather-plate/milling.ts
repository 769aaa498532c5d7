/** Milling inside the plate: face, bores, pocket, cable slot and level grooves. */
import { oneByOne } from "./cuts.ts";
import type { Cut } from "./cuts.ts";
import type { Move } from "./job-text.ts";
import { circle, contour, contourStart, line, offset, rapid, traceInside } from "./paths.ts";
import type { Point, RoundedBox } from "./paths.ts";
import { cableSlot, clearance, feeds, feedStart, insideFeed, millRadius, mountingHoles, pocket, speeds, through, vane } from "./plate.ts";

/** Rows along X, 13.5 mm apart (54 % of the diameter), joined by half circles beside the stock, where nothing is cut. */
export function face(): Move[] {
  const [left, right, first, pitch, rows] = [-28, 208, 6, 13.5, 9];
  const passes = Array.from({ length: rows }, (_, row): Move[] => {
    const [y, forward] = [first + row * pitch, row % 2 === 0];
    const x = forward ? right : left;
    const turnBack: Move = { arc: { x, y: y + pitch, cx: x, cy: y + pitch / 2 }, turn: forward ? "ccw" : "cw" };
    return row === rows - 1 ? [line({ x })] : [line({ x }), turnBack];
  });
  return [
    rapid({ x: left, y: first }),
    { note: "clamps end 1 mm below the finished face" },
    rapid({ z: 0 }),
    line({ x: left + 10 }, feeds.face),
    ...passes.flat(),
    rapid({ z: clearance }),
  ];
}

/** Down a helix of `pitch`, then `finishes` full circles at the bottom, each on its own radius. Begins and ends above the middle. */
function bore(centre: Point, top: number, bottom: number, pitch: number, radius: number, finishes: readonly number[]): Move[] {
  const turns = Math.round((top - bottom) / pitch);
  return [
    line({ x: centre.x + radius, y: centre.y }, insideFeed(feeds.slot, radius)),
    circle(centre, radius, "ccw", { z: bottom, turns }),
    ...[radius, ...finishes].flatMap((finish) => [
      line({ x: centre.x + finish, y: centre.y }, insideFeed(feeds.slot, finish)),
      circle(centre, finish, "ccw", {}),
    ]).slice(1),
    line({ ...centre }, feeds.mill),
  ];
}

/** Four holes of 8.4 mm in the corners, over the drilled pilots. */
export function mountingBores(): Move[] {
  const cuts = mountingHoles.map(([x, y]): Cut => ({
    at: { x, y },
    moves: [line({ z: 0.3 }, feeds.plunge), ...bore({ x, y }, 0.3, through, 0.5, 1.1, [1.2])],
  }));
  return oneByOne(cuts);
}

/** 16 mm through, opened in two helices; then a seat of 26 mm, 4 mm deep, in three rings. */
export function vaneBearing(): Move[] {
  const seat = -4;
  const back = (z: number): Move[] => [rapid({ z: feedStart }), line({ z }, feeds.plunge)];
  return [
    rapid({ ...vane }),
    rapid({ z: feedStart }),
    line({ z: 0.3 }, feeds.plunge),
    ...bore(vane, 0.3, through, 0.9, 2.4, []),
    ...back(0.3),
    ...bore(vane, 0.3, through, 1.2, 4.7, [5]),
    ...back(0.2),
    ...bore(vane, 0.2, seat, 1, 7.2, []),
    ...back(0.2),
    ...bore(vane, 0.2, seat, 1, 9.7, [10]),
    rapid({ z: clearance }),
  ];
}

/** Wall left for the finishing pass under cutter compensation. */
const pocketWall = 0.2;
const pocketFloor = -5;

/** Rings of the pocket from the inside out: the innermost an obround of the helix's radius, 46 % of the diameter apart. */
function pocketRings(helixRadius: number): RoundedBox[] {
  const outer = offset(pocket, -millRadius - pocketWall);
  const steps = 6;
  const step = (outer.halfY - helixRadius) / steps;
  return Array.from({ length: steps + 1 }, (_, ring) => {
    const inset = (steps - ring) * step;
    const [halfX, halfY] = [outer.halfX - inset, outer.halfY - inset];
    return { centre: pocket.centre, halfX, halfY, radius: Math.min(outer.radius, halfY) };
  });
}

/** Four levels; each enters by a helix onto the end of the innermost ring, then widens ring by ring, climb milling. */
export function pocketRoughing(): Move[] {
  const [helixRadius, levels] = [2.4, 4];
  const rings = pocketRings(helixRadius);
  const inner = rings[0];
  if (inner === undefined) throw new Error("the pocket has no ring");
  const entry = { x: pocket.centre.x + inner.halfX - helixRadius, y: pocket.centre.y };
  const start = { x: entry.x + helixRadius, y: entry.y };
  const down = Array.from({ length: levels }, (_, level): Move[] => {
    const [above, z] = [(pocketFloor * level) / levels, (pocketFloor * (level + 1)) / levels];
    const arrive = level === 0 ? [rapid({ z: feedStart }), line({ z: 0.3 }, feeds.plunge)] : [line({ z: above + 0.2 }, feeds.mill), line({ ...start })];
    return [...arrive, circle(entry, helixRadius, "ccw", { z, turns: 2, feed: insideFeed(feeds.slot, helixRadius) }), ...ringMoves(rings, start)];
  });
  return [rapid({ ...start }), ...down.flat(), rapid({ z: clearance })];
}

/** Once round the innermost ring from the helix's foot, then a line out to each next ring and once round it. */
function ringMoves(rings: readonly RoundedBox[], foot: Point): Move[] {
  const x = pocket.centre.x;
  return rings.flatMap((ring, index) => {
    if (index === 0) return firstRing(ring, foot);
    const feed = insideFeed(feeds.mill, ring.radius);
    return [line({ ...contourStart(ring, "ccw", x) }), ...traceInside(contour(ring, "ccw", x), feeds.mill, feed)];
  });
}

/** The helix's circle is the right-hand end of the innermost ring, so the ring begins and ends at its foot. */
function firstRing(ring: RoundedBox, foot: Point): Move[] {
  const { centre, halfX, halfY } = ring;
  const [left, right] = [centre.x - halfX + halfY, centre.x + halfX - halfY];
  return [
    { arc: { x: right, y: centre.y + halfY, cx: right, cy: centre.y }, turn: "ccw", feed: insideFeed(feeds.slot, halfY) },
    line({ x: left }),
    { arc: { x: left, y: centre.y - halfY, cx: left, cy: centre.y }, turn: "ccw" },
    line({ x: right }),
    { arc: { ...foot, cx: right, cy: centre.y }, turn: "ccw" },
  ];
}

/**
 * The pocket's wall with the controller's compensation: the words are the wall itself. Lead-in and lead-off lines are
 * 10 mm, longer than the tool's radius of 3 mm, and meet the arcs in their direction.
 */
export function pocketFinish(): Move[] {
  const { x, y } = pocket.centre;
  const [low, lead] = [y - pocket.halfY, 8];
  return [
    rapid({ x: x - lead, y: low + lead + 10 }),
    { dwell: 1.5 },
    { note: "the pocket is clear of chips before the finishing pass" },
    rapid({ z: feedStart }),
    line({ z: pocketFloor }, feeds.plunge),
    { comp: "left" },
    line({ y: low + lead }, feeds.mill),
    { arc: { x, y: low, cx: x, cy: low + lead }, turn: "ccw", feed: feeds.finish },
    ...traceInside(contour(pocket, "ccw", x), feeds.finish, insideFeed(feeds.finish, pocket.radius - millRadius)),
    { arc: { x: x + lead, y: low + lead, cx: x, cy: low + lead }, turn: "ccw" },
    { comp: "off" },
    line({ y: low + lead + 10 }, feeds.mill),
    rapid({ z: clearance }),
  ];
}

/** An 8 mm slot: ramps to and fro along its middle, then once round the wall, let in and out by quarter circles in ZX. */
export function cable(): Move[] {
  const { centre, halfX, radius } = cableSlot;
  const [floor, ramps] = [-4, 5];
  const [left, right] = [centre.x - halfX + radius, centre.x + halfX - radius];
  const down = Array.from({ length: ramps }, (_, ramp) => line({ x: ramp % 2 === 0 ? right : left, z: (floor * (ramp + 1)) / ramps }, ramp === 0 ? feeds.slot : undefined));
  const wall = offset(cableSlot, -millRadius);
  const [rise, inX, outX] = [feedStart - floor, left + 8, left + 16];
  const { y } = contourStart(wall, "ccw", inX);
  return [
    rapid({ x: left, y: centre.y }),
    rapid({ z: feedStart }),
    line({ z: 0 }, feeds.plunge),
    ...down,
    line({ x: left }),
    rapid({ z: clearance }),
    { spindle: { rpm: speeds.finish } },
    { note: "finishing speed from here" },
    rapid({ x: inX - rise, y }),
    rapid({ z: feedStart }),
    { arc: { x: inX, z: floor, cx: inX, cz: feedStart }, turn: "cw", plane: "zx", feed: feeds.plunge },
    ...traceInside(contour(wall, "ccw", inX, outX), feeds.finish, insideFeed(feeds.finish, wall.radius)),
    { arc: { x: outX + rise, z: feedStart, cx: outX, cz: feedStart }, turn: "cw", plane: "zx" },
    rapid({ z: clearance }),
  ];
}

/** Half the length of a level groove's arc, and half the width left for the tool's middle. */
const level = { half: 20, side: 2, depths: [0.5, 1] };

/** Radius of the arc that is `depth` deep in the middle of the groove's length. */
const dishRadius = (depth: number): number => (level.half * level.half + depth * depth) / (2 * depth);

/** Two dished grooves for the tubes of a cross level, 1 mm deep in the middle: one along X (arcs in ZX), one along Y (arcs in YZ). */
export function levelGrooves(): Move[] {
  const [alongX, alongY] = [{ x: 132, y: 96 }, { x: 104, y: 62 }];
  const sides = [-level.side, 0, level.side];
  const passes = level.depths.flatMap((depth) => sides.map((side) => ({ depth, side })));
  const dishX = passes.map(({ depth, side }) => {
    const words = { x: alongX.x + level.half, z: 0, cx: alongX.x, cz: dishRadius(depth) - depth };
    return dish({ x: alongX.x - level.half, y: alongX.y + side }, { arc: words, turn: "cw", plane: "zx", feed: feeds.slot });
  });
  const dishY = passes.map(({ depth, side }) => {
    const words = { y: alongY.y + level.half, z: 0, cy: alongY.y, cz: dishRadius(depth) - depth };
    return dish({ x: alongY.x + side, y: alongY.y - level.half }, { arc: words, turn: "ccw", plane: "yz", feed: feeds.slot });
  });
  return oneByOne([...dishX, ...dishY]);
}

/** Down to the face at one end of a groove, and one arc to its other end. */
const dish = (at: Point, arc: Move): Cut => ({ at, moves: [line({ z: 0 }, feeds.plunge), arc] });
