import type { Finding, Severity } from "#base";
import type { JobRule } from "../../findings.ts";

/** Rules of cutter location source alone; what each demands stands in the catalogue of rules. */
export const clRules = [
  "job/cl-syntax",
  "job/cl-columns",
  "job/cl-literal",
  "job/cl-word",
  "job/cl-unsupported",
  "job/cl-item",
  "job/cl-number",
  "job/cl-units",
  "job/cl-shift",
  "job/cl-place",
  "job/cl-axis",
  "job/cl-fourth",
  "job/cl-home",
  "job/cl-clearance",
  "job/cl-rapid",
  "job/cl-feed",
  "job/cl-circle",
  "job/cl-cycle",
  "job/cl-tool",
  "job/cl-tip",
  "job/cl-spindle",
  "job/cl-end",
] as const;

type ClRule = JobRule | (typeof clRules)[number];

export function finding(
  severity: Severity,
  rule: ClRule,
  offset: number,
  message: string,
  fix: string,
): Finding {
  return { rule, severity, message, place: { source: "job", offset }, fix };
}

export const error = (rule: ClRule, offset: number, message: string, fix: string): Finding =>
  finding("error", rule, offset, message, fix);

export const note = (rule: ClRule, offset: number, message: string, fix: string): Finding =>
  finding("note", rule, offset, message, fix);

/** A finding that a choice of the user may make milder. */
export const milder = (severity: Severity, found: Finding): Finding => ({ ...found, severity });
