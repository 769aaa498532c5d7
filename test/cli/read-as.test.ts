import { copyFileSync, existsSync, readFileSync, symlinkSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, test } from "vitest";
import { put, run, runJson, temporaryFolder } from "./command.ts";

const folder = temporaryFolder();
const programs = resolve(import.meta.dirname, "../retrace/programs");
for (const name of ["modal-everything.ngc", "machine-moves-between.ngc"])
  copyFileSync(join(programs, name), join(folder, name));
const read = (name: string): string => readFileSync(join(folder, name), "utf8");
const here = { cwd: folder };
const readAs = ["--read-as", "rs274ngc"];

test("a program is posted under another dialect, beside itself, and proved against itself", () => {
  const { status, report } = runJson(
    ["post", "modal-everything.ngc", ...readAs, "-d", "explicit-words"],
    here,
  );
  expect({ status, verdict: report.verdict }).toEqual({ status: 0, verdict: "proved" });
  expect(read("modal-everything.tap")).toContain("G01 X40.000");
  const against = [
    "prove",
    "modal-everything.tap",
    "-d",
    "explicit-words",
    "--against",
    "modal-everything.ngc",
  ];
  expect(runJson([...against, ...readAs], here).report.verdict).toBe("proved");
});

test("it does not replace the program that it is made from", () => {
  const { status, report } = runJson(["post", "modal-everything.ngc", ...readAs, "-d", "rs274ngc"], here);
  expect({
    status,
    rules: report.findings.filter(({ severity }) => severity === "error").map(({ rule }) => rule),
  }).toEqual({
    status: 2,
    rules: ["program/overwrites-input"],
  });
});

test("no product replaces a file that was read: the dialect of --read-as, the head file, the rack", () => {
  copyFileSync(
    resolve(import.meta.dirname, "../../dialects/rs274ngc.dialect.yaml"),
    join(folder, "own.dialect.yaml"),
  );
  put(
    folder,
    "own-head.json",
    '{ "job": "1", "units": "mm", "clearance": 20, "tools": [{ "number": 1, "kind": "end-mill", "diameter": 6 }] }',
  );
  put(folder, "rack.json", "[1]");
  const input = ["modal-everything.ngc", "--read-as", "own.dialect.yaml", "--head", "own-head.json"];
  const rack = ["--rack", "rack.json", "-d", "rs274ngc"];
  const commands: readonly (readonly [ending: string, ...words: string[]])[] = [
    ["tap", "post", ...input, ...rack],
    ["html", "sheet", ...input, ...rack],
    ["svg", "plot", ...input, ...rack],
    ["html", "compare", ...input, ...rack, "-d", "explicit-words"],
    ["svg", "plot", ...input],
    ["json", "job", ...input],
  ];
  for (const file of ["own.dialect.yaml", "own-head.json", "rack.json"]) {
    const before = read(file);
    for (const [ending, ...words] of commands) {
      if (file === "rack.json" && !words.includes(file)) continue;
      const link = `${file}.${ending}`;
      if (!existsSync(join(folder, link))) symlinkSync(file, join(folder, link));
      const { status, report } = runJson([...words, "-o", link], here);
      const rules = report.findings.map(({ rule }) => rule);
      expect({ file, words, status, rules }).toEqual({
        file,
        words,
        status: 2,
        rules: ["program/overwrites-input"],
      });
    }
    expect(read(file)).toBe(before);
  }
});

test("job writes it as a job, which gives the same program; --only and --from choose among its operations", () => {
  // Its ways at the height of the machine are ways at clearance in a job, and it does not say how high that is.
  const head = put(
    folder,
    "head.json",
    '{ "job": "1", "units": "mm", "clearance": 20, "tools": [{ "number": 1, "kind": "end-mill", "diameter": 6 }] }',
  );
  const input = ["machine-moves-between.ngc", ...readAs, "--head", head];
  const { status, stdout } = run(["job", ...input, "-o", "moves.job.json"], here);
  expect(status).toBe(0);
  expect(stdout).toContain("2 operations, tool 1, in mm");
  for (const choice of [[], ["--only", "op20"], ["--from", "op20"], ["--only", "op10"]]) {
    const program = (words: readonly string[]): string =>
      run(["post", ...words, "-d", "explicit-words", ...choice, "-o", "-", "--quiet"], here).stdout;
    expect(program(["moves.job.json"])).toContain("M30");
    expect(program(input)).toBe(program(["moves.job.json"]));
  }
});

test("why leads a block back to the line of the program", () => {
  const { stdout } = run(
    ["why", "modal-everything.ngc", ...readAs, "-d", "explicit-words", "--key", "units.mm"],
    here,
  );
  expect(stdout).toContain("units.mm");
  const lines = run(
    ["post", "modal-everything.ngc", ...readAs, "-d", "explicit-words", "-o", "-", "--quiet"],
    here,
  ).stdout.split("\n");
  const line = lines.findIndex((text) => text.includes("Y30.000")) + 1;
  const asked = run(
    ["why", "modal-everything.ngc", ...readAs, "-d", "explicit-words", "--line", String(line)],
    here,
  );
  expect(asked.stdout).toContain("modal-everything.ngc:14:1");
});

test("compare takes it, too", () => {
  const { status, stdout } = run(
    ["compare", "modal-everything.ngc", ...readAs, "-d", "rs274ngc", "-d", "explicit-words"],
    here,
  );
  expect(status).toBe(0);
  expect(stdout).toContain("explicit-words");
});

test("a head file gives what a program does not say; findings name the line of the program", () => {
  put(
    folder,
    "shop.json",
    '{ "job": "1", "units": "mm", "clearance": 30, "tools": [ { "number": 1, "kind": "end-mill", "diameter": 8 } ] }',
  );
  const { status, stdout } = run(
    ["job", "machine-moves-between.ngc", ...readAs, "--head", "shop.json"],
    here,
  );
  expect(status).toBe(0);
  expect(stdout).toContain('"clearance": 30');
  expect(stdout).toContain('"diameter": 8');
  put(folder, "bad.ngc", read("modal-everything.ngc").replace("Y30\n", "M77\nY30\n"));
  const refused = runJson(["post", "bad.ngc", ...readAs, "-d", "explicit-words"], here);
  expect(refused.status).toBe(1);
  expect(refused.report.findings.find(({ severity }) => severity === "error")).toMatchObject({
    rule: "read/unknown-code",
    file: "bad.ngc",
    line: 14,
  });
  expect(() => read("bad.tap")).toThrow();
});

test("a dialect of one's own is read by its file, and a fault in it is told", () => {
  put(folder, "mine.dialect.yaml", "dialect: mine\ntitle: Mine\nextends: rs274ngc\nstops: { end: M30 }\n");
  put(folder, "mine.ngc", read("modal-everything.ngc").replace("\nM2\n", "\nM30\n"));
  expect(run(["job", "mine.ngc", "--read-as", "mine.dialect.yaml", "-o", "mine.json"], here).status).toBe(0);
  put(
    folder,
    "broken.dialect.yaml",
    "dialect: broken\ntitle: Broken\nextends: rs274ngc\nstops: { ending: M30 }\n",
  );
  const refused = runJson(["post", "mine.ngc", "--read-as", "broken.dialect.yaml", "-d", "rs274ngc"], here);
  expect(refused.status).toBe(2);
  expect(refused.report.findings[0]).toMatchObject({ file: "broken.dialect.yaml", line: 4 });
});

test("standard input is a program under --read-as", () => {
  const { status, stdout } = run(["job", "-", ...readAs], { ...here, input: read("modal-everything.ngc") });
  expect({ status, stdout }).toEqual({
    status: 0,
    stdout: run(["job", "modal-everything.ngc", ...readAs], here).stdout,
  });
});
