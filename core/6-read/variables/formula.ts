import type { Finding, Report } from "#base";
import type { Reader } from "../reader.ts";
import { isBlank, isLetter } from "../scan-bytes.ts";
import type { Parameters } from "./parameters.ts";

/** A place in a line at which values are read: parameters, brackets, functions. Blanks count nowhere (NISTIR 6556 3.3). */
export interface Formula {
  readonly bytes: Uint8Array;
  /** Byte offset in the program of index 0 of the bytes. */
  readonly base: number;
  /** Index of the next byte, and behind the last of the line. */
  at: number;
  readonly end: number;
  readonly parameters: Parameters;
  /** Whether parameters have names, too. */
  readonly named: boolean;
  readonly report: Report;
  /** Values and brackets that are open. */
  depth: number;
  brackets: number;
  /** Rank of the last operation that was carried out at the level that was read last; 0 for none. */
  lastRank: number;
  /** Whether it is no expression: nothing more is read of it. */
  broken: boolean;
}

/** Values that are read from a place on, for one reader. */
export function createFormula(
  { parameters, format, report }: Pick<Reader, "parameters" | "format" | "report">,
  place: Pick<Formula, "bytes" | "base" | "at" | "end">,
): Formula {
  return {
    ...place,
    parameters,
    named: format.variables?.parameters === "named",
    report,
    depth: 0,
    brackets: 0,
    lastRank: 0,
    broken: false,
  };
}

/** The next byte that is no blank; -1 at the end. */
export function peek(formula: Formula): number {
  while (formula.at < formula.end && isBlank(formula.bytes[formula.at])) formula.at++;
  return formula.at < formula.end ? formula.bytes[formula.at] : -1;
}

/** Takes a byte if it is the next one. */
export function take(formula: Formula, byte: number): boolean {
  if (peek(formula) !== byte) return false;
  formula.at++;
  return true;
}

/** Takes a name without regard to case and blanks, if it stands here. */
export function takeName(formula: Formula, name: string): boolean {
  const start = formula.at;
  for (let index = 0; index < name.length; index++) {
    const byte = peek(formula);
    if ((isLetter(byte) ? byte & 0xdf : byte) !== name.charCodeAt(index)) {
      formula.at = start;
      return false;
    }
    formula.at++;
  }
  return true;
}

/** Takes letters as far as they go, in capitals. */
export function takeLetters(formula: Formula): string {
  let text = "";
  for (let byte = peek(formula); isLetter(byte); byte = peek(formula)) {
    text += String.fromCharCode(byte & 0xdf);
    formula.at++;
  }
  return text;
}

/** Byte offset in the program of the next byte. */
export function here(formula: Formula): number {
  peek(formula);
  return formula.base + formula.at;
}

/** There is no value: the finding says why, and nothing more is read. */
export function fail(formula: Formula, finding: Finding): number {
  if (!formula.broken) formula.report(finding);
  formula.broken = true;
  formula.at = formula.end;
  return NaN;
}
