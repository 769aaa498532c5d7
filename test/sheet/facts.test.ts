import { expect, test } from "vitest";
import { atomsPerMillimetre } from "#base";
import type { Extents } from "#report";
import { examples, weatherPlate } from "../support/examples.ts";
import { postText } from "../../core/index.ts";
import { ready } from "../support/ready.ts";
import type { PlainJob, Reckoned } from "./own-reckoning.ts";
import { include, reckon } from "./own-reckoning.ts";
import { planOf, sheetOf } from "./sheet-of.ts";

const router = "examples/weather-plate/quarry-router.dialect.yaml";
const plate = JSON.parse(weatherPlate) as PlainJob;
const made = await sheetOf({ job: weatherPlate, dialect: router });
const plan = planOf(made.sheet);
const reckoned = reckon(plate);

/** Extents to a hundredth of a millimetre: the points of an arc are a chord apart from its edge. */
function near(extents: Extents, box: Reckoned): void {
  [extents.x, extents.y, extents.z].forEach((range, axis) => {
    expect(range?.least, `least of axis ${axis}`).toBeCloseTo(box[axis][0], 2);
    expect(range?.most, `most of axis ${axis}`).toBeCloseTo(box[axis][1], 2);
  });
}

test.each(plate.tools.map(({ number }) => [number]))("tool %i goes as far as its moves say", (number) => {
  const [cutting, motion] = (["cutting", "motion"] as const).map((which) => {
    const box: Reckoned = [0, 1, 2].map(() => [Infinity, -Infinity]);
    for (const one of reckoned)
      if (one.tool === number)
        for (const side of [0, 1])
          include(
            box,
            one[which].map((range) => range[side]),
          );
    return box;
  });
  const { reach } = plan.tools.find((tool) => tool.number === number)!;
  expect(reach).toHaveLength(1);
  near(reach[0].cutting, cutting);
  near(reach[0].motion, motion);
});

test("all motion in the work offset, in work and in machine coordinates", () => {
  const box: Reckoned = [0, 1, 2].map(() => [Infinity, -Infinity]);
  for (const { motion } of reckoned)
    for (const side of [0, 1])
      include(
        box,
        motion.map((range) => range[side]),
      );
  const [offset, ...others] = plan.workOffsets;
  expect(others).toEqual([]);
  near(offset.extents, box);
  // The zero stands in the router's file: machine.work-zero.
  expect(offset).toMatchObject({ number: 1, word: "G54", origin: [300, 200, -140] });
  expect(offset.machineExtents.x?.least).toBeCloseTo(300 + box[0][0], 2);
  expect(offset.machineExtents.y?.most).toBeCloseTo(200 + box[1][1], 2);
});

test.each(reckoned.map((one) => [one.id, one] as const))(
  "operation %s has its depth, speeds, feeds and chip loads",
  (id, one) => {
    const operation = plan.operations.find((found) => found.id === id)!;
    const { flutes = 0, diameter } = plate.tools.find(({ number }) => number === one.tool)!;
    expect(operation.tool).toBe(one.tool);
    expect(operation.lowest).toBeCloseTo(one.lowest, 3);
    expect(operation.rpm).toEqual({ least: Math.min(...one.speeds), most: Math.max(...one.speeds) });
    // Vc = pi D n / 1000, m/min.
    const speed = (Math.PI * diameter * Math.max(...one.speeds)) / 1000;
    expect(operation.cuttingSpeed?.most).toBe(Math.round(speed));
    for (const use of ["cut", "plunge"] as const) {
      const found = operation.feeds.find((feed) => feed.use === use);
      if (one[use].length === 0) {
        expect(found).toBeUndefined();
        continue;
      }
      expect(found?.feed).toEqual({ least: Math.min(...one[use]), most: Math.max(...one[use]) });
      if (one.speeds.length > 1) continue;
      // fz = vf / (n z), mm a tooth.
      const tooth = Math.max(...one[use]) / (one.speeds[0] * flutes);
      expect(found?.perTooth?.most).toBeCloseTo(tooth, 4);
    }
  },
);

test("worked values of the trade: 960 mm/min at 6000 1/min with two teeth, 25 mm wide", () => {
  const [face] = plan.operations;
  // 960 / (6000 x 2) = 0.08 mm; pi x 25 x 6000 / 1000 = 471 m/min: reckoned by hand.
  expect(face.feeds).toEqual([
    { use: "cut", feed: { least: 960, most: 960 }, perTooth: { least: 0.08, most: 0.08 } },
  ]);
  expect(face.cuttingSpeed).toEqual({ least: 471, most: 471 });
});

test("the program of the sheet is the one that is posted, and its lines are those of its text", async () => {
  const { program: text = "", outcome } = postText({ job: weatherPlate }, await ready(router));
  expect(made.sheet.program).toMatchObject({
    sha256: outcome.proof?.sha256,
    facts: outcome.proof?.facts,
    bytes: new TextEncoder().encode(text).length,
  });
  const lines = text.split("\n");
  const shown = plan.stops.map(({ line = 0 }) => lines[line - 1]);
  expect(shown).toHaveLength(2);
  for (const block of shown) expect(block).toMatch(/^N\d+ M00$/);
  // The lowest place of each operation is said between its line and that of the next.
  plan.operations.forEach(({ id, line = 0, lowest = 0 }, index) => {
    const end = plan.operations[index + 1]?.line ?? lines.length;
    expect(end).toBeGreaterThan(line);
    expect(lines.slice(line - 1, end - 1).join("\n"), id).toContain(`Z${lowest.toFixed(3)}`);
  });
});

test("stops, notes, coolant and tools of the plate", () => {
  expect(plan.stops).toMatchObject([
    { kind: "empty-spindle", optional: false, message: "EMPTY THE SPINDLE AND CLAMP IT" },
    {
      kind: "pause",
      operation: "op130",
      text: "put M8 screws through the four corner holes into the spoil board",
      message: "PUT M8 SCREWS THROUGH THE FOUR CORNER HOLES INTO THE SPOIL BOARD",
    },
  ]);
  expect(plan.stops[0]).not.toHaveProperty("operation");
  expect(plan.operations[0]).toMatchObject({
    notes: ["clamps end 1 mm below the finished face"],
    coolant: ["mist"],
    direction: "cw",
    feedMode: "per-minute",
  });
  expect(plan.rack).toEqual([1, 2, 3, 4, 5, 6].map((tool) => ({ pocket: tool, tool })));
  expect(plan.tools[4]).toMatchObject({
    number: 5,
    kind: "end-mill",
    description: "carbide end-mill 6, for aluminium",
    diameter: 6,
    flutes: 2,
    pocket: 5,
    lengthOffset: 5,
    lengthWord: "H5",
    radiusOffset: 5,
    length: { value: 58, from: "job" },
    stickOut: 28,
    fluteLength: 16,
    maxRpm: 24000,
    measured: false,
  });
  expect(plan.stock).toMatchObject({ size: [204, 144, 10.6], material: "aluminium plate, 6000 series" });
  expect(plan.machine).toEqual({
    travel: { x: { least: 0, most: 1220 }, y: { least: 0, most: 810 }, z: { least: -160, most: 0 } },
    spindle: { least: 6000, most: 24000 },
    toolChange: "rack",
    lengths: "table",
  });
});

test("only some operations, another set-up: the sheet is of that program", async () => {
  const setup = {
    workOffsets: [],
    lengths: { 6: 51.25 * atomsPerMillimetre },
    rack: undefined,
    spindleHolds: 6,
  };
  const { sheet } = await sheetOf({
    job: weatherPlate,
    dialect: router,
    options: { only: ["op120"] },
    setup,
  });
  const own = planOf(sheet);
  expect(own.operations.map(({ id }) => id)).toEqual(["op120"]);
  expect(own.tools).toMatchObject([{ number: 6, length: { value: 51.25, from: "set-up" } }]);
  expect(own.stops).toEqual([]);
  expect(own.spindleHolds).toBe(6);
  expect(sheet.program?.sha256).not.toBe(made.sheet.program?.sha256);
});

test("an inch job is told in inches, feeds by the revolution and leads as they are", async () => {
  const inch = examples.find(({ name }) => name === "sensor-bracket-inch")!;
  const { sheet } = await sheetOf({ job: inch.job, dialect: "rs274ngc" });
  const { units, stock, operations, tools, workOffsets } = planOf(sheet);
  expect(units).toBe("inch");
  expect(stock?.size).toEqual([3, 2, 1]);
  expect(workOffsets).toMatchObject([{ number: 2, word: "G55" }]);
  expect(tools[2]).toMatchObject({ kind: "tap", diameter: 0.25, lead: 0.05 });
  const [spot, , tap] = operations;
  // 12 inches in a foot: pi x 0.375 x 2500 / 12 = 245 ft/min; 10 / (2500 x 2) = 0.002 in: reckoned by hand.
  expect(spot.cuttingSpeed).toEqual({ least: 245, most: 245 });
  expect(spot.feeds).toEqual([
    { use: "plunge", feed: { least: 10, most: 10 }, perTooth: { least: 0.002, most: 0.002 } },
  ]);
  expect(tap.feeds).toEqual([{ use: "tap", feed: { least: 0.05, most: 0.05 } }]);
});

test.each(
  examples.flatMap(({ name, job, dialects }) => dialects.map((dialect) => [name, dialect, job] as const)),
)("%s under %s: proved with a program, or refused without one", async (_, dialect, job) => {
  const { sheet, outcome } = await sheetOf({ job, dialect });
  const isProved = outcome.proof !== undefined;
  expect(sheet.verdict).toBe(isProved ? "proved" : "refused");
  expect(sheet.program?.sha256).toBe(outcome.proof?.sha256);
  const { operations, proveOut } = planOf(sheet);
  expect(proveOut.length > 0).toBe(isProved);
  expect(operations.every(({ line }) => (line !== undefined) === isProved)).toBe(true);
  if (isProved) expect(operations.every(({ lowest }) => lowest !== undefined)).toBe(true);
});

test("times are those that post estimates, by operation and by tool, and a refused job has none", async () => {
  const { outcome } = postText({ job: weatherPlate }, await ready(router));
  const { time } = outcome.summary;
  expect(plan.time).toEqual(time);
  const tenths = (seconds: number | undefined): number => Math.round((seconds ?? NaN) * 10) / 10;
  expect(plan.operations.map((one) => one.time)).toEqual(time?.operations.map(({ total }) => tenths(total)));
  expect(plan.tools.map((one) => one.time)).toEqual(time?.tools.map(({ total }) => tenths(total)));
  const refused = await sheetOf({ job: weatherPlate, dialect: "longhand" });
  expect(planOf(refused.sheet).operations.map((one) => one.time)).toEqual(
    plan.operations.map(() => undefined),
  );
});
