import { createHash } from "node:crypto";
import { existsSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { Script } from "node:vm";

/*
 * The built command is classic scripts rather than ES modules, since Node 20 takes compiled code from a file for scripts alone. A
 * start would spend more than half of its time on compiling otherwise. `core/build/scripts.ts` makes them, each one function
 * of what a module has around it; `core/build/compile-ahead.ts` keeps their compiled code beside them.
 */

/** What a script is: a function of these, see `core/build/scripts.ts`. */
type ScriptFunction = (
  exports: Record<string, unknown>,
  require: (name: string) => unknown,
  importModule: (name: string) => Promise<unknown>,
  importMeta: { readonly url: string },
) => void;

interface LoadedScript {
  readonly script: Script;
  readonly exports: Record<string, unknown>;
}

/** Scripts of one thread by their paths. */
export type Scripts = Map<string, LoadedScript>;

/**
 * Loads a script and those that it needs, each once.
 *
 * @param file its path
 * @returns its exports
 */
export function loadScript(scripts: Scripts, file: string): Record<string, unknown> {
  const known = scripts.get(file);
  if (known) return known.exports;
  const source = readFileSync(file);
  const cachedData = readCompiled(file, source);
  const script = new Script(source.toString(), {
    filename: file,
    ...(cachedData === undefined ? {} : { cachedData }),
  });
  const exports = {};
  scripts.set(file, { script, exports });
  const own = createRequire(file);
  const path = (name: string): string => join(dirname(file), name);
  const run = script.runInThisContext() as ScriptFunction;
  run(
    exports,
    (name) => (name.startsWith(".") ? loadScript(scripts, path(name)) : (own(name) as unknown)),
    async (name) =>
      name.startsWith(".") ? loadScript(scripts, path(name)) : ((await import(name)) as unknown),
    { url: pathToFileURL(file).href },
  );
  return exports;
}

/** Where the compiled code of a script is kept. The engine itself refuses what another version or other options made. */
function compiledPath(file: string): string {
  return `${file}.${process.version}-${process.arch}`;
}

/**
 * Stands before the compiled code. The engine looks at the length of a source and at its own version alone, and trusts the rest:
 * code of another source, or damaged, must not get that far.
 */
function sealOf(source: Uint8Array, compiled: Uint8Array): Buffer {
  return createHash("sha256").update(source).update(compiled).digest();
}

const sealBytes = 32;

/** The compiled code of a source; undefined where none was kept for it. */
function readCompiled(file: string, source: Uint8Array): Buffer | undefined {
  const path = compiledPath(file);
  if (!existsSync(path)) return undefined;
  const kept = readFileSync(path);
  const compiled = kept.subarray(sealBytes);
  return sealOf(source, compiled).equals(kept.subarray(0, sealBytes)) ? compiled : undefined;
}

/** Keeps the compiled code of all scripts that have been loaded, with that of the functions that have been called. */
export function keepCompiled(scripts: Scripts): void {
  for (const [file, { script }] of scripts) {
    const source = readFileSync(file);
    const compiled = script.createCachedData();
    const temporary = `${compiledPath(file)}.part`;
    writeFileSync(temporary, Buffer.concat([sealOf(source, compiled), compiled]));
    renameSync(temporary, compiledPath(file));
  }
}
