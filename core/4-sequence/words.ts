import type { Report } from "#base";
import { noWord, refusal, undeclared } from "./findings.ts";
import type { Run } from "./run.ts";

/** Why a mode is said that no move of the job asks for. */
export const startReason = "a program states every mode before it moves";

/** The same report, but each word and each fact is asked for once. */
export function onlyOnce(report: Report): Report {
  const told = new Set<string>();
  return (finding) => {
    const missing = finding.rule === "dialect/undeclared" || finding.rule === "lower/word";
    const subject = `${finding.rule} ${missing ? (finding.key ?? "") : finding.message}`;
    if (told.has(subject)) return;
    told.add(subject);
    report(finding);
  };
}

/** Whether the dialect has a word that the program cannot do without; reports it where it has none or says nothing. */
export function need(run: Run, key: string, because: string): boolean {
  const word = run.request.capabilities.words[key];
  if (word === true) return true;
  run.report((word === false ? noWord : undeclared)(key, because, run.state.source));
  return false;
}

/** Whether the dialect has a word that is said only where there is one; reports it where the dialect says nothing. */
export function optional(run: Run, key: string, because: string): boolean {
  const word = run.request.capabilities.words[key];
  if (word === undefined) run.report(undeclared(key, because, run.state.source));
  return word === true;
}

/** A fact of the machine or the dialect; reports it where no file states it. */
export function fact<Value>(
  run: Run,
  value: Value | undefined,
  key: string,
  because: string,
): Value | undefined {
  if (value === undefined) run.report(undeclared(key, because, run.state.source));
  return value;
}

/** Refuses with a rule of its own. */
export function refuse(run: Run, rule: string, message: string, fix: string, key?: string): void {
  run.report(refusal(rule, message, fix, run.state.source, key));
}
