import type { Reportable } from "#report";

/** How a command ends, for scripts. */
export const exit = {
  /** No error finding. */
  good: 0,
  /** Error findings of the program: stages 3 to 7. */
  findings: 1,
  /** Input, dialect, files or usage are invalid. */
  invalid: 2,
  /** A fault of this package. */
  fault: 3,
} as const;

/** Rules about files rather than about what a program says; those of job/ and dialect/ count as invalid by their prefix. */
const fileRules: ReadonlySet<string> = new Set([
  "program/not-found",
  "program/folder",
  "program/unreadable",
  "program/changed",
  "program/not-writable",
  "program/disk-full",
  "program/overwrites-input",
  "program/not-generated",
  "program/not-as-proved",
]);

/** The exit code of a result. Invalid input comes first: what follows from it says less. */
export function exitCode({ findings, verdict }: Pick<Reportable, "findings" | "verdict">): number {
  const errors = findings.filter(({ severity }) => severity === "error");
  const invalid = errors.some(({ rule }) => /^(job|dialect)\//.test(rule) || fileRules.has(rule));
  if (invalid) return exit.invalid;
  return errors.length > 0 || verdict === "refused" || verdict === "failed" ? exit.findings : exit.good;
}
