/** Writes sensor-bracket-inch.job.json beside this file: npx tsx examples/sensor-bracket-inch/make-job.ts */
import { writeFileSync } from "node:fs";
import { jobText } from "../weather-plate/job-text.ts";
import type { Move, Operation } from "../weather-plate/job-text.ts";
import { circle, contour, contourStart, line, offset, rapid, traceInside } from "../weather-plate/paths.ts";
import type { Point, RoundedBox } from "../weather-plate/paths.ts";

// Inches; work zero is the lower left corner of the top of a block of 3 x 2 x 1, sawn to size and held in a vise.
const clearance = 0.5;
const feedStart = 0.1;
/** Z just above the face, where the feed of a helix begins. */
const skim = 0.01;

/** Seat of the sensor's head, 0.75 across and 0.5 deep. */
const seat: Point = { x: 0.75, y: 1 };
/** Slot of the bracket's own screw, 0.375 wide and 0.25 deep. */
const slot: RoundedBox = { centre: { x: 2.25, y: 1 }, halfX: 0.1875, halfY: 0.625, radius: 0.1875 };
const tapped = [[0.25, 0.25], [1.25, 0.25], [1.25, 1.75], [0.25, 1.75]] as const;

const millRadius = 0.125;
const speeds = { spot: 2500, drill: 3000, tap: 400, mill: 6000 };

/** Chip loads for light machines: 0.002 in for a 0.201 in drill, 0.0015 in for a 1/4 in end-mill. In/min, but for the drill's in/rev. */
const feeds = { spot: 10, drillPerRevolution: 0.004, mill: speeds.mill * 2 * 0.0015, plunge: 4 };

/** Feed of the tool's centre on a circle inside a wall whose edge is to be cut at `feeds.mill`; to a tenth of an inch a minute. */
const insideFeed = (radius: number): number => Math.round((10 * feeds.mill * radius) / (radius + millRadius)) / 10;

const vise = [
  { name: "fixed jaw", min: [-1.5, 2, -1], max: [4.5, 2.75, -0.375] },
  { name: "moving jaw", min: [-1.5, -0.75, -1], max: [4.5, 0, -0.375] },
];

const holder = { diameter: 1.25, length: 1.75 };
const tools = [
  { number: 1, kind: "spot-drill", diameter: 0.375, flutes: 2, maxRpm: 8000, length: 3.25, stickOut: 1.5, tipAngle: 90, holder, description: "90 degree spot drill, 3/8" },
  { number: 2, kind: "drill", diameter: 0.201, flutes: 2, maxRpm: 5000, length: 3.75, stickOut: 2, fluteLength: 1.5, tipAngle: 118, holder, description: "No. 7 drill, high-speed steel" },
  { number: 3, kind: "tap", diameter: 0.25, flutes: 2, maxRpm: 600, length: 3.5, stickOut: 1.75, lead: 0.05, hand: "right", holder, description: "tap 1/4-20, floating holder" },
  { number: 4, kind: "end-mill", diameter: 0.25, flutes: 2, maxRpm: 12000, length: 3, stickOut: 1.25, fluteLength: 0.75, centreCutting: true, holder, description: "carbide end-mill 1/4" },
];

/** A 90 degree spot of 0.27 diameter, so that each thread begins in a countersink. */
const spotHoles: Move[] = [
  rapid({ x: tapped[0][0], y: tapped[0][1] }),
  { holes: { kind: "dwell", at: tapped, top: 0, depth: -0.135, retract: feedStart, dwell: 0.2 }, feed: feeds.spot },
  rapid({ z: clearance }),
];

/** Through: 0.06 for the 118 degree point and 0.04 of break-out. Deeper than five diameters, so every peck comes out. */
const drillHoles: Move[] = [
  rapid({ x: tapped[0][0], y: tapped[0][1] }),
  { holes: { kind: "peck", at: tapped, top: 0, depth: -1.1, retract: feedStart, peck: 0.2 }, feed: feeds.drillPerRevolution },
  rapid({ z: clearance }),
];

/** 400 rpm x 0.05 in is 20 in/min exactly; it starts three leads above the face. */
const tapHoles: Move[] = [
  rapid({ x: tapped[0][0], y: tapped[0][1] }),
  { pause: "blow the holes clear and oil the tap" },
  { holes: { kind: "tap", at: tapped, top: 0, depth: -0.75, retract: 0.15, lead: 0.05, between: "retract" } },
  rapid({ z: clearance }),
];

/** One helix of the seat, a full circle on its floor, and back to the middle. */
function ring(radius: number, turns: number): Move[] {
  return [
    line({ x: seat.x + radius, y: seat.y }, insideFeed(radius)),
    circle(seat, radius, "ccw", { z: -0.5, turns }),
    circle(seat, radius, "ccw", {}),
  ];
}

/** From the middle outwards, each ring a helix from just above the face; the last one leaves 0.01 for a finishing circle. */
function sensorSeat(): Move[] {
  const again = (): Move[] => [line({ ...seat }, feeds.mill), rapid({ z: feedStart }), line({ z: skim }, feeds.plunge)];
  return [
    rapid({ ...seat }),
    rapid({ z: feedStart }),
    line({ z: skim }, feeds.plunge),
    ...ring(0.1, 16),
    ...again(),
    ...ring(0.18, 10),
    ...again(),
    ...ring(0.24, 10),
    line({ x: seat.x + 0.25 }, insideFeed(0.25)),
    circle(seat, 0.25, "ccw", {}),
    { dwell: 0.2 },
    line({ ...seat }, feeds.mill),
    rapid({ z: clearance }),
  ];
}

/** Ramps to and fro along the middle, 0.05 a pass (3.3 degrees), then once round the wall, climb milling. */
function screwSlot(): Move[] {
  const { centre, halfY, radius } = slot;
  const [low, high] = [centre.y - halfY + radius, centre.y + halfY - radius];
  const ramps = [-0.05, -0.1, -0.15, -0.2, -0.25].map((z, index) => line({ y: index % 2 === 0 ? high : low, z }, index === 0 ? feeds.mill : undefined));
  const wall = offset(slot, -millRadius);
  const start = contourStart(wall, "ccw", centre.x);
  const middle = { x: centre.x, y: low };
  return [
    rapid({ ...middle }),
    rapid({ z: feedStart }),
    line({ z: skim }, feeds.plunge),
    ...ramps,
    line({ ...middle }),
    line({ ...start }),
    ...traceInside(contour(wall, "ccw", centre.x), feeds.mill, insideFeed(wall.radius)),
    line({ ...middle }, feeds.mill),
    rapid({ z: clearance }),
  ];
}

const clockwise = (rpm: number): object => ({ rpm, direction: "cw" });

const operations: Operation[] = [
  { id: "spot", name: "Spot the tapped holes", tool: 1, spindle: clockwise(speeds.spot), coolant: "mist", moves: spotHoles },
  { id: "drill", name: "Drill for 1/4-20", tool: 2, spindle: clockwise(speeds.drill), coolant: "mist", feedMode: "per-revolution", moves: drillHoles },
  { id: "tap", name: "Tap 1/4-20", tool: 3, spindle: clockwise(speeds.tap), coolant: "off", moves: tapHoles },
  { id: "seat", name: "Bore the seat of the sensor", tool: 4, spindle: clockwise(speeds.mill), coolant: "mist", moves: sensorSeat() },
  { id: "slot", name: "Slot of the bracket's screw", tool: 4, spindle: clockwise(speeds.mill), coolant: "mist", moves: screwSlot() },
];

const job = {
  job: "1",
  name: "Sensor bracket, inch",
  program: { number: 1002, name: "SENSOR BRACKET" },
  units: "inch",
  stock: { min: [0, 0, -1], max: [3, 2, 0], material: "aluminium block, 6000 series" },
  fixtures: vise,
  workOffset: 2,
  clearance,
  tools,
  operations,
};

writeFileSync(new URL("sensor-bracket-inch.job.json", import.meta.url), jobText(job, 5));
