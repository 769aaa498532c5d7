import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { plotDrawing, wholeDrawing } from "#report";
import { quarryRouter } from "../support/dialects.ts";
import { drawJob, drawProgram, jobOf, packing } from "./plotting.ts";

/** All kinds of motion in a small piece; read by eye as a picture when the golden changes. */
const piece = {
  ...(jobOf([]) as object),
  name: "Arcs, holes & a <clamp>",
  stock: { min: [0, 0, -12], max: [60, 40, 0] },
  fixtures: [{ name: "clamp", min: [-10, 10, -12], max: [0, 30, 3] }],
  tools: [
    { number: 1, kind: "ball-mill", diameter: 6 },
    { number: 2, kind: "drill", diameter: 5 },
  ],
  operations: [
    {
      id: "op10",
      name: "arcs",
      tool: 1,
      spindle: { rpm: 12000, direction: "cw" },
      moves: [
        { rapid: { x: 10, y: 10 } },
        { rapid: { z: 2 } },
        { line: { z: -2 }, feed: 300 },
        { arc: { x: 10, y: 10, z: -8, cx: 16, cy: 10 }, turn: "ccw", turns: 2 },
        { line: { x: 30, z: -2 } },
        { arc: { x: 50, z: -2, cx: 40, cz: -2 }, turn: "cw", plane: "zx" },
        { line: { y: 20 } },
        { arc: { y: 36, z: -2, cy: 28, cz: -2 }, turn: "ccw", plane: "yz" },
        { rapid: { z: 15 } },
      ],
    },
    {
      id: "op20",
      name: "holes",
      tool: 2,
      spindle: { rpm: 8000, direction: "cw" },
      moves: [
        { rapid: { x: 5, y: 35 } },
        {
          holes: {
            kind: "peck",
            at: [
              [5, 35],
              [25, 5],
            ],
            top: 0,
            depth: -10,
            retract: 2,
            peck: 3,
          },
          feed: 200,
        },
      ],
    },
  ],
};

describe("three views", () => {
  const drawing = plotDrawing(drawJob(piece).plot!, packing);

  test("are as they were read by eye", async () => {
    await expect(drawing).toMatchFileSnapshot(join(import.meta.dirname, "goldens/piece.svg"));
  });

  test("hold texts of the job as texts", () => {
    expect(drawing).toContain("Arcs, holes &amp; a &lt;clamp&gt;");
    expect(drawing).not.toContain("<clamp>");
  });

  test("ask for nothing beside themselves", () => {
    expect(drawing).not.toMatch(/<script|href=|@import|url\((?!#)/);
    expect(drawing.match(/https?:[^"]*/g)).toEqual(["http://www.w3.org/2000/svg"]);
  });

  test("say what a picture cannot", () => {
    expect(drawing).toContain("A picture proves nothing");
    expect(drawing).toContain("The job alone, not a program.");
  });
});

test("the clearance is named inside the frame, also where its line is near the top", () => {
  const stock = { min: [0, 0, -15], max: [70, 70, 0] };
  const moves = [{ rapid: { x: 10, y: 10 } }, { rapid: { z: 2 } }, { line: { z: -2 }, feed: 300 }];
  const drawing = plotDrawing(drawJob({ ...(jobOf(moves) as object), clearance: 20, stock }).plot!, packing);
  const front = drawing.slice(drawing.indexOf("<title>Front, XZ"));
  const top = Number(/class="frame" x="[\d.]+" y="([\d.]+)"/.exec(front)?.[1]);
  const foot = Number(/y="([\d.]+)" class="label">clearance/.exec(front)?.[1]);
  expect(foot - top).toBeGreaterThanOrEqual(36);
});

test("a drawing for a page has no title, legend or cautions, and names of its own", () => {
  const options = { ...wholeDrawing, isAlone: false, id: "sheet", views: ["top"] as const };
  const drawing = plotDrawing(drawJob(piece).plot!, packing, options);
  expect(drawing).not.toContain("Tools and operations");
  expect(drawing).not.toContain("Front, XZ");
  expect(drawing).toContain('id="sheet-top"');
});

test("a refused program is called unproved on the drawing, and its findings are numbered there and listed", async () => {
  const dive = [
    { rapid: { x: 10, y: 10 } },
    { rapid: { z: 2 } },
    { line: { z: -2 }, feed: 300 },
    { rapid: { x: 50 } },
  ];
  const stock = { min: [0, 0, -12], max: [60, 40, 0] };
  const { plot } = await drawProgram(jobOf([...dive, { rapid: { z: 15 } }], { stock }), quarryRouter);
  const drawing = plotDrawing(plot!, packing);
  expect(drawing).toContain("NOT PROVED");
  expect(drawing.match(/class="mark"/g)).toHaveLength(3);
  expect(drawing).toContain("error motion/rapid-in-stock");
});

test("many motions are drawn on a coarser grid, in a bounded file that says so", () => {
  const spiral = Array.from({ length: 30_000 }, (_, step) => {
    const [radius, angle] = [step / 300, step / 9];
    return [radius * Math.cos(angle), radius * Math.sin(angle), -1].map((place) => Number(place.toFixed(3)));
  });
  const moves = [
    { rapid: { x: 0, y: 0 } },
    { line: { z: -1 }, feed: 200 },
    { path: { kind: "line", points: spiral }, feed: 900 },
  ];
  const { plot } = drawJob(jobOf(moves));
  const fine = plotDrawing(plot!, packing, { ...wholeDrawing, most: Infinity });
  const drawing = plotDrawing(plot!, packing, { ...wholeDrawing, most: 100_000 });
  expect(fine.length).toBeGreaterThan(150_000);
  expect(drawing.length).toBeLessThan(130_000);
  const grid = (text: string): number => Number(/drawn on a grid of ([\d.]+) mm/.exec(text)?.[1]);
  expect(grid(drawing)).toBeGreaterThan(grid(fine));
});

test("a job whose motions have no extent is drawn all the same", () => {
  const { plot } = drawJob(jobOf([{ rapid: { x: 10, y: 10 } }]));
  expect(plotDrawing(plot!, packing)).not.toMatch(/NaN|Infinity/);
});
