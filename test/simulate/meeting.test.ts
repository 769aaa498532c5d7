import { describe, expect, it } from "vitest";
import { mm } from "../prove/layout.ts";
import type { Item } from "../prove/layout.ts";
import {
  arc,
  corner,
  cut,
  doneOf,
  heightAt,
  hole,
  line,
  plunge,
  rapid,
  removedBy,
  rulesOf,
  step,
} from "./cutting.ts";
import type { Cutting, Point, TestTool } from "./cutting.ts";

const stock: readonly [Point, Point] = [
  [0, 0, -30],
  [80, 80, 0],
];

/** A slot of 6 mm in steps down of 2 mm, with its walls left. */
function slotTo(depth: number): Item[] {
  const levels = Array.from({ length: depth / 2 }, (_, index) => -2 * (index + 1));
  return [
    rapid(20, 40),
    rapid(undefined, undefined, 5),
    ...levels.flatMap((z) => [line(20, 40, z), line(60, 40), line(20, 40)]),
  ];
}

const endMill: TestTool = { kind: "end-mill", diameter: 6 };
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
    expect(found(endMill, slotTo(14))).toEqual([]);
  });

  it("is told with the height over which it rubs", () => {
    const { findings } = cut({ stock, tools: [{ ...endMill, fluteLength: 12 }], items: slotTo(16) });
    expect(findings[0].message).toMatch(
      /^Above its cutting edges the tool meets a wall that is left in op10 with tool 1, over up to 4 mm/,
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
      "A cut in op10 with tool 1 is deeper than the cutting edges are long, by up to 2 mm, in 2 motions, the deepest here.",
    ]);
  });
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

  it("is told once for each operation, with its deepest", () => {
    const { findings } = cut({
      stock,
      tools: [endMill],
      items: [...at(2.5), line(41, 40), line(41, 40, -34), line(45, 40, -33)],
    });
    expect(findings.map(({ message }) => message)).toEqual([
      "A cut in op10 with tool 1 goes 4 mm below the stock, into what it lies on.",
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
      "limit/fixture A motion in op10 with tool 1 goes into a fixture: the tool cuts into left clamp, up to 11 mm below its top.",
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

describe("what is left out is said once", () => {
  it("no stock", () => {
    const result = cut({ tools: [endMill], items: slotTo(4) });
    expect(rulesOf(result)).toEqual(["note motion/not-simulated"]);
    expect(result.done).toBeUndefined();
  });

  it("another work offset", () => {
    const offset = (number: number): Item => step({ kind: "work-offset", number });
    const items = [
      offset(1),
      ...slotTo(4),
      rapid(undefined, undefined, 5),
      offset(2),
      ...slotTo(10),
      line(1, 1),
    ];
    const result = cut({ stock, tools: [endMill], items });
    expect(rulesOf(result)).toEqual(["note motion/not-simulated"]);
    expect(heightAt(result, 40, 40)).toBeCloseTo(-4, 4);
  });

  it("a rotary axis that has turned", () => {
    const items = [
      ...slotTo(4),
      rapid(undefined, undefined, 5),
      { move: { kind: "rapid" as const, a: 90 } },
      ...slotTo(10),
    ];
    const result = cut({ stock, tools: [endMill], items });
    expect(rulesOf(result)).toEqual(["note motion/not-simulated"]);
    expect(heightAt(result, 40, 40)).toBeCloseTo(-4, 4);
  });

  it("an angle that is taken for granted, and a tool of unknown size", () => {
    const result = cut({ stock, tools: [{ kind: "drill", diameter: 6 }], items: plunge(40, 40, -4) });
    expect(result.findings[0].message).toContain("a point of 118 degrees");
    expect(
      rulesOf(cut({ stock, tools: [{ kind: "drill", diameter: 100_000 }], items: plunge(40, 40, -4) })),
    ).toEqual(["note motion/not-simulated"]);
  });

  it("cells that would not fit into memory", () => {
    const result = cut({
      stock,
      tools: [endMill],
      items: [],
      sizes: { resolution: 0.01, mostCellsStated: 1e6 },
    });
    expect(rulesOf(result)).toEqual(["note motion/not-simulated"]);
    const { map } = doneOf(result);
    expect(map.columns * map.rows).toBeLessThanOrEqual(1e6);
  });
});

describe("figures", () => {
  const parts = [
    { id: "op10", tool: 1, from: 0 },
    { id: "op20", tool: 2, from: 160 },
  ];
  it("go to the operation and the tool that cut", () => {
    const items = [
      ...plunge(20, 20, -2),
      line(60, 20),
      rapid(undefined, undefined, 5),
      rapid(20, 50),
      ...plunge(20, 50, -2),
      line(60, 50),
    ];
    const result = cut({
      stock,
      tools: [endMill, { kind: "end-mill", number: 2, diameter: 10 }],
      items,
      facts: { parts },
      sizes: { resolution: 0.2 },
    });
    const { operations, tools } = doneOf(result);
    expect(operations.map(({ id, tool }) => [id, tool])).toEqual([
      ["op10", 1],
      ["op20", 2],
    ]);
    expect(operations[0].removed).toBeCloseTo((40 * 6 + Math.PI * 9) * 2, -1);
    expect(operations[1].removed).toBeCloseTo((40 * 10 + Math.PI * 25) * 2, -1);
    expect(tools.map(({ removed }) => removed)).toEqual(operations.map(({ removed }) => removed));
  });

  it("give the rate of a full slot as width times depth times feed", () => {
    const { operations } = doneOf(
      cut({
        stock,
        tools: [endMill],
        items: [
          rapid(20, 40),
          rapid(undefined, undefined, 5),
          line(20, 40, -2, { feed: 100 }),
          line(60, 40, undefined, { feed: 900 }),
          line(60, 60, undefined, { feed: 300 }),
        ],
      }),
    );
    expect(operations[0].greatestRate / (6 * 2 * 900)).toBeCloseTo(1, 1);
  });

  it("give the rate of a hole as its area times the feed, however far the way down through air", () => {
    const items = [rapid(40, 40), rapid(undefined, undefined, 25), line(40, 40, -10, { feed: 100 })];
    const { operations } = doneOf(
      cut({ stock, tools: [{ kind: "end-mill", diameter: 10 }], items, sizes: { resolution: 0.1 } }),
    );
    expect(operations[0].greatestRate / (Math.PI * 25 * 100)).toBeCloseTo(1, 1);
  });
});

describe("a program without operations", () => {
  const facts = (swap: "controller" | "operator" | "rack") => ({
    parts: [],
    source: "program" as const,
    machine: {
      rapids: "straight" as const,
      swap,
      rack: {
        pockets: [
          { x: mm(10), y: mm(20) },
          { x: mm(10), y: mm(90) },
        ],
      } as never,
    },
    rack: [7, 2],
  });
  const tools = [endMill, { kind: "end-mill" as const, number: 2, diameter: 10 }];
  const slotOf = (result: ReturnType<typeof cut>): string =>
    doneOf(result)
      .operations.map(({ id, removed }) => `${id} ${(removed / 2 / 40).toFixed(0)}`)
      .join(", ");
  const slot = [...plunge(20, 40, -2), line(60, 40)];
  it("is told by the tools that its steps put into the spindle", () => {
    const select = step({ kind: "select-tool", tool: 2 });
    const change = step({ kind: "change-tool" });
    const run = (swap: "controller" | "operator" | "rack", items: Item[]) =>
      slotOf(cut({ stock, tools, items: [...items, ...slot], facts: facts(swap) }));
    expect(run("controller", [select, change])).toBe("tool 2 12");
    expect(run("operator", [select, step({ kind: "pause", optional: false })])).toBe("tool 2 12");
    const pocket: Item = { move: { kind: "rapid", machine: true, x: 10, y: 90 } };
    expect(run("rack", [pocket, step({ kind: "auxiliary", action: "clamp", code: "" })])).toBe("tool 2 12");
    expect(run("controller", [select])).toBe("tool 0 0");
  });
});

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
