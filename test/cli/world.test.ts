import { spawn, spawnSync } from "node:child_process";
import { mkdirSync, lstatSync, readFileSync, readdirSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import type { JsonReport } from "./command.ts";
import { command, environment, longJob, plateDialect, put, run, temporaryFolder } from "./command.ts";

/*
 * Faults of the world: no room, two commands at one target, links, and readers that go away. What bash does here (`ulimit`,
 * `PIPESTATUS`) needs no rights.
 */
const folder = temporaryFolder();
const job = put(folder, "job.json", longJob(20_000));
const other = put(folder, "other.json", longJob(20_000, -1.5));
const env = environment(join(folder, ".cache"));

function inside(name: string): string {
  const path = join(folder, name);
  mkdirSync(path, { recursive: true });
  return path;
}

const leftovers = (where: string): string[] => readdirSync(where).filter((name) => name.endsWith(".part"));
const post = (output: string, from = job): string[] => ["post", from, "-d", plateDialect, "-o", output];

/** The program of a job. */
function programOf(from: string): string {
  const output = join(inside("whole"), "x.tap");
  expect(run(post(output, from), { cwd: folder }).status).toBe(0);
  return readFileSync(output, "utf8");
}

/** Runs a script of bash in which `"$@"` is the command. */
function bash(script: string, words: readonly string[]) {
  return spawnSync("bash", ["-c", script, "bash", process.execPath, command, ...words], {
    cwd: folder,
    env,
    encoding: "utf8",
  });
}

function rules(report: string): string[] {
  return (JSON.parse(report) as JsonReport).findings
    .filter(({ severity }) => severity === "error")
    .map(({ rule }) => rule);
}

test.each([1, 64, 300])("a file that may grow to %i kB only leaves the old program", (kilobytes) => {
  const where = inside(`limit-${kilobytes}`);
  const output = put(where, "x.tap", "old");
  expect(programOf(job).length).toBeGreaterThan(300 * 1024);
  // Limits of bash count kilobytes.
  const { status, stdout } = bash(`ulimit -f ${kilobytes}; "$@"`, [...post(output), "--report", "json"]);
  expect({ status, rules: rules(stdout) }).toEqual({ status: 2, rules: ["program/disk-full"] });
  expect(readFileSync(output, "utf8")).toBe("old");
  expect(leftovers(where)).toEqual([]);
});

test("standard output without room is a finding", () => {
  const { status, stderr } = bash(`"$@" >/dev/full`, [...post("-"), "--report", "json"]);
  expect({ status, rules: rules(stderr) }).toEqual({ status: 2, rules: ["program/disk-full"] });
});

test("two commands at one target leave one whole program of the two", async () => {
  const programs = [programOf(job), programOf(other)];
  expect(programs[0]).not.toBe(programs[1]);
  const where = inside("twice");
  const output = join(where, "x.tap");
  for (let time = 0; time < 5; time++) {
    const ends = [job, other].map((from) => {
      const child = spawn(process.execPath, [command, ...post(output, from)], {
        cwd: folder,
        env,
        stdio: "ignore",
      });
      return new Promise((resolve) => child.on("exit", resolve));
    });
    expect(await Promise.all(ends)).toEqual([0, 0]);
    expect(programs).toContain(readFileSync(output, "utf8"));
    expect(readdirSync(where)).toEqual(["x.tap"]);
  }
});

test("a link to nothing is followed and kept", () => {
  const where = inside("dangling");
  const link = join(where, "link.tap");
  symlinkSync("target.tap", link);
  expect(run(post(link), { cwd: folder }).status).toBe(0);
  expect(lstatSync(link).isSymbolicLink()).toBe(true);
  expect(readFileSync(join(where, "target.tap"), "utf8")).toBe(programOf(job));
});

test("a link to nothing in a folder that is not there is a finding", () => {
  const where = inside("nowhere");
  const link = join(where, "link.tap");
  symlinkSync("no/such/target.tap", link);
  const { status, stdout } = run([...post(link), "--report", "json"], { cwd: folder });
  expect({ status, rules: rules(stdout) }).toEqual({ status: 2, rules: ["program/not-writable"] });
  expect(readdirSync(where)).toEqual(["link.tap"]);
});

test("a reader that takes one line and goes ends the command with a finding, and no stack", () => {
  const script = `"$@" 2>err.txt | head -1; echo "\${PIPESTATUS[0]}"`;
  const { stdout } = bash(script, post("-"));
  const said = readFileSync(join(folder, "err.txt"), "utf8");
  expect(stdout).toBe("%\n2\n");
  expect(said).toContain("program/not-writable");
  expect(said).toContain("whatever was to read it has gone");
  expect(said).not.toMatch(/\.[jt]s:\d|EPIPE/);
});
