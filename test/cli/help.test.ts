import { expect, test } from "vitest";
import { clChoices } from "#job";
import { run, temporaryFolder } from "./command.ts";

const folder = temporaryFolder();

const pages = [
  [],
  ["post"],
  ["prove"],
  ["why"],
  ["sheet"],
  ["job"],
  ["compare"],
  ["plot"],
  ["dialect"],
  ["dialect", "list"],
  ["dialect", "show"],
  ["dialect", "new"],
  ["dialect", "check"],
  ["dialect", "test"],
  ["dialect", "build"],
  ["dialect", "infer"],
] as const;

test.each(pages.map((words) => [words.join(" ") || "tapewright", words] as const))(
  "the help of %s has examples and fits 80 columns",
  (_name, words) => {
    const { status, stdout, stderr } = run([...words, "--help"], { cwd: folder });
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(stdout).toContain(`Examples:\n  tapewright ${words.join(" ")}`.trimEnd());
    expect(stdout).toMatch(/Exit code 0: no error/);
    const lines = stdout.split("\n");
    for (const line of lines) expect([...line].length).toBeLessThanOrEqual(80);
    // A line of the text that is itself too long leaves one word on the next.
    expect(lines.filter((line) => /^[a-z]+$/.test(line))).toEqual([]);
  },
);

test("every option of the contract stands on the page of its command", () => {
  const shared = ["--dialect", "--report", "--quiet", "--no-color", "--no-cache"];
  const program = ["--only", "--from", "--spindle-holds", "--setup", "--rack"];
  const reading = ["--cl", "--head", "--input-form"];
  const { stdout: job } = run(["job", "--help"], { cwd: folder });
  for (const option of [...reading, "--output", "--report", "--quiet"]) expect(job).toContain(option);
  for (const [key, { values }] of Object.entries(clChoices))
    expect(job).toContain(`  ${key}=${values.join("|")} `);
  const { stdout: post } = run(["post", "--help"], { cwd: folder });
  const { stdout: build } = run(["dialect", "build", "--help"], { cwd: folder });
  const { stdout: why } = run(["why", "--help"], { cwd: folder });
  for (const option of [...shared, ...program, ...reading, "--line", "--step", "--key"])
    expect(why).toContain(option);
  const { stdout: sheet } = run(["sheet", "--help"], { cwd: folder });
  for (const option of [...shared, ...program, ...reading, "--output"]) expect(sheet).toContain(option);
  expect(run(["dialect", "show", "--help"], { cwd: folder }).stdout).toContain("--diff");
  const { stdout: prove } = run(["prove", "--help"], { cwd: folder });
  for (const option of [...shared, ...program, ...reading, "--output"]) expect(post).toContain(option);
  for (const option of [...shared, ...program, ...reading, "--against"]) expect(prove).toContain(option);
  for (const option of ["--output", "--traced", "--force", "--report", "--quiet", "--no-color"])
    expect(build).toContain(option);
});

test("--version prints the version alone", () => {
  const { status, stdout } = run(["--version"], { cwd: folder });
  expect(status).toBe(0);
  expect(stdout).toMatch(/^\d+\.\d+\.\d+\n$/);
});
