import { describe, expect, it } from "vitest";
import { bodyOf, radiusAt, rise, thinner } from "../../core/simulate/shape.ts";
import { toolOf } from "./cutting.ts";
import type { TestTool } from "./cutting.ts";

const shapeOf = (tool: TestTool) => bodyOf(toolOf(tool))!.shape;

/** Height of the surface above the tip at a radius; the drill's is a worked value (D8, 118 degrees: 2.403), the rest plain geometry. */
const heights: readonly (readonly [TestTool, number, number])[] = [
  [{ kind: "end-mill", diameter: 6 }, 2.9, 0],
  [{ kind: "end-mill", diameter: 6, cornerRadius: 1 }, 3, 1],
  [{ kind: "face-mill", diameter: 25 }, 12, 0],
  [{ kind: "reamer", diameter: 4 }, 1.9, 0],
  [{ kind: "tap", diameter: 6 }, 2.9, 0],
  [{ kind: "boring-bar", diameter: 20 }, 9, 0],
  [{ kind: "thread-mill", diameter: 8 }, 3.9, 0],
  [{ kind: "ball-mill", diameter: 6 }, 3, 3],
  [{ kind: "ball-mill", diameter: 10 }, 3, 1],
  [{ kind: "bull-nose", diameter: 8, cornerRadius: 1.5 }, 2.5, 0],
  [{ kind: "bull-nose", diameter: 8, cornerRadius: 1.5 }, 4, 1.5],
  [{ kind: "bull-nose", diameter: 10, cornerRadius: 5 }, 4, 2],
  [{ kind: "drill", diameter: 8, tipAngle: 118 }, 4, 2.403],
  [{ kind: "drill", diameter: 8 }, 4, 2.403],
  [{ kind: "spot-drill", diameter: 8, tipAngle: 90 }, 3, 3],
  [{ kind: "spot-drill", diameter: 8 }, 3, 3],
  [{ kind: "v-bit", diameter: 10, tipAngle: 60 }, 1, 1.732],
  [{ kind: "chamfer", diameter: 10, tipAngle: 90, tipDiameter: 2 }, 3, 2],
  [{ kind: "chamfer", diameter: 10, tipAngle: 90, tipDiameter: 2 }, 0.9, 0],
  [{ kind: "engraver", diameter: 4, tipAngle: 60, tipDiameter: 0.2 }, 0.1, 0],
  [{ kind: "engraver", diameter: 4, tipAngle: 180 }, 1.9, 0],
];

it.each(heights)("%o is at radius %s mm %s mm above its tip", (tool, radius, height) => {
  expect(rise(shapeOf(tool), radius)).toBeCloseTo(height, 3);
});

describe("the radius at a height", () => {
  it.each(heights)("of %o goes back to the surface", (tool) => {
    const shape = shapeOf(tool);
    for (const height of [0, 0.1, 0.5, 1, 2]) {
      const radius = radiusAt(shape, height);
      expect(rise(shape, radius)).toBeLessThanOrEqual(height + 1e-9);
      if (radius < shape.radius) expect(rise(shape, radius + 1e-6)).toBeGreaterThanOrEqual(height - 1e-9);
    }
    expect(radiusAt(shape, 100)).toBe(tool.diameter / 2);
  });
});

it("a thinner shape keeps its surface where it still is", () => {
  const shape = shapeOf({ kind: "drill", diameter: 8, tipAngle: 118 });
  const slim = thinner(shape, 0.5);
  expect(slim.radius).toBe(3.5);
  expect(rise(slim, 2)).toBe(rise(shape, 2));
});

it("sticks out as stated, or by its gauge length without the holder", () => {
  const holder = { diameter: 30, length: 40 };
  const lift = (tool: Partial<TestTool>) =>
    bodyOf(toolOf({ kind: "end-mill", diameter: 6, ...tool }))?.holder?.lift;
  expect(lift({ holder, stickOut: 22 })).toBe(22);
  expect(lift({ holder, length: 60 })).toBe(20);
  expect(lift({ holder })).toBeUndefined();
  expect(lift({ stickOut: 22 })).toBeUndefined();
});
