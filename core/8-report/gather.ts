import type { Finding, Report } from "#base";

/** Stages that report, in the order of the flow; the order decides whose errors are shown. */
export const reportingStages = [
  "job",
  "lower",
  "sequence",
  "simulate",
  "guard",
  "read",
  "guard-again",
  "compare",
] as const;

/** A stage that reports. */
export type ReportingStage = (typeof reportingStages)[number];

/** Findings of all stages of one run. */
export interface Gathering {
  /** Where a stage hands its findings. */
  reportOf(stage: ReportingStage): Report;
  /** Whether any stage up to this one has reported an error. */
  failedBy(stage: ReportingStage): boolean;
  /** How many errors there are in all. */
  errors(): number;
  /**
   * What is shown: stages gather within themselves and stop between each other, so nothing behind the first stage with an
   * error, whose findings would be its echoes. What the dialect cannot say of a job is found by two stages, lowering and
   * sequencing, by turns; both are shown, each key once.
   */
  findings(): Finding[];
  /** All of them: on a program from elsewhere each stage says something of its own. */
  all(): Finding[];
}

/**
 * The most findings of one rule that a stage keeps: reader and guard tell 100, and one that counts the rest. By rule, so that a
 * matter of form in each of a thousand blocks does not keep what is wrong with one of them from being told.
 */
const mostOfRule = 101;

/** Starts gathering. */
export function gather(): Gathering {
  const kept = new Map<ReportingStage, Finding[]>();
  const counts = { errors: 0 };
  const told = new Map<string, number>();
  const failed = new Set<ReportingStage>();
  const upTo = (stage: ReportingStage) => reportingStages.slice(0, reportingStages.indexOf(stage) + 1);
  return {
    reportOf: (stage) => (finding) => {
      const list = kept.get(stage) ?? [];
      kept.set(stage, list);
      if (finding.severity === "error") {
        counts.errors++;
        failed.add(stage);
      }
      const times = (told.get(`${stage} ${finding.rule}`) ?? 0) + 1;
      told.set(`${stage} ${finding.rule}`, times);
      if (times <= mostOfRule) list.push(finding);
    },
    failedBy: (stage) => upTo(stage).some((one) => failed.has(one)),
    errors: () => counts.errors,
    all: () => reportingStages.flatMap((stage) => kept.get(stage) ?? []),
    findings: () => {
      const first = reportingStages.find((stage) => failed.has(stage)) ?? "compare";
      const shown = upTo(first === "lower" ? "sequence" : first);
      return withoutRepeats(shown.flatMap((stage) => kept.get(stage) ?? []));
    },
  };
}

/** Both stages that go by the dialect miss a key that neither has: it is asked for once. */
function withoutRepeats(findings: readonly Finding[]): Finding[] {
  const asked = new Set<string>();
  return findings.filter(({ rule, key }) => {
    if (rule !== "dialect/undeclared" || key === undefined) return true;
    const isFirst = !asked.has(key);
    asked.add(key);
    return isFirst;
  });
}
