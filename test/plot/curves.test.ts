/**
 * Arcs in space and in the views. Planes and senses: ISO 841 and NISTIR 6556 Table 9 (first axes X, Z, Y of the planes XY, ZX, YZ;
 * counter-clockwise seen from the + end of the normal).
 */
import { describe, expect, test } from "vitest";
import { chordsOf, curveOf, moveKind, placeOnCurve, quadrantParts } from "#report";
import { drawMove } from "../../core/8-report/plot/drawing/draw-move.ts";
import { clipped, createPathText } from "../../core/8-report/plot/drawing/path-text.ts";
import type { View } from "../../core/8-report/plot/drawing/view.ts";
import { viewAxes } from "../../core/8-report/plot/drawing/view.ts";
import type { PassingMove } from "../../core/8-report/plot/walk-moves.ts";

const { arcXy, arcZx, arcYz } = moveKind;

function placeAt(curve: ReturnType<typeof curveOf>, part: number): number[] {
  const place = [0, 0, 0];
  placeOnCurve(curve, part, place);
  return place.map((value) => Math.round(value * 1e6) / 1e6 + 0);
}

describe("curves", () => {
  test.each([
    // kind, from, to, c1, c2, turns, the place in the middle
    ["xy, ccw", arcXy, [10, 0, 0], [0, 10, 0], 0, 0, 1, [7.071068, 7.071068, 0]],
    ["xy, cw the long way", arcXy, [10, 0, 0], [0, 10, 0], 0, 0, -1, [-7.071068, -7.071068, 0]],
    ["zx, ccw from Z to X", arcZx, [0, 5, 10], [10, 5, 0], 0, 0, 1, [7.071068, 5, 7.071068]],
    ["yz, cw from Z to Y", arcYz, [3, 0, 10], [3, 10, 0], 0, 0, -1, [3, 7.071068, 7.071068]],
    ["a full circle", arcXy, [10, 0, 0], [10, 0, 0], 0, 0, 1, [-10, 0, 0]],
    ["a helix of two turns", arcXy, [10, 0, 0], [10, 0, -8], 0, 0, 2, [10, 0, -4]],
    ["a helix in ZX", arcZx, [0, 0, 10], [0, 4, -10], 0, 0, 1, [10, 2, 0]],
  ] as const)("%s", (_, kind, from, to, c1, c2, turns, middle) => {
    const curve = curveOf(kind, from, to, c1, c2, turns);
    expect(placeAt(curve, 0)).toEqual([...from]);
    expect(placeAt(curve, 0.5)).toEqual([...middle]);
    expect(placeAt(curve, 1)).toEqual([...to]);
  });

  test("the parts at quadrant lines are the extremes", () => {
    const curve = curveOf(arcXy, [10, 1, 0], [10, -1, 0], 0, 0, 1);
    const found = quadrantParts(curve).map((part) => placeAt(curve, part).map((value) => Math.round(value)));
    expect(found).toEqual([
      [0, 10, 0],
      [-10, 0, 0],
      [0, -10, 0],
    ]);
    expect(quadrantParts(curveOf(arcXy, [10, 0, 0], [10, 0, -1], 0, 0, -2))).toHaveLength(7);
  });

  test("chords stay within their tolerance", () => {
    for (const [radius, tolerance] of [
      [100, 0.01],
      [5, 0.5],
      [0.2, 0.5],
    ] as const) {
      const curve = curveOf(arcXy, [radius, 0, 0], [radius, 0, 0], 0, 0, 1);
      const half = Math.PI / chordsOf(curve, tolerance);
      expect(radius * (1 - Math.cos(half))).toBeLessThanOrEqual(Math.max(tolerance, radius * 0.3));
    }
  });
});

/** A view whose units are micrometres, 0 to 100 on all axes. */
function viewOf(name: "top" | "front" | "side"): View {
  const shows = { min: [0, 0, 0], max: [100, 100, 100] } as const;
  return { ...viewAxes[name], left: 0, top: 0, width: 100, height: 100, scale: 1, shows };
}

function pathOf(name: "top" | "front" | "side", move: Partial<PassingMove>): string {
  const path = createPathText(1, viewOf(name));
  const lacking = { isMachine: false, isJump: false, operation: 0, line: 1, c1: 0, c2: 0, turns: 1, kind: 1 };
  drawMove(path, viewOf(name), { ...lacking, from: new Float64Array(3), to: new Float64Array(3), ...move });
  return path.text();
}

const at = (...places: number[]) => Float64Array.from(places);

describe("arcs in the views", () => {
  const quarter = { kind: arcXy, from: at(80, 50, 20), to: at(50, 80, 20), c1: 50, c2: 50, turns: 1 };

  test("an arc in XY is part of a circle from above, and lines from the sides", () => {
    expect(pathOf("top", quarter)).toBe("M80 50a30 30 0 0 0 -30 -30");
    expect(pathOf("front", quarter)).toBe("M80 80h-30");
    expect(pathOf("side", quarter)).toBe("M50 80h30");
  });

  test("from the side a half circle reaches as far as its extreme", () => {
    const half = { ...quarter, from: at(50, 80, 20), to: at(50, 20, 20) };
    expect(pathOf("front", half)).toBe("M50 80h-30h30");
  });

  test("in ZX, clockwise from the left to the right goes below, as seen from the front", () => {
    const groove = { kind: arcZx, from: at(30, 50, 60), to: at(50, 50, 60), c1: 60, c2: 40, turns: -1 };
    // From X 30 down to Z 50 at X 40, then up: counter-clockwise on the sheet, which is seen from -Y.
    expect(pathOf("front", groove)).toBe("M30 40a10 10 0 0 0 10 10a10 10 0 0 0 10 -10");
    expect(pathOf("top", groove)).toBe("M30 50h10h10");
  });

  test("in YZ, counter-clockwise is so on the sheet, which is seen from +X", () => {
    const groove = { kind: arcYz, from: at(50, 30, 60), to: at(50, 50, 60), c1: 40, c2: 60, turns: 1 };
    expect(pathOf("side", groove)).toBe("M30 40a10 10 0 0 0 10 10a10 10 0 0 0 10 -10");
  });

  test("a helix is a wave from the side, off by no more than its grid", () => {
    const helix = { kind: arcXy, from: at(90, 50, 90), to: at(90, 50, 10), c1: 50, c2: 50, turns: 2 };
    const wave = pathOf("front", helix);
    const curve = curveOf(arcXy, helix.from, helix.to, 50, 50, 2);
    const exact = Array.from({ length: 4001 }, (_, step) => placeAt(curve, step / 4000));
    const places = placesOfCurves(wave);
    expect(places.length).toBe(96);
    for (const [x, y] of places) {
      const nearest = Math.min(...exact.map((place) => Math.hypot(place[0] - x, 100 - place[2] - y)));
      expect(nearest).toBeLessThan(0.9);
    }
    // Both turns are there: the wave reaches its left extreme twice.
    expect(places.filter(([x]) => x < 10.6).length).toBeGreaterThan(1);
  });
});

/** Places on the cubic curves of a path "M x y c ...". */
function placesOfCurves(path: string): [number, number][] {
  const [start, ...curves] = path.slice(1).split("c");
  let [x, y] = start.split(" ").map(Number);
  return curves.flatMap((text) => {
    const [x1, y1, x2, y2, x3, y3] = text.split(" ").map(Number);
    const places = [0.25, 0.5, 0.75, 1].map((t): [number, number] => {
      const [a, b, c] = [3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3];
      return [x + a * x1 + b * x2 + c * x3, y + a * y1 + b * y2 + c * y3];
    });
    [x, y] = [x + x3, y + y3];
    return places;
  });
}

describe("paths stay small", () => {
  test("what stays in a cell, or is there already, is not drawn", () => {
    const path = createPathText(10, { left: 0, top: 0, width: 100, height: 100 });
    path.lineTo(0, 0, 3, 2);
    path.lineTo(0, 0, 50, 0);
    path.lineTo(50, 0, 50, 20);
    path.lineTo(0, 0, 50, 0);
    expect(path.text()).toBe("M0 0h50v20");
  });

  test("lines are cut at the edge of their view", () => {
    const window = { left: 0, top: 0, width: 100, height: 100 };
    expect(clipped(window, -100, 50, 200, 50)).toEqual([0, 50, 100, 50]);
    expect(clipped(window, -50, 0, 50, 100)).toEqual([0, 50, 50, 100]);
    expect(clipped(window, -10, -10, -5, 200)).toBeUndefined();
    expect(clipped(window, 10, 20, 30, 40)).toEqual([10, 20, 30, 40]);
  });
});
