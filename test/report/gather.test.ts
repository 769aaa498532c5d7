import { expect, test } from "vitest";
import type { Finding } from "#base";
import { gather } from "#report";

const error = (rule: string, message: string): Finding => ({ rule, severity: "error", message, fix: "" });

test("what one rule says of each block does not keep another rule from being told", () => {
  const findings = gather();
  const report = findings.reportOf("read");
  for (let block = 0; block < 5000; block++) report(error("block/number", `block ${block}`));
  report(error("read/unknown-code", "the last"));
  const all = findings.all();
  expect(findings.errors()).toBe(5001);
  expect(all.filter(({ rule }) => rule === "block/number")).toHaveLength(101);
  expect(all.at(-1)?.message).toBe("the last");
  expect(findings.findings()).toEqual(all);
});
