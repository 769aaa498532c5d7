import { readdirSync, readFileSync } from "node:fs";
import { basename, join, resolve } from "node:path";
import type { Finding } from "#base";
import type { Dialect, DialectFile, DialectLoader } from "#dialect";
import { resolveDialect } from "#dialect";

const root = resolve(import.meta.dirname, "../..");
/** Folder of the shipped dialects. */
export const shippedFolder = join(root, "dialects");
const ending = ".dialect.yaml";

/** Path of the router's dialect in the example. */
export const quarryRouter = join(root, "examples/weather-plate/quarry-router.dialect.yaml");

function read(path: string, file: string): DialectFile | undefined {
  try {
    return { file, bytes: readFileSync(path) };
  } catch {
    return undefined;
  }
}

/** File access for tests: the shipped dialects of this tree, and any file; `texts` stand in for files that are not there. */
export function dialectLoader(texts: Readonly<Record<string, string>> = {}): DialectLoader {
  const shipped = readdirSync(shippedFolder)
    .filter((name) => name.endsWith(ending))
    .map((name) => basename(name, ending));
  return {
    shipped,
    readShipped: (name) => read(join(shippedFolder, name + ending), name + ending),
    readFile: (path) => {
      const text = Object.hasOwn(texts, path) ? texts[path] : undefined;
      return text === undefined ? read(path, path) : { file: path, bytes: new TextEncoder().encode(text) };
    },
  };
}

/** A dialect by shipped name or path; throws with the findings when it is refused. */
export async function loadDialect(nameOrPath: string): Promise<Dialect> {
  const findings: Finding[] = [];
  const dialect = await resolveDialect(nameOrPath, dialectLoader(), (finding) => findings.push(finding));
  if (dialect === undefined)
    throw new Error(findings.map(({ rule, message }) => `${rule}: ${message}`).join("\n"));
  return dialect;
}
