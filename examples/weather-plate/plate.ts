/** The plate, its tools and its feeds. Millimetres; work zero is the lower left corner of the finished face. */
import type { Point, RoundedBox } from "./paths.ts";

/** Z of travel over everything. */
export const clearance = 15;
/** Nothing stands above the face while it is engraved, and a hundred strokes need no long way. */
export const engravingClearance = 8;
/** Z where feed begins: above the rough surface at 0.6. */
export const feedStart = 2;
/** Z that the through cuts reach, 0.3 mm into the spoil board. */
export const through = -10.3;

export const stock = { min: [-12, -12, -10], max: [192, 132, 0.6], material: "aluminium plate, 6000 series" };

/** Both press from the side, and end below the face, so that the face-mill can pass. */
export const fixtures = [
  { name: "front edge clamp", min: [60, -42, -10], max: [120, -12, -1] },
  { name: "rear edge clamp", min: [60, 132, -10], max: [120, 162, -1] },
];

export const outline: RoundedBox = { centre: { x: 90, y: 60 }, halfX: 90, halfY: 60, radius: 8 };
export const pocket: RoundedBox = { centre: { x: 140, y: 62 }, halfX: 28, halfY: 22, radius: 6 };
export const cableSlot: RoundedBox = { centre: { x: 138, y: 28 }, halfX: 24, halfY: 4, radius: 4 };
/** Bearing of the wind vane: 26 mm seat, 16 mm through; also the middle of the wind rose. */
export const vane: Point = { x: 56, y: 62 };

export const mountingHoles = [[11, 11], [169, 11], [169, 109], [11, 109]] as const;
export const dowelHoles = [[40, 111], [140, 111]] as const;
export const standoffHoles = [[119, 47], [161, 47], [161, 77], [119, 77]] as const;
export const ventHoles = [[112, 12], [120, 12], [128, 12], [136, 12], [144, 12], [152, 12]] as const;

const holder = { diameter: 32, length: 30 };

export const tools = [
  { number: 1, kind: "face-mill", diameter: 25, flutes: 2, maxRpm: 15000, maxFeed: 2000, length: 54, stickOut: 24, fluteLength: 8, holder, description: "indexable face-mill, carbide" },
  { number: 2, kind: "spot-drill", diameter: 8, flutes: 2, maxRpm: 20000, maxFeed: 1500, length: 56, stickOut: 26, fluteLength: 12, tipAngle: 90, holder, description: "carbide 90 degree spot and chamfer drill" },
  { number: 3, kind: "drill", diameter: 3.8, flutes: 2, maxRpm: 12000, maxFeed: 600, length: 60, stickOut: 30, fluteLength: 24, tipAngle: 118, holder, description: "carbide drill 3.8" },
  { number: 4, kind: "reamer", diameter: 4, flutes: 4, maxRpm: 8000, maxFeed: 800, length: 60, stickOut: 30, fluteLength: 20, holder, description: "carbide reamer 4 H7" },
  { number: 5, kind: "end-mill", diameter: 6, flutes: 2, maxRpm: 24000, maxFeed: 2000, length: 58, stickOut: 28, fluteLength: 16, centreCutting: true, radiusOffset: 5, holder, description: "carbide end-mill 6, for aluminium" },
  { number: 6, kind: "engraver", diameter: 4, flutes: 1, maxRpm: 24000, maxFeed: 800, length: 52, stickOut: 22, fluteLength: 6, tipAngle: 60, tipDiameter: 0.2, holder, description: "engraver 60 degrees, tip 0.2" },
];

/** Speeds in rpm: between the spindle's 6000 and 24000, and 200 to 500 m/min for milling with carbide. */
export const speeds = { face: 6000, spot: 10000, drill: 8000, ream: 6000, mill: 16000, finish: 18000, chamfer: 12000, engrave: 24000 };

/** Feeds in mm/min: rpm x flutes x chip load. Chip loads stay in the range for light machines: 0.01 to 0.025 mm at 3 mm, 0.03 to 0.06 mm at 6 mm. */
export const feeds = {
  face: speeds.face * 2 * 0.08,
  spot: speeds.spot * 2 * 0.02,
  drill: speeds.drill * 2 * 0.02,
  ream: speeds.ream * 4 * 0.02,
  mill: speeds.mill * 2 * 0.04,
  slot: speeds.mill * 2 * 0.03,
  finish: speeds.finish * 2 * 0.03,
  chamfer: speeds.chamfer * 2 * 0.025,
  engrave: speeds.engrave * 0.015,
  /** Straight down, where the tool meets at most a trace of metal: a quarter of the slotting feed. */
  plunge: 240,
};

/** Radius of the end-mill. */
export const millRadius = 3;

/** Feed of the tool's centre on a circle inside a wall, so that the edge at the wall moves at `edgeFeed`; whole mm/min. */
export function insideFeed(edgeFeed: number, pathRadius: number): number {
  return Math.round((edgeFeed * pathRadius) / (pathRadius + millRadius));
}
