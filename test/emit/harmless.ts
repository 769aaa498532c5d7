import ts from "typescript";
import { expect } from "vitest";
// The lists that the generator's constructors are bound to; nothing outside the stage needs them.
import { constructors, functionNames, globals, methods } from "../../core/5-emit/calls.ts";
import { characterNames, names } from "../../core/5-emit/names.ts";

/** What is declared, named and called in a generated module. */
function inspect(source: string): {
  names: Set<string>;
  called: Set<string>;
  errors: number;
  imports: number;
} {
  const file = ts.createSourceFile("emitter.js", source, ts.ScriptTarget.ES2022, true, ts.ScriptKind.JS);
  const found = { names: new Set<string>(), called: new Set<string>(), errors: 0, imports: 0 };
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) found.names.add(node.text);
    if (ts.isCallExpression(node) || ts.isNewExpression(node))
      found.called.add(node.expression.getText(file).replace(/^.*\./su, ""));
    if (
      ts.isImportDeclaration(node) ||
      (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
    )
      found.imports++;
    if (ts.isTaggedTemplateExpression(node) || ts.isTemplateLiteral(node)) found.errors++;
    ts.forEachChild(node, visit);
  };
  visit(file);
  found.errors += (file as unknown as { parseDiagnostics: readonly unknown[] }).parseDiagnostics.length;
  return found;
}

const printer = /^writeDecimals\d+(Style\d+)?$/u;
const known = new Set<string>([
  ...names,
  ...characterNames,
  ...functionNames(),
  ...constructors,
  ...methods,
  ...globals,
  ...globals.flatMap((one) => one.split(".")),
  "Math",
  "undefined",
]);
const callable = new Set<string>([...functionNames(), ...constructors, ...methods, "Number", "from"]);

/** Expects that a generated module parses, imports nothing, and names and calls only what the two lists hold. */
export function expectHarmless(source: string): void {
  const found = inspect(source);
  expect(found.errors).toBe(0);
  expect(found.imports).toBe(0);
  expect([...found.names].filter((name) => !known.has(name) && !printer.test(name))).toEqual([]);
  expect([...found.called].filter((name) => !callable.has(name) && !printer.test(name))).toEqual([]);
}
