import { expect, test } from "vitest";
import { atomsPerMillimetre } from "#base";
import type { SheetPlan } from "#report";
import { planOf, sheetOf } from "./sheet-of.ts";

const millTool = {
  number: 1,
  kind: "end-mill",
  diameter: 10,
  flutes: 2,
  length: 60,
  description: "end-mill 10",
};

/** A job of one operation and tool, in millimetres. */
function job(moves: readonly unknown[], more: object = {}, tools: readonly object[] = [millTool]): string {
  const operation = { id: "op10", name: "Mill", tool: 1, spindle: { rpm: 6000, direction: "cw" }, moves };
  const head = { job: "1", name: "small", program: { number: 1 }, units: "mm", clearance: 10, tools };
  return JSON.stringify({ ...head, operations: [operation], ...more });
}

async function plan(text: string, dialect = "rs274ngc", more = {}): Promise<SheetPlan> {
  const { sheet, outcome } = await sheetOf({ job: text, dialect, ...more });
  expect(outcome.findings.filter(({ severity }) => severity === "error")).toEqual([]);
  return planOf(sheet);
}

const begin = [{ rapid: { x: 0, y: 0 } }, { rapid: { z: 2 } }, { line: { z: -3 }, feed: 100 }];

// Reckoned by hand: an arc reaches past its ends where it passes a quadrant of its circle.
const arcs = [
  ["half a turn to the left", { x: 0, y: 20, cx: 0, cy: 10 }, "cw", 1, [-10, 0], [0, 20]],
  ["half a turn to the right", { x: 0, y: 20, cx: 0, cy: 10 }, "ccw", 1, [0, 10], [0, 20]],
  ["a quarter that passes no quadrant", { x: 10, y: 10, cx: 0, cy: 10 }, "ccw", 1, [0, 10], [0, 10]],
  ["three quarters", { x: 10, y: 10, cx: 0, cy: 10 }, "cw", 1, [-10, 10], [0, 20]],
  ["a full circle", { x: 0, y: 0, cx: 0, cy: 10 }, "cw", 1, [-10, 10], [0, 20]],
  ["two turns", { x: 10, y: 10, z: -5, cx: 0, cy: 10 }, "ccw", 2, [-10, 10], [0, 20]],
] as const;

test.each(arcs)("extents of %s", async (_, arc, turn, turns, x, y) => {
  for (const dialect of ["rs274ngc", "staged-tools", "longhand"]) {
    const { tools } = await plan(
      job([...begin, { arc, turn, turns, feed: 600 }, { rapid: { z: 10 } }]),
      dialect,
    );
    const { cutting, motion } = tools[0].reach[0];
    for (const { x: foundX, y: foundY } of [cutting, motion]) {
      // A dialect by chords stays within its chord tolerance of the arc.
      [foundX?.least, foundX?.most].forEach((value, side) => expect(value).toBeCloseTo(x[side], 1));
      [foundY?.least, foundY?.most].forEach((value, side) => expect(value).toBeCloseTo(y[side], 1));
    }
  }
});

test("a rapid is motion and no cut; the way down is a plunge", async () => {
  const { tools, operations } = await plan(
    job([...begin, { line: { x: 40 }, feed: 600 }, { rapid: { z: 10 } }, { rapid: { x: -90 } }]),
  );
  const [{ cutting, motion }] = tools[0].reach;
  expect(cutting).toEqual({ x: { least: 0, most: 40 }, y: { least: 0, most: 0 }, z: { least: -3, most: 2 } });
  expect(motion).toEqual({
    x: { least: -90, most: 40 },
    y: { least: 0, most: 0 },
    z: { least: -3, most: 10 },
  });
  // 600 / (6000 x 2) = 0.05 mm, 100 / (6000 x 2) = 0.0083 mm.
  expect(operations[0].feeds).toEqual([
    { use: "cut", feed: { least: 600, most: 600 }, perTooth: { least: 0.05, most: 0.05 } },
    { use: "plunge", feed: { least: 100, most: 100 }, perTooth: { least: 0.0083, most: 0.0083 } },
  ]);
});

test("holes reach from their retract level to their depth, as a cycle or longhand", async () => {
  const holes = {
    kind: "peck",
    at: [
      [5, 6],
      [25, 6],
    ],
    top: 0,
    depth: -8,
    retract: 2,
    peck: 3,
  };
  const text = job([{ rapid: { x: 5, y: 6 } }, { holes, feed: 120 }, { rapid: { z: 10 } }]);
  for (const dialect of ["rs274ngc", "longhand"]) {
    const { tools, operations } = await plan(text, dialect);
    expect(tools[0].reach[0].cutting).toEqual({
      x: { least: 5, most: 25 },
      y: { least: 6, most: 6 },
      z: { least: -8, most: 2 },
    });
    expect(operations[0].feeds.map(({ use }) => use)).toEqual(["plunge"]);
    expect(operations[0].lowest).toBe(-8);
  }
});

test("what is not stated has no chip load, and a pen has neither speed nor cutting speed", async () => {
  const bare = await plan(
    job([...begin, { line: { x: 9 }, feed: 600 }, { rapid: { z: 10 } }], {}, [
      { ...millTool, flutes: undefined },
    ]),
  );
  expect(bare.operations[0].feeds.map(({ perTooth }) => perTooth)).toEqual([undefined, undefined]);
  const pen = { number: 1, kind: "pen", diameter: 0.5, length: 60, description: "pen" };
  const operations = [
    { id: "op10", name: "Mark", tool: 1, moves: [...begin, { line: { x: 9 }, feed: 600 }] },
  ];
  const marked = await plan(job([], { operations }, [pen]));
  expect(marked.operations[0]).not.toHaveProperty("rpm");
  expect(marked.operations[0]).not.toHaveProperty("cuttingSpeed");
  expect(marked.operations[0].feeds.map(({ perTooth }) => perTooth)).toEqual([undefined, undefined]);
});

const two = [millTool, { ...millTool, number: 2, description: "end-mill 10, finishing" }];
const cuts = (id: string, tool: number, more: object = {}) => ({
  id,
  name: id,
  tool,
  spindle: { rpm: 6000, direction: "cw" },
  moves: [...begin, { line: { x: 40 }, feed: 600 }, { rapid: { z: 10 } }],
  ...more,
});

const byOperator = `dialect: own
title: Own
extends: iso-6983
machine: { retract: { change-position: [-100, -90, 40] } }
`;

test("tools that the operator changes are stops with the tool's number, whatever the control can show", async () => {
  const text = job([], { operations: [cuts("op10", 1), cuts("op20", 2)] }, two);
  const { stops, tools } = await plan(text, "own.dialect.yaml", {
    texts: { "own.dialect.yaml": byOperator },
  });
  expect(stops).toMatchObject([
    { kind: "tool", tool: 1, operation: "op10", text: "Put in tool 1, end-mill 10, and set Z for it." },
    {
      kind: "tool",
      tool: 2,
      operation: "op20",
      text: "Put in tool 2, end-mill 10, finishing, and set Z for it.",
    },
  ]);
  expect(stops[0].message).toContain("LOAD TOOL 1");
  // The way to the change position is no way of the tool that is put in there.
  expect(tools[1].reach[0].motion).toMatchObject({ x: { least: 0, most: 40 }, z: { least: -3, most: 10 } });
  const mute = `${byOperator}idioms: { message: none }\n`;
  const silent = await plan(text, "own.dialect.yaml", { texts: { "own.dialect.yaml": mute } });
  expect(silent.stops.map(({ tool, message }) => [tool, message])).toEqual([
    [1, ""],
    [2, ""],
  ]);
});

test("a staged tool is not taken for the one that cuts", async () => {
  const text = job([], { operations: [cuts("op10", 1), cuts("op20", 2), cuts("op30", 1)] }, two);
  const { tools, stops } = await plan(text, "staged-tools");
  expect(tools.map(({ reach }) => reach[0].motion.x)).toEqual([
    { least: 0, most: 40 },
    { least: 0, most: 40 },
  ]);
  expect(stops).toEqual([]);
});

const short = [...begin, { line: { x: 25 }, feed: 600 }, { rapid: { z: 10 } }];

test("two work offsets are told apart, each with its zero where that is known", async () => {
  const text = job([], { operations: [cuts("op10", 1), cuts("op20", 1, { workOffset: 2, moves: short })] });
  const zero = [100, 50, -30].map((value) => value * atomsPerMillimetre) as [number, number, number];
  const setup = {
    workOffsets: [undefined, undefined, zero],
    lengths: {},
    rack: undefined,
    spindleHolds: undefined,
  };
  const { workOffsets, tools } = await plan(text, "rs274ngc", { setup });
  expect(workOffsets.map(({ number, word, operations }) => [number, word, operations])).toEqual([
    [1, "G54", ["op10"]],
    [2, "G55", ["op20"]],
  ]);
  expect(workOffsets[0]).not.toHaveProperty("origin");
  expect(workOffsets.map(({ extents }) => extents.x?.most)).toEqual([40, 25]);
  expect(workOffsets[0].machineExtents).toEqual({});
  expect(workOffsets[1]).toMatchObject({
    origin: [100, 50, -30],
    machineExtents: { x: { least: 100, most: 125 } },
  });
  expect(tools[0].reach.map(({ workOffset }) => workOffset)).toEqual([1, 2]);
});

test("an optional stop says so, and stands where it is", async () => {
  const moves = [...begin, { line: { x: 40 }, feed: 600 }, { rapid: { z: 10 } }];
  const text = job([...moves, { pause: "look at the edge", optional: true }, { rapid: { x: 0, y: 0 } }]);
  const { stops } = await plan(text);
  expect(stops).toMatchObject([
    { kind: "pause", optional: true, operation: "op10", text: "look at the edge" },
  ]);
});

test("more notes than a sheet holds are counted", async () => {
  const notes = Array.from({ length: 15 }, (_, index) => ({ note: `note ${index}` }));
  const { operations } = await plan(job([begin[0], ...notes, ...begin.slice(1), { rapid: { z: 10 } }]));
  expect(operations[0].notes).toHaveLength(12);
  expect(operations[0].moreNotes).toBe(3);
});
