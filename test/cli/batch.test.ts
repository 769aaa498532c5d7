import { existsSync, mkdirSync, readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { describe, expect, test } from "vitest";
import { longJob, plateDialect, plateJob, put, run, runJson, start, temporaryFolder } from "./command.ts";

/** A program as the JSON report of several has it. */
interface ReportedProgram {
  readonly job?: string;
  readonly dialect: string;
  readonly verdict: string;
  readonly output?: string;
  readonly proof?: { readonly sha256: string };
  readonly findings: readonly { readonly rule: string }[];
}

const folder = temporaryFolder();
const plate = readFileSync(plateJob, "utf8");

function workspace(name: string): string {
  const cwd = join(folder, name);
  mkdirSync(cwd);
  put(cwd, "plate.job.json", plate);
  put(cwd, "long.job.json", longJob(300));
  put(cwd, "broken.job.json", plate.replace('"clearance"', '"clearence"'));
  return cwd;
}

const programs = (report: { summary: Readonly<Record<string, unknown>> }): readonly ReportedProgram[] =>
  report.summary["programs"] as readonly ReportedProgram[];

describe("post of several", () => {
  test("makes each job for each dialect, as it would alone, and names the dialect", () => {
    const cwd = workspace("grid");
    const words = ["post", "plate.job.json", "long.job.json", "-d", plateDialect, "-d", "rs274ngc"];
    const { status, report } = runJson(words, { cwd });
    expect(status).toBe(0);
    expect(report.verdict).toBe("proved");
    expect(programs(report).map(({ output }) => output)).toEqual([
      "plate.quarry-router.tap",
      "plate.rs274ngc.ngc",
      "long.quarry-router.tap",
      "long.rs274ngc.ngc",
    ]);
    for (const [job, dialect, output] of [
      ["plate.job.json", plateDialect, "plate.quarry-router.tap"],
      ["long.job.json", "rs274ngc", "long.rs274ngc.ngc"],
    ]) {
      const alone = run(["post", job, "-d", dialect, "-o", "-"], { cwd });
      expect(readFileSync(join(cwd, output), "utf8")).toBe(alone.stdout);
    }
  });

  test("goes on behind a job that is refused, and ends with the highest exit code", () => {
    const cwd = workspace("refused");
    const words = ["post", "broken.job.json", "missing.job.json", "plate.job.json", "-d", "longhand"];
    const { status, report } = runJson([...words, "long.job.json"], { cwd });
    expect(status).toBe(2);
    expect(report.verdict).toBe("refused");
    expect(programs(report).map(({ verdict }) => verdict)).toEqual([
      "refused",
      "refused",
      "refused",
      "proved",
    ]);
    expect(programs(report)[0].findings.map(({ rule }) => rule)).toContain("job/unknown-key");
    expect(programs(report)[1].findings.map(({ rule }) => rule)).toEqual(["job/not-found"]);
    expect(existsSync(join(cwd, "long.txt"))).toBe(true);
    expect(existsSync(join(cwd, "plate.txt"))).toBe(false);

    const onlyRefusedByRule = run(["post", "plate.job.json", "long.job.json", "-d", "longhand"], { cwd });
    expect(onlyRefusedByRule.status).toBe(1);
    expect(onlyRefusedByRule.stdout).toContain("2 programs: 1 read back, proved and written, 1 refused");
    expect(onlyRefusedByRule.stdout).toContain("Before any of them runs");
  });

  test("tells a dialect that cannot be had once, and posts for the others", () => {
    const cwd = workspace("dialects");
    const words = ["post", "plate.job.json", "long.job.json", "-d", "rs274ngc", "-d", "rs274ncg"];
    const { status, report } = runJson(words, { cwd });
    expect(status).toBe(2);
    expect(programs(report).map(({ job, verdict }) => [job, verdict])).toEqual([
      [undefined, "refused"],
      ["plate.job.json", "proved"],
      ["long.job.json", "proved"],
    ]);
    // The name says the dialect although only one was left to post for.
    expect(existsSync(join(cwd, "plate.rs274ngc.ngc"))).toBe(true);
  });

  test("writes into the folder that --output names", () => {
    const cwd = workspace("folder");
    mkdirSync(join(cwd, "out"));
    const words = ["post", "plate.job.json", "long.job.json", "-d", "rs274ngc", "-o", "out"];
    expect(run(words, { cwd }).status).toBe(0);
    expect(readdirSync(join(cwd, "out")).sort()).toEqual(["long.ngc", "plate.ngc"]);
    expect(run([...words.slice(0, -1), "out.ngc"], { cwd }).stderr).toContain("names a folder");
  });

  test("loses no program to another of the same name", () => {
    const cwd = workspace("names");
    mkdirSync(join(cwd, "sub"));
    put(join(cwd, "sub"), "plate.job.json", plate);
    const words = ["post", "plate.job.json", "sub/plate.job.json", "-d", "rs274ngc", "-o", "."];
    const { status, stderr } = run(words, { cwd });
    expect(status).toBe(2);
    expect(stderr.replace(/\n +/g, " ")).toContain("would both be written to plate.ngc");
    expect(existsSync(join(cwd, "plate.ngc"))).toBe(false);
  });

  test.each([
    [["-", "plate.job.json"], "Standard input holds one job"],
    [["plate.job.json", "plate.job.json"], "is named twice"],
    [["plate.job.json", "long.job.json", "--watch"], "--watch follows one job"],
  ])("refuses %j", (words, said) => {
    const cwd = folder;
    const { status, stderr } = run(["post", ...words, "-d", "rs274ngc"], { cwd, input: plate });
    expect(status).toBe(2);
    expect(stderr).toContain(said);
  });

  test("leaves nothing of any program when a signal ends it", async () => {
    const cwd = workspace("signal");
    for (const name of ["one", "two", "three"]) put(cwd, `${name}.job.json`, longJob(400_000));
    const posting = start(["post", "one.job.json", "two.job.json", "three.job.json", "-d", "rs274ngc"], {
      cwd,
    });
    const ended = new Promise((resolve) => posting.on("exit", (_, signal) => resolve(signal)));
    const parts = (): number => readdirSync(cwd).filter((name) => name.endsWith(".part")).length;
    while (parts() === 0) await setTimeout(5);
    await setTimeout(100);
    expect(parts()).toBeGreaterThan(0);
    posting.kill("SIGINT");
    expect(await ended).toBe("SIGINT");
    expect(readdirSync(cwd).filter((name) => /\.(part|ngc)$/.test(name))).toEqual([]);
  });
});
