import type { Reportable } from "#report";
import { createPaint, defaultWidth, findingsText, jsonReport, tally } from "#report";
import type { Layout } from "#report";
import type { ReportArguments } from "./commands/arguments.ts";
import { exit, exitCode } from "./exit-code.ts";
import { writeText } from "./files/write.ts";

/** How a command reports. */
export interface ReportOptions {
  readonly report: "text" | "json";
  /** No text but errors and warnings. */
  readonly quiet: boolean;
  /** Colour may be used, at a terminal. */
  readonly color: boolean;
}

/** The options as the command line has them. */
export function reportOptionsOf({ report, quiet, noColor }: ReportArguments): ReportOptions {
  return { report: report === "json" ? "json" : "text", quiet: quiet === true, color: noColor !== true };
}

/** How one command shows its result. */
export interface Showing {
  /** Whether the program itself goes to standard output. */
  readonly programOnOutput: boolean;
  /** The text of a result, beside its findings. */
  readonly text: (result: Reportable, layout: Layout) => string[];
  /** Whether error findings are what was asked for (a check), or the reason why there is no result. */
  readonly findingsAreResult: boolean;
  /** What is said last where there is no result. */
  readonly refusal?: string;
  /** Whether the text is the result whatever came of it: a report on several programs. */
  readonly isReport?: boolean;
  /** Whether the text tells the findings itself, each where it belongs. */
  readonly tellsFindings?: boolean;
  /** Widest layout of the text, in columns, where it is not that of all others. */
  readonly widest?: number;
  /** Exit code, where the findings alone do not give it. */
  readonly code?: number;
}

/** Of a command that came to nothing. */
const nothing: Showing = { programOnOutput: false, text: () => [], findingsAreResult: false };

/** Widest layout: longer lines are hard to read. */
const widest = 100;
const narrowest = 40;

/**
 * Shows a result and gives the exit code. The result goes to standard output, and why there is none to standard error;
 * everything goes to standard error where the program itself takes standard output.
 */
export function show(result: Reportable, options: ReportOptions, showing: Showing = nothing): number {
  const code = showing.code ?? exitCode(result);
  const { programOnOutput, findingsAreResult } = showing;
  if (options.report === "json") {
    writeText(programOnOutput ? 2 : 1, jsonReport(result));
    return code;
  }
  const isResult =
    showing.isReport === true || code === exit.good || (code === exit.findings && findingsAreResult);
  const descriptor = isResult && !programOnOutput ? 1 : 2;
  const layout = layoutOf(descriptor, options, showing.widest);
  // Notes are about a program; where there is none they would hide what has to be mended.
  const shown = options.quiet || !isResult ? withoutNotes(result) : result.findings;
  const isTold = showing.tellsFindings === true && isResult && !options.quiet;
  const findings = isTold ? [] : findingsText(shown, layout);
  const text = options.quiet
    ? []
    : isResult
      ? showing.text(result, layout)
      : refusalText(shown, showing, layout);
  const lines = [...findings, ...text];
  if (lines.length > 0) writeText(descriptor, `${lines.join("\n").trimEnd()}\n`);
  return code;
}

function refusalText(findings: Reportable["findings"], { refusal }: Showing, { paint }: Layout): string[] {
  return refusal === undefined ? [] : [`${paint("error", "refused")}  ${tally({ findings })}; ${refusal}`];
}

function withoutNotes({ findings }: Reportable): Reportable["findings"] {
  return findings.filter(({ severity }) => severity !== "note");
}

/** Layout for standard output or standard error: colour at a terminal only, unless NO_COLOR or the user says no. */
export function layoutOf(descriptor: 1 | 2, { color }: Pick<ReportOptions, "color">, most = widest): Layout {
  const stream = descriptor === 1 ? process.stdout : process.stderr;
  const { NO_COLOR, TERM } = process.env;
  const painted = color && stream.isTTY && (NO_COLOR ?? "") === "" && TERM !== "dumb";
  const columns = stream.isTTY ? stream.columns : defaultWidth;
  return { width: Math.min(most, Math.max(narrowest, columns)), paint: createPaint(painted) };
}
