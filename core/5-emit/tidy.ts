import ts from "typescript";
import type { FunctionDeclaration, Statement } from "./builders.ts";
import { isLiteralWrite, joinedWrites } from "./literal-writes.ts";
import { isInitialState, storeIn, unreadFields, withoutParameters } from "./unused.ts";

const { factory } = ts;

/**
 * The same functions without what a dialect has decided away, so that the module reads as if it were written for it alone:
 * nothing stands behind a `throw`, text that is written in one go is one literal, and what nobody reads is neither kept in
 * the state nor passed on.
 *
 *     if (first) if (state.pecks) at = ...;         -> if (first && state.pecks) at = ...;
 *     state.motion = "";                            -> (nothing, where every block states its motion word)
 */
export function tidy(functions: readonly FunctionDeclaration[]): FunctionDeclaration[] {
  let tidied = withoutParameters(functions.map((one) => simplify(one, new Set())));
  // A value that was kept for the sake of another one is unread when that has gone.
  for (let unread = unreadFields(tidied); unread.size > 0; unread = unreadFields(tidied)) {
    const fields = unread;
    tidied = tidied.map((one) => simplify(one, fields));
  }
  return tidied;
}

function simplify(declaration: FunctionDeclaration, unread: ReadonlySet<string>): FunctionDeclaration {
  const visit = (node: ts.Node): ts.Node => {
    if (unread.has(storeIn(node)?.field ?? "")) return nothing();
    const inner = ts.visitEachChild(node, visit, undefined);
    if (ts.isVariableDeclaration(inner)) return withoutFields(inner, unread);
    if (ts.isBlock(inner)) return factory.updateBlock(inner, simplifyList(inner.statements));
    if (ts.isCaseClause(inner))
      return factory.updateCaseClause(inner, inner.expression, simplifyList(inner.statements));
    if (ts.isDefaultClause(inner)) return factory.updateDefaultClause(inner, simplifyList(inner.statements));
    if (ts.isIfStatement(inner)) return simplifyIf(inner);
    return ts.isSwitchStatement(inner) ? simplifySwitch(inner) : inner;
  };
  return visit(declaration) as FunctionDeclaration;
}

/** The state begins without the fields that nobody reads. */
function withoutFields(
  declaration: ts.VariableDeclaration,
  unread: ReadonlySet<string>,
): ts.VariableDeclaration {
  if (!isInitialState(declaration)) return declaration;
  const { name, initializer } = declaration;
  const kept = initializer.properties.filter(
    (one) => !(one.name && ts.isIdentifier(one.name) && unread.has(one.name.text)),
  );
  return factory.updateVariableDeclaration(
    declaration,
    name,
    undefined,
    undefined,
    factory.updateObjectLiteralExpression(initializer, kept),
  );
}

function nothing(): Statement {
  return factory.createBlock([]);
}

function isNothing(statement: Statement): boolean {
  return ts.isBlock(statement) && statement.statements.length === 0;
}

function simplifyList(statements: readonly Statement[]): Statement[] {
  const kept: Statement[] = [];
  for (const statement of statements) {
    if (isNothing(statement)) continue;
    const before = kept.at(-1);
    if (before !== undefined && isLiteralWrite(before) && isLiteralWrite(statement))
      kept[kept.length - 1] = joinedWrites(before, statement);
    else kept.push(statement);
    if (leaves(statement)) break;
  }
  return kept;
}

function leaves(statement: Statement): boolean {
  return ts.isThrowStatement(statement) || ts.isReturnStatement(statement);
}

/** A test of nothing is no test, and a test in a test is one test of both. */
function simplifyIf(statement: ts.IfStatement): Statement {
  const { expression, thenStatement, elseStatement } = statement;
  const then = bare(thenStatement);
  if (elseStatement !== undefined && !isNothing(elseStatement)) {
    if (!isNothing(then)) return statement;
    return factory.createIfStatement(factory.createLogicalNot(expression), elseStatement);
  }
  if (isNothing(then)) return nothing();
  if (!ts.isIfStatement(then) || then.elseStatement !== undefined)
    return factory.createIfStatement(expression, then);
  return factory.createIfStatement(factory.createLogicalAnd(expression, then.expression), then.thenStatement);
}

/** A block of one statement is that statement. */
function bare(statement: Statement): Statement {
  if (!ts.isBlock(statement) || statement.statements.length !== 1) return statement;
  return ts.isVariableStatement(statement.statements[0]) ? statement : statement.statements[0];
}

/** A switch without cases does what it does by default, if that is one thing. */
function simplifySwitch(statement: ts.SwitchStatement): Statement {
  const [only, ...others] = statement.caseBlock.clauses;
  const isDefault = only !== undefined && ts.isDefaultClause(only) && others.length === 0;
  return isDefault && only.statements.length === 1 && leaves(only.statements[0])
    ? only.statements[0]
    : statement;
}
