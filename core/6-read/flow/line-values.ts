import type { Reader } from "../reader.ts";
import { longestLine } from "../tables.ts";
import type { Formula } from "../variables/formula.ts";
import { createFormula, fail, here, peek } from "../variables/formula.ts";
import { badExpression } from "../variables/findings-variables.ts";
import type { PlacedLine } from "./structures.ts";
import type { Text } from "./text.ts";
import { lineEnd, linesFrom } from "./text.ts";

const openComment = 40;
const semicolon = 59;

/** A formula that knows where its line begins in the bytes. */
export interface LineFormula extends Formula {
  readonly lineStart: number;
}

/** What stands behind the keyword of a line; undefined where the line is none, which cannot be. */
export function formulaOf(reader: Reader, text: Text, line: PlacedLine): LineFormula | undefined {
  const region = linesFrom(text, line.offset);
  if (region === undefined) return undefined;
  const { bytes, from, base } = region;
  const { end } = lineEnd(bytes, from, Math.min(region.to, from + longestLine));
  return {
    ...createFormula(reader, { bytes, base, at: from + line.behind, end }),
    lineStart: from,
  };
}

/** Whether nothing follows but a comment; anything else is told. */
export function closeLine(formula: Formula): boolean {
  if (formula.broken) return false;
  const byte = peek(formula);
  if (byte === -1 || byte === openComment || byte === semicolon) return true;
  const reason = `has ${String.fromCharCode(byte)} behind its end`;
  fail(formula, badExpression(here(formula), reason, "Put it into a block of its own."));
  return false;
}
