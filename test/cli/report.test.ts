import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import {
  command,
  environment,
  longJob,
  plateDialect,
  plateJob,
  put,
  run,
  runJson,
  temporaryFolder,
} from "./command.ts";

const folder = temporaryFolder();
put(folder, "small.job.json", longJob(3));
const good = join(folder, "good.tap");
expect(run(["post", "small.job.json", "-d", plateDialect, "-o", good], { cwd: folder }).status).toBe(0);
const program = readFileSync(good, "utf8");

/** The wait for the speed, taken out of a program: the mistake that this package is for. */
const hasty = put(folder, "hasty.tap", program.replace(/^N\d+ M94 P4 .*\n/m, ""));

test("a program that cuts too early is an error with its block, the key and the corrected block", () => {
  const { status, report } = runJson(["prove", hasty, "-d", plateDialect], { cwd: folder });
  expect({ status, verdict: report.verdict }).toEqual({ status: 1, verdict: "read" });
  const finding = report.findings.find(({ rule }) => rule === "spindle/at-speed");
  const line = hastyLine(/^N\d+ G01 Z/);
  expect(finding).toMatchObject({ severity: "error", file: hasty, line, column: 1 });
  expect(finding?.dialect).toEqual({
    file: plateDialect,
    key: "confirm.at-speed",
    line: dialectLine(/^ {2}at-speed: \{ wait/m),
  });
  expect(finding).toHaveProperty("corrected", expect.stringContaining("M94 P4 R1 Q10.0"));
});

function hastyLine(pattern: RegExp): number {
  return (
    readFileSync(hasty, "utf8")
      .split("\n")
      .findIndex((text) => pattern.test(text)) + 1
  );
}

function dialectLine(pattern: RegExp): number {
  const text = readFileSync(plateDialect, "utf8");
  return text.slice(0, pattern.exec(text)?.index).split("\n").length;
}

test("a program is proved against its job, differs from another one, and is only read without one", () => {
  const prove = (...words: string[]) =>
    runJson(["prove", good, "-d", plateDialect, ...words], { cwd: folder });
  const equal = prove("--against", "small.job.json");
  expect([equal.status, equal.report.verdict]).toEqual([0, "proved"]);
  expect(equal.report.summary).toMatchObject({ proof: { bytes: program.length } });
  put(folder, "other.job.json", longJob(4));
  const other = prove("--against", "other.job.json");
  expect([other.status, other.report.verdict]).toEqual([1, "failed"]);
  expect(other.report.findings.some(({ rule }) => rule.startsWith("proof/"))).toBe(true);
  expect([prove().status, prove().report.verdict]).toEqual([0, "read"]);
});

test("the proof is the same from post and from prove", () => {
  const posted = runJson(["post", "small.job.json", "-d", plateDialect, "-o", good], { cwd: folder });
  const proved = runJson(["prove", good, "-d", plateDialect, "--against", "small.job.json"], { cwd: folder });
  expect(posted.report.summary["proof"]).toEqual(proved.report.summary["proof"]);
});

test("the text for people fits 80 columns, says where the program is, and carries the cautions", () => {
  const { status, stdout, stderr } = run(["post", plateJob, "-d", plateDialect, "-o", "plate.tap"], {
    cwd: folder,
  });
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  expect(stdout).toMatch(/^program {4}plate\.tap$/m);
  expect(stdout).toMatch(/^proof {6}[\d,]+ bytes, [\d,]+ steps, sha256 [0-9a-f]{16}$/m);
  expect(stdout).toContain("hand on feed hold");
  for (const line of stdout.split("\n")) expect([...line].length).toBeLessThanOrEqual(80);
});

test("--quiet says nothing of a success, and still says errors", () => {
  const quiet = run(["post", plateJob, "-d", plateDialect, "-o", "plate.tap", "--quiet"], { cwd: folder });
  expect([quiet.status, quiet.stdout, quiet.stderr]).toEqual([0, "", ""]);
  const wrong = run(["prove", hasty, "-d", plateDialect, "--quiet"], { cwd: folder });
  expect(wrong.status).toBe(1);
  expect(wrong.stdout).toMatch(/^error +spindle\/at-speed$/m);
  expect(wrong.stdout).not.toMatch(/^note/m);
});

test("a reader that leaves early is no trouble", () => {
  const line = `{ sleep 1; "${process.execPath}" "${command}" dialect list; echo "ended with $?" >&2; } | true`;
  const { stderr } = spawnSync("sh", ["-c", line], { encoding: "utf8", env: environment(folder) });
  expect(stderr).toBe("ended with 0\n");
});

test("options that name what is not there are findings", () => {
  const only = runJson(["post", "small.job.json", "-d", plateDialect, "--only", "op99"], { cwd: folder });
  expect([only.status, only.report.verdict]).toEqual([2, "refused"]);
  const setup = put(folder, "set-up.json", '{\n  "rak": [1]\n}\n');
  const wrong = runJson(["post", "small.job.json", "-d", plateDialect, "--setup", setup], { cwd: folder });
  expect(wrong.status).toBe(2);
  expect(wrong.report.findings[0]).toMatchObject({ file: setup, line: 2 });
});

test("a set-up and a tool in the spindle change the program", () => {
  const setup = put(folder, "good-set-up.json", '{ "rack": [0, 1], "lengths": { "1": 50 } }');
  const words = ["post", "small.job.json", "-d", plateDialect, "-o", "-", "--quiet"];
  const moved = run([...words, "--setup", setup], { cwd: folder });
  expect(moved.stdout).toContain("G53 G00 X120.000 Y20.000");
  const held = run([...words, "--spindle-holds", "1"], { cwd: folder });
  expect(held.status).toBe(0);
  expect(held.stdout.match(/G53 G00 X40\.000 Y20\.000/g)).toHaveLength(1);
});

test("a fault of ours is owned up to, without a stack unless asked for", () => {
  const loader = put(
    folder,
    "break.mjs",
    "const { parse } = JSON; JSON.parse = (text, ...rest) => { if (text.length > 5000) throw new Error('broken for a test'); return parse(text, ...rest); };",
  );
  const words = ["post", "small.job.json", "-d", "explicit-words"];
  const faulty = run(words, { cwd: folder, env: { NODE_OPTIONS: `--import ${loader}` } });
  expect([faulty.status, faulty.stdout]).toEqual([3, ""]);
  expect(faulty.stderr).toMatch(
    /fault of its own[\s\S]*broken for a test[\s\S]*report it[\s\S]*tapewright \d+\.\d+\.\d+, node v/,
  );
  expect(faulty.stderr).not.toMatch(/^ {4}at /m);
  const debug = run(words, {
    cwd: folder,
    env: { NODE_OPTIONS: `--import ${loader}`, TAPEWRIGHT_DEBUG: "1" },
  });
  expect(debug.stderr).toMatch(/^ {4}at /m);
});
