import { expect, it } from "vitest";
import { memorySource } from "#base";
import { locate } from "#report";
import { programJobRules } from "#retrace";
import { ready } from "../support/ready.ts";
import { badPrograms, begin, end, noUnits, noUnitsText } from "./bad-programs.ts";
import { readAsJob } from "./reading.ts";

const dialects = new Map(
  await Promise.all(
    ["rs274ngc", ...badPrograms.flatMap(({ dialect }) => dialect ?? [])].map(
      async (name) => [name, await ready(name, { [noUnits]: noUnitsText })] as const,
    ),
  ),
);

it.each(badPrograms.map((one) => [one.name, one] as const))("%s", (_name, one) => {
  const { before = begin, after = end, lines, rule, line, severity = "error", head } = one;
  const bytes = new TextEncoder().encode(before + lines + after);
  const { json, findings } = readAsJob(bytes, dialects.get(one.dialect ?? "rs274ngc")!, head);
  const found = findings.filter((finding) => finding.severity === severity);
  if (severity === "error") expect(json).toBeUndefined();
  const sources = (source: string) => ({
    file: source,
    bytes: memorySource(source === "head" ? new TextEncoder().encode(head) : bytes),
  });
  const places = locate(found, sources).map((at) => ({ rule: at.rule, line: at.line }));
  const first = before.split("\n").length - 1;
  expect(places).toContainEqual({ rule, line: line === -100 ? 1 : line < 0 ? first + line : first + line });
  for (const { message, fix } of findings) {
    expect(message).toMatch(/^.+[.?]$/);
    expect(fix).toMatch(/^[A-Z`].*[.)]$/);
  }
});

it("there are enough of them, and each rule has one", () => {
  expect(badPrograms.filter(({ severity }) => severity === undefined).length).toBeGreaterThanOrEqual(45);
  expect(new Set(badPrograms.map(({ name }) => name)).size).toBe(badPrograms.length);
  const covered = new Set<string>(badPrograms.map(({ rule }) => rule));
  expect(programJobRules.filter((rule) => !covered.has(rule))).toEqual([]);
});

it("the frame in which they stand is sound", () => {
  const { json, findings } = readAsJob(`${begin}G1 Z-1 F200${end}`, dialects.get("rs274ngc")!);
  expect(findings.filter(({ severity }) => severity !== "note")).toEqual([]);
  expect(json).toBeDefined();
});
