import type { Report } from "#base";
import type { Dialect } from "./dialect.ts";
import type { KeyDifference } from "./difference.ts";
import type { Inherited } from "./inherited.ts";
import type { KeyBook } from "./key-facts.ts";
import type { DialectFile, DialectLoader } from "./loader.ts";
import type { Setup } from "./setup.ts";
import type { TreeNode } from "./tree.ts";
import type { WrittenKey } from "./write-file.ts";

export type * from "./dialect.ts";
export type { VariableFormat } from "./variable-format.ts";
export type { KeyDifference, StatedValue } from "./difference.ts";
export type { DialectFile, DialectLoader } from "./loader.ts";
export type { KeyBook, KeyFacts } from "./key-facts.ts";
export type { Inherited } from "./inherited.ts";
export type { WrittenKey } from "./write-file.ts";
export type { NumberKey } from "./resolve-numbers.ts";
export type { Setup } from "./setup.ts";
export type { PlainValue, TreeNode } from "./tree.ts";
export { editorLine } from "./editor-line.ts";
export { originOf } from "./origin.ts";
export { codeText } from "./code-text.ts";
export { packDialect, unpackDialect } from "./pack.ts";

/*
 * What reads files is loaded when it is called: a start with a dialect that was resolved ahead loads none of the parsers.
 */

/**
 * Reads a dialect file and what it extends, checks it and works it out.
 *
 * @param dialect a shipped name, or the path of a file
 * @returns undefined after an error, which has been reported with rule dialect/...
 */
export async function resolveDialect(
  dialect: string,
  loader: DialectLoader,
  report: Report,
): Promise<Dialect | undefined> {
  const { resolveFiles } = await import("./resolve.ts");
  return (await resolveFiles(dialect, loader, report))?.dialect;
}

/**
 * A dialect with all that it inherits as one YAML text; behind each value stands its file and line.
 *
 * @returns undefined when a file cannot be read; a dialect that does not hold together is shown all the same
 */
export async function showDialect(
  dialect: string,
  loader: DialectLoader,
  report: Report,
): Promise<string | undefined> {
  const { loadChain, showChain } = await import("./resolve.ts");
  const chain = loadChain(dialect, loader, report);
  return chain === undefined ? undefined : showChain(chain);
}

/**
 * The keys about which two dialects differ, with all that they inherit, in the order of the schema.
 *
 * @param loaders one for each, which may be the same
 * @returns undefined when a file cannot be read, of either; dialects that do not hold together are compared all the same
 */
export async function compareDialects(
  names: readonly [string, string],
  loaders: readonly [DialectLoader, DialectLoader],
  report: Report,
): Promise<KeyDifference[] | undefined> {
  const { differencesOf, loadChain } = await import("./resolve.ts");
  const first = loadChain(names[0], loaders[0], report);
  const second = loadChain(names[1], loaders[1], report);
  return first === undefined || second === undefined ? undefined : differencesOf(first, second);
}

/** A dialect, and what can be asked about the files that it was read from. */
export interface StudiedDialect {
  readonly dialect: Dialect;
  /** What it inherits of the values that hurt when they are wrong for the machine. */
  readonly inherited: () => Inherited[];
  /** Its keys with their values, places and other values. */
  readonly keys: KeyBook;
  /** What its own file has under `cases`, and the name of that file; undefined where it has none. */
  readonly cases: { readonly list: TreeNode; readonly file: string } | undefined;
}

/**
 * Resolves a dialect as `resolveDialect` does, and keeps what can be asked about its files.
 *
 * @param notes also notes what it leaves undeclared, what it cannot say, which jobs are refused for it, and which of its
 * lines change nothing
 */
export async function studyDialect(
  dialect: string,
  loader: DialectLoader,
  report: Report,
  notes = false,
): Promise<StudiedDialect | undefined> {
  const { inheritedOf, keyBookOf, reportNotes, resolveFiles } = await import("./resolve.ts");
  const found = await resolveFiles(dialect, loader, report);
  if (found === undefined) return undefined;
  const { chain } = found;
  if (notes) reportNotes(chain, report);
  const [leaf] = chain.links;
  const list = leaf.tree.entries.get("cases");
  return {
    dialect: found.dialect,
    inherited: () => inheritedOf(chain),
    keys: keyBookOf(chain),
    cases: list && { list, file: leaf.file },
  };
}

/**
 * All values of a dialect with what it inherits, as plain data; objects have no prototype.
 *
 * @returns undefined when a file cannot be read; a dialect that does not hold together is given all the same
 */
export async function dialectValues(
  dialect: string,
  loader: DialectLoader,
  report: Report,
): Promise<unknown> {
  const { loadChain, plainData } = await import("./resolve.ts");
  const chain = loadChain(dialect, loader, report);
  return chain === undefined ? undefined : plainData(chain.merged);
}

/** A dialect file as text, from its keys; see `writeDialectFile` in write-file.ts. */
export async function dialectFileText(
  keys: readonly WrittenKey[],
  head: readonly string[],
  schema?: string,
): Promise<string> {
  const { writeDialectFile } = await import("./write-file.ts");
  return writeDialectFile(keys, head, schema);
}

/** Reads a set-up file (YAML or JSON, schemas/setup.schema.json); undefined after a finding. */
export async function readSetup(file: DialectFile, report: Report): Promise<Setup | undefined> {
  const { readSetupFile } = await import("./read-setup.ts");
  return readSetupFile(file, report);
}

/** Reads what is in a rack now (YAML or JSON), tool by pocket; undefined after a finding. */
export async function readRack(file: DialectFile, report: Report): Promise<number[] | undefined> {
  const { readRackFile } = await import("./read-rack.ts");
  return readRackFile(file, report);
}

/**
 * Reads a YAML file that belongs to a dialect (answers of an interview, cases) as a tree with places; undefined after a
 * finding, rule dialect/...
 */
export async function readYaml({ file, bytes }: DialectFile, report: Report): Promise<TreeNode | undefined> {
  const { parseYaml } = await import("./parse-yaml.ts");
  return parseYaml({ file, bytes, index: 0, source: "dialect" }, report);
}
