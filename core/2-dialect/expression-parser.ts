import type { ExpressionName, ExpressionOperator } from "#base";
import ts from "typescript";
import type { Dimension, Measured } from "./expression-units.ts";
import { bare, combine, constants, dimensionName, names, sameDimension } from "./expression-units.ts";
import { didYouMean } from "./did-you-mean.ts";

/** What parsing gives. */
export type ExpressionResult = Measured | { readonly problem: string };

const binary: Readonly<Partial<Record<ts.SyntaxKind, ExpressionOperator>>> = {
  [ts.SyntaxKind.PlusToken]: "+",
  [ts.SyntaxKind.MinusToken]: "-",
  [ts.SyntaxKind.AsteriskToken]: "*",
  [ts.SyntaxKind.SlashToken]: "/",
};

const functions: ReadonlyMap<string, "min" | "max"> = new Map([
  ["min", "min"],
  ["max", "max"],
]);

/**
 * Parses one arithmetic expression and works out what it measures: `20 * second` -> a time. The text is parsed by the
 * TypeScript compiler and never run; only numbers, allowed names, + - * / ( ) min max are taken from its syntax tree.
 *
 * @param allowed names of machine facts that have a value here
 */
export function parseExpression(text: string, allowed: readonly ExpressionName[]): ExpressionResult {
  const file = ts.createSourceFile(
    "expression.ts",
    `(${text}\n);`,
    ts.ScriptTarget.ES2023,
    false,
    ts.ScriptKind.TS,
  );
  const { parseDiagnostics = [] } = file as { parseDiagnostics?: readonly ts.Diagnostic[] };
  const [statement, ...others] = file.statements;
  if (
    parseDiagnostics.length > 0 ||
    statement === undefined ||
    others.length > 1 ||
    !ts.isExpressionStatement(statement)
  ) {
    return { problem: "it is not one arithmetic expression" };
  }
  // A comment is no part of the tree, so what it hides would pass unseen.
  if (/\/[/*]|<!--/.test(text)) return { problem: "comments are not allowed in it" };
  if (others.length > 0 || !ts.isParenthesizedExpression(statement.expression)) {
    return { problem: "it is not one arithmetic expression" };
  }
  return measure(statement.expression.expression, file, allowed);
}

function measure(
  node: ts.Expression,
  file: ts.SourceFile,
  allowed: readonly ExpressionName[],
): ExpressionResult {
  if (ts.isParenthesizedExpression(node)) return measure(node.expression, file, allowed);
  if (ts.isNumericLiteral(node)) return measureNumber(node.getText(file));
  if (ts.isIdentifier(node)) return measureName(node.getText(file), allowed);
  if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.MinusToken) {
    const of = measure(node.operand, file, allowed);
    return "problem" in of ? of : negate(of);
  }
  if (ts.isBinaryExpression(node)) return measureBinary(node, file, allowed);
  if (ts.isCallExpression(node)) return measureCall(node, file, allowed);
  return { problem: `\`${node.getText(file)}\` is not a number, a name, + - * / ( ) min or max` };
}

/** Decimal numbers only, as they would stand in a job. */
function measureNumber(text: string): ExpressionResult {
  if (!/^\d+(\.\d+)?$/.test(text)) return { problem: `\`${text}\` is not a plain decimal number` };
  return { expression: { op: "number", value: Number(text) }, dimension: bare };
}

function measureName(text: string, allowed: readonly ExpressionName[]): ExpressionResult {
  const constant = constants.get(text);
  if (constant !== undefined)
    return { expression: { op: "number", value: constant.value }, dimension: constant.dimension };
  const name = allowed.find((candidate) => candidate === text);
  if (name !== undefined) return { expression: { op: "name", name }, dimension: names[name] };
  if (Object.hasOwn(names, text))
    return { problem: `\`${text}\` has no meaning here; allowed are ${allowed.join(", ")}` };
  const hint = didYouMean(text, [...allowed, ...constants.keys()]);
  return { problem: `\`${text}\` is not a name that an expression can use.${hint}` };
}

function negate({ expression, dimension }: Measured): Measured {
  return { expression: { op: "*", of: [{ op: "number", value: -1 }, expression] }, dimension };
}

function measureBinary(
  node: ts.BinaryExpression,
  file: ts.SourceFile,
  allowed: readonly ExpressionName[],
): ExpressionResult {
  const op = binary[node.operatorToken.kind];
  if (op === undefined) return { problem: `\`${node.operatorToken.getText(file)}\` is not one of + - * /` };
  const left = measure(node.left, file, allowed);
  if ("problem" in left) return left;
  const right = measure(node.right, file, allowed);
  if ("problem" in right) return right;
  if (op === "+" || op === "-") return measureAlike(op, [left, right]);
  const dimension = combine(left.dimension, right.dimension, op === "*" ? 1 : -1);
  return { expression: { op, of: [left.expression, right.expression] }, dimension };
}

function measureCall(
  node: ts.CallExpression,
  file: ts.SourceFile,
  allowed: readonly ExpressionName[],
): ExpressionResult {
  const op = ts.isIdentifier(node.expression) ? functions.get(node.expression.getText(file)) : undefined;
  const plain = node.typeArguments === undefined && node.questionDotToken === undefined;
  if (op === undefined || !plain)
    return { problem: `\`${node.expression.getText(file)}\` cannot be called; min and max can` };
  if (node.arguments.length < 2) return { problem: `${op} needs two values or more` };
  const values: Measured[] = [];
  for (const argument of node.arguments) {
    const value = measure(argument, file, allowed);
    if ("problem" in value) return value;
    values.push(value);
  }
  return measureAlike(op, values);
}

/** Sums, differences, least and greatest want values that measure the same. */
function measureAlike(op: ExpressionOperator, values: readonly Measured[]): ExpressionResult {
  const dimension: Dimension = values[0].dimension;
  const other = values.find((value) => !sameDimension(value.dimension, dimension));
  if (other !== undefined) {
    return { problem: `${op} mixes ${dimensionName(dimension)} with ${dimensionName(other.dimension)}` };
  }
  return { expression: { op, of: values.map(({ expression }) => expression) }, dimension };
}
