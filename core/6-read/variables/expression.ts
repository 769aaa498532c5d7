import { isDigit, isLetter } from "../scan-bytes.ts";
import * as findings from "./findings-variables.ts";
import type { Formula } from "./formula.ts";
import { fail, here, peek, take, takeLetters, takeName } from "./formula.ts";
import { angleOf, functions } from "./functions.ts";
import type { Operator } from "./operators.ts";
import { logicalRank, operators, sumRank } from "./operators.ts";
import { existsHere, parameterValue } from "./parameter-name.ts";

/** The most brackets inside one another, and the most signs, marks and brackets together. */
const mostBrackets = 16;
const mostDepth = 64;

const open = 91;
const close = 93;
const hash = 35;
const plus = 43;
const minus = 45;
const point = 46;
const slash = 47;

/**
 * Reads a value: a number, a parameter, an expression in brackets, a function, or one of these behind a sign (NISTIR 6556 3.3.2).
 * `-[#1 * 2]`, `#<depth>`, `ATAN[1]/[2]`. A sign belongs to the value behind it: -2 ** 2 is 4.
 *
 * @returns the value; NaN where there is none or where it cannot be known, which has been told
 */
export function readValue(formula: Formula): number {
  if (++formula.depth > mostDepth)
    return fail(formula, findings.tooDeep(here(formula), "Signs, marks and brackets", mostDepth));
  const value = readOne(formula);
  formula.depth--;
  return value;
}

function readOne(formula: Formula): number {
  const byte = peek(formula);
  if (byte === open) return readBrackets(formula);
  if (byte === hash) return parameterValue(formula, readValue);
  if (byte === plus || byte === minus) {
    formula.at++;
    const value = readValue(formula);
    return byte === minus ? 0 - value : value;
  }
  if (isLetter(byte)) return readFunction(formula);
  return readDigits(formula);
}

/** A number without its sign; blanks may stand anywhere in it. */
function readDigits(formula: Formula): number {
  let text = "";
  for (let byte = peek(formula); isDigit(byte) || byte === point; byte = peek(formula)) {
    text += String.fromCharCode(byte);
    formula.at++;
  }
  const value = Number(text);
  if (/\d/.test(text) && Number.isFinite(value)) return value;
  const reason = text === "" ? "has no value here" : `has ${text} where a number belongs`;
  return fail(formula, findings.badExpression(here(formula), reason));
}

/** `[ ... ]`: operations by rank, equal ones from left to right. */
export function readBrackets(formula: Formula): number {
  const start = here(formula);
  if (!take(formula, open))
    return fail(formula, findings.badExpression(start, "does not begin with [", "Put it into brackets."));
  if (++formula.brackets > mostBrackets)
    return fail(formula, findings.tooDeep(start, "Brackets", mostBrackets));
  const value = readChain(formula, 0);
  formula.brackets--;
  if (formula.broken || take(formula, close)) return value;
  return fail(formula, findings.badExpression(start, "is not closed in its block", "Add ]."));
}

function readChain(formula: Formula, least: number): number {
  let left = readValue(formula);
  let lastRank = 0;
  for (;;) {
    const operator = nextOperator(formula, least);
    if (operator === undefined) break;
    const at = here(formula);
    takeName(formula, operator.name);
    const right = readChain(formula, operator.rank + 1);
    if (operator.rank === logicalRank && formula.lastRank === sumRank)
      return failMixed(formula, operator, at);
    left = carryOut(formula, operator, left, right, at);
    lastRank = operator.rank;
  }
  formula.lastRank = lastRank;
  return left;
}

/** Whether AND, OR and XOR go with sums from left to right or behind them differs, so an expression must not rest on it. */
function failMixed(formula: Formula, { name }: Operator, at: number): number {
  const reason = `has a sum or a difference behind ${name}, which not all controllers work out first`;
  return fail(formula, findings.badExpression(at, reason, "Put the sum into brackets."));
}

/** The operation that stands here, if it is to be carried out before those below a rank. */
function nextOperator(formula: Formula, least: number): Operator | undefined {
  const byte = peek(formula);
  if (formula.broken || byte === close || byte === -1) return undefined;
  const start = formula.at;
  const found = operators.find(({ name }) => takeName(formula, name));
  formula.at = start;
  if (found === undefined) {
    const text = isLetter(byte) ? takeLetters(formula) : String.fromCharCode(byte);
    formula.at = start;
    fail(formula, findings.badExpression(here(formula), `has ${text}, which is no operation`));
    return undefined;
  }
  return found.rank >= least ? found : undefined;
}

function carryOut(formula: Formula, { work }: Operator, left: number, right: number, at: number): number {
  if (Number.isNaN(left) || Number.isNaN(right)) return NaN;
  return checked(formula, work(left, right), at);
}

/** A result that is a number; what has none is told, and what follows from it is not known. */
function checked(formula: Formula, result: number | string, at: number): number {
  if (typeof result === "number" && Number.isFinite(result)) return result;
  const reason = typeof result === "string" ? result : "The result is too large";
  formula.report(findings.noNumber(at, reason));
  return NaN;
}

function readFunction(formula: Formula): number {
  const start = here(formula);
  const name = takeLetters(formula);
  if (name === "ATAN") return readAngle(formula, start);
  if (name === "EXISTS") return existsHere(formula, readValue);
  const work = functions.get(name);
  if (work === undefined) return fail(formula, findings.unknownFunction(start, name));
  const value = readBrackets(formula);
  return Number.isNaN(value) ? NaN : checked(formula, work(value), start);
}

/** ATAN[y]/[x]: the slash belongs to the function. */
function readAngle(formula: Formula, start: number): number {
  const y = readBrackets(formula);
  if (formula.broken) return NaN;
  if (!take(formula, slash)) {
    const reason = "has ATAN without the slash and the second value";
    return fail(formula, findings.badExpression(start, reason, "Write ATAN[y]/[x]."));
  }
  const x = readBrackets(formula);
  return Number.isNaN(y) || Number.isNaN(x) ? NaN : angleOf(y, x);
}
