import { expect, it } from "vitest";
import { isDiameterKnown } from "#base";
import { postText } from "../../core/index.ts";
import { quarryRouter } from "../support/dialects.ts";
import { ready } from "../support/ready.ts";
import { clReading, lineOf, readSource } from "./reading.ts";

const source = (cutter: string): string =>
  `UNITS/MM\n${cutter}LOADTL/1\nSPINDL/9000,CLW\nRAPID\nGOTO/0,0,10\nFEDRAT/300,MMPM\nGOTO/9,0,10\nFINI\n`;

const head = (tool: string, more = ""): string =>
  `{ "job": "1", "units": "inch", "clearance": 1,${more}\n"tools": [\n${tool}\n] }`;

const mill = '{ "number": 1, "kind": "end-mill", "diameter": 0.25, "flutes": 3 }';

function errorsOf(text: string, headText: string): string[] {
  return readSource(text, "", headText)
    .findings.filter(({ severity }) => severity === "error")
    .map(({ rule, place }) => {
      const isHead = place?.source === "head";
      return `${rule} ${place?.source}:${lineOf(isHead ? headText : text, place?.offset ?? 0)}`;
    });
}

it("a head file says what the source cannot: tools, clearance, stock, in units of its own", () => {
  const stock = ' "stock": { "min": [0, 0, -1], "max": [1, 1, 0] },';
  const { opened, findings } = readSource(source(""), "", head(mill, stock));
  const inch = 254_000_000;
  expect(opened?.job).toMatchObject({
    units: "mm",
    clearance: inch,
    stock: { max: [inch, inch, 0] },
    tools: [{ number: 1, kind: "end-mill", diameter: inch / 4, flutes: 3 }],
    operations: [{ clearance: inch }],
  });
  expect(findings).toEqual([]);
});

it("a tool that only one of the two states is taken from there", () => {
  const other = '{ "number": 2, "kind": "drill", "diameter": 0.2 }';
  const { opened, findings } = readSource(source("CUTTER/6\n"), "", head(other));
  expect(opened?.job.tools).toMatchObject([{ number: 1, kind: "end-mill", diameter: 60_000_000 }]);
  expect(findings.map(({ severity, rule }) => [severity, rule])).toEqual([["note", "job/cl-tool"]]);
});

it.each([
  ["another diameter", source("CUTTER/8\n"), head(mill), "job/cl-tool job:3"],
  [
    "another length offset",
    source("").replace("LOADTL/1", "LOADTL/1,OSETNO,7"),
    head(mill),
    "job/cl-tool job:2",
  ],
  ["operations", source(""), head(mill, ' "operations": [],'), "job/unknown-key head:1"],
  ["a wrong kind", source(""), head(mill.replace("end-mill", "end-mil")), "job/value head:3"],
  ["a key that is none", source(""), head(mill.replace("flutes", "fluts")), "job/unknown-key head:3"],
  ["no tools", source(""), '{ "job": "1", "units": "mm", "clearance": 5 }', "job/missing-key head:1"],
  ["no JSON", source(""), "UNITS/MM", "job/type head:1"],
  ["two tools of a number", source(""), head(`${mill},\n${mill}`), "job/unique head:4"],
])("%s is a finding with its place", (_name, text, headText, expected) => {
  expect(errorsOf(text, headText)).toContain(expected);
});

it("a diameter that nobody states is a warning, and no check that needs it passes", async () => {
  const { opened, findings } = readSource(source(""));
  const [tool] = opened?.job.tools ?? [];
  expect(isDiameterKnown(tool.diameter)).toBe(false);
  expect(findings.filter(({ severity }) => severity === "warning").map(({ rule }) => rule)).toEqual([
    "job/cl-tool",
  ]);
  // The router's rack takes tools of a width; what is wider than any is refused.
  const { outcome } = postText({ job: source(""), reading: clReading() }, await ready(quarryRouter));
  const errors = outcome.findings.filter(({ severity }) => severity === "error").map(({ rule }) => rule);
  expect(errors).toContain("limit/tool");
});

it("an inch source, too, has a diameter that is not known", () => {
  const { opened } = readSource(source("").replace("MM", "INCHES").replace("MMPM", "IPM"));
  expect(isDiameterKnown(opened!.job.tools[0].diameter)).toBe(false);
});
