import type { Formula } from "../variables/formula.ts";
import { take } from "../variables/formula.ts";
import { readBrackets, readValue } from "../variables/expression.ts";
import { wholeWithin } from "../variables/parameter-name.ts";
import { argumentCount, setParameter } from "../variables/parameters.ts";
import type { Reader } from "../reader.ts";
import { beginCall, endCall } from "./calls.ts";
import * as findings from "./findings-flow.ts";
import type { Flow } from "./flow.ts";
import type { LineFormula } from "./line-values.ts";
import { closeLine, formulaOf } from "./line-values.ts";
import type { PlacedLine, Structure } from "./structures.ts";
import type { Text } from "./text.ts";

/** Gives up: what is next cannot be known. */
export const nowhere = -1;

/**
 * Carries a line out that decides which is next.
 *
 * @returns byte offset of the line to go on with; -1 where it cannot be known, which has been reported
 */
export function decide(reader: Reader, flow: Flow, text: Text, line: PlacedLine): number {
  const formula = formulaOf(reader, text, line);
  if (formula === undefined) return nowhere;
  switch (line.keyword) {
    case "SUB":
    case "O":
      return passSubprogram(reader, flow, line);
    case "CALL":
      return call(reader, flow, line, formula);
    case "M98":
      return callByCode(reader, flow, line, formula);
    case "RETURN":
    case "ENDSUB":
    case "M99":
      return leave(reader, flow, line, formula);
    case "IF":
      return enterIf(reader, text, line, formula);
    case "WHILE":
      return line.structure?.keyword === "DO"
        ? doAgain(reader, flow, line, formula)
        : onlyIf(reader, line, formula, line.next, endOf(line).next);
    case "REPEAT":
      return enterRepeat(reader, flow, line, formula);
    case "ENDREPEAT":
      return closeLine(formula) ? nextRound(flow, line) : nowhere;
    case "BREAK":
      flow.leftWhile ||= line.structure?.keyword === "WHILE";
      return closeLine(formula) ? endOf(line).next : nowhere;
    default:
      return closeLine(formula) ? jumpOf(line) : nowhere;
  }
}

/** Where lines lead that have nothing to work out. A branch that is come to from above is over. */
function jumpOf(line: PlacedLine): number {
  const { structure } = line;
  switch (line.keyword) {
    case "ELSEIF":
    case "ELSE":
      return endOf(line).next;
    case "ENDWHILE":
      return structure?.start.offset ?? nowhere;
    case "CONTINUE":
      return structure?.keyword === "DO" ? structure.end.offset : (structure?.start.offset ?? nowhere);
    default:
      return line.next;
  }
}

function endOf(line: PlacedLine): PlacedLine {
  return line.structure?.end ?? line;
}

/** A subprogram is passed over where it stands; one that was called before must not be come to. */
function passSubprogram(reader: Reader, flow: Flow, line: PlacedLine): number {
  const hasEnded = reader.state.phase === "ended";
  if (!hasEnded && (line.keyword === "O" || flow.called.has(line.label))) {
    const message = `The program runs into the subprogram O${line.label}.`;
    const fix = "End the program before it, or put an O word subprogram before its first call.";
    reader.report(findings.badStructure(line.offset, message, fix));
    return nowhere;
  }
  return endOf(line).next;
}

/** `O100 CALL [1] [2]`; the label may be worked out: `O[#1] CALL`. */
function call(reader: Reader, flow: Flow, line: PlacedLine, formula: LineFormula): number {
  const given: number[] = [];
  while (formula.at < formula.end && startsBracket(formula)) given.push(readBrackets(formula));
  if (formula.broken || !closeLine(formula)) return nowhere;
  if (given.length > argumentCount) {
    const message = `A call has at most ${String(argumentCount)} values.`;
    reader.report(findings.badStructure(line.offset, message, "Set parameters before the call."));
    return nowhere;
  }
  const label = line.label === "" ? labelOf(reader, line, formula) : line.label;
  return label === undefined ? nowhere : beginCall(reader, flow, line, { label, given, times: 1 });
}

function startsBracket(formula: Formula): boolean {
  const found = take(formula, 91);
  if (found) formula.at--;
  return found;
}

/** A label that is worked out. */
function labelOf(reader: Reader, line: PlacedLine, formula: LineFormula): string | undefined {
  formula.at = formula.lineStart + line.labelAt;
  const value = readValue(formula);
  if (!Number.isNaN(value)) return String(Math.round(value));
  reader.report(findings.unknownCondition(line.offset));
  return undefined;
}

/** `M98 P100 L3`: three times; parameters are those of the caller. */
function callByCode(reader: Reader, flow: Flow, line: PlacedLine, formula: LineFormula): number {
  const words = new Map<string, number>();
  for (;;) {
    const letter = ["P", "L"].find(
      (one) => take(formula, one.charCodeAt(0)) || take(formula, one.charCodeAt(0) + 32),
    );
    if (letter === undefined || words.has(letter)) break;
    words.set(letter, readValue(formula));
  }
  if (formula.broken || !closeLine(formula)) return nowhere;
  const [label, times] = [words.get("P"), words.get("L") ?? 1];
  if (label === undefined || !isCount(label) || !isCount(times)) {
    const message = "M98 needs the number of the subprogram as P, and may have whole times as L.";
    reader.report(findings.badStructure(line.offset, message, "Write M98 P100 L2."));
    return nowhere;
  }
  const isNone = Math.round(times) === 0;
  const wanted = { label: String(Math.round(label)), given: undefined, times: Math.round(times) };
  return isNone ? line.next : beginCall(reader, flow, line, wanted);
}

function isCount(value: number): boolean {
  return value >= 0 && value < 1_000_000_000 && Math.abs(value - Math.round(value)) <= wholeWithin;
}

/** The end of a subprogram, which may hand a value back as #<_value>. */
function leave(reader: Reader, flow: Flow, line: PlacedLine, formula: LineFormula): number {
  const value = line.keyword !== "M99" && startsBracket(formula) ? readBrackets(formula) : undefined;
  if (formula.broken || !closeLine(formula)) return nowhere;
  const { parameters } = reader;
  if (value !== undefined) setParameter(parameters, "_value", value);
  if (line.keyword !== "M99") setParameter(parameters, "_value_returned", value === undefined ? 0 : 1);
  return endCall(reader, flow);
}

/** Goes to the first branch whose condition holds. */
function enterIf(reader: Reader, text: Text, line: PlacedLine, formula: LineFormula): number {
  const first = condition(reader, line, formula);
  if (first === undefined) return nowhere;
  if (first) return line.next;
  for (const branch of line.structure?.branches ?? []) {
    const its = formulaOf(reader, text, branch);
    if (its === undefined) return nowhere;
    if (branch.keyword === "ELSE") return closeLine(its) ? branch.next : nowhere;
    const holds = condition(reader, branch, its);
    if (holds === undefined) return nowhere;
    if (holds) return branch.next;
  }
  return endOf(line).next;
}

/** The WHILE at the end of a DO. Behind a BREAK out of a WHILE controllers may leave the DO whatever its condition. */
function doAgain(reader: Reader, flow: Flow, line: PlacedLine, formula: LineFormula): number {
  if (!flow.leftWhile) return onlyIf(reader, line, formula, line.structure?.start.next ?? nowhere, line.next);
  const message =
    "A DO loop behind a BREAK out of a WHILE: an interpreter of this language leaves it after one round.";
  reader.report(
    findings.badStructure(line.offset, message, "Write the DO loop as a WHILE, or do without BREAK."),
  );
  return nowhere;
}

function onlyIf(
  reader: Reader,
  line: PlacedLine,
  formula: LineFormula,
  whereTrue: number,
  whereFalse: number,
): number {
  const holds = condition(reader, line, formula);
  if (holds === undefined) return nowhere;
  return holds ? whereTrue : whereFalse;
}

/** Whether the condition of a line holds; undefined where it is not known. */
function condition(reader: Reader, line: PlacedLine, formula: LineFormula): boolean | undefined {
  const value = readBrackets(formula);
  if (formula.broken || !closeLine(formula)) return undefined;
  if (!Number.isNaN(value)) return value !== 0;
  reader.report(findings.unknownCondition(line.offset));
  return undefined;
}

/** REPEAT [n]: n is rounded; none or fewer passes the loop over. */
function enterRepeat(reader: Reader, flow: Flow, line: PlacedLine, formula: LineFormula): number {
  const value = readBrackets(formula);
  if (formula.broken || !closeLine(formula)) return nowhere;
  if (Number.isNaN(value)) {
    reader.report(findings.unknownCondition(line.offset));
    return nowhere;
  }
  const rounds = Math.round(value);
  if (rounds < 1 || line.structure === undefined) return endOf(line).next;
  roundsOf(flow).set(line.structure, rounds);
  return line.next;
}

function nextRound(flow: Flow, line: PlacedLine): number {
  const structure = line.structure as Structure;
  const rounds = roundsOf(flow);
  const left = (rounds.get(structure) ?? 1) - 1;
  rounds.set(structure, left);
  return left > 0 ? structure.start.next : line.next;
}

function roundsOf(flow: Flow): Map<Structure, number> {
  return flow.calls.at(-1)?.rounds ?? flow.rounds;
}
