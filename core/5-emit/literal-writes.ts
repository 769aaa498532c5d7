import ts from "typescript";
import type { Statement } from "./builders.ts";
import { writing } from "./words.ts";

/** The text of `at = write(state, at, "text");`, and undefined of every other statement. */
function textOf(statement: Statement): string | undefined {
  if (!ts.isExpressionStatement(statement) || !ts.isBinaryExpression(statement.expression)) return undefined;
  const { left, operatorToken, right } = statement.expression;
  if (operatorToken.kind !== ts.SyntaxKind.EqualsToken || !isNamed(left, "at")) return undefined;
  if (!ts.isCallExpression(right) || !isNamed(right.expression, "write")) return undefined;
  const [state, at, text] = right.arguments;
  return isNamed(state, "state") && isNamed(at, "at") && ts.isStringLiteral(text) ? text.text : undefined;
}

function isNamed(node: ts.Node | undefined, name: string): boolean {
  return node !== undefined && ts.isIdentifier(node) && node.text === name;
}

/** Whether a statement writes one literal of the dialect and does nothing else. */
export function isLiteralWrite(statement: Statement): boolean {
  return textOf(statement) !== undefined;
}

/** Two of them as one. */
export function joinedWrites(first: Statement, second: Statement): Statement {
  return writing(`${textOf(first) ?? ""}${textOf(second) ?? ""}`);
}
