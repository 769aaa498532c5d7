import { readFileSync } from "node:fs";
import { join } from "node:path";

/*
 * Sources in differing habits of writing, each with the same part as a job that was written by hand from the drawing of
 * the source: moves name what changes and no more, arcs and holes are the job's own.
 */

const folder = join(import.meta.dirname, "sources");

export const sourceText = (file: string): string => readFileSync(join(folder, file), "utf8");

/** What every job and head file here states; some controllers want a number. */
export const jobKeys = { job: "1", program: { number: 1001 } };

/** A source, how it is to be read, and the same part as a job. */
export interface SamePart {
  readonly file: string;
  readonly habit: string;
  readonly cl: string;
  readonly job: Readonly<Record<string, unknown>>;
}

const mill = (number: number, diameter: number, more: object = {}) => ({
  number,
  kind: "end-mill",
  diameter,
  ...more,
});
const clockwise = (rpm: number) => ({ rpm, direction: "cw" });
const holes = (
  kind: string,
  at: readonly (readonly number[])[],
  levels: readonly number[],
  more: object = {},
) => {
  const [top, depth, retract] = levels;
  return { kind, at, top, depth, retract, ...more };
};

const rim: SamePart = {
  file: "rim-on-cards.apt",
  habit: "cards: fixed fields, capitals, sequence numbers, lines alone, unit behind the feed",
  cl: "",
  job: {
    units: "mm",
    clearance: 15,
    tools: [mill(1, 6)],
    operations: [
      {
        id: "op10",
        tool: 1,
        spindle: clockwise(12000),
        coolant: "air",
        moves: [
          { note: "CHECK THE CLAMPS $ AND THE HOSE" },
          { rapid: { x: -10, y: -10 } },
          { rapid: { z: 2 } },
          { line: { z: -1.5 }, feed: 300 },
          {
            path: {
              kind: "line",
              points: [
                [-10, 90, -1.5],
                [110, 90, -1.5],
                [110, -10, -1.5],
                [-10, -10, -1.5],
              ],
            },
            feed: 1200,
          },
          { rapid: { z: 15 } },
          { coolant: "off" },
        ],
      },
    ],
  },
};

const post: SamePart = {
  file: "post-free-form.cl",
  habit: "free form: small letters, continuation, unit before the feed, feeds behind points, steps",
  cl: "",
  job: {
    units: "mm",
    clearance: 25,
    tools: [{ number: 4, kind: "bull-nose", diameter: 8, cornerRadius: 1, lengthOffset: 14 }],
    operations: [
      {
        id: "op10",
        tool: 4,
        spindle: { rpm: 9000, direction: "ccw" },
        coolant: ["mist", "air"],
        moves: [
          { rapid: { x: 20, y: 10 } },
          { rapid: { z: 3.25 } },
          { line: { z: -1.5 }, feed: 240 },
          { line: { x: 35.125 }, feed: 900 },
          { line: { y: 22.0005 } },
          { line: { x: 20 } },
          { line: { y: 10 }, feed: 450 },
          { spindle: { rpm: 8000 } },
          { dwell: 0.5 },
          { dwell: 3 },
          { line: { x: 21 } },
          { rapid: { z: 25 } },
        ],
      },
    ],
  },
};

const arcs: SamePart = {
  file: "arcs-three-planes.cls",
  habit: "CIRCLE records in three planes, half and quarter turns, full circles, helices",
  cl: "full-circle=turn",
  job: {
    units: "mm",
    clearance: 20,
    tools: [mill(2, 4)],
    operations: [
      {
        id: "op10",
        tool: 2,
        spindle: clockwise(15000),
        moves: [
          { rapid: { x: 0, y: 0 } },
          { rapid: { z: 1 } },
          { line: { z: 0 }, feed: 500 },
          { arc: { x: 10, y: 0, cx: 5, cy: 0 }, turn: "ccw" },
          { arc: { x: 5, y: -5, z: -0.5, cx: 5, cy: 0 }, turn: "cw" },
          { arc: { x: 5, y: -5, cx: 5, cy: 0 }, turn: "ccw" },
          { arc: { x: 5, y: -5, z: -1.5, cx: 5, cy: 0 }, turn: "cw" },
          // Seen from +Y, Z to the right would be X up: from below the centre to its left is counter-clockwise about +Y.
          { arc: { x: 4, z: -0.5, cx: 5, cz: -0.5 }, turn: "ccw", plane: "zx" },
          { arc: { y: -4, z: 0.5, cy: -5, cz: 0.5 }, turn: "ccw", plane: "yz" },
          { arc: { x: 4.25, y: -3, z: 1.5, cy: -4, cz: 1.5 }, turn: "ccw", plane: "yz" },
          { arc: { x: 5.25, y: -2.5, z: 0.5, cx: 4.25, cz: 0.5 }, turn: "cw", plane: "zx" },
          { rapid: { z: 20 } },
        ],
      },
    ],
  },
};

const allHoles: SamePart = {
  file: "holes-of-all-kinds.apt",
  habit: "cycles of all kinds, CLEARP and RETRCT, points of two heights",
  cl: "",
  job: {
    units: "mm",
    clearance: 30,
    tools: [mill(3, 5), { number: 5, kind: "tap", diameter: 6 }],
    operations: [
      {
        id: "op10",
        tool: 3,
        spindle: clockwise(2000),
        coolant: "flood",
        moves: [
          { rapid: { x: 10, y: 10 } },
          {
            holes: holes(
              "drill",
              [
                [10, 10],
                [20, 10],
              ],
              [0, -12, 2],
            ),
            feed: 150,
          },
          {
            holes: holes(
              "drill",
              [
                [30, 10],
                [40, 10],
              ],
              [-5, -17, -3],
            ),
            feed: 150,
          },
          { rapid: { z: 10 } },
          {
            holes: holes(
              "drill",
              [
                [50, 10],
                [60, 10],
              ],
              [0, -12, 2],
              { between: "initial" },
            ),
            feed: 150,
          },
          { rapid: { z: 30 } },
          { holes: holes("dwell", [[10, 20]], [0, -1.5, 2], { dwell: 0.25 }), feed: 100 },
          { holes: holes("dwell", [[20, 20]], [0, -1.5, 2], { dwell: 0.15 }), feed: 100 },
          { holes: holes("drill", [[30, 20]], [0, -1.5, 2]), feed: 100 },
          { rapid: { z: 4 } },
          { holes: holes("drill", [[40, 20]], [0, -13, 1], { between: "initial" }), feed: 100 },
          { holes: holes("peck", [[10, 30]], [0, -18, 2], { peck: 4 }), feed: 120 },
          { holes: holes("chip-break", [[20, 30]], [0, -18, 2], { peck: 4, between: "initial" }), feed: 120 },
          { coolant: "off" },
          { holes: holes("chip-break", [[30, 30]], [0, -18, 2], { peck: 4, between: "initial" }), feed: 120 },
          { holes: holes("chip-break", [[40, 30]], [0, -18, 2], { peck: 4, between: "initial" }), feed: 120 },
          { holes: holes("bore", [[10, 40]], [0, -9, 2], { dwell: 1 }), feed: 80 },
          { holes: holes("ream", [[20, 40]], [0, -9, 2]), feed: 80 },
          { rapid: { x: 30, y: 40 } },
          { line: { z: -2 }, feed: 60 },
          { line: { x: 40 }, feed: 200 },
          { rapid: { z: 30 } },
        ],
      },
      {
        id: "op20",
        tool: 5,
        spindle: clockwise(500),
        moves: [
          { rapid: { x: 10, y: 10 } },
          {
            holes: holes(
              "tap",
              [
                [10, 10],
                [20, 10],
              ],
              [0, -14, 5],
              { lead: 1 },
            ),
          },
          { holes: holes("tap", [[30, 10]], [0, -14, 5], { lead: 1 }) },
        ],
      },
    ],
  },
};

const bracket: SamePart = {
  file: "bracket-inch.apt",
  habit: "inches, numbers in every form, tool axis with each point, feeds per minute and per revolution",
  cl: "",
  job: {
    units: "inch",
    clearance: 1,
    tools: [mill(7, 0.25, { lengthOffset: 17, length: 3.5 }), { number: 8, kind: "tap", diameter: 0.25 }],
    operations: [
      {
        id: "op10",
        tool: 7,
        spindle: clockwise(6000),
        moves: [
          { rapid: { x: 1, y: 0.5 } },
          { rapid: { z: 0.1 } },
          { line: { z: -0.0625 }, feed: 8 },
          { line: { x: 2.12345 }, feed: 24 },
          { arc: { x: 2.37345, y: 0.75, cx: 2.12345, cy: 0.75 }, turn: "ccw" },
          { line: { y: 1.5 } },
          { rapid: { z: 1 } },
        ],
      },
      {
        id: "op20",
        tool: 8,
        spindle: clockwise(300),
        moves: [
          { rapid: { x: 0.5, y: 0.5 } },
          { holes: holes("tap", [[0.5, 0.5]], [0, -0.5, 0.2], { lead: 0.05 }) },
        ],
      },
    ],
  },
};

const stops: SamePart = {
  file: "stops-and-compensation.cls",
  habit: "centimetres, a shift, stops, compensation, a spindle that turns the other way",
  cl: "trans=add",
  job: {
    units: "mm",
    clearance: 25,
    tools: [mill(6, 10, { radiusOffset: 26 })],
    operations: [
      {
        id: "op10",
        tool: 6,
        spindle: clockwise(4000),
        coolant: "flood",
        moves: [
          { pause: "Optional stop", optional: true },
          { rapid: { x: -10, y: -20 } },
          { rapid: { z: 5 } },
          { line: { z: -5 }, feed: 300 },
          { comp: "left" },
          { line: { x: 10 } },
          { line: { y: 50 } },
          { line: { x: 60 } },
          { comp: "off" },
          { line: { x: 80 } },
          { coolant: "through-tool" },
          { rapid: { z: 25 } },
          { pause: "Stop" },
          { note: "SECOND SIDE" },
          { spindle: { rpm: 5000 } },
          { rapid: { y: -20 } },
          { rapid: { z: -5 } },
          { line: { x: 90 }, feed: 600 },
          { rapid: { z: 25 } },
        ],
      },
      {
        id: "op20",
        tool: 6,
        spindle: { rpm: 4500, direction: "ccw" },
        coolant: "through-tool",
        moves: [
          { rapid: { x: 10, y: 0 } },
          { rapid: { z: 0 } },
          { line: { y: 10 }, feed: 600 },
          { rapid: { z: 25 } },
        ],
      },
    ],
  },
};

/** All of them. */
export const sameParts: readonly SamePart[] = [rim, post, arcs, allHoles, bracket, stops];

/** What the sources cannot say of the tools, as a head file: that of the job. */
export function headOf({ job }: SamePart): string {
  const { units, clearance, tools } = job;
  return JSON.stringify({ ...jobKeys, units, clearance, tools });
}
