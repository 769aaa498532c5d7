import ts from "typescript";
import type { FunctionDeclaration } from "./builders.ts";

const { factory, SyntaxKind } = ts;

/** `state.name = value;`, or with another assignment: which field gets which value. A value that does more than give itself counts as a use. */
export function storeIn(
  node: ts.Node,
): { readonly field: string; readonly value: ts.Expression } | undefined {
  if (!ts.isExpressionStatement(node) || !ts.isBinaryExpression(node.expression)) return undefined;
  const { left, operatorToken, right } = node.expression;
  const { kind } = operatorToken;
  const isAssignment = kind >= SyntaxKind.FirstAssignment && kind <= SyntaxKind.LastAssignment;
  return isAssignment && isStateField(left) && !acts(right)
    ? { field: left.name.text, value: right }
    : undefined;
}

/** The object that createState fills the state with. */
export function isInitialState(
  node: ts.Node,
): node is ts.VariableDeclaration & { initializer: ts.ObjectLiteralExpression } {
  return (
    ts.isVariableDeclaration(node) &&
    isNamed(node.name, "state") &&
    node.initializer !== undefined &&
    ts.isObjectLiteralExpression(node.initializer)
  );
}

/** Fields that the state begins with and nobody reads. */
export function unreadFields(functions: readonly FunctionDeclaration[]): Set<string> {
  const fields = new Set<string>();
  const read = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (isInitialState(node))
      for (const { name } of node.initializer.properties)
        if (name && ts.isIdentifier(name)) fields.add(name.text);
    if (isStateField(node)) read.add(node.name.text);
    // What a field is given may read others; that it is given something reads nothing.
    const store = storeIn(node);
    if (store === undefined) ts.forEachChild(node, visit);
    else visit(store.value);
  };
  functions.forEach(visit);
  return new Set([...fields].filter((name) => !read.has(name)));
}

function isStateField(node: ts.Node): node is ts.PropertyAccessExpression {
  return ts.isPropertyAccessExpression(node) && isNamed(node.expression, "state");
}

function isNamed(node: ts.Node, name: string): boolean {
  return ts.isIdentifier(node) && node.text === name;
}

/** Whether an expression calls or makes something, so that it can't be left out. */
function acts(node: ts.Node): boolean {
  if (ts.isCallExpression(node) || ts.isPostfixUnaryExpression(node)) return true;
  return ts.forEachChild(node, acts) ?? false;
}

/** Parameters that functions of one kind have alike, used or not. */
const common: readonly string[] = ["state", "step", "batch", "row"];

/** The functions without parameters that they don't use, and the calls without the values for them. */
export function withoutParameters(functions: readonly FunctionDeclaration[]): FunctionDeclaration[] {
  const unused = unusedParameters(functions);
  const keptOf = <T>(name: string, list: readonly T[]): T[] =>
    list.filter((_, index) => !unused.has(`${name} ${index}`));
  const visit = (node: ts.Node): ts.Node => {
    const inner = ts.visitEachChild(node, visit, undefined);
    if (ts.isCallExpression(inner) && ts.isIdentifier(inner.expression)) {
      const kept = keptOf(inner.expression.text, inner.arguments);
      return factory.updateCallExpression(inner, inner.expression, undefined, kept);
    }
    if (!ts.isFunctionDeclaration(inner)) return inner;
    const { modifiers, asteriskToken, name, parameters, body } = inner;
    const kept = keptOf(name?.text ?? "", parameters);
    return factory.updateFunctionDeclaration(
      inner,
      modifiers,
      asteriskToken,
      name,
      undefined,
      kept,
      undefined,
      body,
    );
  };
  return functions.map((one) => visit(one) as FunctionDeclaration);
}

/** Parameters that can be left out, as "function index". */
function unusedParameters(functions: readonly FunctionDeclaration[]): Set<string> {
  const unused = new Set(functions.filter(({ modifiers }) => modifiers === undefined).flatMap(unusedOf));
  const keepActing = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && ts.isIdentifier(node.expression)) {
      const { text } = node.expression;
      node.arguments.forEach((value, index) => acts(value) && unused.delete(`${text} ${index}`));
    }
    ts.forEachChild(node, keepActing);
  };
  functions.forEach(keepActing);
  return unused;
}

function unusedOf({ name, parameters, body }: FunctionDeclaration): string[] {
  const used = new Set(common);
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) used.add(node.text);
    ts.forEachChild(node, visit);
  };
  if (body) visit(body);
  return parameters.flatMap((one, index) =>
    ts.isIdentifier(one.name) && !used.has(one.name.text) ? [`${name?.text ?? ""} ${index}`] : [],
  );
}
