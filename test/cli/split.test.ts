import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { plateDialect, plateJob, run, temporaryFolder } from "./command.ts";
import type { JsonReport } from "./command.ts";

/* --split tool and --air-cut as files. */

const cut = (x: number) => [{ rapid: { x, y: 5 } }, { line: { z: -2 }, feed: 200 }, { rapid: { z: 15 } }];
const job = (last: readonly unknown[] = cut(30)) => ({
  job: "1",
  name: "three parts",
  units: "mm",
  program: { number: 1 },
  stock: { min: [0, 0, -10], max: [50, 50, 0] },
  clearance: 15,
  tools: [
    { number: 1, kind: "end-mill", diameter: 6 },
    { number: 2, kind: "drill", diameter: 3 },
  ],
  operations: [
    { id: "rough", tool: 1, moves: cut(10) },
    { id: "drill", tool: 2, moves: cut(20) },
    { id: "finish", tool: 1, moves: last },
    { id: "deburr", tool: 1, moves: cut(40) },
  ].map((operation) => ({ ...operation, spindle: { rpm: 8000, direction: "cw" } })),
});

function folderWith(content: object): string {
  const folder = temporaryFolder();
  writeFileSync(join(folder, "plate.job.json"), JSON.stringify(content));
  return folder;
}

const programs = (folder: string): string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".gc"))
    .sort();

describe("what would crash is refused", () => {
  test("a rack, and a tool in the spindle, are not those of each program", () => {
    const folder = folderWith(job());
    const rack = run(["post", "plate.job.json", "-d", plateDialect, "--split", "tool"], { cwd: folder });
    expect(rack.status).toBe(2);
    expect(rack.stderr.replace(/\n +/g, " ")).toContain("for machines whose tools are put in by hand");
    const words = ["post", "plate.job.json", "-d", "hand-zeroed", "--split", "tool", "--spindle-holds", "1"];
    const held = run(words, { cwd: folder });
    expect(held.status).toBe(2);
    expect(held.stderr).toContain("--spindle-holds");
    expect(programs(folder)).toEqual([]);
  });

  test.each([
    ["another work offset than that of the stock", { workOffset: 2 }],
    ["inverse-time feeds, which are not capped", { feedMode: "inverse-time" }],
  ])("an air cut in %s", (_, more) => {
    const own = job();
    const operations = own.operations.map((one, index) => (index === 1 ? { ...one, ...more } : one));
    const folder = folderWith({ ...own, operations });
    const words = ["post", "plate.job.json", "-d", "rs274ngc", "--air-cut", "30", "--report", "json"];
    const { status, stdout } = run(words, { cwd: folder });
    const { findings } = JSON.parse(stdout) as JsonReport;
    expect(status).toBe(1);
    expect(findings.filter(({ severity }) => severity === "error").map(({ rule }) => rule)).toContain(
      "motion/air-cut",
    );
  });
});

describe("a program for each tool", () => {
  test("in the order of the job, each proved, for a machine that is zeroed by hand", () => {
    const cwd = folderWith(job());
    const whole = run(["post", "plate.job.json", "-d", "hand-zeroed"], { cwd });
    expect(whole.status).toBe(1);
    expect(programs(cwd)).toEqual([]);
    const { status, stdout } = run(["post", "plate.job.json", "-d", "hand-zeroed", "--split", "tool", "--report", "json"], { cwd }); // prettier-ignore
    expect(status).toBe(0);
    const { verdict, summary } = JSON.parse(stdout) as JsonReport;
    expect(verdict).toBe("proved");
    expect(programs(cwd)).toEqual(["plate.t1-2.gc", "plate.t1.gc", "plate.t2.gc"]);
    const files = summary["files"] as { output: string; only: string[]; proof: { sha256: string } }[];
    expect(files.map(({ output, only }) => [output, ...only])).toEqual([
      ["plate.t1.gc", "rough"],
      ["plate.t2.gc", "drill"],
      ["plate.t1-2.gc", "finish", "deburr"],
    ]);
    for (const { output, only } of files) {
      const proved = run(["prove", output, "-d", "hand-zeroed", "--against", "plate.job.json", "--only", only.join(",")], { cwd }); // prettier-ignore
      expect(proved.stdout).toContain("proved");
      expect(proved.status).toBe(0);
    }
    expect(readFileSync(join(cwd, "plate.t2.gc"), "utf8")).toContain("X20");
  });

  test("none is written unless all are proved", () => {
    // Compensation is what this dialect refuses, in the last program.
    const cwd = folderWith(job([{ rapid: { x: 30, y: 5 } }, { comp: "left" }, { line: { x: 45 }, feed: 200 }, { comp: "off" }, { line: { x: 48 } }])); // prettier-ignore
    const { status, stderr } = run(["post", "plate.job.json", "-d", "longhand", "--split", "tool"], { cwd });
    expect(status).toBe(1);
    expect(stderr).toContain("no program was written");
    expect(readdirSync(cwd).filter((name) => name !== ".cache")).toEqual(["plate.job.json"]);
  });

  test.each([
    [["--split", "tool", "--watch"], "--watch"],
    [["--split", "tool", "-o", "-"], "files of their own"],
    [["--split", "operation"], "operation"],
    [["--air-cut", "0"], "above 0"],
    [["--air-cut", "up"], "above 0"],
    [["--air-feed", "500"], "needs --air-cut"],
  ])("%s is a usage error", (words, said) => {
    const cwd = folderWith(job());
    const { status, stderr } = run(["post", "plate.job.json", "-d", "hand-zeroed", ...words], { cwd });
    expect(status).toBe(2);
    expect(stderr).toContain(said);
    expect(programs(cwd)).toEqual([]);
  });
});

describe("an air cut", () => {
  test("has a file of its own, also where each tool has one", () => {
    const cwd = folderWith(job());
    const air = ["--air-cut", "30", "--air-feed", "500 mm"];
    const split = run(["post", "plate.job.json", "-d", "hand-zeroed", "--split", "tool", ...air], { cwd });
    expect(split.status).toBe(0);
    expect(programs(cwd)).toEqual(["plate.air-cut.t1-2.gc", "plate.air-cut.t1.gc", "plate.air-cut.t2.gc"]);
    expect(split.stdout).toContain("AIR CUT: all motion in the work is 30 mm higher");
    const program = "plate.air-cut.t1.gc";
    const against = ["-d", "hand-zeroed", "--against", "plate.job.json", "--only", "rough"];
    expect(run(["prove", program, ...against, ...air], { cwd }).status).toBe(0);
    expect(run(["prove", program, ...against], { cwd }).status).toBe(1);
  });

  test("past the travel of the router it is refused, and nothing is written", () => {
    const cwd = temporaryFolder();
    const { status, stderr } = run(["post", plateJob, "-d", plateDialect, "--air-cut", "80", "-o", "air.tap"], { cwd }); // prettier-ignore
    expect(status).toBe(1);
    expect(stderr).toContain("limit/travel");
    expect(existsSync(join(cwd, "air.tap"))).toBe(false);
  });
});
