import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { put, run, runJson, temporaryFolder } from "./command.ts";

const folder = temporaryFolder();
const dialect = "dialect: mill\nextends: rs274ngc\n";
const good = "cases:\n  - name: rapid\n    given: [rapid x10 y5]\n    expect: [G0 X10 Y5]\n";
const bad = `# mine
cases:
  - name: rapid
    given: [rapid x10 y5] # from the front
    expect:
      - G00 X10 Y5 # as the old one had it
`;

test("cases in the file and beside it are run", () => {
  put(folder, "mill.dialect.yaml", `${dialect}${good}`);
  put(folder, "mill.cases.yaml", good.replace("name: rapid", "name: beside"));
  const { status, stdout, stderr } = run(["dialect", "test", "mill.dialect.yaml"], { cwd: folder });
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  expect(stdout).toContain("2 of 2 cases pass");
  // They are the file's own: one that extends it has none of them.
  put(folder, "child.dialect.yaml", "dialect: child\nextends: mill.dialect.yaml\n");
  const child = runJson(["dialect", "test", "child.dialect.yaml"], { cwd: folder });
  expect([child.status, child.report.findings[0].rule]).toEqual([2, "dialect/case"]);
  const shown = run(["dialect", "show", "mill.dialect.yaml"], { cwd: folder });
  expect([shown.status, shown.stdout.includes("cases:")]).toEqual([0, false]);
});

test("a case that fails shows what differs in text, and ends with 1", () => {
  put(folder, "f.dialect.yaml", dialect.replace("mill", "f"));
  put(folder, "f.cases.yaml", bad);
  const { status, stdout } = run(["dialect", "test", "f.dialect.yaml", "--no-color"], { cwd: folder });
  expect(status).toBe(1);
  expect(stdout).toMatch(/^error +block\/case\n/);
  expect(stdout).toContain("f.cases.yaml:5:5");
  const lines = stdout.split("\n");
  expect(lines).toContain("failed   rapid");
  expect(lines).toContain("         - [-G00-] X10 Y5");
  expect(lines).toContain("         + {+G0+} X10 Y5");
  expect(stdout).toContain("0 of 1 cases pass");
  for (const line of lines) expect([...line].length).toBeLessThanOrEqual(80);
  const { report, status: code } = runJson(["dialect", "test", "f.dialect.yaml"], { cwd: folder });
  expect([code, report.findings[0]]).toMatchObject([
    1,
    { rule: "block/case", file: "f.cases.yaml", line: 5, column: 5 },
  ]);
  expect(report.summary["cases"]).toEqual([
    {
      name: "rapid",
      passed: false,
      written: ["G0 X10 Y5"],
      difference: [
        {
          expected: "G00 X10 Y5",
          written: "G0 X10 Y5",
          pieces: [
            { side: "expected", text: "G00" },
            { side: "written", text: "G0" },
            { side: "both", text: " X10 Y5" },
          ],
        },
      ],
    },
  ]);
});

test("--update shows it, and takes it over with comments and layout as they were", () => {
  put(folder, "u.dialect.yaml", dialect.replace("mill", "u"));
  const file = put(folder, "u.cases.yaml", bad);
  const { status, stdout } = run(["dialect", "test", "u.dialect.yaml", "--update"], { cwd: folder });
  expect(status).toBe(0);
  expect(stdout).toContain("+ {+G0+} X10 Y5");
  expect(stdout.replace(/\n +/g, " ")).toContain("rewritten with what is written now: u.cases.yaml");
  expect(readFileSync(file, "utf8")).toBe(bad.replace("- G00 X10 Y5", "- G0 X10 Y5"));
  expect(run(["dialect", "test", "u.dialect.yaml"], { cwd: folder }).status).toBe(0);
  // In the dialect file itself, whose other keys stay.
  const own = put(
    folder,
    "o.dialect.yaml",
    `dialect: o\nextends: rs274ngc # base\n${bad}modal: { motion: each-block }\n`,
  );
  expect(run(["dialect", "test", "o.dialect.yaml", "--update"], { cwd: folder }).status).toBe(0);
  expect(readFileSync(own, "utf8")).toBe(
    `dialect: o\nextends: rs274ngc # base\n${bad.replace("- G00 X10 Y5", "- G0 X10 Y5")}modal: { motion: each-block }\n`,
  );
});

test("a case whose blocks mean something else is not taken over", () => {
  put(folder, "m.dialect.yaml", "dialect: m\nextends: longhand\n");
  const text = "cases: [{ given: [rapid x10 y5], expect: [G00] }]\n";
  const file = put(folder, "m.cases.yaml", text);
  const { status, report } = runJson(["dialect", "test", "m.dialect.yaml", "--update"], { cwd: folder });
  expect(status).toBe(1);
  expect(report.findings.map(({ rule }) => rule)).toContain("proof/case");
  expect(readFileSync(file, "utf8")).toBe(text);
});

test("cases that are not valid end with 2, at their place", () => {
  put(folder, "i.dialect.yaml", dialect.replace("mill", "i"));
  const file = put(folder, "i.cases.yaml", "cases:\n  - given: [rapid x10, rapd x5]\n    expect: [G0 X10]\n");
  for (const more of [[], ["--update"]]) {
    const { status, report } = runJson(["dialect", "test", "i.dialect.yaml", ...more], { cwd: folder });
    expect(status).toBe(2);
    expect(report.findings).toMatchObject([
      { rule: "dialect/case", file: "i.cases.yaml", line: 2, column: 24 },
    ]);
  }
  expect(readFileSync(file, "utf8")).toContain("rapd");
  put(folder, "i.cases.yaml", "case:\n  - given: [rapid x10]\n");
  expect(
    runJson(["dialect", "test", "i.dialect.yaml"], { cwd: folder }).report.findings[0].message,
  ).toContain("one key, `cases`");
});

test("the cases of a shipped dialect run by its name, and are not rewritten", () => {
  expect(run(["dialect", "test", "rs274ngc"], { cwd: folder }).status).toBe(0);
  const { status, report } = runJson(["dialect", "test", "rs274ngc", "--update"], { cwd: folder });
  expect([status, report.findings[0].rule]).toEqual([2, "job/usage"]);
});
