import { describe, expect, it } from "vitest";
import { mm } from "../prove/layout.ts";
import type { Item } from "../prove/layout.ts";
import {
  arc,
  corner,
  cut,
  deepStock,
  doneOf,
  endMill,
  heightAt,
  hole,
  line,
  plunge,
  rapid,
  rulesOf,
  slotTo,
  step,
} from "./cutting.ts";
import type { Cutting, TestTool } from "./cutting.ts";

const stock = deepStock;

const found = (tool: TestTool, items: readonly Item[], more: Partial<Cutting> = {}): string[] =>
  rulesOf(cut({ stock, tools: [tool], items, ...more }));

describe("shank", () => {
  it("meets the wall of a slot deeper than the edges are long, in whatever steps", () => {
    expect(found({ ...endMill, fluteLength: 12, shank: 6 }, slotTo(12))).toEqual([]);
    expect(found({ ...endMill, fluteLength: 12, shank: 6 }, slotTo(14))).toEqual(["limit/shank"]);
    // Without a word of it the shank is taken to be as thick as the tool.
    expect(found({ ...endMill, fluteLength: 12 }, slotTo(14))).toEqual(["limit/shank"]);
    // A thinner neck has room, and an unknown length of edges is not looked at.
    expect(found({ ...endMill, fluteLength: 12, shank: 5 }, slotTo(14))).toEqual([]);
    expect(found({ ...endMill, fluteLength: 12, shank: 5.8 }, slotTo(14))).toEqual([]);
    expect(found(endMill, slotTo(14))).toEqual([]);
  });

  it("is told with the height over which it rubs", () => {
    const { findings } = cut({ stock, tools: [{ ...endMill, fluteLength: 12 }], items: slotTo(16) });
    expect(findings[0].message).toMatch(
      /^Above its cutting edges the tool meets a wall that is left in operation `op10` with tool 1, over up to 4 mm/,
    );
  });

  it("thicker than the cut meets a wall that the cut has cleared", () => {
    const thick: TestTool = { kind: "end-mill", diameter: 3, fluteLength: 5, shank: 6 };
    expect(found(thick, slotTo(6))).toEqual(["limit/shank"]);
    expect(found(thick, slotTo(4))).toEqual([]);
  });

  it("one cut deeper than the edges is told even where the shank is thin", () => {
    const { findings } = cut({
      stock,
      tools: [{ ...endMill, fluteLength: 8, shank: 4 }],
      items: [...plunge(20, 40, -10), line(60, 40)],
    });
    expect(findings.map(({ message }) => message)).toEqual([
      "A cut in operation `op10` with tool 1 is deeper than the cutting edges are long, by up to 2 mm, in 2 motions, the deepest here.",
    ]);
  });
});

it("an arc is one motion, however many chords it is cut by", () => {
  const circle = arc(34, 40, -10, { c1: 40, c2: 40, turns: 1 });
  const items = [...plunge(34, 40, -10), circle];
  const { findings } = cut({ stock, tools: [{ ...endMill, fluteLength: 8, shank: 4 }], items });
  expect(findings.map(({ message }) => message)).toEqual([
    "A cut in operation `op10` with tool 1 is deeper than the cutting edges are long, by up to 2 mm, in 2 motions, the deepest here.",
  ]);
});

describe("holder", () => {
  const tool: TestTool = { ...endMill, stickOut: 10, holder: { diameter: 30, length: 40 } };
  it("meets the stock beside a cut deeper than the tool sticks out", () => {
    expect(found(tool, slotTo(10))).toEqual([]);
    expect(found(tool, slotTo(12))).toEqual(["limit/holder"]);
    // By its gauge length, where the stick-out is not stated.
    const { stickOut: _, ...byLength } = { ...tool, length: 50 };
    expect(found(byLength, slotTo(12))).toEqual(["limit/holder"]);
  });

  it("has room where the stock around was cleared before", () => {
    const clear = Array.from({ length: 9 }, (_, pass) => [
      line(0, 20 + 5 * pass, -4),
      line(80, undefined),
    ]).flat();
    expect(
      found(tool, [...plunge(0, 20, -4), ...clear, rapid(undefined, undefined, 5), ...slotTo(12)]),
    ).toEqual([]);
  });

  it("is looked at on rapids, too", () => {
    expect(
      found(tool, [
        ...slotTo(10),
        rapid(undefined, undefined, 5),
        rapid(40, 40),
        rapid(undefined, undefined, -10.2),
      ]),
    ).toEqual(["motion/rapid-through-material", "limit/holder"]);
  });
});

describe("below the stock", () => {
  const at = (depth: number): Item[] => [...plunge(40, 40, -30 - depth)];
  it("is a note up to 2 mm, and a warning beyond", () => {
    expect(found(endMill, at(0))).toEqual([]);
    expect(found(endMill, at(1.5))).toEqual(["note limit/below-stock"]);
    expect(found(endMill, at(3))).toEqual(["limit/below-stock"]);
    expect(found(endMill, at(3), { sizes: { throughDepth: 4 } })).toEqual(["note limit/below-stock"]);
  });

  it("counts from the full diameter of a drill, which goes through by its point and some more", () => {
    // The point of a drill of 8 mm and 118 degrees is 2.403 mm long (worked value).
    const drill: TestTool = { kind: "drill", diameter: 8, tipAngle: 118 };
    expect(found(drill, at(4.4))).toEqual(["note limit/below-stock"]);
    expect(found(drill, at(4.41))).toEqual(["limit/below-stock"]);
  });

  it("is told once for each operation, with its deepest", () => {
    const { findings } = cut({
      stock,
      tools: [endMill],
      items: [...at(2.5), line(41, 40), line(41, 40, -34), line(45, 40, -33)],
    });
    expect(findings.map(({ message }) => message)).toEqual([
      "The tool goes 4 mm below the stock in operation `op10` with tool 1, into what it lies on.",
    ]);
    expect(findings[0].place?.offset).toBe(100 + 10 * 4);
  });
});

describe("fixture", () => {
  const clamp = { name: "left clamp", min: corner([-20, 30, -30]), max: corner([8, 50, 10]) };
  const past = (x: number, z: number): Item[] => [
    rapid(x, 10),
    rapid(undefined, undefined, 20),
    line(x, 10, z),
    line(x, 70),
  ];
  const meets = (tool: TestTool, items: Item[]): string[] =>
    cut({ stock, tools: [tool], items, fixtures: [clamp] }).findings.map(
      ({ rule, message }) => `${rule} ${message}`,
    );

  it("is met by the edge of the tool, and not beside or above it", () => {
    expect(meets(endMill, past(11.2, -1))).toEqual([]);
    expect(meets(endMill, past(10.8, -1))).toEqual([
      "limit/fixture A motion in operation `op10` with tool 1 goes into a fixture: the tool cuts into left clamp, up to 11 mm below its top.",
    ]);
    expect(meets(endMill, past(4, 10))).toEqual([]);
  });

  it("is met by a cone only as wide as it is that high", () => {
    const bit: TestTool = { kind: "v-bit", diameter: 20, tipAngle: 90 };
    // 2 mm below the top the bit is 2 mm wide to each side.
    expect(meets(bit, past(10.2, 8))).toEqual([]);
    expect(meets(bit, past(9.8, 8)).length).toBe(1);
  });

  it("is met by the holder where the tool passes", () => {
    const tool: TestTool = { ...endMill, stickOut: 9, holder: { diameter: 30, length: 40 } };
    expect(meets(tool, past(14, -2))[0]).toContain("the holder meets left clamp, up to 3 mm below its top");
    expect(meets(tool, past(23.2, -2))).toEqual([]);
    expect(meets(tool, past(14, 1.1))).toEqual([]);
  });
});

describe("stopped in material", () => {
  const stopped = (items: Item[], stop: Item): string[] => found(endMill, [...items, stop]);
  const stop = step({ kind: "spindle-stop" });
  it("is told of a stop of spindle or program in a slot, and not on a floor, above or after a retract", () => {
    expect(stopped(slotTo(4), stop)).toEqual(["motion/stopped-in-material"]);
    expect(stopped(slotTo(4), step({ kind: "pause", optional: false }))).toEqual([
      "motion/stopped-in-material",
    ]);
    expect(stopped([...slotTo(4), rapid(undefined, undefined, 5)], stop)).toEqual([]);
    const wide = Array.from({ length: 5 }, (_, pass) => [
      line(20, 30 + 5 * pass, -2),
      line(60, undefined),
    ]).flat();
    expect(stopped([...plunge(20, 30, -2), ...wide, line(40, 40)], stop)).toEqual([]);
  });

  it("is not told of a dwell: a tool may dwell at the bottom of its cut", () => {
    expect(stopped(slotTo(4), step({ kind: "dwell", time: 1e6 }))).toEqual([]);
  });

  it("is told of a v-bit that stands in its groove", () => {
    expect(
      found({ kind: "v-bit", diameter: 6, tipAngle: 90 }, [...plunge(20, 40, -2), line(60, 40), stop]),
    ).toEqual(["motion/stopped-in-material"]);
  });
});

describe("what does not cut", () => {
  it.each(["probe", "drag-knife", "pen"] as const)(
    "a %s takes nothing away, and is not run into the stock at rapid",
    (kind) => {
      const tool: TestTool = { kind, diameter: 4 };
      const result = cut({ stock, tools: [tool], items: [...plunge(20, 40, -1), line(60, 40)] });
      expect(doneOf(result).volumeLeft).toBeCloseTo(80 * 80 * 30, 0);
      expect(rulesOf(result)).toEqual([]);
      expect(found(tool, [rapid(20, 40), rapid(undefined, undefined, -2)])).toEqual([
        "motion/rapid-through-material",
      ]);
    },
  );
});

it.each(["end-mill", "ball-mill"] as const)("a %s plunges deeper where it has cut", (kind) => {
  const result = cut({
    stock,
    tools: [{ kind, diameter: 6 }],
    items: [...plunge(40, 40, -2), line(40, 40, -6), line(50, 40), line(50, 40, -8)],
  });
  expect(heightAt(result, 40.1, 40.1)).toBeCloseTo(-6, 1);
  expect(heightAt(result, 50.1, 40.1)).toBeCloseTo(-8, 1);
});

it("a helix goes down by each of its turns", () => {
  const helix = arc(42, 40, -6, { c1: 40, c2: 40, turns: 4 });
  const result = cut({
    stock,
    tools: [endMill],
    items: [...plunge(42, 40, 0), helix],
    sizes: { resolution: 0.1 },
  });
  // At the far side the rim passes half a turn before the end: three and a half of four turns of 1.5 mm.
  expect(Math.abs(heightAt(result, 35.06, 40.01) + 5.25)).toBeLessThan(0.1);
});

it("a hole of a cycle is cut at its place, and the rapids between holes are looked at", () => {
  const cycle = (level: number): Item =>
    step({
      kind: "cycle-definition",
      cycle: "drill",
      depth: mm(-10),
      retract: mm(level),
      level: mm(level),
      between: "retract",
      levelStated: true,
      peck: 0,
      dwell: 0,
    });
  const drill: TestTool = { kind: "drill", diameter: 6, tipAngle: 118 };
  const items = (level: number): Item[] => [
    rapid(20, 20),
    rapid(undefined, undefined, 5),
    cycle(level),
    hole(20, 20),
    hole(60, 20),
  ];
  const result = cut({ stock, tools: [drill], items: items(2), sizes: { resolution: 0.2 } });
  expect(rulesOf(result)).toEqual([]);
  expect(heightAt(result, 20.01, 20.01)).toBeCloseTo(-10, 0);
  expect(heightAt(result, 60.01, 20.01)).toBeCloseTo(-10, 0);
  expect(found(drill, items(-1))).toEqual(["motion/rapid-through-material"]);
});
