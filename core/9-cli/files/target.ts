import type { Stats } from "node:fs";
import { accessSync, constants, lstatSync, readlinkSync, statSync } from "node:fs";
import { basename, dirname, resolve } from "node:path";
import type { Finding } from "#base";
import type { Input } from "./input.ts";
import { standardStream } from "./input.ts";
import type { Product } from "./world.ts";
import { carry, fileFinding, isSystemError, outputFinding } from "./world.ts";

/** Where a program, or another product, goes. */
export type Target =
  | {
      readonly kind: "file";
      readonly product: Product;
      /** Path as the user knows it. */
      readonly shown: string;
      /** The same with links followed: what is replaced. */
      readonly path: string;
      /** Permissions of the file that is replaced; undefined where there is none. */
      readonly mode: number | undefined;
    }
  | {
      readonly kind: "stream";
      readonly product: Product;
      readonly shown: string;
      /** Undefined: standard output. */
      readonly path: string | undefined;
    };

/** A file that must not be replaced. */
export type Protected = Pick<Input, "role"> & {
  readonly identity: Pick<Input["identity"], "device" | "inode">;
};

/** Links followed from one name before it counts as a circle. */
const mostLinks = 40;

/**
 * Finds out where a product goes before it is there, and whether it may.
 *
 * @param inputs files that it must not replace
 * @throws a carried finding: a folder, no right, a missing folder, one of the inputs
 */
export function resolveTarget(output: string, inputs: readonly Protected[], product: Product): Target {
  if (output === standardStream)
    return { kind: "stream", product, shown: "standard output", path: undefined };
  try {
    const path = followLinks(output);
    const status = statSync(path, { throwIfNoEntry: false });
    if (status) return existingTarget({ product, shown: output }, path, status, inputs);
    if (/[\\/]$/.test(output)) throw Object.assign(new Error(), { code: "ENOENT", syscall: "open" });
    requireFolder(path);
    return { kind: "file", product, shown: output, path, mode: undefined };
  } catch (error) {
    throw isSystemError(error) ? carry(outputFinding(output, error, product)) : error;
  }
}

function existingTarget(
  named: Pick<Target, "product" | "shown">,
  path: string,
  status: Stats,
  inputs: readonly Protected[],
): Target {
  if (status.isDirectory()) throw Object.assign(new Error(), { code: "EISDIR", syscall: "open" });
  if (!status.isFile()) return { kind: "stream", ...named, path };
  const same = inputs.find(({ identity }) => identity.device === status.dev && identity.inode === status.ino);
  if (same) throw carry(overwritesFinding(named, same));
  requireFolder(path);
  // Renaming would replace a write-protected file, too; whoever protected it did not mean that.
  accessSync(path, constants.W_OK);
  return { kind: "file", ...named, path, mode: status.mode & 0o7777 };
}

function requireFolder(path: string): void {
  accessSync(dirname(path), constants.W_OK | constants.X_OK);
}

/** The path that a link, and what it links to, ends at; the last one need not exist. */
function followLinks(path: string): string {
  let current = resolve(path);
  for (let links = 0; links < mostLinks; links++) {
    if (!lstatSync(current, { throwIfNoEntry: false })?.isSymbolicLink()) return current;
    current = resolve(dirname(current), readlinkSync(current));
  }
  throw Object.assign(new Error(), { code: "ELOOP", syscall: "readlink" });
}

/** The files of a dialect's chain, which nothing that is made with it may replace. */
export function protectedDialect(paths: readonly string[]): Protected[] {
  return paths.flatMap((path) => {
    const status = statSync(path, { throwIfNoEntry: false });
    return status ? [{ role: "dialect" as const, identity: { device: status.dev, inode: status.ino } }] : [];
  });
}

function overwritesFinding(
  { product, shown }: Pick<Target, "product" | "shown">,
  { role }: Protected,
): Finding {
  return fileFinding(
    "program/overwrites-input",
    shown,
    `The ${product} would replace the ${role} file that it is made from.`,
    "Name another file with --output FILE.",
  );
}

/**
 * `parts/plate.job.json` and "tap" -> `parts/plate.tap`
 *
 * @param mark what tells the program from the usual one: "air-cut" -> `parts/plate.air-cut.tap`
 */
export function besideInput(input: string, extension: string, mark = ""): string {
  const name = basename(input);
  const stem = name.replace(/(\.job)?\.json$/i, "");
  const bare = stem === name ? name.replace(/(?<=.)\.[^.]*$/, "") : stem;
  return (
    input.slice(0, input.length - name.length) +
    [bare === "" ? name : bare, ...(mark === "" ? [] : [mark]), extension].join(".")
  );
}

/** Where `post` puts a program that nobody names: `parts/plate.json` -> `parts/plate.tap`, and of a dry run `parts/plate.air-cut.tap`. */
export function programBeside(input: string, extension: string, isAirCut: boolean): string {
  return besideInput(input, extension, isAirCut ? "air-cut" : "");
}

/** `parts/plate.tap` and "t1" -> `parts/plate.t1.tap`; the mark stands before the ending, or last where there is none. */
export function withMark(file: string, mark: string): string {
  const name = basename(file);
  const ending = /(?<=.)\.[^.]*$/.exec(name)?.[0] ?? "";
  return `${file.slice(0, file.length - ending.length)}.${mark}${ending}`;
}
