import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { weatherPlate } from "../support/examples.ts";
import { planOf, sheetOf } from "./sheet-of.ts";

const router = "examples/weather-plate/quarry-router.dialect.yaml";
const texts = (steps: readonly { readonly text: string }[]) => steps.map(({ text }) => text).join("\n");

test("an air cut that travel does not allow is not asked for", async () => {
  const shallow = readFileSync(router, "utf8").replace("1: [300, 200, -140]", "1: [300, 200, -80]");
  const { sheet } = await sheetOf({
    job: weatherPlate,
    dialect: "shallow.dialect.yaml",
    texts: { "shallow.dialect.yaml": shallow },
  });
  const { airCut, proveOut } = planOf(sheet);
  // The lowest point is Z-11.5 and the highest clearance 15: 26.5 up, in whole tens 30. Spindle nose at the top: zero of Z at
  // -80, the longest tools 60, clearance 15 above it make -5, and Z ends at 0.
  expect(airCut).toEqual({ lowest: -11.5, above: 15, raise: 30, room: 5 });
  expect(texts(proveOut)).toContain(
    "would need the work offsets 30 mm higher, and the travel of Z leaves 5 mm",
  );
  expect(texts(proveOut)).not.toContain("Put the work offsets back");
});

test("an air cut that travel allows has its height, and the way back", async () => {
  const { airCut, proveOut } = planOf((await sheetOf({ job: weatherPlate, dialect: router })).sheet);
  expect(airCut?.room).toBe(65);
  expect(texts(proveOut)).toContain("Raise the work offsets in Z by 30 mm: the lowest point, Z-11.5");
  expect(texts(proveOut)).toContain("Put the work offsets back as they were");
  expect(texts(proveOut)).not.toContain("See first that the travel");
});

test("where nobody states the zero, the operator is told to look at the travel", async () => {
  const { sheet } = await sheetOf({ job: weatherPlate, dialect: "rs274ngc" });
  const { airCut, proveOut } = planOf(sheet);
  expect(airCut).not.toHaveProperty("room");
  expect(texts(proveOut)).toContain("See first that the travel of Z allows it.");
});

test("every tool has its first approach, and every clamp, pocket and assumption a tick", async () => {
  const { before, proveOut, assumptions } = planOf(
    (await sheetOf({ job: weatherPlate, dialect: router })).sheet,
  );
  const approach = proveOut.find(({ text }) => text.startsWith("First approach"));
  expect(approach?.each).toEqual([1, 2, 3, 4, 5, 6].map((tool) => `tool ${tool}`));
  const ticks = before.flatMap(({ text, each }) => [text, ...each]);
  for (const wanted of ["front edge clamp", "rear edge clamp", "tool 6 in pocket 6"])
    expect(ticks).toContain(wanted);
  const listed = assumptions.filter((text) => !/^(Tools|The rack)/.test(text));
  expect(listed.length).toBeGreaterThan(3);
  for (const text of listed) expect(ticks).toContain(text);
});

test("where Z is set by hand it is the zero that is set higher", async () => {
  const one = JSON.stringify({
    job: "1",
    name: "small",
    units: "inch",
    clearance: 0.5,
    tools: [{ number: 1, kind: "end-mill", diameter: 0.25, description: "end-mill" }],
    operations: [
      {
        id: "op10",
        name: "Mill",
        tool: 1,
        spindle: { rpm: 6000, direction: "cw" },
        moves: [
          { rapid: { x: 0, y: 0 } },
          { rapid: { z: 0.1 } },
          { line: { z: -0.2 }, feed: 5 },
          { rapid: { z: 0.5 } },
        ],
      },
    ],
  });
  const { airCut, proveOut } = planOf((await sheetOf({ job: one, dialect: "hand-zeroed" })).sheet);
  // 0.7 in up, in half inches 1.
  expect(airCut).toEqual({ lowest: -0.2, above: 0.5, raise: 1 });
  expect(texts(proveOut)).toContain("Set Z zero 1 in higher than it is");
});
