import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { longJob, plateDialect, plateJob, put, run, runJson, temporaryFolder } from "./command.ts";

const folder = temporaryFolder();
const here = { cwd: folder };

const read = (name: string): string => readFileSync(join(folder, name), "utf8");

/** A rapid through the stock, which the guard refuses. */
const dive = longJob(5)
  .replace('{ "rapid": { "z": 2 } },', '{ "rapid": { "z": -1 } }, { "rapid": { "x": 50 } },')
  .replace('"clearance": 15,', '"clearance": 15, "stock": { "min": [-10, -10, -20], "max": [100, 100, 0] },');

test("without a dialect the job's moves go beside the job, in three views", () => {
  put(folder, "piece.job.json", longJob(20));
  const { status, stdout, stderr } = run(["plot", "piece.job.json"], here);
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  expect(stdout).toMatch(/^picture {4}piece\.svg\nof {9}the job alone, not a program\n/);
  expect(stdout).toContain("A picture proves nothing");
  expect(read("piece.svg").startsWith("<svg ")).toBe(true);
});

test("with a dialect it is the program's picture; the ending of the name says in which form", () => {
  const { status, stdout } = run(["plot", plateJob, "-d", plateDialect, "-o", "plate.html"], here);
  expect(status).toBe(0);
  expect(stdout).toMatch(/of {9}the program for quarry-router, proved\n/);
  expect(read("plate.html").startsWith("<!doctype html>")).toBe(true);
});

test("a refused program is drawn, is called unproved, and ends as post does", () => {
  put(folder, "dive.json", dive);
  const posted = run(["post", "dive.json", "-d", "explicit-words", "-o", "dive.tap"], here);
  const { status, stdout } = run(["plot", "dive.json", "-d", "explicit-words", "-o", "dive.svg"], here);
  expect([status, posted.status]).toEqual([1, 1]);
  expect(existsSync(join(folder, "dive.tap"))).toBe(false);
  expect(stdout).toContain("motion/rapid-in-stock");
  expect(stdout).toContain("NOT PROVED: it must not run");
  expect(read("dive.svg")).toContain("NOT PROVED");
});

test("where there is no program the job is drawn, and it is called unproved", () => {
  put(
    folder,
    "tap.json",
    longJob(1)
      .replace(
        /\{ "path"[^]*/,
        '{ "rapid": { "z": 5 } }, { "holes": { "kind": "tap", "at": [[5, 5]], "top": 0, "depth": -6, "retract": 2, "lead": 1 } } ] }] }',
      )
      .replace('"end-mill",', '"tap", "lead": 1,'),
  );
  const { status, stdout } = run(["plot", "tap.json", "-d", "longhand", "-o", "tap.html"], here);
  expect(status).toBe(1);
  expect(stdout).toContain("NOT PROVED: no program for longhand, the job alone");
  expect(read("tap.html")).toContain("NOT PROVED: there is no program");
});

test("an invalid job is not drawn, and nothing is written", () => {
  put(folder, "broken.json", longJob(5).replace('"z": 2', '"q": 2'));
  const { status, stderr } = run(["plot", "broken.json", "-o", "broken.svg"], here);
  expect(status).toBe(2);
  expect(stderr).toContain("no picture was written.");
  expect(existsSync(join(folder, "broken.svg"))).toBe(false);
});

test("standard input gives a drawing on standard output", () => {
  const { status, stdout, stderr } = run(["plot", "-"], { ...here, input: longJob(3) });
  expect(status).toBe(0);
  expect(stdout.startsWith("<svg ")).toBe(true);
  expect(stdout.trimEnd().endsWith("</svg>")).toBe(true);
  expect(stderr).toContain("picture    standard output");
});

test("the report has counts and extents, in micrometres", () => {
  const { status, report } = runJson(["plot", "piece.job.json", "-o", "again.svg"], here);
  expect(status).toBe(0);
  expect(report.verdict).toBe("read");
  expect(report.summary["plot"]).toMatchObject({
    shows: "job",
    counts: { lines: 21, arcs: 0, holes: 0, rapids: 1, leftOut: 1 },
    cut: { max: [19_500, 77_250, 2000] },
  });
});

test("a picture replaces no input, and has the ending of one", () => {
  put(folder, "own.svg", longJob(3));
  const own = run(["plot", "own.svg", "-o", "own.svg"], here);
  expect(own.status).toBe(2);
  expect(own.stderr).toContain("program/overwrites-input");
  const ending = run(["plot", "piece.job.json", "-o", "piece.png"], here);
  expect(ending.status).toBe(2);
  expect(ending.stderr).toContain(".svg or .html");
});

test.each([
  ["--spindle-holds", "1"],
  ["--setup", "set-up.json"],
  ["--rack", "now.json"],
  ["--air-cut", "50"],
  ["--optional-stops"],
])("without a dialect %s, which is about a program, is refused", (...option) => {
  const { status, stderr } = run(["plot", plateJob, ...option, "-o", "ignored.svg"], here);
  expect(status).toBe(2);
  expect(stderr).toContain(`${option[0]} is about a program: state --dialect, too.`);
  expect(existsSync(join(folder, "ignored.svg"))).toBe(false);
});

test("the picture of a dry run is that of its program, higher by the air cut", () => {
  const lowest = (...option: string[]): number => {
    const words = ["plot", plateJob, "-d", "rs274ngc", ...option, "-o", "dry.svg"];
    const { report } = runJson(words, here);
    return (report.summary["plot"] as { cut: { min: number[] } }).cut.min[2];
  };
  expect(lowest("--air-cut", "20") - lowest()).toBe(20_000);
});

test("cutter location source and chosen operations are drawn, too", () => {
  put(
    folder,
    "ring.cls",
    "UNITS/MM\nLOADTL/1\nSPINDL/12000,CLW\nRAPID\nGOTO/0,0,10\nFEDRAT/300,MMPM\nGOTO/0,0,-1\nGOTO/40,0,-1\nRAPID\nGOTO/40,0,10\nFINI\n",
  );
  const cl = run(["plot", "ring.cls", "--cl", "clearance=15"], here);
  expect(cl.stderr + cl.stdout).toContain("ring.svg");
  const only = runJson(["plot", plateJob, "--only", "op30", "-o", "only.svg"], here);
  expect(only.report.summary["tools"]).toEqual([3]);
  expect(run(["plot", plateJob, "--only", "op31", "-o", "none.svg"], here).status).toBe(2);
});
