import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import type { JsonReport } from "./command.ts";
import { plateDialect, plateJob, run, temporaryFolder } from "./command.ts";

const folder = temporaryFolder();
const json = (
  words: readonly string[],
): JsonReport & { summary: { simulation?: Record<string, unknown> } } => {
  const { stdout } = run([...words, "--report", "json"], { cwd: folder });
  return JSON.parse(stdout) as JsonReport & { summary: { simulation?: Record<string, unknown> } };
};
const rulesOf = ({ findings }: JsonReport): string[] => findings.map(({ rule }) => rule);

test("the simulation changes neither program nor verdict, and says what each operation took away", () => {
  const post = ["post", plateJob, "-d", plateDialect, "-o"];
  expect(run([...post, "plain.tap"], { cwd: folder }).status).toBe(0);
  const { status, stdout } = run([...post, "simulated.tap", "--simulate"], { cwd: folder });
  expect(status).toBe(0);
  const program = readFileSync(join(folder, "plain.tap"), "utf8");
  expect(readFileSync(join(folder, "simulated.tap"), "utf8")).toBe(program);
  expect(stdout).toMatch(/simulated +cells of 0.32 mm; walls from 0.45 mm on are sure to be seen/);
  expect(stdout).toMatch(/\n +op10, tool 1: 16\.\d\d cm3, at most /);
  expect(stdout).toMatch(
    /limit\/below-stock\n +Tools go below the stock, 1.5 mm at most: in `op30`, `op40`,/,
  );
  expect(stdout.split("\n").every((line) => line.length <= 80)).toBe(true);
});

test("what is read of a program is simulated with the tools and the stock of its job", () => {
  const prove = ["prove", "simulated.tap", "-d", plateDialect, "--simulate", "--resolution", "0.4"];
  expect(rulesOf(json(prove))).toContain("motion/not-simulated");
  const posted = json([
    "post",
    plateJob,
    "-d",
    plateDialect,
    "-o",
    "again.tap",
    "--simulate",
    "--resolution",
    "0.4",
  ]);
  const read = json([...prove, "--against", plateJob]);
  expect(read.verdict).toBe("proved");
  // The read program is told by tools, and comes to the same.
  const left = (report: typeof read): unknown => report.summary.simulation?.["volumeLeft"];
  expect(left(read)).toBe(left(posted));
  expect(read.summary.simulation?.["tools"]).toHaveLength(6);
});

test("a program with a rapid through what is left is told at its block", () => {
  const program = readFileSync(join(folder, "simulated.tap"), "utf8").split("\n");
  // A retract between two holes that is left out leaves the rapid to the next in the plate.
  const facing = program.findIndex((block) => /G00.* X.* Y/.test(block) && !block.includes("G53"));
  const changed = program.toSpliced(facing + 8, 0, "N1 G00 Z-3.000", "N2 G00 X100.000 Y60.000");
  writeFileSync(join(folder, "changed.tap"), changed.join("\n"));
  const report = json(["prove", "changed.tap", "-d", plateDialect, "--simulate", "--against", plateJob]);
  expect(report.verdict).toBe("failed");
  const told = report.findings.find(({ rule }) => rule === "motion/rapid-through-material");
  expect(told).toMatchObject({ severity: "warning", file: "changed.tap" });
  expect(Math.abs((told?.line ?? 0) - (facing + 9))).toBeLessThan(3);
});
