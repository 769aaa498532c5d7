import { createHash } from "node:crypto";
import { readFileSync, statSync } from "node:fs";
import { basename } from "node:path";
import type { Finding } from "#base";
import type { DialectFile, DialectLoader } from "#dialect";
import { inputFinding, isSystemError } from "../files/world.ts";
import { shippedNames, shippedPath } from "./shipped.ts";

/** A file of a dialect's chain, as it was when it was read. */
export interface ChainFile {
  /** Its name in findings and origins. */
  readonly file: string;
  readonly path: string;
  /** SHA-256 of its bytes, hexadecimal. */
  readonly sha256: string;
}

/** File access for stage 2, and what it came to. */
export interface FileLoader extends DialectLoader {
  /** Every file that was read, the leaf first. */
  readonly chain: readonly ChainFile[];
  /** Files that are there and cannot be read. */
  readonly findings: readonly Finding[];
}

/** Largest dialect file that is read, bytes; a file of this kind has a few thousand. */
const mostBytes = 1 << 20;

/** Reads dialect files from the package and from the disk. */
export function createFileLoader(): FileLoader {
  const chain: ChainFile[] = [];
  const findings: Finding[] = [];
  const open = (file: string, path: string): DialectFile | undefined => {
    try {
      const bytes = readSmall(path);
      chain.push({ file, path, sha256: sha256(bytes) });
      return { file, bytes };
    } catch (error) {
      if (!isSystemError(error)) throw error;
      // That a file is not there is said by stage 2, which knows the names that were meant.
      if (error.code !== "ENOENT") findings.push(inputFinding("dialect", file, error));
      return undefined;
    }
  };
  return {
    shipped: shippedNames(),
    readShipped: (name) => open(basename(shippedPath(name)), shippedPath(name)),
    readFile: (path) => open(path, path),
    chain,
    findings,
  };
}

function readSmall(path: string): Uint8Array {
  if (statSync(path).size > mostBytes)
    throw Object.assign(new Error("it is too large for a dialect"), { code: "EFBIG", syscall: "read" });
  return new Uint8Array(readFileSync(path));
}

/** Path of each file of a chain by its name. */
export function pathsOf(chain: readonly ChainFile[]): Record<string, string> {
  return Object.fromEntries(chain.map(({ file, path }) => [file, path]));
}

/** Hexadecimal. */
export function sha256(content: string | Uint8Array): string {
  return createHash("sha256").update(content).digest("hex");
}
