import * as findings from "./findings-variables.ts";
import type { Formula } from "./formula.ts";
import { fail, here, peek, take } from "./formula.ts";
import { heldBy, isKept, mostParameters, ownParameters } from "./machine-parameters.ts";
import type { ParameterName } from "./parameters.ts";
import { getParameter } from "./parameters.ts";

/** Reads a value; handed in, since a parameter may be numbered by an expression. */
export type ReadValue = (formula: Formula) => number;

/** Numbers of parameters, of codes and of repeats may be off by this much (NISTIR 6556 3.3.2.1). */
export const wholeWithin = 0.0001;

const hash = 35;
const openName = 60;
const closeName = 62;
const open = 91;
const close = 93;

/** Reads the parameter that stands here, behind its `#`: a number, an expression, or a name; undefined where it is none. */
export function readName(formula: Formula, readValue: ReadValue): ParameterName | undefined {
  const start = here(formula);
  formula.at++;
  if (peek(formula) === openName) return readWords(formula, start);
  const value = readValue(formula);
  if (Number.isNaN(value)) return undefined;
  const number = Math.round(value);
  if (Math.abs(number - value) > wholeWithin) {
    fail(formula, findings.badParameter(start, `#${String(value)}`, "has no whole number"));
    return undefined;
  }
  if (number >= 1 && number <= mostParameters) return number;
  fail(formula, findings.badParameter(start, `#${String(number)}`, "is out of range"));
  return undefined;
}

/** `<Drill Depth>` -> drilldepth: neither case nor blanks count. */
function readWords(formula: Formula, start: number): string | undefined {
  const from = formula.at + 1;
  const to = formula.bytes.subarray(0, formula.end).indexOf(closeName, from);
  const text = to < 0 ? "" : String.fromCharCode(...formula.bytes.subarray(from, Math.min(to, from + 200)));
  const name = text.replace(/\s/g, "").toLowerCase();
  if (name === "" || !formula.named || !/^[a-z0-9_.$-]+$/.test(name)) {
    const reason = formula.named
      ? "is no name of a parameter"
      : "is a name, and this dialect has numbered parameters alone";
    fail(formula, findings.badParameter(start, `#<${text.slice(0, 40)}>`, reason));
    return undefined;
  }
  formula.at = to + 1;
  return name;
}

/** A parameter as the text has it: #12, #<depth>. */
export function nameText(name: ParameterName): string {
  return typeof name === "number" ? `#${String(name)}` : `#<${name}>`;
}

/** The value of the parameter that stands here; NaN where it cannot be known. */
export function parameterValue(formula: Formula, readValue: ReadValue): number {
  const start = here(formula);
  const name = readName(formula, readValue);
  if (name === undefined) return NaN;
  const isOwn = typeof name !== "number" || name <= ownParameters;
  const value = isOwn ? getParameter(formula.parameters, name) : undefined;
  if (value !== undefined) return value;
  formula.report(
    typeof name === "string" && !name.startsWith("_")
      ? findings.badParameter(
          start,
          nameText(name),
          "has no value here: the subprogram at hand has not set it",
        )
      : findings.runTimeValue(start, nameText(name), reasonOf(name)),
  );
  return NaN;
}

function reasonOf(name: ParameterName): string {
  if (typeof name === "number")
    return name > ownParameters ? `is ${heldBy(name)}` : "is not set before in the program";
  return isKept(name) ? "is kept by the controller" : "is not set before in the program";
}

/** EXISTS[#<name>]: whether a name has been set; a number always is one. */
export function existsHere(formula: Formula, readValue: ReadValue): number {
  const start = here(formula);
  const opened = take(formula, open) && peek(formula) === hash;
  const name = opened ? readName(formula, readValue) : undefined;
  if (name === undefined || !take(formula, close))
    return fail(formula, findings.badExpression(start, "has EXISTS without one parameter in brackets"));
  if (typeof name === "number" || getParameter(formula.parameters, name) !== undefined) return 1;
  if (!name.startsWith("_")) return 0;
  formula.report(findings.runTimeValue(start, nameText(name), reasonOf(name)));
  return NaN;
}
