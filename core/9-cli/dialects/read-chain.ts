import { readFileSync } from "node:fs";
import { basename } from "node:path";
import type { HashedFile } from "#report";
import type { LoadedDialect } from "./loaded.ts";
import { sha256 } from "./loader.ts";

/** The files of a dialect's chain with the hashes of their bytes, the leaf first. */
export function readChain({ dialect, paths }: LoadedDialect): HashedFile[] {
  return dialect.files.map((file) => {
    const bytes = new Uint8Array(readFileSync(paths[file] ?? file));
    return { file: basename(file), sha256: sha256(bytes) };
  });
}
