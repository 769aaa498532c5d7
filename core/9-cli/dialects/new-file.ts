import { basename } from "node:path";
import { resolveTarget } from "../files/target.ts";
import type { Target } from "../files/target.ts";
import { carry, fileFinding } from "../files/world.ts";
import { usageError } from "../usage.ts";

/** Longest name of a dialect, as its schema has it. */
const longestName = 40;

/**
 * The name of the dialect that is to stand in a new file: "shop/mill.dialect.yaml" -> "mill".
 *
 * @param what how the command line calls the file
 * @throws a usage error
 */
export function newDialectName(file: string, what: string): string {
  const name = /^([a-z0-9]+(?:-[a-z0-9]+)*)\.dialect\.yaml$/.exec(basename(file))?.[1];
  if (name !== undefined && name.length <= longestName) return name;
  throw usageError(
    `${what} is called NAME.dialect.yaml, such as shop-mill.dialect.yaml (small letters, digits, hyphens, ${longestName} at most), and not ${basename(file)}.`,
  );
}

/**
 * Where a new dialect file goes: one that is there already is somebody's work.
 *
 * @param wayOut what the user can do then
 * @throws a carried finding
 */
export function newDialectTarget(file: string, replace: boolean, wayOut: string): Target {
  const target = resolveTarget(file, [], "dialect file");
  const exists = target.kind === "stream" || target.mode !== undefined;
  if (!exists || (replace && target.kind === "file")) return target;
  throw carry(fileFinding("dialect/exists", file, "The file is there already.", wayOut));
}
