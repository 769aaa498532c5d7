import type { Severity, SimulationFigures, Times, UnitSystem } from "#base";
import type { Located } from "./locate.ts";

/** What a command came to: proved text, refused, a program read without a job to compare, or one that differs. */
export type Verdict = "proved" | "refused" | "read" | "failed";

/** What was made or read, in numbers. A count that was not reached is absent. */
export interface Summary {
  readonly bytes?: number;
  readonly blocks?: number;
  readonly steps?: number;
  readonly moves?: number;
  /** Tool numbers in order of use. */
  readonly tools?: readonly number[];
  readonly units?: UnitSystem;
  /** How long it is estimated to run. */
  readonly time?: Times;
  /** Name of the dialect. */
  readonly dialect?: string;
  /** What a simulation of the stock came to. */
  readonly simulation?: SimulationFigures;
  /** What is taken for granted at the machine, one sentence each. */
  readonly assumptions: readonly string[];
  /** What else a command tells; it stands in the JSON report as it is. */
  readonly [more: string]: unknown;
}

/** What a report says of a proof. */
export interface ProofFacts {
  readonly bytes: number;
  readonly steps: number;
  /** SHA-256 of the text, hexadecimal. */
  readonly sha256: string;
  /** The same of what it was proved against: job, dialect, set-up and options. */
  readonly facts: string;
}

/** Everything that a report shows. Plain data. */
export interface Reportable {
  readonly verdict: Verdict;
  readonly findings: readonly Located[];
  readonly summary: Summary;
  readonly proof?: ProofFacts;
  /** Where the program stands now; absent where none was written. */
  readonly output?: string;
}

/** How many findings of a severity there are. */
export function count(findings: readonly { readonly severity: Severity }[], severity: Severity): number {
  return findings.filter((finding) => finding.severity === severity).length;
}
