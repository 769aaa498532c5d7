import { readValue } from "./expression.ts";
import * as findings from "./findings-variables.ts";
import type { Formula } from "./formula.ts";
import { fail, here, take } from "./formula.ts";
import { heldBy, isKept, ownParameters } from "./machine-parameters.ts";
import { nameText, readName } from "./parameter-name.ts";
import type { ParameterName } from "./parameters.ts";

const equals = 61;

/** Reads `#12 = value`: the parameter has that value from the next block on (NISTIR 6556 3.3.3). */
export function readAssignment(formula: Formula): void {
  const start = here(formula);
  const name = readName(formula, readValue);
  if (formula.broken) return;
  if (!take(formula, equals)) {
    const reason = "has a parameter without a word before it or a setting behind it";
    fail(formula, findings.badExpression(start, reason, "Write #1=2, or put an address before it."));
    return;
  }
  const value = readValue(formula);
  if (name === undefined) return;
  if (isMachines(name)) {
    const whose = typeof name === "number" ? heldBy(name) : "a name that the controller keeps";
    formula.report(findings.machineParameter(start, nameText(name), whose));
  } else formula.parameters.pending.push({ name, value });
}

function isMachines(name: ParameterName): boolean {
  return typeof name === "number" ? name > ownParameters : isKept(name);
}
