import { expect, it } from "vitest";
import { createField } from "../../core/simulate/field.ts";
import { createPath, setPath } from "../../core/simulate/path.ts";
import { bodyOf, rise } from "../../core/simulate/shape.ts";
import { createSweeper, sweep } from "../../core/simulate/sweep.ts";
import { seeded } from "../support/seeded.ts";
import { corner, toolOf } from "./cutting.ts";
import type { Point, TestTool } from "./cutting.ts";

const tools: readonly TestTool[] = [
  { kind: "end-mill", diameter: 6 },
  { kind: "ball-mill", diameter: 6 },
  { kind: "bull-nose", diameter: 8, cornerRadius: 1.5 },
  { kind: "v-bit", diameter: 6, tipAngle: 60 },
  { kind: "engraver", diameter: 6, tipAngle: 90, tipDiameter: 1 },
];

/** The lowest surface over each cell from many places of the tool along the line: slow, and free of formulas for slopes. */
function byPlaces(tool: TestTool, from: Point, to: Point, places: number): Float64Array {
  const shape = bodyOf(toolOf(tool))!.shape;
  const heights = new Float64Array(40 * 40).fill(0);
  for (let index = 0; index < heights.length; index++) {
    const [x, y] = [((index % 40) + 0.5) / 2, (Math.floor(index / 40) + 0.5) / 2];
    for (let place = 0; place <= places; place++) {
      const share = place / places;
      const [tipX, tipY, tipZ] = from.map((start, axis) => start + share * (to[axis] - start));
      const distance = Math.hypot(x - tipX, y - tipY);
      if (distance < shape.radius) heights[index] = Math.min(heights[index], tipZ + rise(shape, distance));
    }
  }
  return heights;
}

it.each(tools)("leaves the heights that many places of a $kind along the line leave", (tool) => {
  const random = seeded(4);
  for (let round = 0; round < 16; round++) {
    const place = (): Point => [3 + 14 * random(), 3 + 14 * random(), -8 * random()];
    const from = place();
    const flat = round % 4 === 0;
    const short = round % 3 === 0;
    const far = place();
    const to: Point = [
      short ? from[0] + 0.3 * random() : far[0],
      short ? from[1] + 0.3 * random() : far[1],
      flat ? from[2] : far[2],
    ];
    const field = createField({ min: corner([0, 0, -10]), max: corner([20, 20, 0]) }, 0.5);
    const path = createPath();
    setPath(path, ...from, ...to);
    const sweeper = createSweeper(field, path);
    sweep(sweeper, bodyOf(toolOf(tool))!.shape);
    const places = 250;
    const expected = byPlaces(tool, from, to, places);
    // Between two places the tool falls, or its cone passes by, up to a step; what is nearer to its rim may be missed.
    const step = Math.hypot(to[0] - from[0], to[1] - from[1]) / places;
    const fall = Math.abs(to[2] - from[2]) / places + 2 * step + 1e-4;
    let removed = 0;
    field.heights.forEach((height, index) => {
      removed -= height;
      const low = height - expected[index];
      if (low > fall)
        expect.fail(`cell ${String(index)} of round ${String(round)} stands ${String(low)} too high`);
      if (-low > fall && !isAtRim(tool, index, from, to, places))
        expect.fail(`cell ${String(index)} of round ${String(round)} is ${String(-low)} too low`);
    });
    expect(sweeper.removed).toBeCloseTo(removed, 2);
  }
});

/** Whether the rim of the tool passes a cell's centre nearer than the places are from each other. */
function isAtRim(tool: TestTool, index: number, from: Point, to: Point, places: number): boolean {
  const [x, y] = [((index % 40) + 0.5) / 2, (Math.floor(index / 40) + 0.5) / 2];
  const step = Math.hypot(to[0] - from[0], to[1] - from[1]) / places;
  const distances = Array.from({ length: places + 1 }, (_, place) => {
    const share = place / places;
    return Math.hypot(x - from[0] - share * (to[0] - from[0]), y - from[1] - share * (to[1] - from[1]));
  });
  return distances.some((distance) => Math.abs(distance - tool.diameter / 2) <= step);
}

it("keeps a height for each tile that no cell of it is above, and that falls as the cells do", () => {
  const random = seeded(5);
  // Tiles at the far edges are narrower than the others.
  const field = createField({ min: corner([0, 0, -10]), max: corner([30, 21, 0]) }, 0.5);
  const path = createPath();
  const sweeper = createSweeper(field, path);
  const shapes = tools.map((tool) => bodyOf(toolOf(tool))!.shape);
  const highestOf = (tile: number): number => {
    const [left, low] = [(tile % field.tiles.columns) * 16, Math.floor(tile / field.tiles.columns) * 16];
    let highest = field.bottom;
    for (let row = low; row < Math.min(low + 16, field.rows); row++)
      for (let column = left; column < Math.min(left + 16, field.columns); column++)
        highest = Math.max(highest, field.heights[row * field.columns + column]);
    return highest;
  };
  for (let round = 0; round < 3000; round++) {
    const deep = -10 * (round / 3000);
    const [x, y] = [30 * random(), 21 * random()];
    setPath(path, x, y, deep + random(), x + 3 * random(), y + 3 * random(), deep - random());
    sweep(sweeper, shapes[round % shapes.length]);
    const tile = Math.floor(random() * field.tiles.tops.length);
    expect(field.tiles.tops[tile]).toBeGreaterThanOrEqual(highestOf(tile));
  }
  const all = [...field.tiles.tops.keys()];
  expect(all.length).toBe(12);
  expect(all.some((tile) => field.tiles.tops[tile] < -3)).toBe(true);
});
