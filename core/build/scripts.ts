import { mkdirSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import type { OutputFile } from "esbuild";
import ts from "typescript";

/*
 * ES modules of the bundler as the classic scripts that core/9-cli/scripts.ts loads:
 *
 *     import { a as b } from "./chunk.js";  ->  const { a: b } = require("./chunk.cjs");
 *     await import("./own.js")              ->  await importModule("./own.cjs")
 *     export { c as d };                    ->  Object.assign(exports, { d: c });
 *
 * Names are bound once, so what a module exports must not change behind its last line; and, unlike the bundler's own form of
 * scripts, whose every use of an import goes through a property, hot loops use them as they use their own.
 */

/** Writes each module as a script, under its name with the ending .cjs. */
export function writeScripts(modules: readonly OutputFile[]): void {
  for (const { path, text } of modules) {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(asScript(path), scriptOf(text));
  }
}

/** "./chunk.js" -> "./chunk.cjs"; other packages keep their names. */
function asScript(name: string): string {
  return name.startsWith(".") || name.startsWith("/") ? name.replace(/\.js$/, ".cjs") : name;
}

/** A piece of a text and what takes its place. */
interface Change {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

function scriptOf(text: string): string {
  const file = ts.createSourceFile("chunk.js", text, ts.ScriptTarget.Latest, false, ts.ScriptKind.JS);
  const changes: Change[] = [];
  const change = (node: ts.Node, by: string): number =>
    changes.push({ from: node.getStart(file), to: node.end, text: by });
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) change(node, importOf(node));
    else if (ts.isExportDeclaration(node)) change(node, exportOf(node));
    else if (ts.isMetaProperty(node) && node.keywordToken === ts.SyntaxKind.ImportKeyword)
      change(node, "importMeta");
    else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      change(node.expression, "importModule");
      for (const argument of node.arguments)
        if (ts.isStringLiteral(argument)) change(argument, quoted(asScript(argument.text)));
        else visit(argument);
    } else ts.forEachChild(node, visit);
  };
  visit(file);
  const body = changes.reduceRight(
    (rest, { from, to, text: by }) => rest.slice(0, from) + by + rest.slice(to),
    text,
  );
  // On the first line, so that lines have the numbers that they have in the module.
  return `(function (exports, require, importModule, importMeta) { "use strict"; ${body}\n})`;
}

function quoted(text: string): string {
  return JSON.stringify(text);
}

function importOf({ importClause, moduleSpecifier }: ts.ImportDeclaration): string {
  const required = `require(${quoted(asScript((moduleSpecifier as ts.StringLiteral).text))})`;
  const bindings = importClause?.namedBindings;
  const name = importClause?.name?.text;
  if (importClause === undefined) return `${required};`;
  // What has a default or is wanted whole here is CommonJS, where both are the same.
  if (bindings === undefined) return `const ${String(name)} = ${required};`;
  if (ts.isNamespaceImport(bindings)) return `const ${bindings.name.text} = ${required};`;
  if (name !== undefined) throw new Error(`a default beside names: ${required}`);
  const names = bindings.elements.map(({ propertyName, name: own }) => pair(propertyName, own));
  return `const { ${names.join(", ")} } = ${required};`;
}

function exportOf({ exportClause, moduleSpecifier }: ts.ExportDeclaration): string {
  if (moduleSpecifier !== undefined || exportClause === undefined || !ts.isNamedExports(exportClause))
    throw new Error("the bundler writes its exports as one list of names");
  const names = exportClause.elements.map(({ propertyName, name }) => pair(name, propertyName ?? name));
  return `Object.assign(exports, { ${names.join(", ")} });`;
}

function pair(key: ts.ModuleExportName | undefined, value: ts.ModuleExportName): string {
  return key === undefined || key.text === value.text ? value.text : `${key.text}: ${value.text}`;
}
