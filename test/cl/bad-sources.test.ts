import { expect, it } from "vitest";
import { memorySource } from "#base";
import { openJob } from "#job";
import type { Finding } from "#base";
import { locate } from "#report";
import { badSources, begin, end } from "./bad-sources.ts";
import type { BadSource } from "./bad-sources.ts";
import { clReading } from "./reading.ts";

/** Every character is one byte, so that a source may hold bytes that are no text. */
function bytesOf(text: string): Uint8Array {
  return Uint8Array.from(text, (character) => character.charCodeAt(0));
}

function sourceOf({ before = begin, statements, after = end }: BadSource): Uint8Array {
  if (statements.startsWith("\uFEFF")) return Uint8Array.of(0xff, 0xfe, 0x47, 0);
  return bytesOf(before + statements + after);
}

function findingsOf(source: Uint8Array, cl: string): Finding[] {
  const findings: Finding[] = [];
  const report = (finding: Finding): void => void findings.push(finding);
  const opened = openJob(memorySource(source), clReading(cl), report);
  for (const operation of opened?.job.operations ?? [])
    for (const batch of opened!.moves(operation, report)) void batch;
  return findings.filter(({ severity }) => severity === "error");
}

it.each(badSources.map((one) => [one.name, one] as const))("%s", (_name, one) => {
  const { before = begin, cl = "", rule, line, column } = one;
  const bytes = sourceOf(one);
  const found = findingsOf(bytes, cl);
  expect(found.map((finding) => finding.rule)).toContain(rule);
  const sources = () => ({ file: "bad.cls", bytes: memorySource(bytes) });
  const places = locate(found, sources).map((at) => ({ rule: at.rule, line: at.line, column: at.column }));
  expect(places).toContainEqual({ rule, line: line + before.split("\n").length - 1, column });
  for (const { message, fix } of found) {
    expect(message).toMatch(/^.+[.?]$/);
    expect(fix).toMatch(/^[A-Z`].*\.$/);
  }
});

it("there are enough of them", () => {
  expect(badSources.length).toBeGreaterThanOrEqual(45);
  expect(new Set(badSources.map(({ name }) => name)).size).toBe(badSources.length);
});

it("the frame in which they stand is sound", () => {
  expect(findingsOf(bytesOf(begin + "GOTO/1,1,1" + end), "")).toEqual([]);
});
