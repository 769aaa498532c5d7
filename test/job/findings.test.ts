import { describe, expect, test } from "vitest";
import { rules } from "../../core/1-job/findings.ts";
import { nearest } from "#base";
import { findingCases } from "./finding-cases/index.ts";
import { jobWith, readAll } from "./jobs.ts";

const encoder = new TextEncoder();

describe("each finding names its rule, its place and a way out", () => {
  test.each(findingCases.map((aCase) => [`${aCase.rule}: ${aCase.what}`, aCase] as const))(
    "%s",
    (_, aCase) => {
      const [before, after, third] = aCase.job.split("¦");
      expect(third, "one mark").toBeUndefined();
      const { findings } = readAll(before + after);
      const finding = findings.find(({ rule }) => rule === aCase.rule);
      expect(finding, JSON.stringify(findings)).toBeDefined();
      expect(finding?.place).toEqual({ source: "job", offset: encoder.encode(before).length });
      expect(finding?.message).toContain(aCase.says ?? "");
      expect(finding?.fix).toContain(aCase.fix ?? "");
      expect(finding?.fix).not.toBe("");
      const ofOthers = findings.filter((other) => other.rule !== aCase.rule && aCase.rule !== "job/more");
      expect(ofOthers, "one fault gives findings of one rule").toEqual([]);
    },
  );

  test("every rule has a case", () => {
    const covered = new Set(findingCases.map(({ rule }) => rule));
    expect(rules.filter((rule) => !covered.has(rule))).toEqual([]);
  });

  test("bytes that are not UTF-8 are found where they stand", () => {
    const faults = [
      [0xff],
      [0xc3, 0x28],
      [0xc0, 0xaf],
      [0xe0, 0x80, 0x80],
      [0xed, 0xa0, 0x80],
      [0xf4, 0x90, 0x80, 0x80],
      [0xe2, 0x82],
    ];
    for (const fault of faults) {
      const [before, after] = jobWith(`{"note":"a¦b"}`).split("¦");
      const bytes = Uint8Array.from([...encoder.encode(before), ...fault, ...encoder.encode(after)]);
      const { findings } = readAll(bytes);
      expect(findings.map(({ rule, place }) => [rule, place?.offset])).toEqual([
        ["job/encoding", before.length],
      ]);
    }
  });

  test("other encodings are named", () => {
    for (const bytes of [
      [0xff, 0xfe, 0x7b, 0],
      [0xfe, 0xff, 0, 0x7b],
      [0x7b, 0, 0x22, 0],
      [0, 0x7b, 0, 0x22],
      [0, 0, 0, 0x7b],
    ])
      expect(readAll(Uint8Array.from(bytes)).findings.map(({ rule }) => rule)).toEqual(["job/encoding"]);
  });

  test("several faults are found in one reading", () => {
    const { findings } = readAll(jobWith(`{"line":{"q":1},"feed":0},{"dwell":"x"},{"comp":"up"}`));
    expect(findings.map(({ rule }) => rule)).toEqual([
      "job/unknown-key",
      "job/range",
      "job/type",
      "job/value",
    ]);
  });

  test("faults in moves are found beside faults in the head", () => {
    const { job, findings } = readAll(jobWith(`{"dwell":0}`).replace(`"tool":1`, `"tool":2`));
    expect(job).toBeUndefined();
    expect(findings.map(({ rule }) => rule)).toEqual(["job/tool-undefined", "job/range"]);
  });

  test("a thousand faults do not give a thousand findings", () => {
    const { findings } = readAll(
      jobWith(Array.from({ length: 1000 }, () => `{"line":{"x":null},"feed":9}`).join()),
    );
    expect(findings).toHaveLength(51);
  });

  test("no rows are handed out after an error", () => {
    const { rows } = readAll(jobWith(`{"dwell":0},{"note":"after"}`));
    expect(rows).toEqual([[]]);
  });
});

test("an unknown word suggests the nearest known one, or none", () => {
  const known = ["feed", "turn", "plane", "turns", "through-tool"];
  const meant = (word: string): string | undefined => nearest(word, known);
  expect(["fed", "Feed", "feeed", "efed", "trun", "turnz", "planes", "throughTool"].map(meant)).toEqual([
    "feed",
    "feed",
    "feed",
    "feed",
    "turn",
    "turn",
    "plane",
    "through-tool",
  ]);
  expect(["speed", "x", "", "f".repeat(1000)].map(meant)).toEqual([
    undefined,
    undefined,
    undefined,
    undefined,
  ]);
});
