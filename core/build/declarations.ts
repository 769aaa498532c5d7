import { join, posix, relative, sep } from "node:path";
import { readFileSync } from "node:fs";
import ts from "typescript";

/** The package's own `imports`: "#base" -> "./core/0-base/index.ts". */
type OwnImports = Readonly<Record<string, string>>;

/**
 * Writes the declarations of the public API, OUT/index.d.ts and what it reaches, with relative specifiers in place of
 * "#stage" ones. Types are not checked here (`npm run check` does); what cannot be declared fails the build.
 */
export function writeDeclarations(root: string, out: string): void {
  const program = createProgram(root, out);
  const imports = readOwnImports(root);
  const { diagnostics } = program.emit(undefined, (file, text) => {
    const folder = relative(out, join(file, "..")).split(sep).join("/");
    ts.sys.writeFile(file, withRelativeSpecifiers(text, folder, imports));
  });
  if (diagnostics.length > 0) throw new Error(describe(diagnostics, root));
}

function createProgram(root: string, out: string): ts.Program {
  const file = join(root, "tsconfig.declarations.json");
  const host = { ...ts.sys, onUnRecoverableConfigFileDiagnostic: (it: ts.Diagnostic) => fail([it], root) };
  const config = ts.getParsedCommandLineOfConfigFile(file, { outDir: out }, host);
  if (config === undefined || config.errors.length > 0) return fail(config?.errors ?? [], root);
  return ts.createProgram(config.fileNames, config.options);
}

function readOwnImports(root: string): OwnImports {
  const text = readFileSync(join(root, "package.json"), "utf8");
  return (JSON.parse(text) as { imports: OwnImports }).imports;
}

/** In 3-lower: `from "#base"` -> `from "../0-base/index.js"`, and `from "./hole.ts"` -> `from "./hole.js"`. */
function withRelativeSpecifiers(text: string, folder: string, imports: OwnImports): string {
  let result = text;
  for (const { pos, end, fileName } of ts.preProcessFile(text).importedFiles.reverse()) {
    const specifier = toPublished(fileName, folder, imports);
    // The range takes in the quotes, or not, by the kind of import; the name itself is found between them.
    const start = text.indexOf(fileName, pos);
    if (start < 0 || start > end)
      throw new Error(`${folder}: no specifier "${fileName}" where it was announced`);
    result = result.slice(0, start) + specifier + result.slice(start + fileName.length);
  }
  return result;
}

function toPublished(specifier: string, folder: string, imports: OwnImports): string {
  if (specifier.startsWith(".")) return specifier.replace(/\.ts$/, ".js");
  const source = imports[specifier];
  if (source === undefined) return specifier;
  const path = posix.relative(folder, source.replace(/^\.\/core\//, "")).replace(/\.ts$/, ".js");
  return path.startsWith(".") ? path : `./${path}`;
}

function fail(diagnostics: readonly ts.Diagnostic[], root: string): never {
  throw new Error(describe(diagnostics, root));
}

function describe(diagnostics: readonly ts.Diagnostic[], root: string): string {
  return ts.formatDiagnostics(diagnostics, {
    getCurrentDirectory: () => root,
    getCanonicalFileName: (file) => file,
    getNewLine: () => "\n",
  });
}
