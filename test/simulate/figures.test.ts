import { describe, expect, it } from "vitest";
import { mm } from "../prove/layout.ts";
import type { Item } from "../prove/layout.ts";
import {
  cut,
  deepStock,
  doneOf,
  endMill,
  heightAt,
  line,
  plunge,
  rapid,
  rulesOf,
  slotTo,
  step,
} from "./cutting.ts";

const stock = deepStock;

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

  it("cells that are wider than the radius of a tool", () => {
    const told = (resolution: number) =>
      rulesOf(cut({ stock, tools: [endMill], items: [], sizes: { resolution } }));
    expect(told(2.5)).toEqual([]);
    expect(told(4)).toEqual(["note motion/not-simulated"]);
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

  it("give no rate by chance where moves are shorter than cells", () => {
    const short = Array.from({ length: 400 }, (_, index) =>
      line(20 + index / 10, 40, undefined, { feed: 900 }),
    );
    const items = [rapid(20, 40), rapid(undefined, undefined, 5), line(20, 40, -2, { feed: 100 }), ...short];
    const { operations } = doneOf(cut({ stock, tools: [endMill], items }));
    // A cell more at each end and each side of the stretch: (1 + 2 * 0.35 / 6) squared.
    expect(operations[0].greatestRate / (6 * 2 * 900)).toBeLessThan(1.25);
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
    rack: [2, 7],
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
    const pocket: Item = { move: { kind: "rapid", machine: true, x: 10, y: 20 } };
    expect(run("rack", [pocket, step({ kind: "auxiliary", action: "clamp", code: "" })])).toBe("tool 2 12");
    expect(run("controller", [select])).toBe("tool 0 0");
  });
});
