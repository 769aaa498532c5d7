import { describe, expect, it } from "vitest";
import type { Item } from "../prove/layout.ts";
import { arc, cut, deepStock, doneOf, endMill, heightAt, line, plunge, removedBy, step } from "./cutting.ts";

const stock = deepStock;

describe("compensation", () => {
  const on = (value: "left" | "right" | "off"): Item => step({ kind: "compensation", value, offset: 1 });
  it("leaves the contour: a square from inside, with the tool's radius in its corners", () => {
    const items = [
      ...plunge(40, 40, -2),
      on("left"),
      line(40, 30),
      line(60, 30),
      line(60, 50),
      line(30, 50),
      line(30, 30),
      line(45, 30),
      on("off"),
      line(45, 40),
    ];
    const result = cut({ stock, tools: [endMill], items, sizes: { resolution: 0.25 } });
    for (const [x, y] of [
      [45, 29.8],
      [60.2, 40],
      [45, 50.2],
      [29.8, 40],
      [60.1, 29.9],
      [29.9, 50.1],
    ])
      expect(heightAt(result, x, y)).toBe(0);
    for (const [x, y] of [
      [45, 30.2],
      [59.8, 40],
      [45, 49.8],
      [30.2, 40],
    ])
      expect(heightAt(result, x, y)).toBeCloseTo(-2, 5);
    // A ring of 6 mm inside the contour, its four outer corners rounded, and the entry from the middle.
    expect(heightAt(result, 59.5, 30.5)).toBe(0);
    expect(heightAt(result, 58.5, 31.5)).toBeCloseTo(-2, 5);
  });

  it("leaves the contour: a disc from outside, by arcs and around corners", () => {
    const square = [
      ...plunge(15, 20, -2),
      on("left"),
      line(25, 25),
      line(25, 55),
      arc(55, 55, undefined, { c1: 40, c2: 55, turns: -1 }),
      line(55, 25),
      line(25, 25),
      line(25, 30),
      on("off"),
      line(15, 30),
    ];
    const area = 30 * 30 + (Math.PI * 15 * 15) / 2;
    const volume = removedBy({
      stock: [
        [0, 0, -30],
        [80, 90, 0],
      ],
      tools: [endMill],
      items: square,
      sizes: { resolution: 0.2 },
    });
    // Around a convex contour the tool clears a band of its diameter: perimeter times width, and a full turn at the corners.
    const perimeter = 30 * 3 + Math.PI * 15;
    const band = perimeter * 6 + Math.PI * 36;
    expect(area).toBeGreaterThan(0);
    // The entry and the exit lie outside of the band.
    expect(volume / 2).toBeGreaterThan(band);
    expect(volume / 2).toBeLessThan(band + 2 * 6 * 12);
    const result = cut({
      stock: [
        [0, 0, -30],
        [80, 90, 0],
      ],
      tools: [endMill],
      items: square,
      sizes: { resolution: 0.2 },
    });
    for (const [x, y] of [
      [25.3, 40],
      [54.7, 40],
      [40, 69.7],
      [40, 25.3],
      [30, 65.8],
    ])
      expect(heightAt(result, x, y)).toBe(0);
    for (const [x, y] of [
      [24.7, 40],
      [55.3, 40],
      [40, 70.3],
      [40, 24.7],
      [28.9, 66.1],
    ])
      expect(heightAt(result, x, y)).toBeCloseTo(-2, 5);
  });

  it("ends an inner corner between a line and an arc where both ways cross", () => {
    // A half moon: a line along y = 30, and an arc of radius 15 about its middle.
    const items = [
      ...plunge(40, 38, -2),
      on("left"),
      line(40, 30),
      line(55, 30),
      arc(25, 30, undefined, { c1: 40, c2: 30, turns: 1 }),
      line(40, 30),
      on("off"),
      line(40, 38),
    ];
    const result = cut({ stock, tools: [endMill], items, sizes: { resolution: 0.2 } });
    const { map } = doneOf(result);
    let outside = 0;
    map.heights.forEach((height, index) => {
      const x = map.x + ((index % map.columns) + 0.5) * map.cellX;
      const y = map.y + (Math.floor(index / map.columns) + 0.5) * map.cellY;
      const inside = y > 30 - 0.02 && Math.hypot(x - 40, y - 30) < 15.02;
      if (height < -0.01 && !inside) outside++;
    });
    expect(outside).toBe(0);
    expect(heightAt(result, 40, 30.3)).toBeCloseTo(-2, 5);
    expect(heightAt(result, 40, 44.7)).toBeCloseTo(-2, 5);
    expect(heightAt(result, 51, 31)).toBeCloseTo(-2, 5);
  });
});
