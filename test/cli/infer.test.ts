import { existsSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, test } from "vitest";
import { put, run, runJson, temporaryFolder } from "./command.ts";

const folder = temporaryFolder();
const golden = resolve(import.meta.dirname, "../goldens/sensor-bracket-inch.rs274ngc.program.txt");
put(folder, "bracket.ngc", readFileSync(golden, "utf8"));

test("without a file the dialect goes to standard output, and what it rests on to standard error", () => {
  const { status, stdout, stderr } = run(["dialect", "infer", "bracket.ngc"], { cwd: folder });
  expect(status).toBe(0);
  expect(stdout).toMatch(/^# yaml-language-server: \$schema=/);
  expect(stdout).toContain("\nextends: rs274ngc\nunanswered:");
  expect(stderr).toContain("identical 163 of 163 blocks");
  expect(stderr).toContain("next is");
});

test("the questions that can hurt somebody stand first in the file, and are those of the unanswered keys", () => {
  const { stdout } = run(["dialect", "infer", "bracket.ngc"], { cwd: folder });
  const marks = [...stdout.matchAll(/^# ([!-]) /gm)].map(([, mark]) => mark);
  expect(marks.join("")).toMatch(/^!+-+$/);
  const keys = /^unanswered: \[ (.*) \]/m.exec(stdout)?.[1].split(", ") ?? [];
  expect(keys.length).toBeGreaterThan(4);
  const asked = stdout.split("\n").filter((line) => line.startsWith("# ! "));
  for (const key of keys) expect(asked.join("\n")).toContain(` ${key}: `);
});

test("a code without a known meaning is unanswered: it could be a drawbar's", () => {
  put(folder, "drawbar.ngc", readFileSync(golden, "utf8").replace(/^M2$/m, "M71\nM2"));
  const { stdout, stderr } = run(["dialect", "infer", "drawbar.ngc"], { cwd: folder });
  expect(stderr).toContain("dialect/unknown-code");
  expect(/^unanswered: \[ (.*) \]/m.exec(stdout)?.[1].split(", ")).toContain("codes.M71");
  put(folder, "drawbar.dialect.yaml", stdout);
  const { report } = runJson(["dialect", "check", "drawbar.dialect.yaml"], { cwd: folder });
  const said = report.findings
    .filter(({ rule }) => rule === "dialect/unanswered")
    .map(({ message }) => message);
  expect(said.join("\n")).toContain("codes.M71");
});

test("a program may come by standard input, alone or beside a file", () => {
  const input = readFileSync(golden, "utf8");
  for (const words of [["-"], ["-", "bracket.ngc"], ["bracket.ngc", "-", "-o", "-"]]) {
    const { status, stdout, stderr } = run(["dialect", "infer", ...words], { cwd: folder, input });
    expect([status, stdout.includes("extends: rs274ngc")]).toEqual([0, true]);
    expect(stderr).toContain("standard input: identical 163 of 163 blocks");
    expect(stderr.includes("bracket.ngc: identical 163 of 163 blocks")).toBe(words.includes("bracket.ngc"));
  }
  expect(run(["dialect", "infer", "--quiet"], { cwd: folder }).status).toBe(2);
});

test("a file is written, is sound, and is not replaced", () => {
  const words = ["dialect", "infer", "bracket.ngc", "-o", "own-mill.dialect.yaml"];
  expect(run(words, { cwd: folder }).status).toBe(0);
  const text = readFileSync(join(folder, "own-mill.dialect.yaml"), "utf8");
  expect(text).toContain("dialect: own-mill\n");
  const check = runJson(["dialect", "check", "own-mill.dialect.yaml"], { cwd: folder });
  expect([check.status, check.report.verdict]).toEqual([0, "read"]);
  expect(check.report.findings.filter(({ severity }) => severity !== "note")).toEqual([]);
  const rules = check.report.findings.map(({ rule }) => rule);
  expect(rules).toContain("dialect/unanswered");
  expect(rules).not.toContain("dialect/same");
  const again = runJson(words, { cwd: folder });
  expect([again.status, again.report.findings.map(({ rule }) => rule)]).toEqual([2, ["dialect/exists"]]);
  expect(readFileSync(join(folder, "own-mill.dialect.yaml"), "utf8")).toBe(text);
});

test("the report for programs has text, choice, measure and questions", () => {
  const { status, report } = runJson(["dialect", "infer", "bracket.ngc"], { cwd: folder });
  expect([status, report.verdict]).toEqual([0, "read"]);
  const { summary } = report;
  expect(summary["extends"]).toBe("rs274ngc");
  expect(summary["text"]).toContain("extends: rs274ngc");
  expect(summary["measured"]).toMatchObject([{ file: "bracket.ngc", blocks: 163, identical: 163 }]);
  expect(summary["questions"]).toContainEqual(expect.objectContaining({ keys: ["machine.travel"], answers: [null] })); // prettier-ignore
  expect((summary["candidates"] as { name: string }[]).length).toBe(8);
});

test("what is no program, another archetype, and names that will not do", () => {
  put(folder, "letter.txt", "Dear all,\nthe plate is ready.\n");
  const refused = runJson(["dialect", "infer", "bracket.ngc", "letter.txt", "-o", "none.dialect.yaml"], { cwd: folder }); // prettier-ignore
  expect(refused.status).toBe(2);
  expect(refused.report.findings).toMatchObject([
    { rule: "dialect/not-a-program", file: "letter.txt", line: 1 },
  ]);
  expect(existsSync(join(folder, "none.dialect.yaml"))).toBe(false);
  const from = runJson(["dialect", "infer", "bracket.ngc", "--from", "explicit-words"], { cwd: folder });
  expect([from.status, from.report.summary["extends"]]).toEqual([0, "explicit-words"]);
  for (const more of [["--from", "some-other"], ["-o", "own.yaml"], ["missing.nc"]])
    // prettier-ignore
    expect(run(["dialect", "infer", "bracket.ngc", ...more], { cwd: folder }).status).toBe(2);
});
