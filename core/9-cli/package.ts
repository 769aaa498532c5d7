import { existsSync, readFileSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";

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
