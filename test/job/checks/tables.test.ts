import { describe, expect, test } from "vitest";
import { atomsPerInch, atomsPerMillimetre } from "#base";
import { chipLoadOf, outside, tooMuch, usualChipLoad } from "../../../core/1-job/checks/chip-load.ts";
import { cuttingSpeed } from "../../../core/1-job/checks/cutting-speed.ts";
import { createHolePlaces } from "../../../core/1-job/checks/hole-places.ts";
import { materialOf, materials } from "../../../core/1-job/checks/materials.ts";

/** A retailer's published chart for two-flute carbide router bits, depth of cut one diameter; inches a tooth. */
const chart: Readonly<Record<string, readonly (readonly [diameter: number, least: number, most: number])[]>> =
  {
    mdf: [
      [1 / 8, 0.004, 0.007],
      [1 / 4, 0.012, 0.015],
      [3 / 8, 0.017, 0.019],
      [1 / 2, 0.02, 0.025],
    ],
    hardwood: [
      [1 / 8, 0.002, 0.004],
      [1 / 4, 0.005, 0.007],
      [3 / 8, 0.013, 0.015],
      [1 / 2, 0.017, 0.019],
    ],
    softwood: [
      [1 / 8, 0.003, 0.005],
      [1 / 4, 0.006, 0.008],
      [3 / 8, 0.015, 0.017],
      [1 / 2, 0.019, 0.021],
    ],
    "soft plastic": [
      [1 / 8, 0.003, 0.005],
      [1 / 4, 0.006, 0.009],
      [3 / 8, 0.009, 0.011],
      [1 / 2, 0.011, 0.014],
    ],
    "hard plastic": [
      [1 / 8, 0.002, 0.004],
      [1 / 4, 0.005, 0.008],
      [3 / 8, 0.008, 0.01],
      [1 / 2, 0.01, 0.013],
    ],
    plywood: [
      [1 / 8, 0.003, 0.005],
      [1 / 4, 0.006, 0.009],
      [3 / 8, 0.015, 0.018],
      [1 / 2, 0.018, 0.021],
    ],
  };

/** Aluminium on routers, mm a tooth. From memory, no published source. */
const aluminiumFromMemory = [
  [3, 0.01, 0.025],
  [6, 0.03, 0.06],
  [10, 0.05, 0.1],
] as const;

const tableOf = (name: string) => {
  const table = materialOf(name)?.chipLoads;
  if (table === undefined) throw new Error(`no table of ${name}`);
  return table;
};

describe("chip loads", () => {
  test.each(Object.entries(chart))("the chart for %s", (name, rows) => {
    for (const [diameter, least, most] of rows) {
      const usual = usualChipLoad(tableOf(name), diameter * atomsPerInch);
      expect(usual.least).toBeCloseTo(least * atomsPerInch, 3);
      expect(usual.most).toBeCloseTo(most * atomsPerInch, 3);
    }
    expect(tableOf(name).source).toBe("chart");
  });

  test("aluminium, from memory", () => {
    for (const [diameter, least, most] of aluminiumFromMemory) {
      const usual = usualChipLoad(tableOf("aluminium"), diameter * atomsPerMillimetre);
      expect(usual).toEqual({ least: least * atomsPerMillimetre, most: most * atomsPerMillimetre });
    }
    expect(tableOf("aluminium").source).toBe("memory");
  });

  test("between two rows on a straight line: 8 mm lies half way from 6 to 10", () => {
    const { least, most } = usualChipLoad(tableOf("aluminium"), 8 * atomsPerMillimetre);
    expect(least).toBeCloseTo(0.04 * atomsPerMillimetre, 3);
    expect(most).toBeCloseTo(0.08 * atomsPerMillimetre, 3);
  });

  test("outside of the rows only the bound that still holds", () => {
    expect(usualChipLoad(tableOf("aluminium"), 1 * atomsPerMillimetre)).toEqual({
      least: undefined,
      most: 0.025 * atomsPerMillimetre,
    });
    expect(usualChipLoad(tableOf("aluminium"), 25 * atomsPerMillimetre)).toEqual({
      least: 0.05 * atomsPerMillimetre,
      most: undefined,
    });
    expect(outside({ least: undefined, most: 10 }, 0.001)).toBeUndefined();
    expect(outside({ least: 10, most: undefined }, 1000)).toBeUndefined();
  });

  test("fz = vf / (n z): 2400 / (16000 x 2) = 0.075; 3600 / (18000 x 2) = 0.1", () => {
    expect(chipLoadOf(2400, 16000, 2)).toBe(0.075);
    expect(chipLoadOf(3600, 18000, 2)).toBe(0.1);
  });

  test("the factor above the table is chip thinning at a twentieth of the diameter: D10, ae 0.5 -> 2.294", () => {
    expect(1 / Math.sqrt(1 - (1 - (2 * 0.5) / 10) ** 2)).toBeCloseTo(2.294, 3);
    expect(tooMuch).toBeCloseTo(2.294, 1);
  });

  test("the conservative chart for polyethylene, 0.0457 mm at 6.35 mm, is not told", () => {
    const usual = usualChipLoad(tableOf("HDPE"), 6.35 * atomsPerMillimetre);
    expect(outside(usual, 0.0457 * atomsPerMillimetre)).toBeUndefined();
  });
});

describe("cutting speed", () => {
  test.each([
    [8, 24000, 603.2],
    [6, 15915, 300],
    [10, 955, 30],
    [6.35, 7639, 152.4],
  ])("pi x D%d x %d = %d m/min", (diameter, rpm, speed) => {
    expect(cuttingSpeed(diameter * atomsPerMillimetre, rpm * 1000)).toBeCloseTo(speed, 1);
  });

  /** m/min; plastics and mild steel and brass in high-speed steel as published, the others from memory. */
  test.each([
    ["oak", 300, "memory", 1500, "memory"],
    ["acrylic", 245, "cutter", 505, "cutter"],
    ["HDPE", 245, "cutter", 505, "cutter"],
    ["aluminium", 200, "memory", 500, "memory"],
    ["mild steel", 37, "workshop", 200, "memory"],
    ["brass", 180, "workshop", undefined, undefined],
  ])("%s", (name, slowest, slowSource, fastest, fastSource) => {
    const material = materialOf(name);
    expect(material?.slowest).toEqual({ speed: slowest, source: slowSource });
    expect(material?.fastest).toEqual(
      fastest === undefined ? undefined : { speed: fastest, source: fastSource },
    );
  });
});

describe("materials", () => {
  test.each([
    ["aluminium block, 6000 series", "aluminium"],
    ["Aluminum", "aluminium"],
    ["EN AW-6082", "aluminium"],
    ["Birch plywood", "plywood"],
    ["polyethylene", "soft plastic"],
    ["PMMA (acrylic)", "hard plastic"],
    ["MILD-STEEL", "mild steel"],
    ["ash", "hardwood"],
  ])("%s is %s", (text, name) => {
    expect(materialOf(text)?.name).toBe(name);
  });

  test.each([
    "slate",
    "aluminium bronze",
    "aluminium composite panel",
    "aluminium on MDF",
    "washer",
    "stainless steel",
    "",
  ])("%s is none", (text) => {
    expect(materialOf(text)).toBeUndefined();
  });

  test("no word stands for two materials, and all are lower case", () => {
    const words = materials.flatMap((material) => material.words);
    expect(new Set(words).size).toBe(words.length);
    expect(words.map((word) => word.toLowerCase())).toEqual(words);
  });
});

describe("places of holes", () => {
  const mm = atomsPerMillimetre;

  test("places that agree within a hundredth of a millimetre are one", () => {
    const places = createHolePlaces();
    places.add("drill", 20 * mm, -3 * mm, { depth: -1, diameter: 1 });
    expect(places.at("drill", 20.004 * mm, -3.004 * mm)).toBeDefined();
    expect(places.at("drill", 20.02 * mm, -3 * mm)).toBeUndefined();
    expect(places.at("drill", -20 * mm, 3 * mm)).toBeUndefined();
    expect(places.at("tap", 20 * mm, -3 * mm)).toBeUndefined();
  });

  test("memory is bounded, and says when it is full", () => {
    const places = createHolePlaces(10);
    for (let hole = 0; hole < 10; hole++) {
      expect(places.isFull()).toBe(false);
      places.add("drill", hole * mm, 0, { depth: -1, diameter: 1 });
    }
    expect(places.isFull()).toBe(true);
  });

  test("a place farther away than 150 m is not taken for another", () => {
    const places = createHolePlaces();
    places.add("drill", 2e12, 0, { depth: -1, diameter: 1 });
    expect(places.at("drill", 0, 2e12)).toBeUndefined();
  });
});
