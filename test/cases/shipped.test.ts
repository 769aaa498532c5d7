import { existsSync, readFileSync, readdirSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, test } from "vitest";
import type { Finding } from "#base";
import { casesOf, readCases, runCase } from "#cases";
import { readYaml } from "#dialect";
import { ready } from "../support/ready.ts";

const root = resolve(import.meta.dirname, "../..");

/** Every file of cases in the tree, with the dialect beside it. */
const files = ["dialects", "examples/weather-plate"].flatMap((folder) =>
  readdirSync(join(root, folder))
    .filter((name) => name.endsWith(".cases.yaml"))
    .map((name) => join(root, folder, name)),
);

test("there are cases for the example's machine and for several archetypes, each beside its dialect", () => {
  expect(files.length).toBeGreaterThanOrEqual(6);
  for (const file of files) expect(existsSync(file.replace(".cases.", ".dialect."))).toBe(true);
});

test.each(files)("%s", async (file) => {
  const findings: Finding[] = [];
  const report = (finding: Finding): void => void findings.push(finding);
  const tree = await readYaml({ file, bytes: readFileSync(file) }, report);
  const list = tree && casesOf(tree, file, report);
  const cases = list && readCases(list, file, report);
  const means = await ready(file.replace(".cases.", ".dialect."));
  const results = (cases ?? []).map((one) => runCase(one, file, means, report));
  expect(findings).toEqual([]);
  expect(results.length).toBeGreaterThanOrEqual(3);
  for (const result of results) expect(result).toMatchObject({ passed: true, meant: true });
  // A case that expects nothing would pass under any dialect that says nothing.
  for (const one of cases ?? []) expect(one.expect.length).toBeGreaterThan(0);
});
