import ts from "typescript";
import { commentOf } from "./calls.ts";
import type { Constructor, EmitterFunction, Method } from "./calls.ts";
import type { Name } from "./names.ts";

/*
 * Small constructors over the TypeScript factory, so that the generator reads like what it generates:
 *
 *   when(both("axes", 1), [set("at", call("writeLength", "state", "at", str("X"), pick(get("batch", "x"), "row")))])
 *   -> if (axes & 1) at = writeLength(state, at, "X", batch.x[row]);
 *
 * A bare text is always one of the listed names; text of a dialect must go through str().
 */

const { factory, SyntaxKind } = ts;

export type Expression = ts.Expression;
export type Statement = ts.Statement;
export type FunctionDeclaration = ts.FunctionDeclaration;

/** An expression, or short for one: a listed name, a number, yes or no. */
export type Value = Expression | Name | number | boolean;

/** A listed name as an identifier. */
export function id(name: Name): ts.Identifier {
  return factory.createIdentifier(name);
}

/** A number; a negative one is its absolute value behind a minus, as the syntax wants it. */
export function num(value: number): Expression {
  const literal = factory.createNumericLiteral(Math.abs(value));
  return value < 0 ? factory.createPrefixUnaryExpression(SyntaxKind.MinusToken, literal) : literal;
}

/**
 * A number that stands for a dialect key, which is named in a comment behind it. A key that the dialect's author made up
 * could hold anything, and is not.
 */
export function keyNumber(index: number, key: string): Expression {
  const literal = factory.createNumericLiteral(index);
  if (!/^[a-z][a-z0-9.-]*$/iu.test(key)) return literal;
  return ts.addSyntheticTrailingComment(literal, SyntaxKind.MultiLineCommentTrivia, ` ${key} `);
}

/** A text literal: the one way in which text of a dialect gets into generated code. */
export function str(text: string): ts.StringLiteral {
  return factory.createStringLiteral(text);
}

/** A regular expression of our own, such as "/x/gu". */
export function pattern(text: `/${string}/${string}`): Expression {
  return factory.createRegularExpressionLiteral(text);
}

/** What a short form stands for. */
export function expression(value: Value): Expression {
  if (typeof value === "string") return id(value);
  if (typeof value === "number") return num(value);
  if (typeof value === "boolean") return value ? factory.createTrue() : factory.createFalse();
  return value;
}

/** `object.name` */
export function get(object: Value, name: Name): Expression {
  return factory.createPropertyAccessExpression(expression(object), name);
}

/** `list[index]` */
export function pick(list: Value, index: Value): Expression {
  return factory.createElementAccessExpression(expression(list), expression(index));
}

function binary(left: Value, operator: ts.BinaryOperator, right: Value): Expression {
  return factory.createBinaryExpression(expression(left), operator, expression(right));
}

export const add = (left: Value, right: Value): Expression => binary(left, SyntaxKind.PlusToken, right);
export const sub = (left: Value, right: Value): Expression => binary(left, SyntaxKind.MinusToken, right);
export const mul = (left: Value, right: Value): Expression => binary(left, SyntaxKind.AsteriskToken, right);
export const div = (left: Value, right: Value): Expression => binary(left, SyntaxKind.SlashToken, right);
export const rem = (left: Value, right: Value): Expression => binary(left, SyntaxKind.PercentToken, right);
export const less = (left: Value, right: Value): Expression => binary(left, SyntaxKind.LessThanToken, right);
export const more = (left: Value, right: Value): Expression =>
  binary(left, SyntaxKind.GreaterThanToken, right);
export const atLeast = (left: Value, right: Value): Expression =>
  binary(left, SyntaxKind.GreaterThanEqualsToken, right);
export const atMost = (left: Value, right: Value): Expression =>
  binary(left, SyntaxKind.LessThanEqualsToken, right);
export const same = (left: Value, right: Value): Expression =>
  binary(left, SyntaxKind.EqualsEqualsEqualsToken, right);
export const differs = (left: Value, right: Value): Expression =>
  binary(left, SyntaxKind.ExclamationEqualsEqualsToken, right);
/** `left & right` */
export const both = (left: Value, right: Value): Expression => binary(left, SyntaxKind.AmpersandToken, right);
/** `left | right` */
export const either = (left: Value, right: Value): Expression => binary(left, SyntaxKind.BarToken, right);
/** `left & ~right` */
export const without = (left: Value, right: Value): Expression =>
  both(left, factory.createPrefixUnaryExpression(SyntaxKind.TildeToken, expression(right)));
/** `value | 0`: the whole part as a 32-bit integer. */
export const whole32 = (value: Value): Expression => binary(value, SyntaxKind.BarToken, 0);
/** `first && second && ...` */
export const and = (...tests: readonly Value[]): Expression =>
  chain(SyntaxKind.AmpersandAmpersandToken, tests);
/** `first || second || ...` */
export const or = (...tests: readonly Value[]): Expression => chain(SyntaxKind.BarBarToken, tests);
/** `value ?? fallback` */
export const orElse = (value: Value, fallback: Value): Expression =>
  binary(value, SyntaxKind.QuestionQuestionToken, fallback);

function chain(operator: ts.BinaryOperator, tests: readonly Value[]): Expression {
  return tests.map(expression).reduce((left, right) => factory.createBinaryExpression(left, operator, right));
}

export function not(value: Value): Expression {
  return factory.createPrefixUnaryExpression(SyntaxKind.ExclamationToken, expression(value));
}

export function minus(value: Value): Expression {
  return factory.createPrefixUnaryExpression(SyntaxKind.MinusToken, expression(value));
}

/** `test ? yes : no` */
export function choose(test: Value, yes: Value, no: Value): Expression {
  const [question, colon] = [
    factory.createToken(SyntaxKind.QuestionToken),
    factory.createToken(SyntaxKind.ColonToken),
  ];
  return factory.createConditionalExpression(
    expression(test),
    question,
    expression(yes),
    colon,
    expression(no),
  );
}

/** A call of a function of the generated module. */
export function call(name: EmitterFunction, ...values: readonly Value[]): Expression {
  return factory.createCallExpression(factory.createIdentifier(name), undefined, values.map(expression));
}

/** `object.method(values)` */
export function send(object: Value, method: Method, ...values: readonly Value[]): Expression {
  const target = factory.createPropertyAccessExpression(expression(object), method);
  return factory.createCallExpression(target, undefined, values.map(expression));
}

/** `Math.floor(value)` and `Math.abs(value)` */
export function math(method: Extract<Method, "floor" | "abs">, value: Value): Expression {
  const target = factory.createPropertyAccessExpression(factory.createIdentifier("Math"), method);
  return factory.createCallExpression(target, undefined, [expression(value)]);
}

/** `Number(value)` */
export function numberOf(value: Value): Expression {
  return factory.createCallExpression(factory.createIdentifier("Number"), undefined, [expression(value)]);
}

/** `Array.from(value)`: the characters of a text. */
export function listOf(value: Value): Expression {
  const target = factory.createPropertyAccessExpression(factory.createIdentifier("Array"), "from");
  return factory.createCallExpression(target, undefined, [expression(value)]);
}

/** `new Type(values)` */
export function create(type: Constructor, ...values: readonly Value[]): Expression {
  return factory.createNewExpression(factory.createIdentifier(type), undefined, values.map(expression));
}

export function list(values: readonly Value[], lines = false): Expression {
  return factory.createArrayLiteralExpression(values.map(expression), lines);
}

/** An object, one field a line; a pair with one name is its short form. */
export function record(fields: readonly (readonly [Name, Value])[], lines = true): Expression {
  const properties = fields.map(([name, value]) =>
    name === value
      ? factory.createShorthandPropertyAssignment(name)
      : factory.createPropertyAssignment(name, expression(value)),
  );
  return factory.createObjectLiteralExpression(properties, lines);
}

/** `(parameters) => undefined` */
export function ignoring(...parameters: readonly Name[]): Expression {
  return factory.createArrowFunction(
    undefined,
    undefined,
    parameters.map(parameter),
    undefined,
    undefined,
    factory.createIdentifier("undefined"),
  );
}

export const nothing = (): Expression => factory.createIdentifier("undefined");

/** `value;` */
export function run(value: Expression): Statement {
  return factory.createExpressionStatement(value);
}

/** `target = value;` */
export function set(target: Value, value: Value): Statement {
  return run(binary(target, SyntaxKind.EqualsToken, value));
}

/** `target += value;` */
export function increase(target: Value, value: Value): Statement {
  return run(binary(target, SyntaxKind.PlusEqualsToken, value));
}

/** `target -= value;` */
export function decrease(target: Value, value: Value): Statement {
  return run(binary(target, SyntaxKind.MinusEqualsToken, value));
}

/** `bytes[at++] = value;` */
export function put(value: Value): Statement {
  return set(pick("bytes", factory.createPostfixUnaryExpression(id("at"), SyntaxKind.PlusPlusToken)), value);
}

function declare(flags: ts.NodeFlags, name: Name, value: Value): Statement {
  const declaration = factory.createVariableDeclaration(name, undefined, undefined, expression(value));
  return factory.createVariableStatement(
    undefined,
    factory.createVariableDeclarationList([declaration], flags),
  );
}

/** `const name = value;` */
export const constant = (name: Name, value: Value): Statement => declare(ts.NodeFlags.Const, name, value);

/** `let name = value;` */
export const variable = (name: Name, value: Value): Statement => declare(ts.NodeFlags.Let, name, value);

/** `export const name = value;` */
export function exported(name: Name, value: Value): Statement {
  const declaration = factory.createVariableDeclaration(name, undefined, undefined, expression(value));
  const modifiers = [factory.createModifier(SyntaxKind.ExportKeyword)];
  return factory.createVariableStatement(
    modifiers,
    factory.createVariableDeclarationList([declaration], ts.NodeFlags.Const),
  );
}

/** One statement stands bare, several in braces; an `if` too, where an `else` behind it would be taken for its own. */
function body(statements: readonly Statement[], beforeElse = false): Statement {
  const isBare = statements.length === 1 && !(beforeElse && ts.isIfStatement(statements[0]));
  return isBare ? statements[0] : factory.createBlock(statements, true);
}

/** `if (test) statements else otherwise` */
export function when(
  test: Value,
  statements: readonly Statement[],
  otherwise?: readonly Statement[],
): Statement {
  const alternative = otherwise === undefined ? undefined : body(otherwise);
  return factory.createIfStatement(
    expression(test),
    body(statements, alternative !== undefined),
    alternative,
  );
}

/** `while (test) statements` */
export function loop(test: Value, statements: readonly Statement[]): Statement {
  return factory.createWhileStatement(expression(test), body(statements));
}

/** `for (const name of values) statements` */
export function each(name: Name, values: Value, statements: readonly Statement[]): Statement {
  const declaration = factory.createVariableDeclarationList(
    [factory.createVariableDeclaration(name)],
    ts.NodeFlags.Const,
  );
  return factory.createForOfStatement(undefined, declaration, expression(values), body(statements));
}

/** A case of a switch. */
export interface Case {
  readonly of: Value;
  readonly statements: readonly Statement[];
}

/**
 * `switch (value) { case ...: statements }`. A case that doesn't leave by itself is left with `break`; one with variables
 * stands in braces, so that they are its own.
 */
export function cases(value: Value, branches: readonly Case[], otherwise: readonly Statement[]): Statement {
  const clauses: ts.CaseOrDefaultClause[] = branches.map((one) =>
    factory.createCaseClause(expression(one.of), leaving(one.statements)),
  );
  if (otherwise.length > 0) clauses.push(factory.createDefaultClause(leaving(otherwise)));
  return factory.createSwitchStatement(expression(value), factory.createCaseBlock(clauses));
}

function leaving(statements: readonly Statement[]): readonly Statement[] {
  const last = statements.at(-1);
  const leaves = last !== undefined && (ts.isReturnStatement(last) || ts.isThrowStatement(last));
  const all = leaves ? statements : [...statements, factory.createBreakStatement()];
  return statements.some(ts.isVariableStatement) ? [factory.createBlock(all, true)] : all;
}

/** `return value;` */
export function back(value?: Value): Statement {
  return factory.createReturnStatement(value === undefined ? undefined : expression(value));
}

/** `throw value;` */
export function fail(value: Expression): Statement {
  return factory.createThrowStatement(value);
}

/** `yield value;` */
export function hand(value: Expression): Statement {
  return run(factory.createYieldExpression(undefined, value));
}

function parameter(name: Name): ts.ParameterDeclaration {
  return factory.createParameterDeclaration(undefined, undefined, name);
}

/** What stands before the name of a function. */
interface FunctionForm {
  readonly isExported?: boolean;
  readonly isGenerator?: boolean;
}

/** `function name(parameters) { statements }` behind its comment, which is never text of a dialect. */
export function func(
  name: EmitterFunction,
  parameters: readonly Name[],
  statements: readonly Statement[],
  { isExported, isGenerator }: FunctionForm = {},
): FunctionDeclaration {
  const declaration = factory.createFunctionDeclaration(
    isExported ? [factory.createModifier(SyntaxKind.ExportKeyword)] : undefined,
    isGenerator ? factory.createToken(SyntaxKind.AsteriskToken) : undefined,
    name,
    undefined,
    parameters.map(parameter),
    undefined,
    factory.createBlock(statements, true),
  );
  return ts.addSyntheticLeadingComment(
    declaration,
    SyntaxKind.SingleLineCommentTrivia,
    ` ${commentOf(name)}`,
    true,
  );
}
