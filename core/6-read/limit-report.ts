import type { Finding, Report } from "#base";

/** Findings of one rule that are given one by one; the rest is counted. */
const mostOfOneRule = 100;

/**
 * Holds a flood back: a program in another order has the same finding in each of a million blocks, and who gathers
 * findings keeps them in memory.
 *
 * @param once whether a rule is told once at a place: a block in a loop is read again and again
 * @returns the limited report, and what tells the number of those held back
 */
export function limitReport(report: Report, once: boolean): { report: Report; close: () => void } {
  const counts = new Map<string, { count: number; last: Finding }>();
  const told = new Set<string>();
  return {
    report(finding) {
      const place = once ? `${finding.rule} ${String(finding.place?.offset)} ${finding.message}` : undefined;
      if (place !== undefined && told.has(place)) return;
      const count = (counts.get(finding.rule)?.count ?? 0) + 1;
      counts.set(finding.rule, { count, last: finding });
      if (count > mostOfOneRule) return;
      if (place !== undefined) told.add(place);
      report(finding);
    },
    close() {
      for (const { count, last } of counts.values()) {
        const held = count - mostOfOneRule;
        if (held > 0)
          report({ ...last, message: `${last.message} (the last of ${held} more findings of this rule)` });
      }
    },
  };
}
