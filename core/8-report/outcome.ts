import type { Severity, UnitSystem } from "#base";
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
  /** Name of the dialect. */
  readonly dialect?: string;
  /** What a simulation of the stock came to. Lengths in mm, volumes in mm3, rates in mm3 a minute. */
  readonly simulation?: SimulationFigures;
  /** What is taken for granted at the machine, one sentence each. */
  readonly assumptions: readonly string[];
  /** What else a command tells; it stands in the JSON report as it is. */
  readonly [more: string]: unknown;
}

/** A simulation of the stock in figures: what each operation and each tool took away. */
export interface SimulationFigures {
  readonly units: UnitSystem;
  readonly cell: number;
  /** The thinnest wall that a rapid is certain to be seen in. */
  readonly surestWall: number;
  readonly operations: readonly CutFigures[];
  readonly tools: readonly CutFigures[];
  readonly stockVolume: number;
  readonly volumeLeft: number;
}

export interface CutFigures {
  readonly id: string;
  readonly tool: number;
  readonly removed: number;
  readonly greatestRate: number;
  /** How far the tool goes below the stock. */
  readonly below: number;
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
