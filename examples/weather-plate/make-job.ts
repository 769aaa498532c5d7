/** Writes weather-plate.job.json beside this file: npx tsx examples/weather-plate/make-job.ts */
import { writeFileSync } from "node:fs";
import { chamfers, profile } from "./edges.ts";
import { engraving } from "./engraving.ts";
import { jobText } from "./job-text.ts";
import type { Holes, Move, Operation } from "./job-text.ts";
import { cable, face, levelGrooves, mountingBores, pocketFinish, pocketRoughing, vaneBearing } from "./milling.ts";
import { clearance, dowelHoles, engravingClearance, feeds, feedStart, fixtures, mountingHoles, speeds, standoffHoles, stock, tools, ventHoles } from "./plate.ts";

const clockwise = (rpm: number): object => ({ rpm, direction: "cw" });

/** Holes from the faced surface, after the rapid that brings the tool over the first of them. */
function holes(feed: number, cycle: Omit<Holes, "top" | "retract">): Move[] {
  const { kind, at, ...rest } = cycle;
  const [x, y] = at[0] ?? [0, 0];
  return [{ rapid: { x, y } }, { holes: { kind, at, top: 0, retract: feedStart, ...rest }, feed }];
}

/** Through, with the 1.14 mm point of the 118 degree drill and 0.36 mm of break-out. */
const drillThrough = -11.5;

const holeOperations: Operation[] = [
  {
    id: "op20", name: "Spot and chamfer the drilled holes to 4.8 mm", tool: 2, spindle: clockwise(speeds.spot), coolant: "mist",
    moves: holes(feeds.spot, { kind: "dwell", at: [...ventHoles, ...mountingHoles.slice(1, 3), ...dowelHoles, ...mountingHoles.slice(3), ...mountingHoles.slice(0, 1), ...standoffHoles], depth: -2.4, dwell: 0.1 }),
  },
  {
    id: "op30", name: "Drill 3.8 mm", tool: 3, spindle: clockwise(speeds.drill), coolant: "mist",
    moves: [
      ...holes(feeds.drill, { kind: "drill", at: dowelHoles, depth: drillThrough }),
      { rapid: { z: clearance } },
      { note: "pilots of the corner holes: between them at clearance" },
      ...holes(feeds.drill, { kind: "peck", at: mountingHoles, depth: drillThrough, peck: 3, between: "initial" }),
      { note: "row of vents" },
      ...holes(feeds.drill, { kind: "chip-break", at: ventHoles, depth: drillThrough, peck: 2, backOff: 0.3 }),
      { note: "blind holes of the standoffs" },
      ...holes(feeds.drill, { kind: "dwell", at: standoffHoles, depth: -8, dwell: 0.2 }),
      { rapid: { z: clearance } },
    ],
  },
  {
    id: "op40", name: "Ream the dowel holes 4 H7", tool: 4, spindle: clockwise(speeds.ream), coolant: "mist",
    moves: holes(feeds.ream, { kind: "ream", at: dowelHoles, depth: -10.6, feedOut: 720 }),
  },
];

const mill = { tool: 5, spindle: clockwise(speeds.mill), coolant: "mist" };

const operations: Operation[] = [
  { id: "op10", name: "Face", tool: 1, spindle: clockwise(speeds.face), coolant: "mist", moves: face() },
  ...holeOperations,
  { id: "op50", name: "Bore the corner holes to 8.4 mm", ...mill, path: "exact", moves: mountingBores() },
  { id: "op60", name: "Bore the bearing of the vane", ...mill, path: "exact", moves: vaneBearing() },
  { id: "op70", name: "Sensor pocket, roughing", ...mill, path: "blend", tolerance: 0.02, moves: pocketRoughing() },
  { id: "op80", name: "Cable slot", ...mill, moves: cable() },
  { id: "op90", name: "Grooves of the cross level", ...mill, moves: levelGrooves() },
  { id: "op100", name: "Sensor pocket, wall to size with compensation", ...mill, spindle: clockwise(speeds.finish), coolant: "mist", moves: pocketFinish() },
  { id: "op110", name: "Chamfers", tool: 2, spindle: clockwise(speeds.chamfer), coolant: "mist", moves: chamfers() },
  { id: "op120", name: "Engrave the wind rose", tool: 6, spindle: clockwise(speeds.engrave), coolant: "mist", hood: "up", clearance: engravingClearance, path: "blend", tolerance: 0.01, moves: engraving() },
  { id: "op130", name: "Outline with six tabs", ...mill, hood: "up", moves: profile() },
];

const job = {
  job: "1",
  name: "Weather plate",
  program: { number: 1001, name: "WEATHER PLATE" },
  units: "mm",
  stock,
  fixtures,
  workOffset: 1,
  clearance,
  tools,
  operations,
};

writeFileSync(new URL("weather-plate.job.json", import.meta.url), jobText(job, 4));
