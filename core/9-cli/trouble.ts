import type { Finding } from "#base";
import { exit } from "./exit-code.ts";
import { writeText } from "./files/write.ts";
import type { ReportOptions } from "./output.ts";
import { show } from "./output.ts";
import { packageVersion } from "./package.ts";
import type { UsageError } from "./usage.ts";
import { explainUsage, helpPage } from "./usage.ts";

/** Shows a mistake on the command line, as the user asked for reports, as far as that can be told. */
export function showUsageError(error: UsageError, words: readonly string[]): number {
  const finding: Finding = {
    rule: "job/usage",
    severity: "error",
    message: explainUsage(error.message, words),
    fix: `\`${helpPage(words)}\` shows how it goes.`,
  };
  const asked: ReportOptions = {
    report: /(^| )--report[= ]json( |$)/.test(words.join(" ")) ? "json" : "text",
    quiet: false,
    color: !words.includes("--no-color"),
  };
  return show({ verdict: "refused", findings: [finding], summary: { assumptions: [] } }, asked);
}

/** Owns up to a fault of this package. The stack is for whoever looks into it, and shown on request only. */
export function showFault(error: unknown): number {
  const said = error instanceof Error ? error.message : String(error);
  const lines = [
    "tapewright has a fault of its own and stopped; no program was written by this run.",
    `  ${said}`,
    "Please report it, with this text, the command line, and the files if they may be shown:",
    `  tapewright ${packageVersion()}, node ${process.version}, ${process.platform} ${process.arch}`,
  ];
  const debug = (process.env["TAPEWRIGHT_DEBUG"] ?? "") !== "";
  if (debug && error instanceof Error) lines.push(error.stack ?? "");
  else lines.push("TAPEWRIGHT_DEBUG=1 shows where in the code it happened.");
  writeText(2, `${lines.join("\n")}\n`);
  return exit.fault;
}
