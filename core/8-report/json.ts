import type { Located } from "./locate.ts";
import type { Reportable } from "./outcome.ts";

/** A finding in the JSON report; what does not apply is left out. */
export interface JsonFinding {
  readonly rule: string;
  readonly severity: "error" | "warning" | "note";
  readonly message: string;
  readonly file?: string;
  /** Counted from 1. */
  readonly line?: number;
  /** Counted from 1, in characters. */
  readonly column?: number;
  readonly fix?: string;
  /** The corrected block or blocks of a program. */
  readonly corrected?: string;
  /** The key behind it; `file` is empty and `line` 0 where no file of the dialect states it. */
  readonly dialect?: { readonly file: string; readonly line: number; readonly key: string };
}

/**
 * The report for programs: one JSON document, indented by two, with a line end.
 *
 * { "verdict", "findings": [{ "rule", "severity", "message", "file", "line", "column", "fix", "dialect" }], "summary" }
 */
export function jsonReport({ verdict, findings, summary, proof, output }: Reportable): string {
  const report = {
    verdict,
    findings: findings.map(jsonFinding),
    summary: {
      ...summary,
      ...(output === undefined ? {} : { output }),
      ...(proof === undefined ? {} : { proof }),
    },
  };
  return `${JSON.stringify(report, undefined, 2)}\n`;
}

/** A finding as the JSON report has it. */
export function jsonFinding(located: Located): JsonFinding {
  const { rule, severity, message, file, line, column, fix, corrected, origin } = located;
  return {
    rule,
    severity,
    message,
    ...(file === undefined ? {} : { file }),
    ...(line === undefined || column === undefined ? {} : { line, column }),
    ...(fix === undefined ? {} : { fix }),
    ...(corrected === undefined ? {} : { corrected }),
    ...(origin === undefined ? {} : { dialect: { file: origin.file, line: origin.line, key: origin.key } }),
  };
}
