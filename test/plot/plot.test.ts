import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { moveKind } from "#report";
import { drawJob, drawProgram, jobOf, listingOf, movesOf } from "./plotting.ts";

const root = resolve(import.meta.dirname, "../..");
const router = join(root, "examples/weather-plate/quarry-router.dialect.yaml");
const plate = readFileSync(join(root, "examples/weather-plate/weather-plate.job.json"), "utf8");

const slot = [
  { rapid: { x: 10, y: 10 } },
  { rapid: { z: 2 } },
  { line: { z: -2 }, feed: 300 },
  { line: { x: 30 } },
  { arc: { x: 50, y: 10, cx: 40, cy: 10 }, turn: "ccw" },
  { rapid: { z: 15 } },
];

describe("a job alone", () => {
  const { plot, posted } = drawJob(jobOf(slot));

  test("is its own moves, from clearance on, and says that it is no program", () => {
    expect(posted).toBeUndefined();
    expect(plot?.head.shows).toBe("job");
    expect(plot?.head.remarks.join(" ")).toContain("not a program");
    expect(movesOf(plot!).map(({ kind, isJump, at }) => [kind, isJump, ...at])).toEqual([
      [moveKind.rapid, true, 10, 10, 15],
      [moveKind.rapid, false, 10, 10, 2],
      [moveKind.line, false, 10, 10, -2],
      [moveKind.line, false, 30, 10, -2],
      [moveKind.arcXy, false, 50, 10, -2],
      [moveKind.rapid, false, 50, 10, 15],
    ]);
  });

  test("has the reach of its arcs in its extents, and no rapid in those of the cuts", () => {
    expect(plot?.head.cut).toEqual({ min: [10_000, 0, -2000], max: [50_000, 10_000, 2000] });
    expect(plot?.head.all?.max[2]).toBe(15_000);
    expect(plot?.head.counts).toEqual({ rapids: 2, lines: 2, arcs: 1, holes: 0, leftOut: 1 });
  });

  test("lists each move with its line in the file", () => {
    const text = JSON.stringify(jobOf(slot)).replace(/\{"(rapid|line|arc)"/g, '\n{"$1"');
    const listing = listingOf(drawJob(text).plot!);
    expect(listing).toEqual([
      "op10, line 2: rapid to X 10 Y 10",
      "op10, line 3: rapid to Z 2",
      "op10, line 4: line to Z -2 at 300 mm/min",
      "op10, line 5: line to X 30 at 300 mm/min",
      "op10, line 6: arc in XY to X 50 Y 10 about X 40 Y 10, ccw, at 300 mm/min",
      "op10, line 7: rapid to Z 15",
    ]);
  });

  test("goes in and out of its holes, at the level that they ask for", () => {
    const holes = (between: string) => [
      { rapid: { x: 0, y: 0 } },
      { rapid: { z: 8 } },
      {
        holes: {
          kind: "drill",
          at: [
            [5, 5],
            [9, 5],
          ],
          top: 0,
          depth: -6,
          retract: 2,
          between,
        },
        feed: 100,
      },
    ];
    const ways = (between: string) =>
      movesOf(drawJob(jobOf(holes(between))).plot!).map(({ kind, at }) => [kind, ...at]);
    const { rapid, hole, out } = moveKind;
    const first = [
      [rapid, 0, 0, 15],
      [rapid, 0, 0, 8],
      [rapid, 5, 5, 8],
      [rapid, 5, 5, 2],
      [hole, 5, 5, -6],
    ];
    expect(ways("retract")).toEqual([
      ...first,
      [out, 5, 5, 2],
      [rapid, 9, 5, 2],
      [hole, 9, 5, -6],
      [out, 9, 5, 2],
    ]);
    expect(ways("initial")).toEqual([
      ...first,
      [out, 5, 5, 8],
      [rapid, 9, 5, 8],
      [rapid, 9, 5, 2],
      [hole, 9, 5, -6],
      [out, 9, 5, 8],
    ]);
  });

  test("is not drawn at all where its moves cannot be read to their end", () => {
    const outcome = drawJob(jobOf([...slot, { line: { q: 1 } }]));
    expect(outcome.plot).toBeUndefined();
    expect(outcome.findings.map(({ severity }) => severity)).toContain("error");
  });
});

describe("a program", () => {
  test("has each motion on the line that says it, and the whole text", async () => {
    const { plot, posted } = await drawProgram(jobOf(slot), "rs274ngc");
    expect(posted?.verdict).toBe("proved");
    expect(plot?.head.shows).toBe("proved");
    const listing = listingOf(plot!);
    expect(listing).toHaveLength(plot!.head.lines);
    const said = movesOf(plot!).map(({ at, line }) => [listing[line - 1], ...at]);
    expect(said).toContainEqual(["G1 Z-2 F300", 10, 10, -2]);
    expect(said).toContainEqual(["G3 X50 Y10 I10 J0", 50, 10, -2]);
    // The arc's centre is in absolute places, whatever the words are relative to.
    expect(movesOf(plot!).find(({ kind }) => kind === moveKind.arcXy)?.centre).toEqual([40, 10]);
  });

  test("leaves out machine places where work zero is not known, and counts them", async () => {
    const { plot } = await drawProgram(jobOf(slot), "rs274ngc");
    expect(movesOf(plot!).filter(({ isMachine }) => isMachine)).toEqual([]);
    expect(plot!.head.counts.leftOut).toBeGreaterThan(0);
    expect(plot!.head.remarks.join(" ")).toMatch(/Left out: \d+ motions .* Work zero is not known/);
  });

  test("places the machine by its work zero, and the tip by the length of the tool that is held", async () => {
    // Zero at machine 300, 200, -140; pocket 1 at 40, 20, where the holder sits at -78.4 (the router's file).
    const { plot } = await drawProgram(jobOf(slot), router);
    const machine = movesOf(plot!).filter(({ isMachine }) => isMachine);
    const atPocket = machine.filter(({ at }) => at[0] === -260 && at[1] === -180).map(({ at }) => at[2]);
    // Empty down to the holder; with 50 mm of tool up to clear-z -5; back down to the pocket; empty up again.
    expect(atPocket).toContain(61.6);
    expect(atPocket).toContain(85);
    expect(atPocket).toContain(11.6);
    expect(atPocket.at(-1)).toBe(140);
    const travel = plot!.head.boxes.find(({ kind }) => kind === "travel");
    expect(travel).toMatchObject({ min: [-300_000, -200_000, -20_000], max: [920_000, 610_000, 140_000] });
    // Feeds down to a pocket are no cuts.
    expect(plot!.head.cut?.min).toEqual([10_000, 0, -2000]);
  });

  test("that is refused is drawn all the same, is called unproved, and has its findings in their places", async () => {
    const dive = [...slot.slice(0, 4), { rapid: { x: 50 } }, { rapid: { z: 15 } }];
    const stock = { min: [0, 0, -12], max: [60, 40, 0] };
    const { plot, posted } = await drawProgram(jobOf(dive, { stock }), router);
    expect(posted?.verdict).toBe("refused");
    expect(plot?.head.shows).toBe("unproved");
    const mark = plot!.head.marks.find(({ rule }) => rule === "motion/rapid-in-stock");
    expect(mark?.at).toEqual([50_000, 10_000, -2000]);
    expect(listingOf(plot!)[mark!.line - 1]).toMatch(/G00 X50\.000$/);
  });

  test("that cannot be made leaves the job alone, with the findings of posting it", async () => {
    const tapped = [
      { rapid: { x: 5, y: 5 } },
      { holes: { kind: "tap", at: [[5, 5]], top: 0, depth: -6, retract: 2, lead: 1 } },
    ];
    const tools = [{ number: 1, kind: "tap", diameter: 6, lead: 1 }];
    const { plot, posted } = await drawProgram(jobOf(tapped, { tools }), "longhand");
    expect(posted?.verdict).toBe("refused");
    expect(plot?.head.shows).toBe("job");
    expect(plot?.head.dialect?.name).toBe("longhand");
    const error = plot!.head.marks.find(({ severity }) => severity === "error");
    expect(error?.line).toBeGreaterThan(0);
    expect(movesOf(plot!).filter(({ kind }) => kind === moveKind.hole)).toHaveLength(1);
  });

  test("of the example begins and ends where the job does", async () => {
    const { plot } = await drawProgram(plate, router);
    const { plot: alone } = drawJob(plate);
    expect(plot!.head.cut?.min.slice(0, 2)).toEqual(alone!.head.cut?.min.slice(0, 2));
    expect(plot!.head.cut?.max.slice(0, 2)).toEqual(alone!.head.cut?.max.slice(0, 2));
    expect(plot!.head.cut?.min[2]).toBe(alone!.head.cut?.min[2]);
    expect(new Set(movesOf(plot!).map(({ operation }) => operation)).size).toBe(13);
  });
});

describe("work offsets", () => {
  const twoZeros = join(root, "examples/weather-plate/two-zeros.dialect.yaml");
  const two = {
    ...(jobOf([]) as object),
    operations: [1, 2].map((workOffset) => ({
      id: `op${workOffset}`,
      tool: 1,
      workOffset,
      spindle: { rpm: 12000, direction: "cw" },
      moves: slot,
    })),
  };

  test("lie where their zeros do, if these are known", async () => {
    const texts = {
      [twoZeros]: `dialect: two\ntitle: two\nextends: quarry-router.dialect.yaml\nmachine: { work-zero: { 1: [300, 200, -80], 2: [400, 250, -70] } }\n`,
    };
    const { plot } = await drawProgram(two, twoZeros, texts);
    expect(plot!.head.workZeros).toEqual([
      { offset: 1, at: [0, 0, 0] },
      { offset: 2, at: [100_000, 50_000, 10_000] },
    ]);
    expect(plot!.head.cut).toMatchObject({ max: [150_000, 60_000, 12_000] });
  });

  test("are drawn over each other otherwise, and that is said", async () => {
    const { plot } = await drawProgram(two, "rs274ngc");
    expect(plot!.head.remarks.join(" ")).toContain("Work offsets 1, 2 are drawn over each other");
    expect(plot!.head.cut?.max[0]).toBe(50_000);
  });
});
