import type { Finding } from "#base";
import type { CaseResult } from "#cases";
import { readCases, runCase } from "#cases";
import { readYaml } from "#dialect";
import type { ReadyDialect } from "../../core/index.ts";

/** Cases of a text, run. */
export interface Ran {
  readonly results: readonly CaseResult[];
  /** "dialect/case 2:9 message", lines and columns from 1. */
  readonly said: readonly string[];
  readonly findings: readonly Finding[];
}

/** Runs a list of cases as YAML has it. */
export async function runText(text: string, means: ReadyDialect): Promise<Ran> {
  const findings: Finding[] = [];
  const report = (finding: Finding): void => void findings.push(finding);
  const list = await readYaml({ file: "a.yaml", bytes: new TextEncoder().encode(text) }, report);
  const cases = (list && readCases(list, "a.yaml", report)) ?? [];
  const results = cases.flatMap((one) => runCase(one, "a.yaml", means, report) ?? []);
  const said = findings.map(({ rule, place, message }) => {
    const bytes = new TextEncoder().encode(text).subarray(0, place?.offset ?? 0);
    const before = new TextDecoder().decode(bytes).split("\n");
    return `${rule} ${before.length}:${[...(before.at(-1) ?? "")].length + 1} ${message}`;
  });
  return { results, said, findings };
}

/** What is written for steps. */
export async function writtenFor(
  means: ReadyDialect,
  ...given: string[]
): Promise<Ran & { written: readonly string[] }> {
  const ran = await runText(JSON.stringify([{ given, expect: [] }]), means);
  return { ...ran, written: ran.results[0]?.written ?? [] };
}
