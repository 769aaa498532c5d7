import { expect, test } from "vitest";
import type { Located } from "#report";
import { jsonReport } from "#report";

const located: Located = {
  rule: "job/unknown-key",
  severity: "error",
  message: "`fed` is no key of a line.",
  fix: "Write feed.",
  place: { source: "job", offset: 20 },
  file: "plate.job.json",
  line: 3,
  column: 3,
  quote: { before: "", after: "", cutLeft: false, cutRight: false },
  origin: { key: "feed.per-minute", file: "a.dialect.yaml", line: 7, text: "feed: none" },
};

test("the report has verdict, findings and summary, and each finding its keys", () => {
  const proof = { bytes: 1, steps: 2, sha256: "a", facts: "b" };
  const summary = { blocks: 3, assumptions: ["homed"] };
  expect(
    JSON.parse(jsonReport({ verdict: "proved", findings: [located], summary, proof, output: "x.tap" })),
  ).toEqual({
    verdict: "proved",
    findings: [
      {
        rule: "job/unknown-key",
        severity: "error",
        message: "`fed` is no key of a line.",
        file: "plate.job.json",
        line: 3,
        column: 3,
        fix: "Write feed.",
        dialect: { file: "a.dialect.yaml", line: 7, key: "feed.per-minute" },
      },
    ],
    summary: { blocks: 3, assumptions: ["homed"], output: "x.tap", proof },
  });
});

test("what does not apply is left out", () => {
  const bare: Located = { rule: "job/not-found", severity: "error", message: "m" };
  const report = JSON.parse(
    jsonReport({ verdict: "refused", findings: [bare], summary: { assumptions: [] } }),
  ) as {
    findings: unknown[];
  };
  expect(report.findings).toEqual([{ rule: "job/not-found", severity: "error", message: "m" }]);
});
