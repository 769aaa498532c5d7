import { existsSync, readFileSync, statSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, test } from "vitest";
import { plateDialect, plateJob, put, run, runJson, temporaryFolder } from "./command.ts";

const folder = temporaryFolder();
const here = { cwd: folder };
const root = { cwd: resolve(import.meta.dirname, "../..") };
const example = "examples/weather-plate";
const routers = ["-d", `${example}/quarry-router.dialect.yaml`];
const plate = ["compare", `${example}/weather-plate.job.json`, ...routers];

test("the text is the golden, which is read by eye, in 80 columns", async () => {
  const { status, stdout, stderr } = run([...plate, "-d", "rs274ngc"], root);
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  await expect(stdout).toMatchFileSnapshot("../compare/goldens/router-and-rs274ngc.txt");
  for (const line of stdout.split("\n")) expect([...line].length).toBeLessThanOrEqual(80);
});

test("the cautions stand behind the comparison, as behind each program that is made", () => {
  const { stdout } = run([...plate, "-d", "rs274ngc"], root);
  const post = run(["post", plateJob, "-d", plateDialect, "-o", "plate.tap"], here);
  const cautions = post.stdout.slice(post.stdout.indexOf("Before it runs")).split("\n").slice(1);
  expect(cautions.length).toBeGreaterThan(8);
  expect(stdout).toContain(cautions.join("\n").trimEnd());
});

interface Summary {
  readonly programs: readonly {
    readonly name: string;
    readonly verdict: string;
    readonly bytes?: number;
    readonly lines?: number;
    readonly findings: readonly { readonly rule: string }[];
  }[];
  readonly pairs: readonly {
    readonly of: readonly number[];
    readonly groups: readonly {
      readonly id: string;
      readonly count: number;
      readonly places: readonly unknown[];
      readonly keys: readonly { readonly key: string; readonly first: unknown; readonly second: unknown }[];
    }[];
  }[];
}

test("the report for programs has each difference with its keys, their values, files and lines", () => {
  const { status, report } = runJson(["compare", plateJob, "-d", plateDialect, "-d", "staged-tools"], here);
  expect([status, report.verdict]).toEqual([0, "proved"]);
  const { programs, pairs } = report.summary["compare"] as Summary;
  expect(programs.map(({ name, verdict }) => [name, verdict])).toEqual([
    ["quarry-router", "proved"],
    ["staged-tools", "proved"],
  ]);
  run(["post", plateJob, "-d", "staged-tools", "-o", "plate.nc"], here);
  expect(programs[1].bytes).toBe(statSync(join(folder, "plate.nc")).size);
  expect(programs[1].lines).toBe(readFileSync(join(folder, "plate.nc"), "utf8").trimEnd().split("\n").length);
  const swap = pairs[0].groups.find(({ id }) => id === "swap/other-steps")!;
  const text = readFileSync(plateDialect, "utf8");
  const line = text.slice(0, text.indexOf("swap: rack")).split("\n").length;
  expect(swap.keys[0]).toMatchObject({
    key: "machine.swap",
    first: { value: "rack", file: plateDialect, line },
  });
  expect(swap.count).toBe(8);
  for (const { places } of pairs[0].groups) expect(places.length).toBeLessThanOrEqual(5);
});

test("the programs are those that the options make, down to the byte", () => {
  const words = [plateJob, "--air-cut", "20", "--optional-stops", "--spindle-holds", "none"];
  const { report } = runJson(["compare", ...words, "-d", "rs274ngc", "-d", "explicit-words"], here);
  for (const { name, bytes } of (report.summary["compare"] as Summary).programs) {
    run(["post", ...words, "-d", name, "-o", "dry.tap"], here);
    expect(bytes).toBe(statSync(join(folder, "dry.tap")).size);
  }
});

test("a stop at which the operator looks at the spindle is called that, and no dwell", () => {
  const job = "examples/rain-gauge-foot/rain-gauge-foot.job.json";
  const { stdout } = run(["compare", job, "-d", "hand-zeroed", "-d", "longhand"], root);
  expect(stdout).toMatch(/standstill: by stop for the +2 places\n +operator in A, by dwell in B\n/);
});

test("a dialect that refuses the job is told with its rules, and the others are compared", () => {
  const words = ["compare", plateJob, "-d", "hand-zeroed", "-d", plateDialect, "-d", "rs274ngc"];
  const { status, report } = runJson(words, here);
  const { programs, pairs } = report.summary["compare"] as Summary;
  expect([status, report.verdict]).toEqual([1, "refused"]);
  expect(programs.map(({ verdict }) => verdict)).toEqual(["refused", "proved", "proved"]);
  expect(programs[0].findings.map(({ rule }) => rule)).toContain("lower/compensation");
  expect(pairs.map(({ of }) => of)).toEqual([[1, 2]]);
  const { status: code, stdout } = run(words, here);
  expect(code).toBe(1);
  expect(stdout).toMatch(/^A +hand-zeroed: refused; \d errors/m);
  expect(stdout).toContain("B quarry-router, and C rs274ngc");
});

test("one that leaves a key undeclared does not make the comparison invalid, unless none is left", () => {
  const words = ["compare", plateJob, "-d", "iso-6983", "-d", "longhand"];
  expect(run([...words, "-d", "rs274ngc"], here).status).toBe(1);
  const none = run(words, here);
  expect(none.status).toBe(2);
  expect(none.stderr).toContain("dialect/undeclared");
});

test.each([
  [["-d", "rs274ngc"], "A comparison needs two dialects or more"],
  [["-d", "rs274ngc", "-d", "rs274ngc"], "The dialect rs274ngc is stated twice"],
  [["-d", plateDialect, "-d", plateDialect.replace("/examples/", "/./examples/")], "are one dialect"],
  [["-d", "rs274ngc", "-d", "longhand", "-o", "plate.tap"], "--output is the name of a page"],
  [[], "--dialect must be given"],
])("a command line %j is not valid", (words, said) => {
  const { status, stderr } = run(["compare", plateJob, ...words], here);
  expect(status).toBe(2);
  expect(stderr.replace(/\s+/g, " ")).toContain(said);
});

test("an unknown dialect, and a job that is none, are not valid", () => {
  const unknown = run(["compare", plateJob, "-d", "rs274ngc", "-d", "longhnd"], here);
  expect(unknown.status).toBe(2);
  expect(unknown.stderr).toContain("longhand");
  put(folder, "bad.json", "{");
  expect(run(["compare", "bad.json", "-d", "rs274ngc", "-d", "longhand"], here).status).toBe(2);
  expect(run(["compare", "nowhere.json", "-d", "rs274ngc", "-d", "longhand"], here).status).toBe(2);
});

test("--quiet says nothing but errors and warnings, and an option of another kind is given once", () => {
  put(folder, "one.dialect.yaml", "dialect: one\nextends: quarry.dialect.yaml\nmodal: { motion: modal }\n");
  put(folder, "quarry.dialect.yaml", readFileSync(plateDialect, "utf8"));
  const { status, stdout, stderr } = run(
    ["compare", plateJob, "-d", "quarry.dialect.yaml", "-d", "one.dialect.yaml", "--quiet"],
    here,
  );
  expect({ status, stdout, stderr }).toEqual({ status: 0, stdout: "", stderr: "" });
  const twice = run(["compare", plateJob, "-d", "a", "-d", "b", "--from", "x", "--from", "y"], here);
  expect(twice.stderr).toContain("--from is given twice");
  expect(run(["why", plateJob, "--line", "1", "-d", "rs274ngc", "-d", "longhand"], here).stderr).toContain(
    "--dialect is given twice",
  );
});

test("nothing is written but the page that is asked for", () => {
  expect(existsSync(join(folder, "weather-plate.tap"))).toBe(false);
});

test("what is odd in the job is told with the first dialect alone, and by each command that goes over its moves", () => {
  const unused = { number: 9, kind: "drill", diameter: 3 };
  const moves = [{ rapid: { x: 1, y: 1 } }, { line: { z: -1 }, feed: 100 }];
  const job = {
    job: "1",
    units: "mm",
    clearance: 5,
    tools: [{ number: 1, kind: "end-mill", diameter: 6 }, unused],
    operations: [{ id: "op10", tool: 1, spindle: { rpm: 9000, direction: "cw" }, moves }],
  };
  const input = put(folder, "odd.json", JSON.stringify(job));
  const told = (...words: string[]): number =>
    runJson([...words], here).report.findings.filter(({ rule }) => rule === "job/unused-tool").length;
  expect(told("compare", input, "-d", "rs274ngc", "-d", "explicit-words")).toBe(1);
  expect(told("post", input, "-d", "rs274ngc", "-o", "odd.ngc")).toBe(1);
  expect(told("prove", "odd.ngc", "--against", input, "-d", "rs274ngc")).toBe(1);
  expect(told("job", input, "-o", "odd.out.json")).toBe(1);
});
