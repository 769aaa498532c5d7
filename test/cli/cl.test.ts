import { copyFileSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, test } from "vitest";
import { put, run, runJson, temporaryFolder } from "./command.ts";

const folder = temporaryFolder();
const sources = resolve(import.meta.dirname, "../cl/sources");
for (const name of ["plate-profile.apt", "bore-d16.cls", "arcs-three-planes.cls"])
  copyFileSync(join(sources, name), join(folder, name));
const read = (name: string): string => readFileSync(join(folder, name), "utf8");
const here = { cwd: folder };

test("a source is posted by its ending, beside itself, and proved against itself", () => {
  const { status, report } = runJson(["post", "plate-profile.apt", "-d", "rs274ngc"], here);
  expect({ status, verdict: report.verdict }).toEqual({ status: 0, verdict: "proved" });
  expect(read("plate-profile.ngc")).toContain("G2 X0 Y50 I10 J0");
  const against = ["prove", "plate-profile.ngc", "-d", "rs274ngc", "--against", "plate-profile.apt"];
  expect(runJson(against, here).report.verdict).toBe("proved");
  // Read otherwise, the source is another job, and the proof says so.
  const otherwise = runJson([...against, "--cl", "circle=left-handed"], here);
  expect({ status: otherwise.status, verdict: otherwise.report.verdict }).toEqual({
    status: 1,
    verdict: "failed",
  });
});

test("notes name the file, the line and the way out", () => {
  const { report } = runJson(["post", "bore-d16.cls", "-d", "rs274ngc"], here);
  const note = report.findings.find(({ rule }) => rule === "job/cl-feed");
  expect(note).toMatchObject({ severity: "note", file: "bore-d16.cls", line: 9, column: 8 });
  expect(note?.fix).toContain("--cl feed=per-revolution");
});

test("why leads a block back to the line of the source", () => {
  const { stdout } = run(["why", "plate-profile.apt", "-d", "rs274ngc", "--line", "28"], here);
  expect(stdout).toMatch(/from +op10/);
  expect(stdout).toContain("plate-profile.apt:19:1");
});

test("job writes the source as a job, which gives the same program", () => {
  const { status, stdout } = run(["job", "bore-d16.cls", "--output", "bore.job.json"], here);
  expect(status).toBe(0);
  expect(stdout).toContain("1 operation, tool 1, in mm");
  const printed = run(["job", "bore-d16.cls"], here);
  expect(printed.stdout).toBe(read("bore.job.json"));
  expect(printed.stderr).toContain("job/cl-clearance");
  const program = (input: string): string =>
    run(["post", input, "-d", "rs274ngc", "-o", "-", "--quiet"], here).stdout;
  expect(program("bore.job.json")).toBe(program("bore-d16.cls"));
  expect(program("bore.job.json")).toContain("G3 X20 Y25 Z0 I-5 J0 F400");
});

test("choices may be repeated and joined by commas; a refusal names the one that is wanted", () => {
  const refused = runJson(["job", "arcs-three-planes.cls", "-o", "arcs.json"], here);
  expect(refused.status).toBe(2);
  expect(refused.report.findings.find(({ severity }) => severity === "error")).toMatchObject({
    rule: "job/cl-circle",
    file: "arcs-three-planes.cls",
    line: 17,
  });
  expect(() => read("arcs.json")).toThrow();
  const choices = ["--cl", "full-circle=turn,unknown=warn", "--cl", "rapid=modal"];
  const { status } = run(["job", "arcs-three-planes.cls", ...choices, "-o", "arcs.json"], here);
  expect(status).toBe(0);
  expect(read("arcs.json")).toContain('"turn": "ccw"');
});

test("standard input needs a word on its form, and any name may have one", () => {
  const input = read("plate-profile.apt");
  const given = run(["job", "-", "--input-form", "cl"], { ...here, input });
  expect({ status: given.status, stdout: given.stdout }).toEqual({
    status: 0,
    stdout: run(["job", "plate-profile.apt"], here).stdout,
  });
  const { status, stderr } = run(["job", "-"], { ...here, input });
  expect(status).toBe(2);
  expect(stderr).toContain("job/usage");
  put(folder, "profile.txt", input);
  expect(run(["job", "profile.txt", "--input-form", "cl"], here).status).toBe(0);
});

test("a head file gives what the source lacks, and its faults have its name", () => {
  const head =
    '{ "job": "1", "units": "mm", "clearance": 18,\n "tools": [{ "number": 1, "kind": "end-mill", "diameter": 6 }] }';
  put(folder, "head.json", head);
  const { status, stdout, stderr } = run(["job", "bore-d16.cls", "--head", "head.json"], here);
  expect(status).toBe(0);
  expect(stdout).toContain('"clearance": 18');
  expect(stderr).not.toContain("job/cl-tool");
  put(folder, "bad-head.json", head.replace("6 }", "7 }"));
  const differs = runJson(["job", "bore-d16.cls", "--head", "bad-head.json", "-o", "x.json"], here);
  expect(differs.report.findings).toContainEqual(
    expect.objectContaining({ rule: "job/cl-tool", severity: "error", file: "bore-d16.cls", line: 4 }),
  );
  put(folder, "worse-head.json", head.replace("end-mill", "mill"));
  const { report } = runJson(["job", "bore-d16.cls", "--head", "worse-head.json", "-o", "x.json"], here);
  expect(report.findings[0]).toMatchObject({ rule: "job/value", file: "worse-head.json", line: 2 });
  const none = runJson(["job", "bore-d16.cls", "--head", "none.json", "-o", "x.json"], here);
  expect(none.report.findings[0]).toMatchObject({ rule: "job/not-found", file: "none.json" });
  expect(run(["job", "bore-d16.cls", "--head", "head.json", "-o", "head.json"], here).status).toBe(2);
  expect(read("head.json")).toBe(head);
});

test("a job is not written over its own source", () => {
  writeFileSync(join(folder, "own.json"), read("bore.job.json"));
  const { status, report } = runJson(["job", "own.json", "-o", "own.json"], here);
  expect(status).toBe(2);
  expect(report.findings.map(({ rule }) => rule)).toEqual(["program/overwrites-input"]);
});
