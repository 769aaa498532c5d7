import { randomBytes } from "node:crypto";
import { lstatSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { homedir } from "node:os";
import { isAbsolute, join, resolve } from "node:path";
import type { Finding } from "#base";
import { packDialect, unpackDialect } from "#dialect";
import { isSystemError } from "../files/world.ts";
import { buildIdentity } from "../package.ts";
import type { ChainFile } from "./loader.ts";
import { sha256 } from "./loader.ts";
import type { BuiltDialect } from "./own.ts";

/** A dialect of the user's own as the cache keeps it. */
export interface CachedDialect extends BuiltDialect {
  readonly findings: readonly Finding[];
  readonly chain: readonly ChainFile[];
}

/** The same as an entry has it: the dialect is packed. */
type Entry = Omit<CachedDialect, "dialect"> & { readonly packed: string };

/**
 * A dialect built before, if neither a byte of its chain nor this package has changed since. An entry that is damaged, or
 * that lies in a folder which others can write to, counts as none, since it holds code.
 *
 * @param name the dialect as the user named it
 */
export function readCached(name: string): CachedDialect | undefined {
  return quietly(() => {
    const folder = ownFolder();
    if (folder === undefined) return undefined;
    const entry = parseEntry(readFileSync(join(folder, entryName(name)), "utf8"));
    if (!entry?.chain.every(isUnchanged)) return undefined;
    const { packed, ...rest } = entry;
    return { ...rest, dialect: unpackDialect(packed) };
  });
}

/** Keeps a dialect; where that is not possible nothing happens, and it is built again next time. */
export function writeCached(name: string, { dialect, ...rest }: CachedDialect): void {
  quietly(() => {
    const folder = ownFolder();
    if (folder === undefined) return;
    const body = JSON.stringify({ ...rest, packed: packDialect(dialect) } satisfies Entry);
    const temporary = join(folder, `${randomBytes(8).toString("hex")}.part`);
    try {
      writeFileSync(temporary, `${sha256(body)}\n${body}`, { flag: "wx", mode: 0o600 });
      renameSync(temporary, join(folder, entryName(name)));
    } finally {
      rmSync(temporary, { force: true });
    }
  });
}

/** The first line of an entry is the hash of the rest. */
function parseEntry(text: string): Entry | undefined {
  const end = text.indexOf("\n");
  const body = text.slice(end + 1);
  return text.slice(0, end) === sha256(body) ? (JSON.parse(body) as Entry) : undefined;
}

/** The same file under another name or from another folder is another entry: findings quote names as they were given. */
function entryName(name: string): string {
  return `${sha256(`${buildIdentity()}\n${name}\n${resolve(name)}`)}.json`;
}

function isUnchanged({ path, sha256: before }: ChainFile): boolean {
  return sha256(readFileSync(path)) === before;
}

/** The cache folder, made if need be: owned by this user and closed to others, or none. Code that runs from its sources has none. */
function ownFolder(): string | undefined {
  if (buildIdentity() === undefined) return undefined;
  const base = process.env["XDG_CACHE_HOME"] ?? "";
  // XDG Base Directory Specification: a path that is not absolute is ignored.
  const folder = join(isAbsolute(base) ? base : join(homedir(), ".cache"), "tapewright");
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const status = lstatSync(folder);
  const owned =
    process.geteuid === undefined || (status.uid === process.geteuid() && (status.mode & 0o077) === 0);
  return status.isDirectory() && owned ? folder : undefined;
}

/** A cache that cannot be used is no trouble of the user's. */
function quietly<T>(action: () => T): T | undefined {
  try {
    return action();
  } catch (error) {
    if (isSystemError(error)) return undefined;
    throw error;
  }
}
