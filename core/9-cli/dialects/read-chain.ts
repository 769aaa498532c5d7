import { readFileSync } from "node:fs";
import type { HashedFile } from "#report";
import type { LoadedDialect } from "./loaded.ts";
import { sha256 } from "./loader.ts";

/** The files of a dialect's chain with the hashes of their bytes, the leaf first, under the names that findings have for them. */
export function readChain({ dialect, paths }: LoadedDialect): HashedFile[] {
  return dialect.files.map((file) => ({
    file,
    sha256: sha256(new Uint8Array(readFileSync(paths[file] ?? file))),
  }));
}
