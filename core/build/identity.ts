import { createHash } from "node:crypto";
import { readFileSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** Writes OUT/build-identity: a hash over everything that was built, which caches take as a part of their keys. */
export function writeIdentity(out: string): void {
  const hash = createHash("sha256");
  const files = readdirSync(out, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  for (const path of files.map(({ parentPath, name }) => join(parentPath, name)).sort())
    hash.update(readFileSync(path));
  writeFileSync(join(out, "build-identity"), hash.digest("hex"));
}
