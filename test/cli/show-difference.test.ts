import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { plateDialect, put, run, runJson, temporaryFolder } from "./command.ts";

const folder = temporaryFolder();
put(folder, "own.dialect.yaml", "dialect: own\nextends: rs274ngc\nmodal: { motion: each-block }\n");

test("the text has each key under its group, with both values and their lines, in 80 columns", () => {
  const { status, stdout, stderr } = run(["dialect", "show", "own.dialect.yaml", "--diff", "rs274ngc"], {
    cwd: folder,
  });
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  const lines = stdout.split("\n");
  expect(lines[0]).toBe("A  own.dialect.yaml, which extends rs274ngc.dialect.yaml, which extends");
  expect(lines).toContain("2 keys differ.");
  const at = lines.indexOf("modal");
  expect(lines.slice(at, at + 3)).toEqual(["modal", "  motion", "    A  each-block (own.dialect.yaml:3)"]);
  expect(lines[at + 3]).toMatch(/^ {4}B {2}modal \(iso-6983\.dialect\.yaml:\d+\)$/);
  const wide = run(
    ["dialect", "show", "longhand", "--diff", plateDialect.replace(/.*examples/, "examples")],
    {
      cwd: join(plateDialect, "../../.."),
    },
  );
  expect(wide.status).toBe(0);
  expect(wide.stdout).toContain("(not stated)");
  for (const line of [...lines, ...wide.stdout.split("\n")]) expect([...line].length).toBeLessThanOrEqual(80);
});

test("the report for programs has the differences, with null for what is not stated", () => {
  const words = ["dialect", "show", plateDialect, "--diff", "explicit-words"];
  const { status, report } = runJson(words, { cwd: folder });
  expect([status, report.verdict]).toEqual([0, "read"]);
  const found = report.summary["differences"] as { key: string; first: unknown; second: unknown }[];
  const travel = found.find(({ key }) => key === "machine.spindle.max-rpm");
  const text = readFileSync(plateDialect, "utf8");
  const line = text.slice(0, text.indexOf("max-rpm:")).split("\n").length;
  expect(travel).toMatchObject({ first: { file: plateDialect, line }, second: null });
});

test("a dialect that is not there is named, and a dialect differs from itself in nothing", () => {
  const missing = runJson(["dialect", "show", "rs274ngc", "--diff", "rs274ncg"], { cwd: folder });
  expect([missing.status, missing.report.verdict]).toEqual([2, "refused"]);
  expect(missing.report.findings[0]).toMatchObject({ rule: "dialect/file" });
  expect(missing.report.findings[0].message).toContain("Did you mean `rs274ngc`?");
  const same = run(["dialect", "show", "longhand", "--diff", "longhand"], { cwd: folder });
  expect([same.status, same.stdout.includes("No key differs.")]).toEqual([0, true]);
});
