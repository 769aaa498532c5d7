import { createHash } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { expect, test } from "vitest";
import type { SetupSheet } from "#report";
import { longJob, plateDialect, plateJob, put, run, runJson, temporaryFolder } from "./command.ts";

const folder = temporaryFolder();
const here = { cwd: folder };
const sha256 = (file: string): string => createHash("sha256").update(readFileSync(file)).digest("hex");

/** The facts in a report. */
function factsOf(summary: Readonly<Record<string, unknown>>): SetupSheet {
  return summary["sheet"] as SetupSheet;
}

test("the sheet goes with the file that post writes, and names every file by its hash", () => {
  put(folder, "plate.json", readFileSync(plateJob, "utf8"));
  put(folder, "set-up.json", '{ "lengths": { "3": 61.5 } }');
  const words = ["plate.json", "-d", plateDialect, "--setup", "set-up.json", "--only", "op10,op30"];
  const { status, report } = runJson(["sheet", ...words], here);
  expect({ status, verdict: report.verdict }).toEqual({ status: 0, verdict: "proved" });
  expect(existsSync(join(folder, "plate.tap"))).toBe(false);
  expect(run(["post", ...words], here).status).toBe(0);
  const sheet = factsOf(report.summary);
  const program = join(folder, "plate.tap");
  expect(sheet.program).toMatchObject({ file: "plate.tap", sha256: sha256(program) });
  expect(sheet.program?.bytes).toBe(readFileSync(program).length);
  expect(sheet.job).toEqual({ file: "plate.json", sha256: sha256(join(folder, "plate.json")) });
  expect(sheet.setup).toEqual({ file: "set-up.json", sha256: sha256(join(folder, "set-up.json")) });
  expect(sheet.options).toEqual(["--only op10,op30", "--setup set-up.json"]);
  const shipped = (name: string): string =>
    join(plateDialect, "../../..", "dialects", `${name}.dialect.yaml`);
  expect(sheet.dialect.files).toEqual(
    [plateDialect, shipped("explicit-words"), shipped("iso-6983")].map((file) => ({
      file: basename(file),
      sha256: sha256(file),
    })),
  );
  const page = readFileSync(join(folder, "plate.sheet.html"), "utf8").replace(/<[^>]+>/g, "");
  for (const { sha256: hash } of [sheet.program!, sheet.job, sheet.setup!, ...sheet.dialect.files])
    expect(page).toContain(hash);
  expect(page).toContain("sha256sum plate.tap");
});

test("the sheet of a dry run is that of its own file, states every option, and asks for no second air cut", () => {
  put(folder, "dry.json", readFileSync(plateJob, "utf8"));
  put(folder, "now.json", "[6, 5, 4, 3, 0, 1]");
  const deep = readFileSync(plateDialect, "utf8")
    .replace("z: [-95, 0]", "z: [-135, 0]")
    .replace("1: [300, 200, -80]", "1: [300, 200, -120]");
  put(folder, "deep.dialect.yaml", deep);
  const options = ["--spindle-holds", "2", "--rack", "now.json", "--air-cut", "20", "--air-feed", "500"];
  const words = [
    "dry.json",
    "-d",
    "deep.dialect.yaml",
    ...options,
    "--optional-stops",
    "--input-form",
    "json",
  ];
  const { status, report } = runJson(["sheet", ...words], here);
  expect({ status, verdict: report.verdict }).toEqual({ status: 0, verdict: "proved" });
  expect(run(["post", ...words], here).status).toBe(0);
  const sheet = factsOf(report.summary);
  const file = "dry.air-cut.tap";
  expect(sheet.program).toMatchObject({ file, sha256: sha256(join(folder, file)) });
  const typed = sheet.options.flatMap((option) => option.split(" "));
  expect(typed).toEqual([...options, "--optional-stops", "--input-form", "json"]);
  expect(sheet.plan).not.toHaveProperty("airCut");
  const steps = sheet.plan?.proveOut.map(({ text }) => text).join("\n");
  expect(steps).toContain("This program is the air cut: the work offsets stay as they are.");
  expect(steps).not.toMatch(/Raise the work offsets|First part/);
  const page = ["sheet", "-", "-d", "rs274ngc", "--air-cut", "20", "-o", "piped.html"];
  const piped = runJson(page, { ...here, input: readFileSync(plateJob) });
  expect(factsOf(piped.report.summary).program?.file).toBe("program.air-cut.ngc");
});

test("the page tells what was found in the order of the terminal, the worst first", () => {
  expect(run(["sheet", plateJob, "-d", "rs274ngc", "-o", "order.html"], here).status).toBe(0);
  const page = readFileSync(join(folder, "order.html"), "utf8");
  const told = [...page.matchAll(/class="severity (\w+)"/g)].map(([, severity]) => severity);
  expect(new Set(told)).toEqual(new Set(["warning", "note"]));
  expect(told).toEqual(told.toSorted().reverse());
});

test("a job that is refused has a sheet that says so, no hash of a program, and the exit code of post", () => {
  put(folder, "long.json", longJob(4));
  const low = longJob(4).replace(
    '{ "rapid": { "z": 2 } }',
    '{ "rapid": { "z": 2 } }, { "holes": { "kind": "tap", "at": [[0, 0]], "top": 0, "depth": -5, "retract": 2, "lead": 1 } }',
  );
  put(folder, "tapped.json", low);
  for (const job of ["tapped.json", "broken.json"]) {
    put(folder, "broken.json", '{ "job": "1", "name": "broken" ');
    const posted = runJson(["post", job, "-d", plateDialect], here);
    const { status, report } = runJson(["sheet", job, "-d", plateDialect, "-o", "no.html"], here);
    expect(status).toBe(posted.status);
    expect(status).not.toBe(0);
    expect(report.verdict).toBe("refused");
    expect(report.findings).toEqual(posted.report.findings);
    expect(factsOf(report.summary)).not.toHaveProperty("program");
    const page = readFileSync(join(folder, "no.html"), "utf8");
    expect(page).toContain("Not proved");
    for (const { rule } of report.findings) expect(page).toContain(rule);
    expect(page.indexOf("What was found")).toBeLessThan(page.indexOf("This sheet goes with"));
    expect(page).not.toContain("sha256sum");
    expect(page).not.toContain("Proving out");
  }
  const { stderr } = run(["sheet", "tapped.json", "-d", plateDialect, "-o", "no.html"], here);
  expect(stderr).toContain("no.html was written, and says NOT PROVED");
});

test("where nothing can be said no sheet is written", () => {
  expect(run(["sheet", "nowhere.json", "-d", plateDialect, "-o", "none.html"], here).status).toBe(2);
  expect(run(["sheet", "long.json", "-d", "nowhere.dialect.yaml", "-o", "none.html"], here).status).toBe(2);
  expect(existsSync(join(folder, "none.html"))).toBe(false);
});

test("the page goes to standard output, and the report elsewhere", () => {
  const { status, stdout, stderr } = run(["sheet", "long.json", "-d", "rs274ngc", "-o", "-"], here);
  expect(status).toBe(0);
  expect(stdout).toMatch(/^<!doctype html>/);
  expect(stderr).toContain("Prove it out");
  const piped = run(["sheet", "-", "-d", "rs274ngc"], { ...here, input: longJob(4) });
  expect(piped.status).toBe(0);
  expect(piped.stdout).toContain("sha256sum program.ngc");
});

test("a sheet replaces none of its inputs, and is a page by its name", () => {
  put(folder, "job.html", longJob(4));
  const { status, stderr } = run(["sheet", "job.html", "-d", "rs274ngc", "-o", "job.html"], here);
  expect(status).toBe(2);
  expect(stderr).toContain("program/overwrites-input");
  expect(readFileSync(join(folder, "job.html"), "utf8")).toBe(longJob(4));
  const named = run(["sheet", "long.json", "-d", "rs274ngc", "-o", "plate.pdf"], here);
  expect(named.status).toBe(2);
  expect(named.stderr).toContain("--output is the name of a page, such as plate.html, and not plate.pdf.");
});

test("the same sheet twice is the same bytes, wherever it is made", () => {
  const make = (cwd: string): string => {
    expect(run(["sheet", plateJob, "-d", plateDialect, "-o", "twice.html"], { cwd }).status).toBe(0);
    return readFileSync(join(cwd, "twice.html"), "utf8");
  };
  const first = make(folder);
  expect(make(folder)).toBe(first);
  expect(make(temporaryFolder())).toBe(first);
  expect(first).not.toMatch(/20\d\d-\d\d-\d\d/);
});

test("with --simulate each operation says what it takes away, as post reports it", () => {
  const words = [plateJob, "-d", plateDialect, "--simulate", "--resolution", "1"];
  const { status, report } = runJson(["sheet", ...words, "-o", "cut.html"], here);
  const posted = runJson(["post", ...words, "-o", "cut.tap"], here).report;
  expect({ status, verdict: report.verdict }).toEqual({ status: 0, verdict: "proved" });
  expect(report.findings).toEqual(posted.findings);
  const { operations } = posted.summary["simulation"] as { operations: { id: string; removed: number }[] };
  const wanted = operations.map(({ id, removed }) => [id, Number((removed / 1000).toFixed(2))]);
  expect(wanted).toHaveLength(13);
  expect(factsOf(report.summary).plan?.operations.map(({ id, removed }) => [id, removed])).toEqual(wanted);
  expect(readFileSync(join(folder, "cut.html"), "utf8")).toContain("Takes away, cm\u00b3");
  expect(readFileSync(join(folder, "twice.html"), "utf8")).not.toContain("Takes away");
  expect(run(["sheet", plateJob, "-d", plateDialect, "--resolution", "1"], here).status).toBe(2);
});

test("a rack that is loaded anew has its stops on the sheet, each with what goes where", () => {
  const dialect = readFileSync(plateDialect, "utf8").replace("count: 6", "count: 3");
  put(folder, "three.dialect.yaml", dialect);
  const { report } = runJson(["sheet", plateJob, "-d", "three.dialect.yaml", "-o", "three.html"], here);
  expect(report.verdict).toBe("proved");
  const reloads = factsOf(report.summary).plan?.stops.filter(({ kind }) => kind === "reload") ?? [];
  expect(reloads.length).toBeGreaterThan(0);
  const page = readFileSync(join(folder, "three.html"), "utf8");
  for (const { text, operation } of reloads) {
    expect(text).toMatch(/^Load the rack: .*POCKET \d TOOL \d OUT, TOOL \d IN/);
    expect(operation).toMatch(/^op\d+$/);
    expect(page).toContain(text);
  }
});

test("a program that is read as a job, and cutter location source, have sheets as well", () => {
  expect(run(["post", plateJob, "-d", plateDialect, "-o", "old.tap"], here).status).toBe(0);
  const { status, report } = runJson(["sheet", "old.tap", "--read-as", plateDialect, "-d", "rs274ngc"], here);
  expect({ status, verdict: report.verdict }).toEqual({ status: 0, verdict: "proved" });
  const { plan, readAs } = factsOf(report.summary);
  expect(readAs?.[0]).toEqual({ file: basename(plateDialect), sha256: sha256(plateDialect) });
  const own = factsOf(
    runJson(["sheet", plateJob, "-d", "rs274ngc", "-o", "own.html"], here).report.summary,
  ).plan;
  expect(plan?.workOffsets[0].extents).toEqual(own?.workOffsets[0].extents);
  expect(plan?.tools.map(({ reach }) => reach[0].cutting.z)).toEqual(
    own?.tools.map(({ reach }) => reach[0].cutting.z),
  );
});
