import { existsSync, readFileSync } from "node:fs";
import { dirname, isAbsolute, join, relative, resolve, sep } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

/** Where this package stands. */
export interface PackagePlace {
  /** Its root folder. */
  readonly root: string;
  /** Whether this code is the built one under dist; otherwise the sources run as they are. */
  readonly built: boolean;
}

/** Finds the package's folder from this file upwards, since the built code stands at another depth than its source. */
export function packagePlace(): PackagePlace {
  const here = dirname(fileURLToPath(import.meta.url));
  let root = here;
  while (!existsSync(join(root, "package.json"))) {
    if (dirname(root) === root) throw new Error(`no package.json above ${here}`);
    root = dirname(root);
  }
  return { root, built: relative(root, here).split(sep)[0] === "dist" };
}

/** The package's version, such as "0.1.0". */
export function packageVersion(): string {
  const text = readFileSync(join(packagePlace().root, "package.json"), "utf8");
  return (JSON.parse(text) as { version: string }).version;
}

/** Tells this build from every other one: what was kept by one is of no use to another. Undefined where nothing is built. */
export function buildIdentity(): string | undefined {
  const { root, built } = packagePlace();
  return built ? readFileSync(join(root, "dist", "build-identity"), "utf8") : undefined;
}

/**
 * Address of the schema of dialect files for the first line of one: the way from the file's folder to this package, which
 * an editor finds without a network, however the package was installed. A URL where a path would not do: an editor reads a
 * path up to its first blank, and there is no way from one drive to another.
 *
 * Example: `router.dialect.yaml` beside node_modules -> "node_modules/tapewright/schemas/dialect.schema.json"
 */
export function schemaAddress(file: string): string {
  const schema = join(packagePlace().root, "schemas", "dialect.schema.json");
  const way = relative(dirname(resolve(file)), schema);
  return isAbsolute(way) || /\s/u.test(way) ? pathToFileURL(schema).href : way.split(sep).join("/");
}
