import { expect, test } from "vitest";
import { postText } from "../../core/index.ts";
import { ready } from "../support/ready.ts";
import { sampleJob } from "../axes/sample-job.ts";

/** What the sample job (places to 80 mm, 300 to 900 mm a minute, 9000 and 12000 rpm, waits of 20 s) meets in few digits. */
const cases: readonly (readonly [string, string])[] = [
  ["length: { mm: 3, inch: 4, digits: 4 }", "numbers.length"],
  ["feed-per-minute: { mm: 1, inch: 1, digits: 3 }", "numbers.feed-per-minute"],
  ["speed: { decimals: 0, suppressed-zeros: none, digits: 4 }", "numbers.speed"],
  ["dwell: { decimals: 2, digits: 3 }", "numbers.dwell"],
  ["length: { mm: 3, inch: 4, whole-digits: 1 }", "numbers.length"],
];

test.each(cases)("a number with more digits than %s is a finding before any text", async (keys, key) => {
  const text = `dialect: leaf\ntitle: A leaf\nextends: longhand\nnumbers: { ${keys} }\n`;
  const { outcome, program } = postText(
    { job: sampleJob },
    await ready("leaf.dialect.yaml", { "leaf.dialect.yaml": text }),
  );
  expect(program).toBeUndefined();
  const errors = outcome.findings.filter(({ severity }) => severity === "error");
  expect([...new Set(errors.map(({ rule, key: of }) => `${rule} ${of ?? ""}`))]).toContain(
    `lower/range ${key}`,
  );
  expect(errors.find(({ rule }) => rule === "lower/range")?.fix).toContain("digits");
});

test("a dwell in revolutions with more digits than its word is a finding, too", async () => {
  // 0.5 s at 12000 rpm are 100 revolutions.
  const keys = (digits: number): string =>
    `dwell: { unit: rev }\nnumbers: { dwell: { decimals: 0, suppressed-zeros: none, digits: ${digits} } }\nconfirm: { at-speed: operator, stopped: operator }\n`;
  const found = async (digits: number): Promise<string[]> => {
    const text = `dialect: leaf\ntitle: A leaf\nextends: longhand\n${keys(digits)}`;
    const { outcome } = postText(
      { job: sampleJob },
      await ready("leaf.dialect.yaml", { "leaf.dialect.yaml": text }),
    );
    return outcome.findings.map(({ rule, key }) => `${rule} ${key ?? ""}`);
  };
  expect(await found(2)).toContain("lower/range numbers.dwell");
  expect(await found(3)).not.toContain("lower/range numbers.dwell");
});

test("numbers that fit are no finding", async () => {
  const { outcome } = postText({ job: sampleJob }, await ready("longhand"));
  expect(outcome.findings.map(({ rule }) => rule)).not.toContain("lower/range");
});
