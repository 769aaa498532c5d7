import type { ReadyDialect } from "../../core/index.ts";
import { prepareDialect } from "../../core/index.ts";
import type { Finding } from "#base";
import { dialectLoader } from "./dialects.ts";

/** A dialect ready to post with, by name or path; `texts` are files that stand in the test alone. Throws where it is refused. */
export async function ready(
  dialect: string,
  texts: Readonly<Record<string, string>> = {},
): Promise<ReadyDialect> {
  const findings: Finding[] = [];
  const made = await prepareDialect(dialect, dialectLoader(texts), (finding) => findings.push(finding));
  if (made === undefined)
    throw new Error(
      findings.map(({ rule, message, key }) => `${rule}: ${message} (${key ?? ""})`).join("\n"),
    );
  return made;
}

/** Rules of the error findings, sorted, each once. */
export function errorRules(findings: readonly Finding[]): string[] {
  return [
    ...new Set(findings.filter((finding) => finding.severity === "error").map((finding) => finding.rule)),
  ].sort();
}
