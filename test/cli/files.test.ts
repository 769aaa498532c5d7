import { execFileSync, spawnSync } from "node:child_process";
import {
  chmodSync,
  existsSync,
  linkSync,
  lstatSync,
  mkdirSync,
  readFileSync,
  readdirSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import type { JsonReport } from "./command.ts";
import { command, longJob, plateDialect, plateJob, put, run, runJson, temporaryFolder } from "./command.ts";

const folder = temporaryFolder();
const job = put(folder, "small.job.json", longJob(3));

function inside(name: string): string {
  const path = join(folder, name);
  mkdirSync(path, { recursive: true });
  return path;
}

/** Names that a command leaves behind when it should not. */
function leftovers(where: string): string[] {
  return readdirSync(where).filter((name) => name.includes("tapewright"));
}

const post = (...words: string[]) => ["post", job, "-d", plateDialect, ...words];

test("without --output the program goes beside the job, with the dialect's extension", () => {
  const { status } = run(post(), { cwd: inside("elsewhere") });
  expect(status).toBe(0);
  expect(readFileSync(join(folder, "small.tap"), "utf8")).toMatch(/^%\n/);
  expect(leftovers(folder)).toEqual([]);
});

test("standard input goes to standard output, with the text for people on standard error", () => {
  const { status, stdout, stderr } = run(["post", "-", "-d", plateDialect], {
    cwd: folder,
    input: longJob(3),
  });
  expect(status).toBe(0);
  expect(stdout).toBe(readFileSync(join(folder, "small.tap"), "utf8"));
  expect(stderr).toContain("read back and proved equal to the job");
});

test("a program on standard output and a JSON report do not mix", () => {
  const { status, stdout, stderr } = run(post("-o", "-", "--report", "json"), { cwd: folder });
  expect(status).toBe(0);
  expect(stdout).toMatch(/^%\n/);
  expect(JSON.parse(stderr)).toMatchObject({ verdict: "proved" });
});

const bad: readonly (readonly [what: string, words: () => string[], rule: string, says: RegExp])[] = [
  ["a missing job", () => ["post", "none.json", "-d", plateDialect], "job/not-found", /does not exist/],
  ["a folder as job", () => ["post", inside("a-folder"), "-d", plateDialect], "job/folder", /is a folder/],
  ["a missing set-up", () => post("--setup", "none.json"), "job/not-found", /set-up file does not exist/],
  ["a missing rack file", () => post("--rack", "[1,2]"), "job/not-found", /rack file does not exist/],
  ["a missing dialect", () => ["post", job, "-d", "nowhere.dialect.yaml"], "dialect/file", /no dialect file/],
  ["a folder as dialect", () => ["post", job, "-d", inside("a-folder")], "dialect/folder", /is a folder/],
  [
    "a missing program",
    () => ["prove", "none.tap", "-d", plateDialect],
    "program/not-found",
    /does not exist/,
  ],
  ["a folder as output", () => post("-o", inside("a-folder")), "program/not-writable", /it is a folder/],
  ["a missing folder", () => post("-o", "no/such/x.tap"), "program/not-writable", /folder does not exist/],
  [
    "a folder that is a file",
    () => post("-o", join(job, "x.tap")),
    "program/not-writable",
    /folder is a file/,
  ],
  ["the job as output", () => post("-o", job), "program/overwrites-input", /replace the job file/],
  ["a full device", () => post("-o", "/dev/full"), "program/disk-full", /no room/],
  ["a circle of links", () => post("-o", circle()), "program/not-writable", /circle/],
];

function circle(): string {
  const path = join(folder, "circle");
  if (!lstatSync(path, { throwIfNoEntry: false })) symlinkSync("circle", path);
  return path;
}

test.each(bad)("%s is a finding, and ends with 2", (_what, words, rule, says) => {
  const { status, report } = runJson(words(), { cwd: folder });
  expect(report.findings.map((finding) => finding.rule)).toContain(rule);
  expect(report.findings.find((finding) => finding.rule === rule)?.message).toMatch(says);
  expect(report.findings.find((finding) => finding.rule === rule)?.fix).toBeTruthy();
  expect({ status, verdict: report.verdict }).toEqual({ status: 2, verdict: "refused" });
  expect(leftovers(folder)).toEqual([]);
});

test("the job under another name is recognised, too", () => {
  const hard = join(folder, "hard.json");
  const soft = join(folder, "soft.json");
  linkSync(job, hard);
  symlinkSync(job, soft);
  for (const output of [hard, soft]) {
    const { report } = runJson(post("-o", output), { cwd: folder });
    expect(report.findings[0].rule).toBe("program/overwrites-input");
  }
  expect(readFileSync(job, "utf8")).toBe(longJob(3));
});

test("a file or folder without the right to it is a finding", () => {
  // A superuser may read and write everything, so the command is run without rights. A user who runs this owns nothing
  // that is not readable or writable to others, and has it taken away by the modes below.
  const open = inside("open");
  chmodSync(folder, 0o755);
  chmodSync(open, 0o755);
  const secret = put(open, "secret.json", longJob(1));
  chmodSync(secret, 0o000);
  const readable = put(open, "readable.json", longJob(1));
  const owned = inside("open/guarded");
  const guarded = put(owned, "x.tap", "kept");
  chmodSync(guarded, 0o444);
  chmodSync(owned, 0o777);
  chmodSync(open, 0o555);
  const cases = [
    [["post", secret, "-d", plateDialect, "-o", join(owned, "y.tap")], "job/unreadable"],
    [["post", readable, "-d", plateDialect, "-o", join(open, "x.tap")], "program/not-writable"],
    [["post", readable, "-d", plateDialect, "-o", guarded], "program/not-writable"],
  ] as const;
  for (const [words, rule] of cases) expect(asNobody(words)).toEqual({ rules: [rule], status: 2 });
  expect(readFileSync(guarded, "utf8")).toBe("kept");
  chmodSync(open, 0o755);
});

/** Runs the command without any rights of its own; errors that it reports, and how it ends. */
function asNobody(words: readonly string[]): { rules: string[]; status: number | null } {
  const script = `
    if (process.geteuid() === 0) { process.setgroups([]); process.setgid(65534); process.setuid(65534); }
    await import(${JSON.stringify(command)});
  `;
  const { stdout, status } = spawnSync(
    process.execPath,
    [put(folder, "as-nobody.mjs", script), ...words, "--report", "json"],
    { encoding: "utf8", env: { ...process.env, XDG_CACHE_HOME: "/nonexistent" } },
  );
  const { findings } = JSON.parse(stdout) as JsonReport;
  return { rules: findings.filter(({ severity }) => severity === "error").map(({ rule }) => rule), status };
}

test("a link's target is replaced, and the old file's permissions stay", () => {
  const target = put(inside("real"), "program.tap", "old");
  chmodSync(target, 0o640);
  const link = join(folder, "link.tap");
  symlinkSync(join("real", "program.tap"), link);
  expect(run(post("-o", link), { cwd: folder }).status).toBe(0);
  expect(lstatSync(link).isSymbolicLink()).toBe(true);
  expect(readFileSync(target, "utf8")).toMatch(/^%\n/);
  expect(statSync(target).mode & 0o777).toBe(0o640);
  expect(leftovers(join(folder, "real"))).toEqual([]);
});

test("a link to nothing yet is filled", () => {
  const link = join(folder, "early.tap");
  symlinkSync("later.tap", link);
  expect(run(post("-o", link), { cwd: folder }).status).toBe(0);
  expect(lstatSync(link).isSymbolicLink()).toBe(true);
  expect(existsSync(join(folder, "later.tap"))).toBe(true);
});

test("a pipe gets the program", () => {
  const pipe = join(folder, "pipe");
  execFileSync("mkfifo", [pipe]);
  const words = [`"${process.execPath}" "${command}" post "${job}" -d "${plateDialect}" -o "${pipe}"`];
  const text = execFileSync("sh", ["-c", `${words.join(" ")} >/dev/null & timeout 60 cat "${pipe}"; wait`], {
    encoding: "utf8",
  });
  expect(text).toBe(readFileSync(join(folder, "small.tap"), "utf8"));
});

test("temporary files of processes that died are removed, those of live ones stay", () => {
  const where = inside("stale");
  run(post("-o", join(where, "x.tap")), { cwd: folder });
  const host = hostPart();
  const dead = `.tapewright-${host}-999999999-abc.part`;
  const alive = `.tapewright-${host}-${process.pid}-abc.part`;
  const abroad = ".tapewright-00000000-999999999-abc.part";
  for (const name of [dead, alive, abroad]) writeFileSync(join(where, name), "");
  expect(run(post("-o", join(where, "x.tap")), { cwd: folder }).status).toBe(0);
  expect(leftovers(where).sort()).toEqual([abroad, alive].sort());
});

/** The part of a temporary file's name that stands for this computer, asked of the code itself. */
function hostPart(): string {
  const script = `import { stagedName } from ${JSON.stringify(join(import.meta.dirname, "../../core/9-cli/files/stale.ts"))}; console.log(stagedName("0"));`;
  const tsx = join(import.meta.dirname, "../../node_modules/.bin/tsx");
  const name = execFileSync(tsx, ["--input-type=module", "-e", script], { encoding: "utf8" });
  return name.split("-")[1];
}

test("a refused job leaves the old program as it was", () => {
  const old = put(folder, "old.tap", "old");
  const broken = put(folder, "broken.json", longJob(3).replace('"feed": 200', '"fed": 200'));
  const { status, report } = runJson(["post", broken, "-d", plateDialect, "-o", old], { cwd: folder });
  expect(status).toBe(2);
  expect(report.findings[0]).toMatchObject({ rule: "job/unknown-key", file: broken, line: 4 });
  expect(readFileSync(old, "utf8")).toBe("old");
  expect(leftovers(folder)).toEqual([]);
});

test("the plate is posted for its own machine", () => {
  const output = join(folder, "plate.tap");
  const { status, report } = runJson(["post", plateJob, "-d", plateDialect, "-o", output], { cwd: folder });
  expect({ status, verdict: report.verdict }).toEqual({ status: 0, verdict: "proved" });
  expect(report.summary).toMatchObject({ output, units: "mm", tools: [1, 2, 3, 4, 5, 6] });
  expect(report.summary["bytes"]).toBe(readFileSync(output).length);
});
