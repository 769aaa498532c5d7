import type { Finding, Report } from "#base";

/** Gathers what is found, so that a cause is told once however many moves show it. */
export interface Causes {
  /**
   * Counts a cause.
   *
   * @param key what makes it one cause, such as the rule and the tool
   * @param offset where it shows; the finding has the first place
   * @param measure how bad it is; the finding has the greatest
   * @param times how often it shows here
   */
  add(
    key: string,
    offset: number,
    measure: number,
    finding: (offset: number, measure: number) => Finding,
    times?: number,
  ): void;
  /** Reports all of them, in the order of their places. */
  tell(report: Report): void;
}

interface Cause {
  readonly offset: number;
  readonly finding: (offset: number, measure: number) => Finding;
  measure: number;
  times: number;
}

/** Begins gathering. Causes are as many as a job has tools, and some: memory does not grow with the moves. */
export function gatherCauses(): Causes {
  const found = new Map<string, Cause>();
  return {
    add: (key, offset, measure, finding, times = 1) => {
      const known = found.get(key);
      if (known === undefined) found.set(key, { offset, finding, measure, times });
      else {
        known.times += times;
        known.measure = Math.max(known.measure, measure);
      }
    },
    tell: (report) => {
      const causes = [...found.values()].sort((one, other) => one.offset - other.offset);
      for (const { finding, offset, measure, times } of causes) {
        const { message, ...rest } = finding(offset, measure);
        report({ ...rest, message: times === 1 ? message : `${message} So ${times} times in this job.` });
      }
    },
  };
}
