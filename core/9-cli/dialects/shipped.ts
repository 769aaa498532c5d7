import { existsSync, readFileSync, readdirSync } from "node:fs";
import { basename, join } from "node:path";
import { pathToFileURL } from "node:url";
import { unpackDialect } from "#dialect";
import { packagePlace } from "../package.ts";
import type { LoadedDialect } from "./loaded.ts";

const suffix = ".dialect.yaml";

/** Names of the shipped dialects, sorted: the folder is the list. */
export function shippedNames(): string[] {
  const files = readdirSync(join(packagePlace().root, "dialects")).filter((file) => file.endsWith(suffix));
  return files.map((file) => basename(file, suffix)).sort();
}

/** Path of a shipped dialect's file. The name is one of `shippedNames`. */
export function shippedPath(name: string): string {
  return join(packagePlace().root, "dialects", name + suffix);
}

/**
 * A shipped dialect as it was built with the package. Undefined: there is none of this name, or this code runs from its
 * sources, where nothing is built.
 */
export function loadBuilt(name: string): LoadedDialect | undefined {
  const { root, built } = packagePlace();
  if (!built || !/^[a-z0-9-]+$/.test(name)) return undefined;
  const folder = join(root, "dist", "dialects");
  const file = join(folder, `${name}.json`);
  if (!existsSync(file)) return undefined;
  const dialect = unpackDialect(readFileSync(file, "utf8"));
  const paths = dialect.files.map((of) => [of, join(root, "dialects", basename(of))]);
  return {
    dialect,
    findings: [],
    emitter: pathToFileURL(join(folder, `${name}.js`)).href,
    paths: Object.fromEntries(paths) as Record<string, string>,
  };
}
