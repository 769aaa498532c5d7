import type { CanonicalCall } from "../canonical-calls.ts";
import type { ForeignProgram } from "./foreign.ts";
import type { ForeignReading } from "./read-foreign.ts";
import { differenceOf } from "./read-foreign.ts";

/** What the interpreter did with a program. */
export interface ForeignRun {
  /** Whether it ran to its end. */
  readonly runs: boolean;
  readonly calls: readonly CanonicalCall[];
}

/**
 * What is wrong about a reading, "" for nothing: a rule that is not the expected one; a program that the interpreter runs and we
 * read otherwise; one that either of us refuses alone without a reason in its table; a reason that there is no call for.
 */
export function verdictOf(
  program: ForeignProgram,
  reading: ForeignReading,
  run: ForeignRun,
  slack = 0,
): string {
  const { refused, because, differs } = program;
  const { rules, meanings } = reading;
  const found = rules.filter((rule) => !rule.startsWith("block/")).join(" ");
  if (found !== refused) return `is refused by "${found}" in the stead of "${refused}"`;
  if (meanings && run.runs) {
    const difference = differenceOf(meanings, run.calls, slack);
    if (!differs && difference !== "") return difference;
    if (differs && difference === "") return "is done as we read it, against its table";
  }
  const isOfOneMind = run.runs ? meanings !== undefined && !differs : meanings === undefined;
  if (because === "" && !isOfOneMind) return run.runs ? "is refused by us alone" : "is read by us alone";
  // A form that we object to may be explained, too.
  if (because !== "" && isOfOneMind && rules.every((rule) => !rule.startsWith("block/")))
    return "has a reason for nothing: both do the same";
  return "";
}
