/** Writes rain-gauge-foot.job.json beside this file: npx tsx examples/rain-gauge-foot/make-job.ts */
import { writeFileSync } from "node:fs";
import { jobText } from "../weather-plate/job-text.ts";
import type { Move, Operation } from "../weather-plate/job-text.ts";
import { circle, contour, contourStart, line, offset, rapid, trace } from "../weather-plate/paths.ts";
import type { Point, RoundedBox } from "../weather-plate/paths.ts";

// Millimetres; work zero is the middle of the top of a polyethylene blank of 80 x 80 x 12, taped to the table.
const clearance = 10;
const feedStart = 1;
/** Z just above the face, where the feed of a helix begins. */
const skim = 0.2;

/** Seat of the gauge's tube, 30 across and 5 deep. */
const middle: Point = { x: 0, y: 0 };
const seatRadius = 15;
const seatDepth = -5;
/** Rim of the foot. */
const rim: RoundedBox = { centre: middle, halfX: 35, halfY: 35, radius: 8 };
const through = -12.2;
/** Holes for pegs, as wide as the tool, which cuts over its centre. */
const pegs = [[28, 28], [-28, 28], [-28, -28], [28, -28]] as const;

const millRadius = 2;
const rpm = 12000;
/** 0.05 mm a tooth: polyethylene with a sharp single-flute tool. */
const feeds = { mill: 600, plunge: 150 };

/** From the middle outwards: a helix from just above the face, then a full circle on the floor, and a dwell to clear the chips. */
function seat(): Move[] {
  const [first, last] = [6, seatRadius - millRadius];
  return [
    rapid({ x: first, y: 0 }),
    rapid({ z: feedStart }),
    line({ z: skim }, feeds.plunge),
    circle(middle, first, "ccw", { z: seatDepth, turns: 4, feed: feeds.mill }),
    circle(middle, first, "ccw", {}),
    line({ x: 9.5 }),
    circle(middle, 9.5, "ccw", {}),
    line({ x: last }),
    circle(middle, last, "ccw", {}),
    { dwell: 0.5 },
    line({ x: 0, y: 0 }),
    rapid({ z: clearance }),
  ];
}

/** A groove of 2 deep, three quarters round the seat, with a straight way out over the rim. */
function drain(): Move[] {
  const radius = 21;
  return [
    rapid({ x: 0, y: radius }),
    rapid({ z: feedStart }),
    line({ z: -2 }, feeds.plunge),
    { arc: { x: radius, y: 0, cx: 0, cy: 0 }, turn: "ccw", feed: feeds.mill },
    line({ x: 41 }),
    rapid({ z: clearance }),
  ];
}

/** Four pecks a hole, and up to clearance between them, over the tape. */
function pegHoles(): Move[] {
  return [
    rapid({ x: pegs[0][0], y: pegs[0][1] }),
    { holes: { kind: "peck", at: pegs, top: 0, depth: through, retract: feedStart, peck: 3.5, between: "initial" }, feed: feeds.plunge },
  ];
}

/** Round the rim in three passes, climb milling. */
function outline(): Move[] {
  const wall = offset(rim, millRadius);
  const start = contourStart(wall, "cw", 0);
  const passes = [-4, -8, through].flatMap((z) => [line({ z }, feeds.plunge), ...trace(contour(wall, "cw", 0), feeds.mill)]);
  return [rapid({ ...start }), rapid({ z: feedStart }), ...passes, rapid({ z: clearance })];
}

const operations: Operation[] = [
  {
    id: "foot", name: "Seat, drain, pegs and outline", tool: 1, spindle: { rpm, direction: "cw" }, coolant: "off",
    moves: [...seat(), ...drain(), ...pegHoles(), ...outline()],
  },
];

const job = {
  job: "1",
  name: "Rain gauge foot",
  program: { number: 1003, name: "RAIN GAUGE FOOT" },
  units: "mm",
  stock: { min: [-40, -40, -12], max: [40, 40, 0], material: "polyethylene" },
  clearance,
  tools: [
    { number: 1, kind: "end-mill", diameter: 2 * millRadius, flutes: 1, maxRpm: 24000, centreCutting: true, description: "single-flute end-mill 4, for plastics" },
  ],
  operations,
};

writeFileSync(new URL("rain-gauge-foot.job.json", import.meta.url), jobText(job, 4));
