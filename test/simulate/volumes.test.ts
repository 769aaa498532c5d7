import { describe, expect, it } from "vitest";
import { seeded } from "../support/seeded.ts";
import { arc, cut, doneOf, line, plunge, removedBy, step } from "./cutting.ts";
import type { Cutting, TestTool } from "./cutting.ts";
import { hole } from "./cutting.ts";
import { mm } from "../prove/layout.ts";
import type { Item } from "../prove/layout.ts";

/**
 * Volumes that have a closed form, each within the bound that follows from looking at cells by their centres. A cell that an
 * upright wall crosses is wrong by its own column at most, and the cells that a wall crosses lie within half a diagonal of it on
 * either side: sqrt(2) * cell * wall area in all. Where the surface is sloped, a centre stands for its cell with an error of the
 * slope times the mean distance from it, 0.383 * cell.
 */
function bound(cell: number, wall: number, slope: number, slopedArea: number): number {
  return Math.SQRT2 * cell * wall + 0.383 * cell * slope * slopedArea;
}

interface Case {
  readonly name: string;
  readonly tool: TestTool;
  /** The cut, begun at a place and turned by an angle. */
  readonly items: (x: number, y: number, angle: number) => Item[];
  readonly volume: number;
  /** Area of upright walls, greatest slope and area of the sloped surface seen from above; mm2, 1, mm2. */
  readonly wall: number;
  readonly slope?: number;
  readonly sloped?: number;
}

const { PI } = Math;
const at = (x: number, y: number, angle: number, length: number): [number, number] => [
  x + length * Math.cos(angle),
  y + length * Math.sin(angle),
];

function slot(depth: number, length: number): Case["items"] {
  return (x, y, angle) => [...plunge(x, y, -depth), line(...at(x, y, angle, length))];
}

/** Area between a circle and a chord `depth` from its edge. */
const segment = (radius: number, depth: number): number =>
  radius * radius * Math.acos((radius - depth) / radius) -
  (radius - depth) * Math.sqrt(2 * radius * depth - depth * depth);

/** A corner's loss against a sharp one: across a straight slot, one side; and all around a disc. */
const cornerArea = (rho: number): number => rho * rho * (1 - PI / 4);
const cornerRing = (radius: number, rho: number): number =>
  2 * PI * ((radius - rho) * cornerArea(rho) + rho ** 3 / 6);

const point = 3 / Math.tan((59 * PI) / 180);
const tan30 = Math.tan(PI / 6);

const cases: readonly Case[] = [
  {
    name: "a slot by a flat end mill, with its round ends",
    tool: { kind: "end-mill", diameter: 6 },
    items: slot(3, 30),
    volume: (6 * 30 + PI * 9) * 3,
    wall: (60 + 6 * PI) * 3,
  },
  {
    name: "a slot through the stock",
    tool: { kind: "end-mill", diameter: 6 },
    items: slot(11, 30),
    volume: (6 * 30 + PI * 9) * 10,
    wall: (60 + 6 * PI) * 10,
  },
  {
    name: "a hole by a drill with its point",
    tool: { kind: "drill", diameter: 6, tipAngle: 118 },
    items: (x, y) => [
      ...plunge(x, y, 5),
      step({
        kind: "cycle-definition",
        cycle: "peck",
        depth: mm(-8),
        retract: mm(2),
        level: mm(2),
        between: "retract",
        levelStated: true,
        peck: mm(3),
        dwell: 0,
      }),
      hole(x, y),
    ],
    // The point of a drill of 118 degrees is 0.3004 of its diameter long (radius / tan(59)).
    volume: PI * 9 * (8 - point) + (PI * 9 * point) / 3,
    wall: 6 * PI * (8 - point),
    slope: point / 3,
    sloped: 9 * PI,
  },
  {
    name: "a groove by a ball-mill",
    tool: { kind: "ball-mill", diameter: 6 },
    items: slot(2, 30),
    volume: segment(3, 2) * 30 + (PI * 4 * (9 - 2)) / 3,
    wall: 0,
    slope: Math.sqrt(8),
    sloped: 2 * Math.sqrt(8) * 30 + PI * 8,
  },
  {
    name: "a v-groove",
    tool: { kind: "v-bit", diameter: 10, tipAngle: 60 },
    items: slot(4, 30),
    volume: 16 * tan30 * 30 + (PI * 64 * tan30 * tan30) / 3,
    wall: 0,
    slope: 1 / tan30,
    sloped: 8 * tan30 * 30 + PI * 16 * tan30 * tan30,
  },
  {
    name: "a slot by a bull nose",
    tool: { kind: "bull-nose", diameter: 8, cornerRadius: 1.5 },
    items: slot(3, 30),
    volume: (8 * 3 - 2 * cornerArea(1.5)) * 30 + PI * 16 * 3 - cornerRing(4, 1.5),
    // The corner is upright at its rim: it counts as a wall up to its height, and as a slope of 1 below.
    wall: (60 + 8 * PI) * 3,
    slope: 1,
    sloped: (60 + 8 * PI) * 1.5,
  },
  {
    name: "a circular pocket",
    tool: { kind: "end-mill", diameter: 6 },
    items: (x, y) => [...plunge(x, y, -4), line(x + 2.5, y), arc(x + 2.5, y, -4, { c1: x, c2: y, turns: 1 })],
    volume: PI * 5.5 * 5.5 * 4,
    wall: 11 * PI * 4,
  },
  {
    name: "a bore by a helix, and a circle at its bottom",
    tool: { kind: "end-mill", diameter: 6 },
    items: (x, y) => [
      ...plunge(x + 2, y, 0),
      arc(x + 2, y, -6, { c1: x, c2: y, turns: 4 }),
      arc(x + 2, y, -6, { c1: x, c2: y, turns: 1 }),
    ],
    volume: PI * 25 * 6,
    wall: 10 * PI * 6,
  },
  {
    name: "a ramp by a flat end mill",
    tool: { kind: "end-mill", diameter: 6 },
    // Over each line along the ramp the tool is lowest with its leading edge: depth * radius * (length + pi * radius) in all.
    items: (x, y, angle) => [...plunge(x, y, 0), line(...at(x, y, angle, 30), -6)],
    volume: 6 * 3 * (30 + PI * 3),
    wall: (60 + 6 * PI) * 6,
    slope: 0.2,
    sloped: 180,
  },
];

const places = 12;

function errors(one: Case, resolution: number): { error: number; limit: number }[] {
  const random = seeded(20);
  return Array.from({ length: places }, () => {
    const [x, y, angle] = [50 + random(), 50 + random(), random() * 2 * PI];
    const cutting: Cutting = {
      stock: [
        [0, 0, -10],
        [100, 100, 0],
      ],
      tools: [one.tool],
      items: one.items(x, y, angle),
      sizes: { resolution },
    };
    const limit = bound(resolution, one.wall, one.slope ?? 0, one.sloped ?? 0);
    return { error: removedBy(cutting) - one.volume, limit };
  });
}

describe.each(cases)("$name", (one) => {
  it.each([0.5, 0.25, 0.1])("has its volume within the bound at %s mm", (resolution) => {
    const all = errors(one, resolution);
    for (const { error, limit } of all) expect(Math.abs(error)).toBeLessThan(limit);
    // By chance alone errors cancel out over many places; what is left of a fault of method would not.
    const mean = all.reduce((sum, { error }) => sum + error, 0) / places;
    expect(Math.abs(mean)).toBeLessThan(all[0].limit / 8);
  });
});

it("prints the errors as a table", () => {
  const rows = cases.map((one) => {
    const worst = [0.5, 0.25, 0.1].map((resolution) => {
      const all = errors(one, resolution);
      const most = Math.max(...all.map(({ error }) => Math.abs(error)));
      return `${((100 * most) / one.volume).toFixed(2)} % of ${((100 * all[0].limit) / one.volume).toFixed(1)} %`;
    });
    return [one.name, one.volume.toFixed(1), ...worst].join(" | ");
  });
  expect(rows.length).toBe(cases.length);
  if (process.env["TAPEWRIGHT_SHOW"] !== undefined) console.log(rows.join("\n"));
});

it("leaves scallops of the height that the stepover gives, p = 2 sqrt(2 R h - h2)", () => {
  // R3, h 0.01: p 0.4895 (worked value).
  const [radius, height] = [3, 0.01];
  const pitch = 2 * Math.sqrt(2 * radius * height - height * height);
  expect(pitch).toBeCloseTo(0.4895, 4);
  const passes = Array.from({ length: 20 }, (_, pass) => [
    line(pass % 2 === 0 ? 5 : 35, 10 + pass * pitch),
    line(pass % 2 === 0 ? 35 : 5, undefined),
  ]).flat();
  const cell = 0.02;
  const result = cut({
    stock: [
      [0, 5, -5],
      [40, 25, 0],
    ],
    tools: [{ kind: "ball-mill", diameter: 6 }],
    items: [...plunge(5, 10, -1), ...passes],
    sizes: { resolution: cell },
  });
  const { map } = doneOf(result);
  const inside = [...map.heights].filter((_, index) => {
    const x = map.x + ((index % map.columns) + 0.5) * map.cellX;
    const y = map.y + (Math.floor(index / map.columns) + 0.5) * map.cellY;
    return x > 10 && x < 30 && y > 10 && y < 10 + 19 * pitch;
  });
  const highest = inside.reduce((most, height) => Math.max(most, height)) + 1;
  const steepest = pitch / 2 / Math.sqrt(radius * radius - (pitch / 2) ** 2);
  expect(highest).toBeLessThanOrEqual(height + 1e-6);
  expect(highest).toBeGreaterThan(height - (steepest * cell) / 2 - 1e-6);
  expect(inside.reduce((least, height) => Math.min(least, height))).toBeGreaterThanOrEqual(-1 - 1e-6);
});
