import ts from "typescript";
import type { FunctionDeclaration, Statement } from "./builders.ts";

/**
 * The statements that an emitter needs: what is exported, and what that uses, directly or not, in the order given. A dialect
 * that has no fixed cycles leaves their functions out in this way.
 */
export function reachable(statements: readonly Statement[]): Statement[] {
  const byName = new Map(
    statements.flatMap((statement) => namesOf(statement).map((name) => [name, statement] as const)),
  );
  const found = new Set<Statement>();
  const follow = (statement: Statement): void => {
    if (found.has(statement)) return;
    found.add(statement);
    visit(statement);
  };
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) {
      const used = byName.get(node.text);
      if (used !== undefined) follow(used);
    }
    ts.forEachChild(node, visit);
  };
  statements.filter(isExported).forEach(follow);
  return statements.filter((statement) => found.has(statement));
}

function namesOf(statement: Statement): string[] {
  if (ts.isVariableStatement(statement))
    return statement.declarationList.declarations.map(({ name }) => (ts.isIdentifier(name) ? name.text : ""));
  return [(statement as FunctionDeclaration).name?.text ?? ""];
}

function isExported(statement: Statement): boolean {
  return (
    ts.canHaveModifiers(statement) &&
    (ts.getModifiers(statement) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword)
  );
}
